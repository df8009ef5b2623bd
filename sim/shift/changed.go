package shift

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
)

// Changed is c without the shifts of the days off, and with those of the extra
// days: on each of these the shifts of the nearest working day before it are
// worked, or of the first after it. Days count from the start date. An extra day
// that is worked anyway stays as it is; one day in both lists is off. A calendar
// that is Always on stays on. It is for the calendar of one crew: a Union is made
// again of changed crews.
func (c *Calendar) Changed(off, extra []int) *Calendar {
	if c.end >= clock.Never || len(c.runs) == 0 {
		return c
	}
	all := c.placed()
	var kept []placed
	for _, s := range all {
		if !slices.Contains(off, s.day) {
			kept = append(kept, s)
		}
	}
	for i, day := range extra {
		if slices.Contains(extra[:i], day) || slices.Contains(off, day) || slices.ContainsFunc(all, func(s placed) bool { return s.day == day }) {
			continue
		}
		kept = append(kept, like(all, day)...)
	}
	slices.SortStableFunc(kept, func(a, b placed) int { return cmp.Compare(a.pieces[0].From, b.pieces[0].From) })
	b := builder{end: c.end}
	last := clock.Time(0)
	for _, s := range kept {
		b.add(s.shift, s.day, s.pieces, last)
		last = max(last, s.pieces[len(s.pieces)-1].To)
	}
	return b.calendar()
}

// placed lists the shifts of a calendar with their working time.
func (c *Calendar) placed() []placed {
	out := make([]placed, len(c.runs))
	for i, r := range c.runs {
		out[i].shift, out[i].day = r.Shift, r.Day
	}
	for _, iv := range c.intervals {
		out[iv.Run].pieces = append(out[iv.Run].pieces, iv)
	}
	return out
}

// like is the shifts of the working day nearest to a day, moved to it.
func like(all []placed, day int) []placed {
	model := all[0].day
	for _, s := range all {
		if s.day < day {
			model = s.day
		}
	}
	var out []placed
	for _, s := range all {
		if s.day != model {
			continue
		}
		moved := placed{s.shift, day, slices.Clone(s.pieces)}
		for i := range moved.pieces {
			by := clock.Time(day-model) * clock.Day
			moved.pieces[i].From += by
			moved.pieces[i].To += by
		}
		out = append(out, moved)
	}
	return out
}
