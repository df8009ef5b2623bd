package hand

import (
	"math"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// rhythm is how a craft works through a mean week.
type rhythm struct {
	shifts float64 // a week
	hours  float64 // worked in one of them
	slot   float64 // clock hours from one to the next on a day
	week   float64 // hours a week in which somebody is at work
}

// aroundTheClock is the rhythm where there are no shifts: three a day of eight
// hours, every day.
func aroundTheClock() rhythm { return rhythm{shifts: 21, hours: 8, slot: 8, week: 168} }

// rhythm is that of a craft, or of the clock for None.
func (h *paper) rhythm(craft int16) rhythm {
	if craft == sim.None {
		return aroundTheClock()
	}
	runs, worked := 0, clock.Time(0)
	days := map[int]bool{}
	var all []*shift.Calendar
	for _, c := range h.plan.Crafts[craft].Crews {
		if c.People == 0 {
			continue
		}
		if c.Hours.RoundTheClock() {
			return aroundTheClock()
		}
		all = append(all, c.Hours)
		for _, r := range c.Hours.Runs() {
			if r.From >= h.frame.From && r.From < h.frame.To {
				runs++
				worked += r.Work
				days[r.Day] = true
			}
		}
	}
	if runs == 0 {
		return rhythm{shifts: 0, hours: 1, slot: 24}
	}
	return rhythm{
		shifts: float64(runs) / h.weeks, hours: worked.Hours() / float64(runs),
		slot: 24 * float64(len(days)) / float64(runs),
		week: shift.Union(all...).Worked(h.frame.From, h.frame.To).Hours() / h.weeks,
	}
}

// round is whole shifts for work and for hold; a hundredth of a shift over does
// not count.
func (r rhythm) round(work, hold float64) (workShifts, holdShifts int) {
	return up(work / r.hours), up(hold / r.slot)
}

func up(x float64) int { return int(math.Ceil(x - 0.01)) }
