package shift

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
)

// Union is on whenever one of the crews is: the calendar of a craft with
// several crews. Work that one crew hands to the next goes on, so an interval
// ends only where no crew works, and a shift of the union ends where none is in
// a shift at all. DayEnd is the last shift end of any crew on that day. Its
// Runs are such stretches, each of the earliest day and with Shift 0; ask the
// crews' own calendars about their shifts. The horizon is the longest.
//
// Without crews it is never on; one crew that is Always on makes it Always.
func Union(crews ...*Calendar) *Calendar {
	var b builder
	var runs []Run
	var work []Interval
	for _, c := range crews {
		if c.end >= clock.Never {
			return c
		}
		b.end = max(b.end, c.end)
		runs = append(runs, c.runs...)
		work = append(work, c.intervals...)
	}
	runs, work = mergeRuns(runs), mergeIntervals(work)
	for _, r := range runs {
		n := 0
		for n < len(work) && work[n].To <= r.To {
			n++
		}
		b.add(0, r.Day, work[:n], 0)
		work = work[n:]
	}
	b.lastEnd = nil
	for _, c := range crews {
		for i, t := range c.lastEnd {
			b.endOfDay(i-1, t)
		}
	}
	out := b.calendar()
	out.crews = slices.Clone(crews)
	return out
}

// mergeRuns joins shifts that overlap or touch.
func mergeRuns(runs []Run) []Run {
	slices.SortFunc(runs, func(a, b Run) int { return cmp.Compare(a.From, b.From) })
	var out []Run
	for _, r := range runs {
		if n := len(out); n > 0 && r.From <= out[n-1].To {
			out[n-1].To = max(out[n-1].To, r.To)
			out[n-1].Day = min(out[n-1].Day, r.Day)
			continue
		}
		out = append(out, r)
	}
	return out
}

// mergeIntervals joins intervals that overlap or touch.
func mergeIntervals(in []Interval) []Interval {
	slices.SortFunc(in, func(a, b Interval) int { return cmp.Compare(a.From, b.From) })
	var out []Interval
	for _, iv := range in {
		if n := len(out); n > 0 && iv.From <= out[n-1].To {
			out[n-1].To = max(out[n-1].To, iv.To)
			continue
		}
		out = append(out, iv)
	}
	return out
}
