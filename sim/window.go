package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// windowStep is how far apart the instants are that the look-ahead tries.
const windowStep = 30 * clock.Minute

// windowShut keeps a job from spraying when the skin coat could not follow
// within the gel window: no laminators would be at work between the end of the
// gel wait and the end of the window, or too many sprayed parts wait already.
func (r *Run) windowShut(j int32, s *Step) bool {
	w := &r.plan.Window
	if w.Craft == None || w.Limit <= 0 {
		return false
	}
	now := r.clk.Now()
	if w.Slots > 0 && r.sprayed >= w.Slots {
		r.shut(j, record.Cause{Reason: record.GelWindow, Of: None}, clock.Never)
		r.fullWindow = append(r.fullWindow, j)
		return true
	}
	if r.skinFollows(j, now) {
		return false
	}
	t := now + windowStep
	for last := now + clock.Week; t < last && !r.skinFollows(j, t); {
		t += windowStep
	}
	r.shut(j, record.Cause{Reason: record.GelWindow, Of: None}, t)
	return true
}

// skinFollows says whether a part sprayed from t on would find laminators
// within its gel window, with room for the skin coat in their day.
func (r *Run) skinFollows(j int32, t clock.Time) bool {
	b := &r.jobs[j]
	steps := r.plan.Routes[b.route].Steps
	hours := r.hours[r.plan.Window.Craft]
	sprayed := t + clock.FromHours(steps[b.step].Mean)
	ready := sprayed
	for i := int(b.step) + 1; i < len(steps); i++ {
		s := &steps[i]
		if s.When != Always && !r.holds(s.When, j) {
			continue
		}
		switch {
		case s.Verb == SkinBegun || s.Craft == r.plan.Window.Craft:
			if hours.RoundTheClock() {
				return true
			}
			at := hours.NextOn(ready)
			work := clock.FromHours(s.Mean)
			end, ok := hours.DayEnd(at)
			if s.End == Finish && ok {
				end += r.plan.Crafts[s.Craft].Late
			}
			for ok && s.End != Pause && at+work > end {
				if at = hours.NextOn(end); at >= clock.Never {
					break
				}
				end, ok = hours.DayEnd(at)
			}
			return at <= sprayed+clock.FromHours(r.plan.Window.Limit)
		case s.Pace == ByCure:
			ready = r.air.cure[s.Area].Ready(ready, s.Mean)
		default:
			ready += clock.FromHours(s.Mean)
		}
	}
	return true
}

// opens and closes count the parts from the start of their spraying to the end
// of their skin coat, or to whatever else ends the need for one.
func (r *Run) opens(b *job) {
	if !b.piece.opened {
		b.piece.opened = true
		r.sprayed++
	}
}

func (r *Run) closes(b *job) {
	if !b.piece.opened {
		return
	}
	b.piece.opened = false
	r.sprayed--
	for _, j := range r.fullWindow {
		r.reopen(j)
	}
	r.fullWindow = r.fullWindow[:0]
}

// backToWash sends a part whose gel coat is too old back to the step that
// washes it out; false when its route has none.
func (r *Run) backToWash(j int32) bool {
	b := &r.jobs[j]
	for i := int(b.step) - 1; i >= 0; i-- {
		if r.plan.Routes[b.route].Steps[i].Verb != WashedOut {
			continue
		}
		r.span(b, false)
		r.unline(j)
		b.step = int16(i)
		b.repeat++
		r.advance(j)
		return true
	}
	return false
}
