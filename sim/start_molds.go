package sim

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

// standMolds gives every mold its counters and puts it where it stands. Molds
// with a part, or in care, are put to their work later.
func (r *Run) standMolds(s *Start) {
	listed := make([]*StartMold, len(r.plan.Molds))
	for i := range s.Molds {
		listed[s.Molds[i].Mold] = &s.Molds[i]
	}
	for i := range s.Work {
		if m := s.Work[i].Mold; m != None && listed[m] == nil {
			listed[m] = &StartMold{Mold: m, Stands: MoldWithPart, Turns: Unknown, Since: Unknown, Surface: Unknown, When: Unknown}
		}
	}
	var ready []StartMold
	for i := range r.plan.Molds {
		r.molds = append(r.molds, r.planned(i))
		m := listed[i]
		if m == nil && r.plan.Molds[i].Arrives > r.from {
			r.awaits(i)
			continue
		}
		if r.plan.Molds[i].Arrives > 0 {
			r.parts[r.plan.Molds[i].Part].arrived++
		}
		if m == nil {
			m = &StartMold{Mold: int32(i), Turns: Unknown, Since: Unknown, Surface: Unknown, When: Unknown}
			if r.plan.Molds[i].Reserve {
				m.Stands = MoldInReserve
			}
		}
		if r.standMold(m); m.Stands == MoldReady {
			ready = append(ready, *m)
		}
	}
	slices.SortStableFunc(ready, func(a, b StartMold) int { return cmp.Compare(known(a.When, r.from), known(b.When, r.from)) })
	for i := range ready {
		r.moldReady(ready[i].Mold)
		r.molds[ready[i].Mold].readyAt = known(ready[i].When, r.from)
	}
}

// standMold gives a mold its counters and its place in rotation, in reserve or
// away.
func (r *Run) standMold(s *StartMold) {
	m := &r.molds[s.Mold]
	r.counters(m, s)
	switch s.Stands {
	case MoldInReserve:
		m.state, m.reserve = resting, true
	case MoldAway:
		m.state, m.out = gone, true
		r.newSurface(m, s)
		if s.Back != Unknown && s.Back < r.plan.Length {
			r.clk.At(max(s.Back, r.from), clock.Change, evBack, s.Mold)
		}
	default:
		r.parts[m.part].inRotation++
		m.called = m.reserve
	}
	if s.Stands == MoldPulled || s.Stands == MoldInCare {
		m.coats = 0
	}
}

// counters takes over what is known of a mold. One that outlived its limit is
// one that was resurfaced: it is in use, after all.
func (r *Run) counters(m *mold, s *StartMold) {
	if s.Turns != Unknown {
		m.turns = int32(s.Turns)
		m.strips = m.turns / int32(max(r.plan.Strip.Interval(r.hot), 1))
		if limit := r.plan.Life.Limit; limit > 0 {
			m.renewals = m.turns / int32(limit)
		}
		m.breakIn = 0
		if k := r.plan.BreakIn.Turns(); s.Turns < k && (s.Since == s.Turns || s.Since == Unknown) {
			m.breakIn = int8(k - s.Turns)
		}
	}
	if s.Since != Unknown {
		m.since = int32(s.Since)
		m.stripped = m.since == 0
		m.buildUp = float64(m.since) * r.growth(m.part, 70, 0)
	}
	if s.Surface != Unknown {
		m.surface = s.Surface
	}
	if m.reading = s.Reading; m.reading > 0 && m.reading < r.plan.Strip.Limit {
		m.low = 1
	}
}

// newSurface is that of a mold that is away and comes back new or renewed: like a
// renewed one of the run it is waxed as its break-in asks before its first part.
func (r *Run) newSurface(m *mold, s *StartMold) {
	if s.Renewed {
		m.renewals = 0
		if limit := r.plan.Life.Limit; limit > 0 { // the renewal that is nearest to its turns
			m.renewals = max(1, (m.turns+int32(limit)/2)/int32(limit))
		}
		m.surface, m.buildUp, m.since, m.strips, m.waxed, m.low = r.plan.Life.Surface, 0, 0, 0, 0, 0
		m.breakIn, m.stripped = int8(r.plan.BreakIn.Turns()), true
	}
	if m.breakIn > 0 {
		m.coats, m.coatsDue = 0, int32(r.coatsFor(m))
	}
}

// moldBack is the day on which a mold comes back that was away. A new surface is
// waxed first.
func (r *Run) moldBack(i int32) {
	if m := &r.molds[i]; m.coatsDue > 0 && int(r.waxStep(m.part)) < len(r.plan.Routes[r.plan.Parts[m.part].Care].Steps) {
		r.care(i, r.moldKey(int(i)).At1(luckMold, 0), r.waxStep(m.part))
		return
	}
	r.moldSpan(&r.molds[i])
	r.molds[i].state = inUse
	r.backInRotation(i)
}

