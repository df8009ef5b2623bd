package board

import (
	"fmt"
	"time"

	"moldturn/sim/ahead"
	"moldturn/sim/clock"
)

// Chance is a share of futures as people say it. Only what happens in all of
// them is "10 in 10".
func Chance(p float64) string {
	switch n := int(10*p + 0.5); {
	case p >= 1:
		return "10 in 10"
	case n >= 10:
		return ">9 in 10"
	case n < 1:
		return "<1 in 10"
	default:
		return fmt.Sprintf("%d in 10", n)
	}
}

// Day is "Tue 11 May".
func (v *View) Day(t clock.Time) string {
	d := v.Date(t)
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Format("Mon 2 Jan")
}

// LongDay is "Tuesday 11 May 2027".
func (v *View) LongDay(t clock.Time) string {
	d := v.Date(t)
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Format("Monday 2 January 2006")
}

// hour is "06:30", to five minutes: the futures know no better.
func hour(t clock.Time) string {
	const step = 5 * clock.Minute
	t = (t + step/2) / step * step
	minute := int(t % clock.Day / clock.Minute)
	return fmt.Sprintf("%02d:%02d", minute/60, minute%60)
}

// at is an hour of a day, with the weekday where it is another day.
func (v *View) at(t, day clock.Time) string {
	if t >= day && t < day+clock.Day {
		return hour(t)
	}
	return v.Day(t)[:3] + " " + hour(t)
}

// Ready is when work could begin: "now", or its middle with what holds 8 times
// in 10 behind.
func (v *View) Ready(w ahead.When, day clock.Time) string {
	g := w.Given()
	low, mid, high := g.Surely(0.1), g.Surely(0.5), g.Surely(0.9)
	switch {
	case high <= v.Setup.Start.At:
		return "now"
	case high-low < 10*clock.Minute:
		return v.at(mid, day)
	case mid-low < clock.Day && high-mid < clock.Day:
		return fmt.Sprintf("%s (%s – %s)", v.at(mid, day), v.at(low, mid-mid%clock.Day), v.at(high, mid-mid%clock.Day))
	}
	return fmt.Sprintf("%s (%s – %s)", v.at(mid, day), v.short(low), v.short(high))
}

// short is a day in few letters.
func (v *View) short(t clock.Time) string {
	if t == clock.Never {
		return "later"
	}
	return v.Day(t)
}

// By is the day by which it is done 9 times in 10.
func (v *View) By(w ahead.When) string {
	t := w.Surely(0.9)
	if t == clock.Never || t >= v.Setup.Morning()+clock.Time(len(v.Days))*clock.Day {
		return "later"
	}
	return v.Day(t - 1)
}

// hours is a length of time: "3 h", "0.5 h".
func hours(t clock.Time) string {
	h := t.Hours()
	if h < 9.95 && h != float64(int(h)) {
		return fmt.Sprintf("%.1f h", h)
	}
	return fmt.Sprintf("%.0f h", h)
}
