package record

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
)

// Visit is one passage of a job through one step: what it waited for first, the
// work or cure, and the waits in between. A visit of a mold that is with no part
// and in no care has Job -1 and Step -1.
type Visit struct {
	Job, Order, Mold  int32
	Route, Step, Part int16
	Doing             Doing
	Asked             clock.Time // when it came to the step
	Began             clock.Time // when work or cure began; clock.Never if it did not
	End               clock.Time
	Worked            clock.Time // time at work or in cure
	People            int16      // the most at work at once
	Craft, Place      int16      // -1 for none
	Unit              int16
	Waits             []Wait // in the order in which they first came
}

// Wait is how long something waited for one cause.
type Wait struct {
	Cause Cause
	For   clock.Time
}

// Waited is the sum of the waits: End − Asked − Worked.
func (v *Visit) Waited() clock.Time {
	sum := clock.Time(0)
	for i := range v.Waits {
		sum += v.Waits[i].For
	}
	return sum
}

// Visits joins the spans that were kept, cut at the ends of the stretch, in the
// order in which their steps were come to; jobs that came at one instant in the
// order of their numbers.
func (r *Recorder) Visits() []Visit {
	spans := make([]Span, len(r.Spans))
	for i := range r.Spans {
		spans[i] = r.clipped(&r.Spans[i])
	}
	return visits(spans)
}

// visits joins spans. Those of one job follow each other without gap.
func visits(spans []Span) []Visit {
	var out []Visit
	open := map[traveler]int{} // never ranged over
	repeats := map[int]int32{}
	for i := range spans {
		s := &spans[i]
		at := travelerOf(s)
		k, ok := open[at]
		if !ok || !out[k].goesOn(s) || repeats[k] != s.Repeat {
			k = len(out)
			open[at], repeats[k] = k, s.Repeat
			out = append(out, Visit{Job: s.Job, Order: s.Order, Mold: s.Mold, Route: s.Route, Step: s.Step, Part: s.Part,
				Doing: s.Doing, Asked: s.From, Began: clock.Never, Craft: -1, Place: -1, Unit: -1})
		}
		out[k].add(s)
	}
	slices.SortStableFunc(out, func(a, b Visit) int {
		return cmp.Or(cmp.Compare(a.Asked, b.Asked), cmp.Compare(a.Job, b.Job), cmp.Compare(a.Mold, b.Mold))
	})
	return out
}

// traveler is whose spans follow each other: a job, a mold that is with no job,
// or an order that waits for its first mold.
type traveler struct{ job, mold, order int32 }

func travelerOf(s *Span) traveler {
	switch {
	case s.Job >= 0:
		return traveler{s.Job, -1, -1}
	case s.Mold >= 0:
		return traveler{-1, s.Mold, -1}
	}
	return traveler{-1, -1, s.Order}
}

// goesOn tells whether a span belongs to the same step.
func (v *Visit) goesOn(s *Span) bool {
	return v.Step == s.Step && v.Route == s.Route && v.End == s.From && (s.Job >= 0 || v.Doing == s.Doing)
}

func (v *Visit) add(s *Span) {
	v.End = s.To
	if s.Place >= 0 {
		v.Place, v.Unit = s.Place, s.Unit
	}
	if s.Working {
		v.Began = min(v.Began, s.From)
		v.Worked += s.To - s.From
		v.People = max(v.People, s.People)
		if s.Craft >= 0 {
			v.Craft = s.Craft
		}
		return
	}
	v.Waits = addWait(v.Waits, s.Cause, s.To-s.From)
}

// addWait adds to the wait for a cause, or begins one.
func addWait(waits []Wait, c Cause, d clock.Time) []Wait {
	for i := range waits {
		if waits[i].Cause == c {
			waits[i].For += d
			return waits
		}
	}
	return append(waits, Wait{c, d})
}
