package scenarios

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/sim/study"
)

// Scenario is a file with its alternatives, ready to run.
type Scenario struct {
	Base         *Plant
	Alternatives []Alternative // the base first

	tree     *Tree
	doc      *Document
	standard *Value
	options  Options
}

// Alternative is the plant with some changes.
type Alternative struct {
	Name    string
	Changes []string // as written, for people
	Plant   *Plant
}

// Options are what a command line says beside the file.
type Options struct {
	Sets  []Change // changes of the base and of every alternative
	Years int      // below 0: as the scenario says
	Files func(name string) ([]byte, error)
}

// Load reads a scenario and makes a plan of it and of each of its
// alternatives. All complaints come together.
func Load(name string, data []byte, o Options) (*Scenario, Complaints) {
	tree, err := Inputs()
	if err != nil {
		return nil, Complaints{{File: name, Message: err.Error()}}
	}
	doc, complaints := Read(name, data)
	if doc == nil {
		return nil, complaints
	}
	file := doc
	doc, faults := tree.Apply(file, o.Sets...)
	complaints = append(complaints, faults...)
	v, faults := tree.Bind(doc)
	if complaints = append(complaints, faults...); len(complaints) > 0 {
		return nil, append(complaints, tree.further(doc, o, complaints)...).sorted()
	}
	standard, err := standardRoutes()
	if err != nil {
		return nil, Complaints{{File: name, Message: err.Error()}}
	}
	base, complaints := tree.build(v, standard, o)
	if len(complaints) > 0 {
		return nil, tree.blame(complaints, file, standard, o)
	}
	s := &Scenario{Base: base, Alternatives: []Alternative{{Name: v.At("base_name").Text(), Plant: base}}, tree: tree, doc: doc, standard: standard, options: o}
	for alternative, a := range v.Each("alternatives") {
		if alternative == s.Alternatives[0].Name {
			complaints = append(complaints, a.Complain(fmt.Sprintf("the plant itself is called %q: one of the two needs another name", alternative), "", "base_name names the plant itself"))
			continue
		}
		if faults := unchangeable(a.Changes()); len(faults) > 0 {
			complaints = append(complaints, faults...)
			continue
		}
		plant, faults := s.plant(a.Changes())
		for i := range faults {
			faults[i].Message = "with alternatives." + alternative + ": " + faults[i].Message
		}
		complaints = append(complaints, faults...)
		var changes []string
		for _, ch := range a.Changes() {
			changes = append(changes, ch.String())
		}
		s.Alternatives = append(s.Alternatives, Alternative{Name: alternative, Changes: changes, Plant: plant})
	}
	if len(complaints) > 0 {
		return nil, complaints.sorted()
	}
	return s, nil
}

// With makes one more alternative of the base: the plant with changes. It is
// not added to Alternatives.
func (s *Scenario) With(name string, changes ...Change) (Alternative, Complaints) {
	plant, complaints := s.plant(changes)
	if len(complaints) > 0 {
		return Alternative{}, complaints
	}
	a := Alternative{Name: name, Plant: plant}
	for _, ch := range changes {
		a.Changes = append(a.Changes, ch.String())
	}
	return a, nil
}

// plant makes the plan of the base with changes. The list of alternatives is
// left out of it: it was tried with the base.
func (s *Scenario) plant(changes []Change) (*Plant, Complaints) {
	changed, complaints := s.tree.Apply(s.doc, append(slices.Clone(changes), Change{Path: "alternatives", value: &node{shape: empty}})...)
	if len(complaints) > 0 {
		return nil, complaints
	}
	v, complaints := s.tree.Bind(changed)
	if len(complaints) > 0 {
		return nil, complaints
	}
	p, complaints := s.tree.build(v, s.standard, s.options)
	if p != nil && p.Plan().Cure == s.Base.Plan().Cure {
		p.resin = s.Base.resin
	}
	return p, complaints
}

// Study is the scenario as a study runs it.
func (s *Scenario) Study() []study.Alternative {
	var out []study.Alternative
	for _, a := range s.Alternatives {
		out = append(out, study.Alternative{Name: a.Name, Changes: a.Changes, Capacity: a.Plant.Capacity, Dated: a.Plant.Dated,
			Frame: a.Plant.Frame, Money: a.Plant.Money(), Climate: a.Plant.Climate, Air: a.Plant.Air})
	}
	return out
}

// unchangeable complains of changes that would make an alternative another study:
// names, counts of runs, and the day the calendar begins are those of the plant.
func unchangeable(changes []Change) Complaints {
	var complaints Complaints
	for _, ch := range changes {
		word, _, _ := strings.Cut(ch.Path, ".")
		if word = strings.TrimSpace(word); word == "version" || word == "start" || slices.Contains(named, word) {
			complaints = append(complaints, ch.complaint("an alternative cannot change "+word+": it is the same for all that are compared", nil, ""))
		}
	}
	return complaints
}
