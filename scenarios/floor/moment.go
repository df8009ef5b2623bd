package floor

import (
	"cmp"
	"fmt"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Moment is a date of the shop's calendar with or without a time of day. The
// zero value is no moment.
type Moment struct {
	Date  shift.Date
	Clock clock.Time // since midnight, below clock.Day
	Timed bool       // a time of day was written
}

// IsZero is true for no moment.
func (m Moment) IsZero() bool { return m.Date.IsZero() }

// Instant is m on the clock of a run that starts on start; a date without a
// time is its midnight.
func (m Moment) Instant(start shift.Date) clock.Time {
	return shift.Midnight(start, m.Date) + m.Clock
}

// Compare orders moments; a date without a time comes at its midnight, and no
// moment before all others.
func (m Moment) Compare(o Moment) int {
	switch {
	case m.IsZero() || o.IsZero():
		return cmp.Compare(m.Date.Year, o.Date.Year)
	case m.Date != o.Date:
		return cmp.Compare(m.Date.DaysSince(o.Date), 0)
	}
	return cmp.Compare(m.Clock, o.Clock)
}

// After tells whether m is surely later than o: a date without a time could be
// any time of its day.
func (m Moment) After(o Moment) bool {
	if m.IsZero() || o.IsZero() {
		return false
	}
	if m.Date == o.Date && !(m.Timed && o.Timed) {
		return false
	}
	return m.Compare(o) > 0
}

// String is "2027-03-08" or "2027-03-08 06:30"; "" for no moment.
func (m Moment) String() string {
	switch {
	case m.IsZero():
		return ""
	case !m.Timed:
		return m.Date.String()
	case m.Clock%clock.Minute != 0:
		return fmt.Sprintf("%s %02d:%02d:%02d", m.Date, m.Clock/clock.Hour, m.Clock%clock.Hour/clock.Minute, m.Clock%clock.Minute/clock.Second)
	}
	return fmt.Sprintf("%s %02d:%02d", m.Date, m.Clock/clock.Hour, m.Clock%clock.Hour/clock.Minute)
}
