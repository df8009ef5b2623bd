package shift

import "moldturn/sim/clock"

// End says what comes after a working interval.
type End uint8

// What comes after a working interval.
const (
	EndOfShift   End = iota // the people go home
	StartOfBreak            // the same people come back
)

// Interval is working time [From, To) without a pause. Run is the number of its
// shift in Calendar.Runs.
type Interval struct {
	From, To clock.Time
	Ends     End
	Run      int32
}

// Run is one shift on one day. [From, To) reaches from the first working
// instant to the last, breaks included, start-up and clean-up not.
type Run struct {
	// Shift is the index in Pattern.Shifts, or -1-i for Exceptions.Extra[i].
	// Calendars not made by Compile have 0.
	Shift int

	// Day is the number of the day it belongs to; day 0 is the start date. A
	// night shift that was running at instant 0 has -1.
	Day int

	From, To clock.Time
	Work     clock.Time // working time in it
}

// Calendar is when a crew, or a craft, works. Make it with Compile, Always,
// Union, Custom or Repeat; the zero value is never on. Methods do not change
// it. All arithmetic is exact, and a lookup costs about the same at any instant
// of any horizon.
type Calendar struct {
	intervals []Interval
	before    []clock.Time // working time before each interval, and before the end
	first     []int32      // by day: the first interval that ends after its midnight
	runs      []Run
	lastEnd   []clock.Time // by day from -1: the end of its last shift, or none
	total     clock.Time   // working time in all
	longest   clock.Time   // the most working time in one run
	end       clock.Time
	full      bool        // on at every instant of [0, end)
	crews     []*Calendar // of a Union
}

// none marks a day without a shift.
const none clock.Time = -1 << 62

// Always is on from 0 on, without end and without shifts.
func Always() *Calendar {
	return &Calendar{
		intervals: []Interval{{From: 0, To: clock.Never}},
		before:    []clock.Time{0, clock.Never},
		runs:      []Run{{From: 0, To: clock.Never, Work: clock.Never}},
		total:     clock.Never,
		longest:   clock.Never,
		end:       clock.Never,
		full:      true,
	}
}

// End is the end of the horizon; clock.Never for Always.
func (c *Calendar) End() clock.Time { return c.end }

// Intervals lists the working intervals in order. The caller must not change
// them.
func (c *Calendar) Intervals() []Interval { return c.intervals }

// Runs lists the shifts in order, one for each day they are worked. The caller
// must not change them.
func (c *Calendar) Runs() []Run { return c.runs }

// RoundTheClock is true if c is on at every instant of its horizon.
func (c *Calendar) RoundTheClock() bool { return c.full }

// On is true if t is working time.
func (c *Calendar) On(t clock.Time) bool {
	if c.full {
		return t >= 0 && t < c.end
	}
	i := c.at(t)
	return i < len(c.intervals) && c.intervals[i].From <= t
}

// IntervalAt gives the working interval at t; false if t is off.
func (c *Calendar) IntervalAt(t clock.Time) (Interval, bool) {
	i := c.at(t)
	if i == len(c.intervals) || c.intervals[i].From > t {
		return Interval{}, false
	}
	return c.intervals[i], true
}

// NextChange gives the first start or end of a working interval after t. Where
// one shift follows another at once, that instant counts. clock.Never if there
// is none.
func (c *Calendar) NextChange(t clock.Time) clock.Time {
	i := c.at(t)
	switch {
	case i == len(c.intervals):
		return clock.Never
	case c.intervals[i].From > t:
		return c.intervals[i].From
	}
	return c.intervals[i].To
}

// NextOn gives the earliest working instant at or after t, or clock.Never.
func (c *Calendar) NextOn(t clock.Time) clock.Time {
	i := c.at(t)
	if i == len(c.intervals) {
		return clock.Never
	}
	return max(t, c.intervals[i].From)
}
