package sim

import (
	"slices"

	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// outOfRotation takes a mold out for long care and calls a reserve mold for
// its place, if there is one.
func (r *Run) outOfRotation(j int32) {
	m := r.moldOf(j)
	if m.out {
		return
	}
	m.out = true
	p := &r.parts[m.part]
	p.inRotation--
	if m.called { // a reserve mold goes back instead of being replaced
		m.goBack = true
	}
	r.callReserve(m.part, r.jobs[j].key)
}

// callReserve brings a mold of a part from reserve into rotation, if there is
// one and a place for it. key is the luck of its care.
func (r *Run) callReserve(part int16, key draw.Key) {
	p := &r.parts[part]
	for i := range r.molds {
		x := &r.molds[i]
		if x.part != part || x.state != resting || p.inRotation >= r.mostInUse(part) {
			continue
		}
		p.inRotation++
		x.called = true
		x.coatsDue = 1
		if idle := r.plan.Life.ReserveIdle; idle > 0 && (r.clk.Now()-x.at).Hours() > 24*idle {
			x.coatsDue = 2
		}
		r.note(record.Note{Kind: record.ReserveIn, Order: None, Mold: x.nr, Part: x.part, Place: None})
		r.care(int32(i), key.At1(luckMold, uint64(i)), r.waxStep(x.part))
		return
	}
}

// waxStep is the step of the care route where waxing begins.
func (r *Run) waxStep(part int16) int16 {
	steps := r.plan.Routes[r.plan.Parts[part].Care].Steps
	if i := slices.IndexFunc(steps, func(s Step) bool { return s.Verb == Waxed }); i >= 0 {
		return int16(i)
	}
	return int16(len(steps))
}

// backInRotation takes a mold up again after long care. While a reserve mold
// stands in its place it waits until that one goes back, at its next pull.
func (r *Run) backInRotation(i int32) {
	m := &r.molds[i]
	p := &r.parts[m.part]
	if m.reserve && m.goBack {
		r.toReserve(i)
		r.admit(m.part)
		return
	}
	if p.inRotation < r.mostInUse(m.part) {
		p.inRotation++
		m.out = false
		r.moldReady(i)
		return
	}
	m.state = ready
	m.cause = record.Cause{Reason: record.RotationFull, Of: None}
	p.waitsBack = append(p.waitsBack, i)
	for k := range r.molds {
		if x := &r.molds[k]; x.part == m.part && x.called && !x.goBack {
			x.goBack = true
			if x.state == ready {
				p.ready = slices.DeleteFunc(p.ready, func(n int32) bool { return n == int32(k) })
				p.inRotation--
				r.moldSpan(x)
				r.toReserve(int32(k))
				r.admit(m.part)
			}
			return
		}
	}
}

// toReserve puts a mold in reserve.
func (r *Run) toReserve(i int32) {
	m := &r.molds[i]
	m.state, m.called, m.goBack, m.out = resting, false, false, false
	m.at = r.clk.Now()
	r.note(record.Note{Kind: record.ReserveOut, Order: None, Mold: m.nr, Part: m.part, Place: None})
}

// admit lets a mold that waits for its place in rotation have it.
func (r *Run) admit(part int16) {
	p := &r.parts[part]
	if len(p.waitsBack) == 0 || p.inRotation >= r.mostInUse(part) {
		return
	}
	i := p.waitsBack[0]
	p.waitsBack = slices.Delete(p.waitsBack, 0, 1)
	p.inRotation++
	r.moldReady(i)
}
