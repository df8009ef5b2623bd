package shift

import "moldturn/sim/clock"

// RunAt gives the shift that is running at t, in work or in a break; false if
// none is.
func (c *Calendar) RunAt(t clock.Time) (Run, bool) {
	i := c.at(t)
	if i == len(c.intervals) {
		return Run{}, false
	}
	r := c.runs[c.intervals[i].Run]
	if r.From > t {
		return Run{}, false
	}
	return r, true
}

// ShiftEnd gives the last instant of work of the shift running at t; a break
// does not end it. False if no shift is running. For Always it is clock.Never.
func (c *Calendar) ShiftEnd(t clock.Time) (clock.Time, bool) {
	r, ok := c.RunAt(t)
	return r.To, ok
}

// ShopDay gives the number of the day that work at t belongs to: the day on
// which the shift running at t started, otherwise the day of t itself. Of
// several crews in a Union it is the earliest.
func (c *Calendar) ShopDay(t clock.Time) int {
	day := dayOf(t)
	for _, crew := range c.crews {
		day = min(day, crew.ShopDay(t))
	}
	if c.crews == nil && c.lastEnd != nil {
		if r, ok := c.RunAt(t); ok {
			return r.Day
		}
	}
	return day
}

// DayEnd gives the end of the last shift of the shop day of t, which may be
// before t. False if no shift starts on that day. For Always it is clock.Never.
func (c *Calendar) DayEnd(t clock.Time) (clock.Time, bool) {
	if c.lastEnd == nil {
		return clock.Never, c.full
	}
	day := c.ShopDay(t) + 1
	if day < 0 || day >= len(c.lastEnd) || c.lastEnd[day] == none {
		return 0, false
	}
	return c.lastEnd[day], true
}

// LongestShift gives the most working time that one shift has: what takes
// longer can never be done without a pause for the end of a shift.
func (c *Calendar) LongestShift() clock.Time { return c.longest }

// NextFit gives the earliest working instant at or after t from which work is
// done before the shift ends; breaks pause it. clock.Never if no shift of the
// rest of the horizon is long enough.
func (c *Calendar) NextFit(t, work clock.Time) clock.Time {
	i := c.at(t)
	if i == len(c.intervals) || work > c.longest {
		return clock.Never
	}
	run := int(c.intervals[i].Run)
	on := c.NextOn(t)
	if c.Worked(on, c.runs[run].To) >= work {
		return on
	}
	for run++; run < len(c.runs); run++ {
		if c.runs[run].Work >= work {
			return c.runs[run].From
		}
	}
	return clock.Never
}
