package shift

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
)

// Compile gives the calendar of p over [0, end) for a scenario that starts at
// midnight of start. The night shift of the day before is in it as far as it
// reaches past midnight; a shift that reaches past end is cut there, so take
// end some days beyond the last instant asked about.
//
// Where two shifts of one pattern overlap, the one that begins work
// first is the running shift until it ends (of two that begin together, the
// first listed); the other begins then, or drops out if nothing of it is left. Crews that work
// side by side are patterns of their own, put together by Union.
//
// The error is of type Problems.
func Compile(p Pattern, start Date, end clock.Time) (*Calendar, error) {
	ps := p.Check()
	if end < 0 || end >= clock.Never {
		ps.add("end", end.String(), "a length of time, 0 or more")
	}
	if ps != nil {
		return nil, ps
	}
	shifts := p.plan(start, end)
	slices.SortStableFunc(shifts, func(a, b placed) int {
		return cmp.Compare(a.pieces[0].From, b.pieces[0].From)
	})
	b := builder{end: end}
	last := -clock.Day
	for _, s := range shifts {
		b.add(s.shift, s.day, s.pieces, max(last, 0))
		last = max(last, s.pieces[len(s.pieces)-1].To)
	}
	return b.calendar(), nil
}

// placed is one shift on one day, in instants of the scenario.
type placed struct {
	shift, day int
	pieces     []Interval
}

// plan lists the shifts of every day from the one before the start.
func (p Pattern) plan(start Date, end clock.Time) []placed {
	var out []placed
	for day := -1; clock.Time(day)*clock.Day < end; day++ {
		date := start.AddDays(day)
		if !p.Exceptions.Closed(date) {
			for i, s := range p.Shifts {
				if s.Days.Has(date.Weekday()) {
					out = append(out, placed{i, day, s.piecesOn(day)})
				}
			}
		}
		for i, x := range p.Exceptions.Extra {
			if x.Date == date {
				out = append(out, placed{-1 - i, day, x.piecesOn(day)})
			}
		}
	}
	return out
}

// piecesOn gives the working time of the shift that starts on day.
func (h Hours) piecesOn(day int) []Interval {
	out := h.pieces()
	for i := range out {
		out[i].From += clock.Time(day) * clock.Day
		out[i].To += clock.Time(day) * clock.Day
	}
	return out
}

// pieces gives the working time of the shift from midnight of its day: what
// start-up, breaks and clean-up leave. Nothing may be left.
func (h Hours) pieces() []Interval {
	var out []Interval
	from, end := h.From+h.StartUp, h.From+h.Length()-h.CleanUp
	for _, b := range h.Breaks {
		off, on := h.place(b)
		if to := min(off, end); to > from {
			out = append(out, Interval{From: from, To: to})
		}
		from = max(from, on)
	}
	if end > from {
		out = append(out, Interval{From: from, To: end})
	}
	return out
}

// place moves the times of b that are before the start of the shift to the next
// day.
func (h Hours) place(b Break) (from, to clock.Time) {
	from, to = b.From, b.To
	if from < h.From {
		from += clock.Day
	}
	if to < h.From || to <= from && to+clock.Day <= h.From+h.Length() {
		to += clock.Day
	}
	return from, to
}
