package sim

import (
	"fmt"
	"strings"

	"moldturn/sim/clock"
)

// StartFault is something in a Start that cannot be.
type StartFault struct {
	List  string // "molds", "orders", "work", "out", "down", "days"; "" for the start itself
	Index int    // row of the list
	Text  string // lower case, without a full stop
}

// StartFaults is all that is wrong with a Start, as an error.
type StartFaults []StartFault

func (f StartFaults) Error() string {
	var lines []string
	for _, x := range f {
		if x.List != "" {
			lines = append(lines, fmt.Sprintf("%s, row %d: %s", x.List, x.Index+1, x.Text))
		} else {
			lines = append(lines, x.Text)
		}
	}
	return strings.Join(lines, "\n")
}

// startCheck collects faults.
type startCheck struct {
	s      *Start
	p      *Plan
	list   string
	row    int
	faults StartFaults
}

func (c *startCheck) say(format string, args ...any) {
	c.faults = append(c.faults, StartFault{c.list, c.row, fmt.Sprintf(format, args...)})
}

// Check finds everything in a start that does not fit the plan or itself: no run
// can begin from it then.
func (s *Start) Check(p *Plan) StartFaults {
	c := &startCheck{s: s, p: p}
	if s.At < 0 || s.At >= p.Length {
		c.say("the start is not within the run")
		return c.faults
	}
	c.molds()
	c.orders()
	c.work()
	c.rest()
	return c.faults
}

// in tells whether i is an index of a list of n; it complains otherwise.
func (c *startCheck) in(what string, i, n int) bool {
	if i >= 0 && i < n {
		return true
	}
	c.say("there is no %s %d", what, i)
	return false
}

func (c *startCheck) past(what string, t clock.Time) {
	if t != Unknown && (t < 0 || t > c.s.At) {
		c.say("%s lies at %v, outside of the time before the start", what, t)
	}
}

// partOf is the part type of a row of work; nil for a boat.
func (c *startCheck) partOf(w *StartWork) *Part {
	if w.Part == None {
		return nil
	}
	return &c.p.Parts[w.Part]
}

func (c *startCheck) molds() {
	c.list = "molds"
	with := map[int32]int{}
	for i := range c.s.Work {
		with[c.s.Work[i].Mold]++
	}
	seen := map[int32]bool{}
	for i := range c.s.Molds {
		m := &c.s.Molds[i]
		c.row = i
		if !c.in("mold", int(m.Mold), len(c.p.Molds)) {
			continue
		}
		if seen[m.Mold] {
			c.say("mold %q stands there twice", c.p.Molds[m.Mold].Name)
		}
		seen[m.Mold] = true
		c.past("the time since which it stands so", m.When)
		c.past("the begin of its step", m.Begun)
		switch {
		case m.Stands == MoldInCare:
			c.in("step of care", int(m.Step), len(c.p.Routes[c.p.Parts[c.p.Molds[m.Mold].Part].Care].Steps))
		case m.Stands == MoldWithPart && with[m.Mold] == 0:
			c.say("mold %q has a part in it, and no work is in it", c.p.Molds[m.Mold].Name)
		case m.Stands > MoldAway:
			c.say("no such state %d", m.Stands)
		}
		if m.Stands != MoldWithPart && with[m.Mold] > 0 {
			c.say("mold %q has no part in it, and work is in it", c.p.Molds[m.Mold].Name)
		}
	}
}

func (c *startCheck) orders() {
	c.list = "orders"
	for i := range c.s.Orders {
		o := &c.s.Orders[i]
		c.row = i
		c.in("model", int(o.Model), len(c.p.Models))
		for _, color := range []int16{o.Color, o.Band} {
			if color != None {
				c.in("color", int(color), len(c.p.Colors))
			}
		}
		c.past("its arrival", o.Arrived)
		c.past("its begin", o.Began)
	}
}

