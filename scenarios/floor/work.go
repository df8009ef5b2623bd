package floor

import (
	"fmt"

	"moldturn/sim"
)

// readWork reads the work on the floor.
func (t *table) readWork() {
	t.each(func(l *line) {
		serial, _ := l.text("serial")
		model, inModel, ok := l.model()
		if !ok {
			return
		}
		w := Work{Place: l.place(-1), Serial: t.r.names.meant(serial), Model: int16(model), Part: sim.None, Color: l.color("color"), Band: l.color("band"),
			Route: sim.None, Step: sim.None, Left: Unknown, Done: Unknown, Mold: Unknown, Order: Unknown}
		if !l.partAndStep(&w, inModel) {
			return
		}
		w.Started, w.Sprayed, w.Skinned, w.Laminated, w.Unmolded = l.moment("started"), l.moment("sprayed"), l.moment("skinned"), l.moment("laminated"), l.moment("pulled")
		if shipped := l.moment("shipped"); !shipped.IsZero() {
			l.shipped(&w, shipped)
			return
		}
		if x, ok := l.amount("hours left", &amount{units: []string{"h", "hr", "hrs", "hour", "hours", "min", "minutes"}, low: 0, high: 5000,
			scale: map[string]float64{"min": 1. / 60, "minutes": 1. / 60}}); ok {
			w.Left = x
		}
		if x, ok := l.done(); ok {
			w.Done = x
		}
		if !l.bad {
			t.r.work = append(t.r.work, entry[Work]{l, w, idKey(w.Serial)})
		}
	})
}

// partAndStep reads which part a row is of and its step; without a part it is a
// boat.
func (l *line) partAndStep(w *Work, inModel string) bool {
	n := l.t.r.names
	model := &n.plan.Models[w.Model]
	s, c := l.text("part")
	step, at := l.text("step")
	if l.bad {
		return false
	}
	boat := s == "" && inModel == "" || key(s) == "boat" || key(s) == "all"
	if boatStep, _ := n.step(model.Boat, step); boatStep != sim.None {
		w.Route, w.Step = model.Boat, boatStep
		return true
	}
	switch {
	case boat && len(model.Parts) == 1:
		w.Part = model.Parts[0]
	case boat:
		if more := n.anyStep(int(w.Model), step); more {
			l.drop(c, "cell missing", fmt.Sprintf("no part, and %q is a step of parts", step), listed(n.partNames(int(w.Model))), "")
			return false
		}
	default:
		p, ok := l.part(int(w.Model), inModel)
		if !ok {
			return false
		}
		w.Part = p
	}
	if w.Part != sim.None {
		w.Route = n.plan.Parts[w.Part].Route
		var more int
		if w.Step, more = n.step(w.Route, step); more > 0 {
			l.t.r.say(Notice{Place: l.place(at), Level: Doubt, Rule: "word for several steps", Found: step,
				Message: fmt.Sprintf("step %q could be %d steps; the first is taken: %s", step, more+1, n.plan.Routes[w.Route].Steps[w.Step].Name),
				Hint:    "write the name of the step", Effect: "it is ready later than in truth if it is further on"})
		}
	}
	if w.Step == sim.None {
		routes := []int16{model.Boat}
		for _, p := range model.Parts {
			if w.Part == sim.None || p == w.Part {
				routes = append(routes, n.plan.Parts[p].Route)
			}
		}
		l.unknown(at, "step", n.stepNames(routes...))
		return false
	}
	return true
}

// anyStep tells whether a word is a step of any part of a model.
func (n *names) anyStep(model int, written string) bool {
	for _, p := range n.plan.Models[model].Parts {
		if s, _ := n.step(n.plan.Parts[p].Route, written); s != sim.None {
			return true
		}
	}
	return false
}

// shipped drops a row of what has left the plant.
func (l *line) shipped(w *Work, at Moment) {
	c := l.t.column("shipped")
	if w.Unmolded.After(at) {
		l.drop(c, "pulled after shipped", fmt.Sprintf("shipped on %s and pulled on %s, later", at, w.Unmolded), "", "one of the two dates is wrong")
		return
	}
	l.t.r.say(Notice{Place: l.place(c), Level: Told, Rule: "shipped", Found: l.cells[c], Message: fmt.Sprintf("shipped on %s: it is not on the floor", at)})
	l.retire(Skipped, "shipped on "+at.String())
}

// done reads the share of a step that is done: "60 %", "0.6", "60". Of numbers
// without a sign those up to 1 are shares.
func (l *line) done() (float64, bool) {
	x, ok := l.amount("done", &amount{units: []string{"%", "percent", "pct"}, low: 0, high: 100})
	if !ok {
		return 0, false
	}
	s, _ := l.text("done")
	share := &amount{low: 0, high: 1}
	if y, err := share.parse(s); err == nil && x == y {
		return x, true
	}
	return x / 100, true
}
