package floor

import (
	"slices"

	"moldturn/sim"
)

// turnsAmount is a counter of turns.
func turnsAmount() *amount {
	return &amount{units: []string{"turn", "turns", "pull", "pulls", "part", "parts", "x", "ea", "pcs", "t"}, whole: true, low: 0, high: 20_000}
}

func lusterAmount() *amount {
	return &amount{units: []string{"pts", "pt", "points", "point", "gu", "/100", "/ 100", "%"}, low: 0, high: 100}
}

// stateWords are what people write for the states that are no steps.
var stateWords = [][]string{
	{},
	{"ready", "free", "available", "waxed", "clean", "online", "line", "inline", "idle", "tothe line", "totheline"},
	{"pulled", "empty", "open", "dirty", "justpulled", "needscheck", "awaitingcheck", "moldstall", "moldshop"},
	{},
	{"occupied", "loaded", "full", "inuse", "partin", "haspart"},
	{"reserve", "spare", "backup", "storage", "instorage", "yard", "onmaster", "idlereserve"},
	{"out", "outofuse", "outofservice", "outofrotation", "stuck", "cracked", "damaged", "down", "patternshop", "repairshop", "scrapped", "retired", "resurfacing", "resurface", "resurfaced", "beingresurfaced"},
}

// renewedWords are those of molds that are out of use and come back with a new
// surface.
var renewedWords = []string{"resurfacing", "resurface", "resurfaced", "beingresurfaced"}

// readMolds reads the mold log.
func (t *table) readMolds() {
	t.each(func(l *line) {
		id, _ := l.text("id")
		model, inModel, ok := l.model()
		if !ok {
			return
		}
		m := Mold{Place: l.place(-1), ID: t.r.names.meant(id), Plan: sim.None, Step: sim.None, Work: Unknown,
			Turns: l.whole("turns total", turnsAmount()), Since: l.whole("turns since strip", turnsAmount()), Luster: Unknown,
			When: l.moment("since"), Back: l.moment("back")}
		if m.Part, ok = l.part(model, inModel); !ok {
			return
		}
		if t.r.names.plan.Parts[m.Part].Care == sim.None {
			l.drop(t.column("part"), "part without mold", "this part needs no mold in the scenario", "", "")
			return
		}
		if x, ok := l.amount("last luster", lusterAmount()); ok {
			m.Luster = x
		}
		l.state(&m)
		if !l.bad {
			t.r.molds = append(t.r.molds, entry[Mold]{l, m, idKey(m.ID)})
		}
	})
}

// part of a row that needs one: of the cell of the model, else of its own, else
// the only one there is.
func (l *line) part(model int, inModel string) (int16, bool) {
	n := l.t.r.names
	if inModel != "" {
		p, ok := n.part(model, inModel)
		return p, ok
	}
	s, c := l.text("part")
	if s == "" {
		if parts := n.plan.Models[model].Parts; len(parts) == 1 {
			return parts[0], true
		}
		l.drop(c, "cell missing", "no part, and the model has several", listed(n.partNames(model)), "")
		return sim.None, false
	}
	p, ok := n.part(model, s)
	if !ok {
		l.drop(c, "unknown part", "part \""+s+"\": the model has no such part", listed(n.partNames(model)), hintFor(s, n.partNames(model)))
	}
	return p, ok
}

// state reads where a mold is: a state, a step of its care, a step of its part,
// or a place.
func (l *line) state(m *Mold) {
	s, c := l.text("where")
	if s == "" {
		return
	}
	n := l.t.r.names
	part := &n.plan.Parts[m.Part]
	written := n.meant(s)
	if step, _ := n.step(part.Care, written); step != sim.None {
		m.State, m.Step = InCare, step
		return
	}
	if w := word(written, stateWords); w >= 0 {
		m.State, m.Renewed = State(w), word(written, [][]string{renewedWords}) >= 0
		return
	}
	if step, _ := n.step(part.Route, written); step != sim.None {
		if !n.inMold(m.Part, step) {
			l.doubt(c, "step without mold", s, "a part has left its mold by then", listed(n.stepNames(part.Care)), "")
			return
		}
		m.State = Occupied
		return
	}
	if at, _ := n.place(written); at >= 0 {
		m.State = n.placed(m.Part, int16(at))
		return
	}
	allowed := append([]string{"ready", "pulled", "occupied", "reserve", "out"}, n.stepNames(part.Care, part.Route)...)
	l.unknown(c, "state", allowed)
}

// placed is what a mold does in a place: its care, if a step of its care takes
// the place, else it has a part in it.
func (n *names) placed(part, at int16) State {
	care := n.plan.Routes[n.plan.Parts[part].Care].Steps
	if slices.ContainsFunc(care, func(s sim.Step) bool { return slices.Contains(s.Take, at) || slices.Contains(s.Swap, at) }) {
		return Pulled
	}
	return Occupied
}
