package shift

import (
	"fmt"

	"moldturn/sim/clock"
)

// Custom makes a calendar of the intervals given, over [0, end). From, To and
// Ends are taken, Run is not: intervals up to the next EndOfShift are one
// shift, which belongs to the day it starts on. They must be in order, not
// overlap, hold time and lie in [0, end).
func Custom(intervals []Interval, end clock.Time) (*Calendar, error) {
	if end < 0 || end >= clock.Never {
		return nil, Problem{"end", end.String(), "a length of time, 0 or more"}
	}
	if err := checkIntervals(intervals, end); err != nil {
		return nil, err
	}
	return fromIntervals(intervals, end), nil
}

// Repeat makes a calendar of one cycle, the intervals in [0, period), over and
// over until end: 3.5 h of work and half an hour of break, or 12 h on and 12 h
// off. Rules and meaning are those of Custom; the last cycle is cut at end.
func Repeat(cycle []Interval, period, end clock.Time) (*Calendar, error) {
	if end < 0 || end >= clock.Never {
		return nil, Problem{"end", end.String(), "a length of time, 0 or more"}
	}
	if period <= 0 {
		return nil, Problem{"period", period.String(), "more than 0"}
	}
	if err := checkIntervals(cycle, period); err != nil {
		return nil, err
	}
	var all []Interval
	for t := clock.Time(0); t < end; t += period {
		for _, iv := range cycle {
			iv.From, iv.To = iv.From+t, min(iv.To+t, end)
			if iv.From < iv.To {
				all = append(all, iv)
			}
		}
	}
	return fromIntervals(all, end), nil
}

func checkIntervals(intervals []Interval, end clock.Time) error {
	last := clock.Time(0)
	for i, iv := range intervals {
		if iv.From < last || iv.To <= iv.From || iv.To > end {
			return Problem{fmt.Sprintf("intervals[%d]", i),
				fmt.Sprintf("%v to %v", iv.From, iv.To),
				fmt.Sprintf("some time between %v and %v", last, end)}
		}
		last = iv.To
	}
	return nil
}

func fromIntervals(intervals []Interval, end clock.Time) *Calendar {
	b := builder{end: end}
	from := 0
	for i, iv := range intervals {
		if iv.Ends == EndOfShift || i == len(intervals)-1 {
			b.add(0, dayOf(intervals[from].From), intervals[from:i+1], 0)
			from = i + 1
		}
	}
	return b.calendar()
}