// standCare begins the care of molds that are in it, and calls reserve molds for
// those that are away.
func (r *Run) standCare(s *Start) {
	for i := range s.Molds {
		m := &s.Molds[i]
		key := r.moldKey(int(m.Mold))
		switch m.Stands {
		case MoldPulled:
			r.care(m.Mold, key.At1(luckMold, 0), 0)
		case MoldInCare:
			r.inCare(m)
		case MoldAway:
			r.callReserve(r.molds[m.Mold].part, key)
		}
	}
	for p := range r.plan.Parts {
		r.lent(int16(p))
	}
}

// lent sees which molds have lent their place in rotation to one from reserve:
// where more are in use than places, first those in care, then those that are
// ready and wait for it.
func (r *Run) lent(part int16) {
	p := &r.parts[part]
	for i := range r.molds {
		m := &r.molds[i]
		if over := p.inRotation > r.mostInUse(part); over && m.part == part && !m.reserve && !m.out && r.cared(int32(i)) {
			m.out = true
			p.inRotation--
		}
	}
	for i := range r.molds {
		m := &r.molds[i]
		if p.inRotation > r.mostInUse(part) && m.part == part && !m.reserve && m.state == ready && !m.out {
			p.ready = slices.DeleteFunc(p.ready, func(k int32) bool { return k == int32(i) })
			m.out = true
			p.inRotation--
			r.backInRotation(int32(i))
		}
	}
}

// cared tells whether a mold is in care.
func (r *Run) cared(i int32) bool {
	return slices.ContainsFunc(r.jobs, func(b job) bool { return b.state != unused && b.kind == careJob && b.mold == i })
}

// inCare puts a mold to the step of its care that it is at.
func (r *Run) inCare(s *StartMold) {
	m := &r.molds[s.Mold]
	m.state = inUse
	route := r.plan.Parts[m.part].Care
	j := r.newJob(careJob, route, r.moldKey(int(s.Mold)).At1(luckMold, 0))
	b := &r.jobs[j]
	b.mold, b.part, b.step = s.Mold, m.part, s.Step
	steps := r.plan.Routes[route].Steps
	if checked := slices.IndexFunc(steps, func(s Step) bool { return s.Verb == MoldChecked }); int(s.Step) > checked {
		r.carePlan(m, steps[s.Step:])
		if steps[s.Step].When != Always {
			r.force(steps[s.Step].When, j)
		}
		if l := &r.plan.Life; m.due == policy.Full || m.worn || m.repair > l.CallAfter && l.CallAfter > 0 {
			r.outOfRotation(j)
		}
	}
	r.standAt(j, s.Begun, s.When, s.Left)
}

// carePlan decides what a mold whose check is over still gets, of the steps
// ahead.
func (r *Run) carePlan(m *mold, ahead []Step) {
	has := func(v Verb) bool { return slices.ContainsFunc(ahead, func(s Step) bool { return s.Verb == v }) }
	m.due, m.coatsDue = policy.NoStrip, 0
	if m.breakIn == 0 && (has(LightStripped) || has(FullStripped)) {
		m.due = r.plan.Strip.After(r.lookAt(m))
	}
	if m.due == policy.NoStrip && has(Waxed) {
		m.coatsDue = int32(r.coatsFor(m))
	} else if m.due == policy.NoStrip {
		m.coats = 1
	}
}

// force makes the condition of a step hold that a job is known to be at.
func (r *Run) force(c Cond, j int32) {
	p := &r.jobs[j].piece
	switch c {
	case DueLight:
		r.moldOf(j).due, r.moldOf(j).coatsDue = policy.Light, 0
	case DueFull:
		r.moldOf(j).due, r.moldOf(j).coatsDue = policy.Full, 0
	case DueWax, CoatsLeft:
		r.moldOf(j).due = policy.NoStrip
		r.moldOf(j).coatsDue = max(r.moldOf(j).coatsDue, 1)
	case Damaged:
		r.moldOf(j).repair = max(r.plan.Chip.Quantile(r.jobs[j].key.U(luckChipHours)), 0.1)
	case WornOut:
		r.moldOf(j).worn = true
	case Banded:
		if p.banded = true; p.band == None {
			p.band = max(r.orders[r.jobs[j].order].band, 0)
		}
		p.fin.Color = r.plan.Parts[r.jobs[j].part].BandLook
	case StuckPart:
		p.stuck = true
	case Flawed:
		p.made.seen, p.made.mend = true, max(p.made.mend, 1)
	case BelowTarget:
		p.made.seen, p.reading = true, min(p.reading, r.plan.Rework.Target-1)
	case NeedHeat:
		p.made.warm, p.made.hold = true, inTime
	}
}

// waits is the cause of a wait in the line of a pool.
func (r *Run) waits(j, p int32, cause record.Cause) {
	b := &r.jobs[j]
	b.cause = cause
	r.line(p, j)
	r.touch(p)
}
