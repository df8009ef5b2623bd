package scenarios

import "strings"

// shortName is a name that stands for the inputs behind it.
type shortName struct{ name, doc string }

// shorts are the names that hold in every plant; those of its people, places
// and molds are the keys of its levers.
var shorts = []shortName{
	{"hold", "hold.clock: how long a part stays in its mold"},
	{"strip", "strip.every with strip.policy = every: pulls between strips"},
	{"wax", "wax.every: pulls between coats of wax"},
	{"floor", "demand.floor_limit: boats on the floor at most"},
	{"molds", "mold sets of every model"},
}

// Shorts lists the short names of a plant, with what each stands for.
func (s *Scenario) Shorts() (names, docs []string) {
	for _, x := range shorts {
		names, docs = append(names, x.name), append(docs, x.doc)
	}
	for _, l := range s.Levers() {
		if l.Kind == GunSets { // a list, not a number
			continue
		}
		names, docs = append(names, s.shortOf(&l)), append(docs, strings.Join(l.paths, ", "))
	}
	return names, docs
}

// shortOf is the short name of a lever: its key, with the shift where a craft
// works on several.
func (s *Scenario) shortOf(l *Lever) string {
	if l.Kind == People && s.shiftsOf(l.Key) > 1 {
		_, shift, _ := strings.Cut(l.Label, ", ")
		return l.Key + "." + shift
	}
	return l.Key
}

func (s *Scenario) shiftsOf(key string) int {
	n := 0
	for _, l := range s.Levers() {
		if l.Key == key {
			n++
		}
	}
	return n
}

// Changes reads an edit from a command line as ParseChange does, but takes short
// names as well: "hold=16 h", "molds.Rush 23=3", "booths=3". A short name may
// stand for several inputs. Names of places may end in s.
func (s *Scenario) Changes(option, text string) ([]Change, Complaints) {
	path, value, ok := cutEqual(text)
	paths := s.behind(path)
	if !ok || paths == nil {
		ch, complaints := ParseChange(option, text)
		return []Change{ch}, complaints
	}
	var out []Change
	for _, p := range paths {
		edit := p + "=" + value
		if strings.Contains(p, "=") {
			edit = p
		}
		ch, complaints := ParseChange(option, edit)
		if len(complaints) > 0 {
			return nil, complaints
		}
		out = append(out, ch)
	}
	return out, nil
}

// behind are the inputs that a short name stands for; nil for any other name.
func (s *Scenario) behind(name string) []string {
	switch name {
	case "hold":
		return []string{"hold.clock"}
	case "strip":
		return []string{"strip.policy=every", "strip.every"}
	case "wax":
		return []string{"wax.every"}
	case "floor":
		return []string{"demand.floor_limit"}
	}
	var out []string
	plain := strings.ReplaceAll(name, `"`, "")
	for _, l := range s.Levers() {
		switch {
		case l.Kind == GunSets:
		case name == "molds" && l.Kind == Molds,
			plain == s.shortOf(&l),
			l.Kind == Places && plain == l.Key+"s":
			out = append(out, l.paths...)
		}
	}
	return out
}
