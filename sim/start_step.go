package sim

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/policy"
)

// standAt puts a job to the step it is at: waiting for it, or in the middle of
// it. It takes the places that it must have by then, as far as there are free
// ones: more may stand in a real place than the plan has room for.
func (r *Run) standAt(j int32, begun, since clock.Time, left float64) {
	b := &r.jobs[j]
	for _, p := range r.placesBy(b, begun != Unknown) {
		if q := &r.pools[r.place(p)]; q.endless || q.free > 0 {
			r.occupy(j, p, NoSpray)
		}
	}
	if int(b.step) == len(r.steps[b.route]) {
		r.routeEnd(j)
		return
	}
	if begun == Unknown {
		r.advance(j)
		r.askedAt(j, since)
		return
	}
	b.begun = begun
	if s := r.step(b); s.Pace == Labor {
		r.standPaused(j, s, left)
	} else {
		r.standTimed(j, s, left)
	}
}

// askedAt gives a job that waits the place in its line that its wait before the
// start earns it.
func (r *Run) askedAt(j int32, since clock.Time) {
	b := &r.jobs[j]
	if p := b.queue; since != Unknown && b.state == waiting && p != None {
		r.unline(j)
		b.asked = min(since, b.asked)
		r.line(p, j)
		r.touch(p)
	}
}

// placesBy lists the places a job has at its step.
func (r *Run) placesBy(b *job, begun bool) []int16 {
	var has []int16
	drop := func(some []int16) {
		has = slices.DeleteFunc(has, func(p int16) bool { return slices.Contains(some, p) })
	}
	for k, s := range r.steps[b.route] {
		if k > int(b.step) || k == int(b.step) && !begun {
			break
		}
		if k < int(b.step) && s.When != Always && !(s.When == Banded && b.piece.banded) {
			continue
		}
		drop(s.Swap)
		drop(s.Take)
		has = append(has, s.Take...)
		if k < int(b.step) {
			drop(s.Free)
		}
	}
	return has
}

// standPaused has begun work wait for its people, before all new work.
func (r *Run) standPaused(j int32, s *Step, left float64) {
	b := &r.jobs[j]
	if s.Opens {
		r.opens(b)
	}
	if s.Spray != NoSpray {
		r.loadGun(b, s.Spray)
	}
	hours := max(r.restOf(j, s, left), 0)
	b.left = clock.FromHours(hours)
	b.full = max(b.left, clock.FromHours(hours+r.workedSince(s, b.begun)))
	b.state, b.resumed, b.asked = paused, true, b.begun
	b.urgent = s.Urgent
	if b.order != None {
		b.urgent += r.orders[b.order].urgent
	}
	p := r.resumesIn(b)
	r.waits(j, p, r.causeIn(p))
}

// someColor is in a gun set of which nobody knows what it sprayed last: it is
// flushed for any color.
const someColor = -2

// standGuns has the gun sets hold what they sprayed last, whatever it was; those
// kept for one color hold it.
func (r *Run) standGuns() {
	for p := range r.plan.Places {
		units := r.pools[r.place(int16(p))].units
		for u := range units {
			for g := range units[u].guns {
				if units[u].guns[g].color == None {
					units[u].guns[g].color = someColor
				}
			}
		}
	}
}

// loadGun puts the color of a piece that is being sprayed into the gun set.
func (r *Run) loadGun(b *job, spray Spray) {
	p, u := r.boothOf(b)
	if p == None || u == None || len(r.plan.Places[p].Guns) == 0 {
		return
	}
	color := b.piece.color
	if spray == SprayBand {
		color = b.piece.band
	}
	if g := r.gunFor(p, u, color, spray); g != None {
		unit := &r.pools[r.place(p)].units[u]
		unit.gun = g
		unit.guns[g].color, unit.guns[g].used = color, b.begun
	}
}

// workedSince is the hours in which somebody of a step's craft was at work since
// it was begun.
func (r *Run) workedSince(s *Step, begun clock.Time) float64 {
	if s.Craft == None {
		return (r.from - begun).Hours()
	}
	return r.hours[s.Craft].Worked(begun, r.from).Hours()
}

// restOf is the hours of work that a begun step still takes: as somebody said,
// else what is left of a length drawn among those not over by now.
func (r *Run) restOf(j int32, s *Step, left float64) float64 {
	if left != Unknown {
		return left
	}
	b := &r.jobs[j]
	worked := r.workedSince(s, b.begun)
	if s.Scale != NoScale {
		worked /= scales[s.Scale].of(r, b)
	}
	if s.Add != NoExtra {
		total := s.Time.Quantile(b.luck(s)) + extras[s.Add].of(r, j)
		return max(total-worked, 0.1*total)
	}
	return residual(s, worked/r.learned(b, s), b.luck(s)) * r.learned(b, s)
}

// residual is what is left of a time of which some has passed: the u-quantile of
// the law of a step, given that it is longer than what has passed, less that.
// What has passed beyond all bounds is nearly over.
func residual(s *Step, passed, u float64) float64 {
	low, high := 0.0, 1.0
	for range 40 { // chance that the time is at most what has passed
		if mid := (low + high) / 2; s.Time.Quantile(mid) <= passed {
			low = mid
		} else {
			high = mid
		}
	}
	if low > 1-1e-6 {
		return 0.05 * s.Mean
	}
	return max(s.Time.Quantile(low+(1-low)*u)-passed, 0)
}

// standTimed has a wait go on that was begun before.
func (r *Run) standTimed(j int32, s *Step, left float64) {
	b := &r.jobs[j]
	b.state = timed
	for _, p := range s.Use {
		r.take(r.place(p), 1)
	}
	if s.Craft != None {
		r.enlist(s.Craft, j)
	}
	switch {
	case s.Pace == ByPolicy:
		if left != Unknown {
			b.piece.made.hold = inTime
			b.ends = r.from + clock.FromHours(left)
		} else {
			b.ends = r.holdEnds(b, s, r.from)
		}
	case left != Unknown:
		b.ends = r.from + clock.FromHours(left)
	case s.Pace == ByCure:
		cured := r.air.cure[s.Area].Equivalent(b.begun, r.from)
		b.ends = r.air.cure[s.Area].Ready(r.from, residual(s, cured, b.luck(s)))
	default:
		b.ends = r.from + clock.FromHours(residual(s, (r.from-b.begun).Hours(), b.luck(s)))
	}
	b.event = r.clk.At(b.ends, clock.Finish, evDone, j)
}

// typicalMold is a mold of a part halfway between strips, for parts whose own is
// not known any more.
func (r *Run) typicalMold(part int16) (buildUp, surface float64) {
	n := 0.0
	for i := range r.molds {
		if m := &r.molds[i]; m.part == part {
			buildUp, surface, n = buildUp+m.buildUp, surface+m.surface, n+1
		}
	}
	if n == 0 {
		return 0, 0
	}
	if r.plan.Strip.Kind == policy.StripEvery && buildUp == 0 {
		buildUp = n * float64(r.plan.Strip.Every) / 2 * r.growth(part, 70, 0)
	}
	return buildUp / n, surface / n
}
