package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// failState is how one unit, or gun set, stands with its next failure.
type failState struct {
	number uint64     // failures so far: the key of its luck
	left   clock.Time // time to the next one, while the clock of its use stands
	since  clock.Time // since when its time runs
	event  clock.Token
	works  int16 // jobs at work in it
	down   bool
}

// startFailures draws the first failure of everything that can break down.
func (r *Run) startFailures() {
	r.watched = len(r.plan.Failures) > 0
	for f := range r.plan.Failures {
		r.fails = append(r.fails, failState{})
		r.nextFailure(int32(f))
	}
}

func (r *Run) failLuck(f int32, repair uint64) float64 {
	return r.root.At1(luckFailure, failureSlot(&r.plan.Failures[f])).U(2*r.fails[f].number + repair)
}

// nextFailure draws the time to the next failure and lets it run.
func (r *Run) nextFailure(f int32) {
	x := &r.fails[f]
	x.left = clock.FromHours(r.plan.Failures[f].Up.Quantile(r.failLuck(f, 0)))
	if !r.plan.Failures[f].WhileWorking || x.works > 0 {
		r.runFailure(f)
	}
}

func (r *Run) runFailure(f int32) {
	x := &r.fails[f]
	x.since = r.clk.Now()
	x.event = r.clk.At(x.since+x.left, clock.Change, evBreak, f)
}

// unitsWork tells the units a job stands in that work in them begins or ends.
func (r *Run) unitsWork(b *job, begins bool) {
	for f := range r.plan.Failures {
		fail := &r.plan.Failures[f]
		if !r.stands(b, fail) {
			continue
		}
		x := &r.fails[f]
		if begins {
			x.works++
			if fail.WhileWorking && x.works == 1 && !x.down {
				r.runFailure(int32(f))
			}
			continue
		}
		x.works--
		if fail.WhileWorking && x.works == 0 && !x.down {
			r.clk.Cancel(x.event)
			x.left -= r.clk.Now() - x.since
		}
	}
}

func (r *Run) stands(b *job, f *Failure) bool {
	for _, h := range b.held {
		if h.place == f.Place && h.unit == f.Unit {
			return true
		}
	}
	return false
}

// breakDown takes a unit, or a gun set in it, out of use until it is repaired.
func (r *Run) breakDown(f int32) {
	fail := &r.plan.Failures[f]
	x := &r.fails[f]
	x.down = true
	x.event = 0
	r.note(record.Note{Kind: record.BrokeDown, Order: None, Mold: None, Part: None, Place: fail.Place})
	r.clk.At(r.clk.Now()+clock.FromHours(fail.Repair.Quantile(r.failLuck(f, 1))), clock.Change, evRepair, f)
	unit := &r.pools[r.place(fail.Place)].units[fail.Unit]
	if fail.Gun != None {
		gun := &unit.guns[fail.Gun]
		gun.down = true
		gun.downs++
		if j := unit.holder; j != None && r.jobs[j].state == working && r.sprayGunDown(&r.jobs[j]) {
			r.jobs[j].down = true
			r.pause(j, record.Cause{Reason: record.NoGun, Of: fail.Place})
		}
		return
	}
	r.stopUnit(fail.Place, fail.Unit)
}

// stopUnit takes a unit out of use, with whatever is at work in it.
func (r *Run) stopUnit(place, u int16) {
	unit := &r.pools[r.place(place)].units[u]
	if unit.downs++; unit.downs > 1 { // it was down already
		return
	}
	unit.down = true
	q := r.place(place)
	r.use(q)
	r.pools[q].capacity--
	if unit.holder == None {
		r.pools[q].free--
		return
	}
	r.pools[q].used-- // it is in nobody's use while it is down
	j := unit.holder
	if b := &r.jobs[j]; b.state == working {
		b.down = true
		r.pause(j, record.Cause{Reason: record.Down, Of: place})
	}
}

// repaired puts a unit, or a gun set, back into use.
func (r *Run) repaired(f int32) {
	fail := &r.plan.Failures[f]
	x := &r.fails[f]
	x.down = false
	x.number++
	q := r.place(fail.Place)
	unit := &r.pools[q].units[fail.Unit]
	if fail.Gun != None {
		gun := &unit.guns[fail.Gun]
		gun.downs--
		gun.down = gun.downs > 0
		r.touch(q)
	} else {
		r.freeUnit(fail.Place, fail.Unit)
	}
	r.nextFailure(f)
	if j := unit.holder; j != None {
		r.wake(j)
	}
}

// freeUnit puts a unit back into use once nothing keeps it down.
func (r *Run) freeUnit(place, u int16) {
	q := r.place(place)
	unit := &r.pools[q].units[u]
	if unit.downs--; unit.downs > 0 {
		return
	}
	unit.down = false
	r.use(q)
	r.pools[q].capacity++
	if unit.holder == None {
		r.pools[q].free++
		r.touch(q)
	} else {
		r.pools[q].used++
	}
}

// wake has a job go on that waited for its unit or gun to be repaired.
func (r *Run) wake(j int32) {
	b := &r.jobs[j]
	switch {
	case b.down:
		if r.isDown(b) {
			return
		}
		b.down = false
		p := r.resumesIn(b)
		r.span(b, false)
		b.cause = r.causeIn(p)
		r.line(p, j)
		r.touch(p)
	case b.state == gated && (b.cause.Reason == record.NoGun || b.cause.Reason == record.Down):
		r.reopen(j)
	}
}

// resumesIn is the pool in whose line paused work waits to go on.
func (r *Run) resumesIn(b *job) int32 {
	switch s := r.step(b); {
	case s.Craft != None:
		return int32(s.Craft)
	case len(s.Use) > 0:
		return r.place(s.Use[0])
	}
	return r.anything()
}

// sprayGunDown says whether the gun set that a job sprays with is down.
func (r *Run) sprayGunDown(b *job) bool {
	if r.step(b).Spray == NoSpray {
		return false
	}
	p, u := r.boothOf(b)
	if p == None || u == None || len(r.plan.Places[p].Guns) == 0 {
		return false
	}
	unit := &r.pools[r.place(p)].units[u]
	return len(unit.guns) > 0 && unit.guns[unit.gun].down
}

// isDown says whether a unit that a job stands in, or its gun set, is down.
func (r *Run) isDown(b *job) bool {
	for _, h := range b.held {
		if h.unit != None && r.pools[r.place(h.place)].units[h.unit].down {
			return true
		}
	}
	return r.sprayGunDown(b)
}

// standsDown has a job wait that stands in a unit which is down.
func (r *Run) standsDown(j int32) bool {
	for _, h := range r.jobs[j].held {
		if h.unit != None && r.pools[r.place(h.place)].units[h.unit].down {
			r.shut(j, record.Cause{Reason: record.Down, Of: h.place}, clock.Never)
			return true
		}
	}
	return false
}
