package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Limits of the air for wax and gel coat.
type Limits struct {
	DewMargin float64 // K that a mold must be above dew point; common coatings practice: 3
	MostRH    float64 // 0 … 1; 0: no limit
	LeastC    float64 // mold temperature for gel coat, °C
}

// gateShut has a job wait while the air is not fit for its step. Conditions
// are hourly, so it looks again at the next full hour.
func (r *Run) gateShut(j int32, s *Step) bool {
	now := r.clk.Now()
	l := &r.plan.Limits
	reason := record.NoReason
	switch {
	case s.Gate&Dry != 0 && r.air.DewMargin(s.Area, now) < l.DewMargin:
		reason = record.DewPoint
	case s.Gate&Dry != 0 && l.MostRH > 0 && r.air.RH(s.Area, now) > l.MostRH:
		reason = record.TooHumid
	case s.Gate&Warm != 0 && r.air.MoldC(s.Area, now) < l.LeastC:
		reason = record.TooCold
	default:
		return false
	}
	r.shut(j, record.Cause{Reason: reason, Of: None}, (now/clock.Hour+1)*clock.Hour)
	return true
}

// shut takes a job out of its line until an instant, or until it is woken.
func (r *Run) shut(j int32, cause record.Cause, until clock.Time) {
	b := &r.jobs[j]
	if b.cause != cause {
		r.span(b, false)
		b.cause = cause
	}
	r.unline(j)
	b.state = gated
	if until < clock.Never {
		b.event = r.clk.At(until, clock.Change, evGate, j)
	}
}

// reopen puts a job that was shut out back into line, with the time it asked
// at first.
func (r *Run) reopen(j int32) {
	b := &r.jobs[j]
	b.state = waiting
	p := r.firstNeed(b)
	if b.resumed {
		p = r.resumesIn(b)
	}
	r.line(p, j)
	r.reopened = append(r.reopened, j)
	r.touch(p)
}
