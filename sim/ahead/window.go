package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Risk is a part whose skin coat may come after its gel window.
type Risk struct {
	Mold   int32
	Spray  *Thing     // its base coat; nil: sprayed before the morning
	Until  clock.Time // middle of the end of its window
	Chance float64    // share of futures in which the skin coat comes later
	Wash   float64    // share in which the gel coat is so old that it is sprayed again
}

// risks finds the parts that miss their gel window in enough futures. They stand
// on the day on which the window ends.
func (b *Board) risks(c *things, futures []Future) {
	limit := clock.FromHours(b.Setup.Plan.Window.Limit)
	missed, washed := map[thingKey]int{}, map[thingKey]int{} // by mold and turn: in how many futures
	for f := range futures {
		c.misses(missed, f, futures[f].Notes, record.WindowMiss, record.Resprayed)
		c.misses(washed, f, futures[f].Notes, record.Resprayed)
	}
	list := c.windows(b.Setup, limit)
	for _, r := range list {
		key := thingKey{mold: r.Mold}
		if r.Spray != nil {
			key.nth = r.Spray.Nth
		}
		r.Chance, r.Wash = float64(missed[key])/float64(len(futures)), float64(washed[key])/float64(len(futures))
		if r.Chance == 0 {
			continue
		}
		if d := b.on(int((r.Until-b.Setup.Morning())/clock.Day), r.Chance); d != nil {
			d.Risks = append(d.Risks, r)
		}
	}
	for i := range b.Days {
		slices.SortStableFunc(b.Days[i].Risks, func(a, b Risk) int { return cmp.Or(cmp.Compare(a.Until, b.Until), cmp.Compare(a.Mold, b.Mold)) })
	}
}

// misses counts, once for a future, the base coats that have a note of some kinds.
func (c *things) misses(into map[thingKey]int, f int, notes []record.Note, kinds ...record.NoteKind) {
	seen := map[thingKey]bool{}
	for i := range notes {
		n := &notes[i]
		if n.Mold < 0 || !slices.Contains(kinds, n.Kind) {
			continue
		}
		key := thingKey{mold: n.Mold, nth: c.turnAt(f, n.Mold, n.At)}
		if !seen[key] {
			seen[key] = true
			into[key]++
		}
	}
}

// turnAt is the turn whose base coat a mold has before an instant of a future; 0 for
// one that was sprayed before the morning.
func (c *things) turnAt(f int, mold int32, at clock.Time) int {
	nth := 0
	for _, x := range c.list {
		if x.Doing == record.Spraying && !x.Accent && x.Mold == mold && x.In[f] != nil && x.In[f].Began < at {
			nth = max(nth, x.Nth)
		}
	}
	return nth
}

// windows lists every gel window that runs already or will.
func (c *things) windows(s *Setup, limit clock.Time) []Risk {
	var out []Risk
	for i := range s.Start.Work {
		if w := &s.Start.Work[i]; w.Mold != sim.None && w.Sprayed != sim.Unknown {
			out = append(out, Risk{Mold: w.Mold, Until: max(w.Sprayed+limit, s.Start.At)})
		}
	}
	for _, x := range c.list {
		if x.Doing == record.Spraying && !x.Accent {
			if end := x.When(EndedAt).Given(); len(end) > 0 {
				out = append(out, Risk{Mold: x.Mold, Spray: x, Until: end.Surely(0.5) + limit})
			}
		}
	}
	return out
}
