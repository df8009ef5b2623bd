package shift

import "moldturn/sim/clock"

// Pattern is when one crew works: its shifts and the days that differ. The zero
// value never works.
type Pattern struct {
	Shifts     []Shift
	Exceptions Exceptions
}

// Attendance gives the same pattern without the time lost to start-up and
// clean-up: when people are there and paid rather than when they can work.
func (p Pattern) Attendance() Pattern {
	q := Pattern{Exceptions: p.Exceptions}
	q.Exceptions.Extra = append([]Extra(nil), p.Exceptions.Extra...)
	q.Shifts = append([]Shift(nil), p.Shifts...)
	for i := range q.Shifts {
		q.Shifts[i].StartUp, q.Shifts[i].CleanUp = 0, 0
	}
	for i := range q.Exceptions.Extra {
		q.Exceptions.Extra[i].StartUp, q.Exceptions.Extra[i].CleanUp = 0, 0
	}
	return q
}

// Shift is worked on each of its weekdays that the Exceptions do not close.
type Shift struct {
	Name string
	Days Weekdays
	Hours
}

// Hours are the clock times of a shift, each counted from midnight.
//
// From is in [0, 24 h), To in [0, 24 h]. To at or before From is on the next
// day: 22:00–06:00 is eight hours, 06:00–06:00 is round the clock.
//
// StartUp and CleanUp are lost at the beginning and the end: warming up, setting
// and calibrating guns, cleaning them. Nothing is worked then. They are lengths
// by the clock; a break inside them makes them no longer.
type Hours struct {
	From, To         clock.Time
	Breaks           []Break
	StartUp, CleanUp clock.Time
}

// Length is the time from start to end by the clock, breaks and lost time
// included; more than zero and at most 24 h.
func (h Hours) Length() clock.Time {
	if h.To <= h.From {
		return h.To - h.From + clock.Day
	}
	return h.To - h.From
}

// Break is time off inside a shift, by clock times from midnight. In a shift
// that passes midnight, times before its start are of the next day.
type Break struct{ From, To clock.Time }

// Exceptions are the days that differ from the week. An extra day is worked
// even if it is a holiday or in a shutdown.
type Exceptions struct {
	Holidays  []Date
	Shutdowns []Shutdown
	Extra     []Extra
}

// Shutdown closes the plant from From to To, both days included. A yearly one
// takes only month and day of both and comes back every year; then To before
// From is over the new year: December 24 to January 2.
type Shutdown struct {
	Name     string
	From, To Date
	Yearly   bool
}

// Extra is a shift on one day beside those of the week, such as a Saturday.
type Extra struct {
	Name string
	Date Date
	Hours
}

// Covers is true if d lies in the shutdown.
func (s Shutdown) Covers(d Date) bool {
	if !s.Yearly {
		return !d.Before(s.From) && !s.To.Before(d)
	}
	from, to, day := s.From.dayMonth(), s.To.dayMonth(), d.dayMonth()
	if from <= to {
		return from <= day && day <= to
	}
	return day >= from || day <= to
}

// Shut is true if d lies in a shutdown.
func (e Exceptions) Shut(d Date) bool {
	for _, s := range e.Shutdowns {
		if s.Covers(d) {
			return true
		}
	}
	return false
}

// Closed is true if no shift of the week starts on d: it is a holiday or in a
// shutdown.
func (e Exceptions) Closed(d Date) bool {
	for _, h := range e.Holidays {
		if h == d {
			return true
		}
	}
	return e.Shut(d)
}

// ShutDays counts the days of the week (Monday to Sunday) of d that lie in a
// shutdown, 0 … 7. Holidays do not count.
func (e Exceptions) ShutDays(d Date) int {
	n, monday := 0, d.Monday()
	for i := range 7 {
		if e.Shut(monday.AddDays(i)) {
			n++
		}
	}
	return n
}