func (c *startCheck) work() {
	c.list = "work"
	molds := map[int32]bool{}
	pieces := map[[2]int32]bool{}
	for i := range c.s.Work {
		w := &c.s.Work[i]
		c.row = i
		if !c.in("order", int(w.Order), len(c.s.Orders)) || w.Part != None && !c.in("part", int(w.Part), len(c.p.Parts)) {
			continue
		}
		model := c.s.Orders[w.Order].Model
		if model < 0 || int(model) >= len(c.p.Models) {
			continue
		}
		if pieces[[2]int32{w.Order, int32(w.Part)}] {
			c.say("the same piece of order %d is there twice", w.Order)
		}
		pieces[[2]int32{w.Order, int32(w.Part)}] = true
		if w.Part == None {
			c.boat(w, model)
			continue
		}
		if pieces[[2]int32{w.Order, None}] {
			c.say("its boat is in assembly already")
		}
		if c.p.Parts[w.Part].Model != model {
			c.say("%s is no part of order %d", c.p.Parts[w.Part].Name, w.Order)
		}
		c.mold(w, molds)
		c.past("its spraying", w.Sprayed)
		c.past("its skin coat", w.Skinned)
		c.past("its last labor", w.Laminated)
		c.past("the begin of its step", w.Begun)
		c.past("the begin of its wait", w.Since)
	}
}

func (c *startCheck) boat(w *StartWork, model int16) {
	c.in("step", int(w.Step), len(c.p.Routes[c.p.Models[model].Boat].Steps))
	if w.Mold != None {
		c.say("a boat is in no mold")
	}
	for i := range c.s.Work {
		if x := &c.s.Work[i]; x.Order == w.Order && x.Part != None {
			c.say("parts of order %d are not joined, and its boat is in assembly", w.Order)
			return
		}
	}
}

// mold checks where a part is.
func (c *startCheck) mold(w *StartWork, seen map[int32]bool) {
	part := c.partOf(w)
	steps := c.p.Routes[part.Route].Steps
	if !c.in("step", int(w.Step), len(steps)+1) {
		return
	}
	inside := part.Care != None && pulledAt(steps) >= int(w.Step)
	switch {
	case inside && w.Mold == None:
		c.say("it is in no mold before its pull")
	case !inside && w.Mold != None:
		c.say("it is in a mold after its pull")
	case w.Mold != None && c.in("mold", int(w.Mold), len(c.p.Molds)):
		if c.p.Molds[w.Mold].Part != w.Part {
			c.say("mold %q is one of another part", c.p.Molds[w.Mold].Name)
		}
		if seen[w.Mold] {
			c.say("two parts are in mold %q", c.p.Molds[w.Mold].Name)
		}
		seen[w.Mold] = true
	}
}

// pulledAt is the step at whose end a part leaves its mold: the last one for a
// route without a pull.
func pulledAt(steps []Step) int {
	for i := range steps {
		if steps[i].Verb == Pulled {
			return i
		}
	}
	return len(steps)
}

func (c *startCheck) rest() {
	c.list = "out"
	for i, o := range c.s.Out {
		c.row = i
		c.in("craft", int(o.Craft), len(c.p.Crafts))
		if o.People < 1 || o.To < o.From {
			c.say("%d people from day %d to day %d", o.People, o.From, o.To)
		}
	}
	c.list = "down"
	for i, d := range c.s.Down {
		c.row = i
		if !c.in("place", int(d.Place), len(c.p.Places)) {
			continue
		}
		if d.Unit != None {
			c.in("unit", int(d.Unit), c.p.Places[d.Place].Count)
		} else if c.p.Places[d.Place].Count < 0 {
			c.say("%q has no limit and cannot be down", c.p.Places[d.Place].Name)
		}
		if d.To <= d.From {
			c.say("it is down from %v to %v", d.From, d.To)
		}
	}
	c.list = "days"
	for i, d := range c.s.Days {
		c.row = i
		if d.Craft != None {
			c.in("craft", int(d.Craft), len(c.p.Crafts))
		}
		if d.To < d.From {
			c.say("days %d to %d", d.From, d.To)
		}
	}
}
