package sim

import (
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// begin starts, or takes up again, the step of a job with the people it got.
func (r *Run) begin(j int32, n, lender, lent int16) {
	b := &r.jobs[j]
	s := r.step(b)
	r.span(b, false)
	r.unline(j)
	if !b.resumed {
		for _, p := range s.Swap {
			r.release(b, p)
		}
		for _, p := range s.Take {
			if !b.holds(p) {
				r.occupy(j, p, s.Spray)
			}
		}
	}
	for _, p := range s.Use {
		r.take(r.place(p), 1)
	}
	if s.Craft != None {
		b.people, b.lender, b.lent = n, lender, lent
		r.take(int32(s.Craft), int32(n))
		r.enlist(s.Craft, j)
		if lent > 0 {
			r.take(int32(lender), int32(lent))
		}
	}
	if s.Pace != Labor {
		r.startTimer(j)
		return
	}
	if !b.resumed {
		b.begun = r.clk.Now()
		b.left = r.workOf(j)
		b.full = b.left
		if s.Opens {
			r.opens(b)
		}
		if s.Doing == record.Spraying {
			b.piece.sprayBegan = r.clk.Now()
		}
	}
	b.resumed = false
	b.state = working
	b.pace = r.slowness(s, n+lent)
	r.schedule(j)
	if r.watched {
		r.unitsWork(b, true)
	}
}

// schedule sets the end of the work that is left.
func (r *Run) schedule(j int32) {
	b := &r.jobs[j]
	length := b.left
	if b.pace != 1 {
		length = clock.Time(math.Round(float64(b.left) * b.pace))
	}
	b.ends = r.clk.Now() + length
	b.event = r.clk.At(b.ends, clock.Finish, evDone, j)
}

// slowness is clock time per unit of work with fewer people than wanted, and
// in the heat.
func (r *Run) slowness(s *Step, people int16) float64 {
	if r.steady && people == s.Want {
		return 1
	}
	f := 1.0
	if people != s.Want && s.Craft != None && people > 0 {
		f = math.Pow(float64(s.Want)/float64(people), s.Slow)
	}
	if s.Craft != None {
		f /= r.crewSpeed(s.Craft)
		if c := &r.plan.Crafts[s.Craft]; c.HotSlow > 0 {
			f /= 1 - c.HotSlow*heatShare(r.air.HeatIndexF(c.Area, r.clk.Now()))
		}
	}
	return f
}

// heatShare is how hot it is for work: 0 up to 80 °F heat index, 1 at 109 °F,
// at most 1.4.
func heatShare(heatF float64) float64 { return min(max((heatF-80)/29, 0), 1.4) }

// workOf draws how long the present step of a job takes.
func (r *Run) workOf(j int32) clock.Time {
	b := &r.jobs[j]
	s := r.step(b)
	hours := b.time(s)
	if r.learning {
		hours *= r.learned(b, s)
	}
	if s.Scale != NoScale {
		hours *= scales[s.Scale].of(r, b)
	}
	if s.Add != NoExtra {
		hours += extras[s.Add].of(r, j)
	}
	length := clock.FromHours(hours)
	if s.Spray != NoSpray {
		length += r.flush(b, s.Spray)
	}
	return length
}

// meanHours is how long the present step should take with the people wanted.
func (r *Run) meanHours(b *job, s *Step) float64 {
	if b.resumed {
		return b.left.Hours()
	}
	if s.Scale != NoScale {
		return s.Mean * scales[s.Scale].of(r, b)
	}
	return s.Mean * r.learned(b, s)
}

// done ends the work, or the wait, of a job.
func (r *Run) done(j int32) {
	b := &r.jobs[j]
	r.span(b, true)
	r.putDown(j)
	r.endStep(j)
}

// putDown gives back what a step only needs while it runs.
func (r *Run) putDown(j int32) {
	b := &r.jobs[j]
	s := r.step(b)
	if b.state == working && r.watched {
		r.unitsWork(b, false)
	}
	if b.over != 0 {
		r.clk.Cancel(b.over)
		b.over = 0
	}
	for _, p := range s.Use {
		r.give(r.place(p), 1)
	}
	if s.Craft != None {
		r.delist(s.Craft, j)
		r.give(int32(s.Craft), int32(b.people))
		if b.lent > 0 {
			r.give(int32(b.lender), int32(b.lent))
		}
		b.people, b.lender, b.lent = 0, None, 0
	}
}

// endStep does what the end of a step means and goes on.
func (r *Run) endStep(j int32) {
	if r.leaveStep(j) {
		r.last = true
		r.advance(j)
		r.last = false
	}
}

// leaveStep does what the end of a step means and moves the job on to the
// next; false when the job is no more.
func (r *Run) leaveStep(j int32) bool {
	b := &r.jobs[j]
	s := r.step(b)
	for _, p := range s.Free {
		r.release(b, p)
	}
	if s.Verb != NoVerb && !r.verbs[s.Verb].do(r, j) {
		return false
	}
	b = &r.jobs[j]
	if s.Loop && r.holds(s.Again, j) {
		b.step = s.Back
		b.repeat++
	} else {
		b.step++
	}
	return true
}

// advance takes a job to the next step that applies.
func (r *Run) advance(j int32) {
	b := &r.jobs[j]
	steps := r.steps[b.route]
	for int(b.step) < len(steps) {
		s := &steps[b.step]
		if s.When != Always && !r.holds(s.When, j) {
			b.step++
			continue
		}
		if s.Craft == None && len(s.Take) == 0 && len(s.Use) == 0 && s.Gate == 0 && !s.Opens {
			b.since = r.clk.Now()
			b.cause = record.Cause{Of: None}
			for _, p := range s.Swap {
				r.release(b, p)
			}
			if s.Longest == 0 && s.Pace != ByPolicy && s.Add == NoExtra && !s.Loop {
				if !r.leaveStep(j) {
					return
				}
				b = &r.jobs[j]
				continue
			}
			if s.Pace == Labor {
				r.begin(j, 0, None, 0)
			} else {
				r.startTimer(j)
			}
			return
		}
		r.ask(j)
		return
	}
	r.routeEnd(j)
}

// startTimer begins a step in which only time passes.
func (r *Run) startTimer(j int32) {
	b := &r.jobs[j]
	s := r.step(b)
	now := r.clk.Now()
	b.state = timed
	hours := 0.0
	if s.Pace != ByPolicy {
		hours = b.time(s)
	}
	switch s.Pace {
	case ByCure:
		b.ends = r.air.cure[s.Area].Ready(now, hours)
	case ByPolicy:
		b.ends = r.holdEnds(b, s, now)
	default:
		b.ends = now + clock.FromHours(hours)
	}
	b.event = r.clk.At(b.ends, clock.Finish, evDone, j)
}

// pause stops the work of a job: it keeps its place, frees its people, and
// goes before new work.
func (r *Run) pause(j int32, cause record.Cause) {
	b := &r.jobs[j]
	r.clk.Cancel(b.event)
	worked := r.clk.Now() - b.since
	if b.pace != 1 {
		worked = clock.Time(math.Round(float64(worked) / b.pace))
	}
	b.left = max(b.left-worked, 0)
	r.span(b, true)
	r.putDown(j)
	b.state, b.resumed, b.cause = paused, true, cause
	if cause.Reason == record.NoCrew {
		r.line(int32(cause.Of), j)
		r.touch(int32(cause.Of))
	}
}
