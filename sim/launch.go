package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// awaits has a mold that comes later wait for its day, out of use; false for
// one that is there from the start.
func (r *Run) awaits(i int) bool {
	m := &r.plan.Molds[i]
	if m.Arrives <= 0 {
		return false
	}
	r.molds[i].state = gone
	if m.Arrives < r.plan.Length {
		r.clk.At(m.Arrives, clock.Change, evMold, int32(i))
	}
	return true
}

// moldComes is the day on which a mold comes into rotation. It is waxed as its
// break-in asks before its first part.
func (r *Run) moldComes(i int32) {
	m := &r.molds[i]
	if m.replaced > 0 {
		r.replacementComes(i)
		return
	}
	p := &r.parts[m.part]
	r.moldSpan(m)
	m.state = inUse
	p.arrived++
	p.inRotation++
	r.note(record.Note{Kind: record.MoldNew, Order: None, Mold: i, Part: m.part, Place: None})
	from := r.waxStep(m.part)
	if int(from) == len(r.plan.Routes[r.plan.Parts[m.part].Care].Steps) {
		r.moldReady(i)
		return
	}
	m.coats, m.coatsDue = 0, m.coats
	if m.coatsDue <= 0 {
		r.moldReady(i)
		return
	}
	key := r.root.At2(luckMold, uint64(m.part), uint64(r.nth(int(i))))
	r.care(i, key.At1(luckMold, 0), from)
}

// mostInUse is how many molds of a part may be in rotation at once, those that
// came counted.
func (r *Run) mostInUse(part int16) int { return r.plan.Parts[part].InUse + r.parts[part].arrived }
