package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/policy"
)

// replaced takes a mold that is worn out from the floor until the new one comes
// off the master. Its place in rotation may be lent meanwhile; the stall of its
// care is free.
func (r *Run) replaced(j int32) {
	r.outOfRotation(j)
	i := r.jobs[j].mold
	r.releaseAll(j)
	r.endJob(j)
	m := &r.molds[i]
	m.at, m.state = r.clk.Now(), gone
	m.due, m.repair = policy.NoStrip, 0
	m.replaced++
	m.readyAt = r.clk.Now() + clock.FromHours(r.plan.Life.Replacement)
	if m.readyAt < r.plan.Length {
		r.clk.At(m.readyAt, clock.Change, evMold, i)
	}
}

// replacementComes is the day on which a new mold takes the place of one that
// was worn out. It is waxed as its break-in asks before its first part.
func (r *Run) replacementComes(i int32) {
	m := &r.molds[i]
	from := r.waxStep(m.part)
	if m.coatsDue <= 0 || int(from) == len(r.plan.Routes[r.plan.Parts[m.part].Care].Steps) {
		r.moldBack(i)
		return
	}
	r.care(i, r.moldKey(int(i)).At1(luckMold, uint64(m.replaced)), from)
}
