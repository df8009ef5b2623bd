package scenarios

import (
	"fmt"
	"strconv"
)

// LeverKind says what a lever moves.
type LeverKind uint8

// Kinds of levers.
const (
	People  LeverKind = iota // of a craft on a shift
	Places                   // booths, bays, stalls, hoists
	Molds                    // sets of one model: a mold of every part
	GunSets                  // pumped sets for any color, in each booth of a place
)

// Lever is a number of the plant that can be one more or one less: people of a
// craft on a shift, a place, the gun sets of a booth, a set of molds.
type Lever struct {
	Kind  LeverKind
	Key   string // for --may: "crew.gel", "booth", "molds.Rush 23"
	Label string // for people: "gel, day"
	Unit  string // one of it: "laminator"-like words: "person", "booth", "mold set"
	Now   int
	paths []string // inputs that move together
	now   []int    // their values
	price float64  // of one a year
	guns  *node    // the list of gun sets, for GunSets
	gun   int      // in it, the one that is copied
}

// Levers lists what can be one more or one less, in file order: people by craft
// and shift, places with a count and their gun sets, mold sets by model.
func (s *Scenario) Levers() []Lever {
	v := s.Base.Value
	var out []Lever
	plan := s.Base.Plan()
	number := 0
	for craft, c := range v.Each("crafts") {
		crews := plan.Crafts[number].Crews
		number++
		for shift, n := range c.Each("people") {
			hours := crews[0].Hours
			crews = crews[1:]
			out = append(out, Lever{Kind: People, Key: "crew." + craft, Label: craft + ", " + shift, Unit: "person", Now: n.Count(),
				paths: []string{n.Path()}, now: []int{n.Count()}, price: s.personPrice(craft, hours.Worked(0, plan.Length).Hours()/(plan.Length.Hours()/yearHours))})
		}
	}
	for place, p := range v.Each("places") {
		if n := p.At("count"); n.Given() {
			out = append(out, Lever{Kind: Places, Key: place, Label: place, Unit: place, Now: n.Count(), paths: []string{n.Path()}, now: []int{n.Count()},
				price: v.At("size." + p.At("kind").Text()).Dollars()})
			if l, ok := s.gunLever(place, p); ok {
				out = append(out, l)
			}
		}
	}
	for model, m := range v.Each("models") {
		l := Lever{Kind: Molds, Key: "molds." + model, Label: model + " mold set", Unit: "mold set"}
		for _, p := range m.Each("parts") {
			if p.At("care").Text() == "none" {
				continue
			}
			l.paths = append(l.paths, p.At("molds").Path())
			l.now = append(l.now, p.At("molds").Count())
			l.price += s.moldPrice(p)
		}
		if len(l.paths) == 0 {
			continue
		}
		l.Now = l.now[0]
		for _, n := range l.now {
			l.Now = min(l.Now, n)
		}
		out = append(out, l)
	}
	return out
}

// By moves the lever by some steps from where the scenario has it. Moving below
// zero, or a mold set or the gun sets of a booth below one, gives ok false.
func (l *Lever) By(steps int) (changes []Change, ok bool) {
	if l.Kind == GunSets {
		return l.byGuns(steps)
	}
	least := 0
	if l.Kind == Molds {
		least = 1
	}
	for i, path := range l.paths {
		n := l.now[i] + steps
		if n < least {
			return nil, false
		}
		ch, complaints := ParseChange("lever", path+"="+strconv.Itoa(n))
		if len(complaints) > 0 {
			return nil, false
		}
		changes = append(changes, ch)
	}
	return changes, true
}

// Price is what one of it costs a year, in dollars, by the scenario's size
// prices.
func (l *Lever) Price() float64 { return l.price }

// Least is the smallest number it can have.
func (l *Lever) Least() int {
	if l.Kind == Molds || l.Kind == GunSets {
		return 1
	}
	return 0
}

// Name is what moving the lever by some steps is called: "gel, day +1".
func (l *Lever) Name(steps int) string { return fmt.Sprintf("%s %+d", l.Label, steps) }
