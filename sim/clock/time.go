// Package clock is the plant's time: whole milliseconds, one queue of events
// in an order that is documented and tested, and the only place that talks to
// the event kernel (github.com/fschuetz04/simgo).
package clock

import "fmt"

// Time is an instant or a length of time in whole milliseconds. Instants count
// from midnight of the scenario's start date; there is no daylight saving.
// Every instant of a run is below 2^53 ms, so it is exact in a float64 too.
type Time int64

// Lengths of time.
const (
	Millisecond Time = 1
	Second           = 1000 * Millisecond
	Minute           = 60 * Second
	Hour             = 60 * Minute
	Day              = 24 * Hour
	Week             = 7 * Day
)

// Never is later than every instant of a run.
const Never Time = 1 << 52

// Hours gives t in hours.
func (t Time) Hours() float64 { return float64(t) / float64(Hour) }

// FromHours rounds h hours to the nearest millisecond. NaN and lengths outside
// ±Never are errors of the caller and give Never.
func FromHours(h float64) Time {
	ms := h * float64(Hour)
	if !(ms > -float64(Never) && ms < float64(Never)) {
		return Never
	}
	if ms < 0 {
		return -Time(-ms + 0.5)
	}
	return Time(ms + 0.5)
}

// String writes t as days and clock time, "12d 06:30:00.000" without the zero
// parts of the seconds; for messages and tests, not for results.
func (t Time) String() string {
	if t >= Never {
		return "never"
	}
	if t < 0 {
		return "-" + (-t).String()
	}
	s := fmt.Sprintf("%dd %02d:%02d", t/Day, t%Day/Hour, t%Hour/Minute)
	if t%Minute != 0 {
		s += fmt.Sprintf(":%02d", t%Minute/Second)
	}
	if t%Second != 0 {
		s += fmt.Sprintf(".%03d", t%Second)
	}
	return s
}
