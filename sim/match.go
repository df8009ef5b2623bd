package sim

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

// rematch has the ready molds of a part look for orders later in this instant.
func (r *Run) rematch(part int16) {
	p := &r.parts[part]
	if !p.dirty {
		p.dirty = true
		r.toMatch = append(r.toMatch, part)
		r.clk.Ask(clock.Match)
	}
}

// match gives orders to ready molds, the mold that waits longest first.
func (r *Run) match() {
	for len(r.toMatch) > 0 {
		best := 0
		for i := 1; i < len(r.toMatch); i++ {
			if r.readySince(r.toMatch[i]) < r.readySince(r.toMatch[best]) {
				best = i
			}
		}
		part := r.toMatch[best]
		if !r.startNext(part) {
			r.parts[part].dirty = false
			r.toMatch = append(r.toMatch[:best], r.toMatch[best+1:]...)
		}
	}
}

func (r *Run) readySince(part int16) clock.Time {
	if p := &r.parts[part]; len(p.ready) > 0 {
		return r.molds[p.ready[0]].readyAt
	}
	return clock.Never
}

// startNext starts one part in the mold of its type that is ready longest (in
// none, for parts without molds), or says in the molds why they wait.
func (r *Run) startNext(part int16) bool {
	p := &r.parts[part]
	molded := r.plan.Parts[part].Care != None
	if molded && len(p.ready) == 0 {
		return false
	}
	reason := record.NoReason
	tries := 1
	if molded {
		tries = len(p.ready)
	}
	for k := range tries {
		m := int32(None)
		if molded {
			m = p.ready[k]
		}
		o, why := r.orderFor(part, m)
		if o != None {
			if molded {
				p.ready = append(p.ready[:k], p.ready[k+1:]...)
			}
			r.startPart(part, o, m)
			return true
		}
		if molded {
			r.idleFor(m, why)
		}
		reason = why
	}
	if reason == record.FloorLimit && !p.blocked {
		p.blocked = true
		r.blocked = append(r.blocked, part)
	}
	return false
}

// idleFor notes why a ready mold has no part.
func (r *Run) idleFor(i int32, why record.Reason) {
	m := &r.molds[i]
	if m.cause.Reason != why {
		r.moldSpan(m)
		m.cause = record.Cause{Reason: why, Of: None}
	}
}

// orderFor finds the order whose part a mold makes next, or why there is none.
func (r *Run) orderFor(part int16, m int32) (int32, record.Reason) {
	d := &r.plan.Demand
	pt := &r.plan.Parts[part]
	model := &r.models[pt.Model]
	plain := m != None && r.molds[m].breakIn > 0
	if lead := d.MateLead; lead > 0 && !r.hasRedo(part) && r.parts[part].started+1-r.slowestMate(pt) > lead {
		return None, record.MateLimit
	}
	late := false
	if m != None {
		n := r.plan.Strip.Interval(r.hot)
		late = n > 0 && 2*int(r.molds[m].since) >= n
	}
	floor := r.floorFull(pt.Model)
	look := maxLook
	if plain {
		look = maxLookPlain
		floor = floor && !r.onlyBanded(pt)
	}
	first := !plain && r.plan.Release.Kind != policy.ColorRun && !r.plan.Release.ByColor // of the list, whatever it is
	blocked := false
	if !floor {
		r.stock(pt)
	}
	for range look {
		r.list, r.waitingOrders = r.list[:0], r.waitingOrders[:0]
		for _, o := range model.open {
			x := &r.orders[o]
			if x.started&(1<<pt.Index) != 0 {
				continue
			}
			if floor && !x.onFloor {
				blocked = true
				continue
			}
			if first {
				return o, record.NoReason
			}
			r.list = append(r.list, o)
			r.waitingOrders = append(r.waitingOrders, policy.Waiting{Color: x.color, Dark: r.showsHaze(x, pt), Plain: !r.banded(x, pt)})
		}
		p := &r.parts[part]
		if i := r.plan.Release.Pick(r.waitingOrders, plain, p.last, p.run, late); i >= 0 {
			return r.list[i], record.NoReason
		}
		if !d.Full || floor || len(model.open) > look {
			break
		}
		r.newOrder(pt.Model)
	}
	switch {
	case blocked:
		return None, record.FloorLimit
	case d.Full && floor:
		return None, record.FloorLimit
	case plain && len(r.list) > 0:
		return None, record.NoPlain
	}
	return None, record.NoOrder
}

// maxLook is how many orders are made ahead of those begun; maxLookPlain how
// many to find one in a solid color for a mold in break-in: with bands on nine
// boats of ten, none of so many is plain once in a billion.
const (
	maxLook      = 20
	maxLookPlain = 200
)

// onlyBanded says whether boats on the floor want this part and none of them
// is plain. A mold in break-in then takes a plain order beyond the limit of the
// floor, which may be full of boats that wait for this very mold.
func (r *Run) onlyBanded(pt *Part) bool {
	banded := false
	for _, i := range r.models[pt.Model].open {
		if o := &r.orders[i]; o.onFloor && o.started&(1<<pt.Index) == 0 {
			if !r.banded(o, pt) {
				return false
			}
			banded = true
		}
	}
	return banded
}

// banded says whether a part of an order carries an accent band.
func (r *Run) banded(o *order, pt *Part) bool {
	return o.band != None && pt.Band > 0 && o.key.U(luckBandPart+uint64(pt.Index)) < pt.Band
}

func (r *Run) hasRedo(part int16) bool {
	pt := &r.plan.Parts[part]
	for _, o := range r.models[pt.Model].open {
		if x := &r.orders[o]; x.attempts[pt.Index] > 0 && x.started&(1<<pt.Index) == 0 {
			return true
		}
	}
	return false
}

func (r *Run) slowestMate(pt *Part) int {
	least := int(^uint(0) >> 1)
	for _, mate := range r.plan.Models[pt.Model].Parts {
		least = min(least, r.parts[mate].started)
	}
	return least
}

func (r *Run) floorFull(model int16) bool {
	d := &r.plan.Demand
	if d.FloorLimit > 0 && r.onFloor >= d.FloorLimit {
		return true
	}
	return int(model) < len(d.Models) && d.Models[model].Floor > 0 && r.models[model].onFloor >= d.Models[model].Floor
}

// startPart begins the part of an order in a mold.
func (r *Run) startPart(part int16, i, m int32) {
	o := &r.orders[i]
	pt := &r.plan.Parts[part]
	p := &r.parts[part]
	attempt := o.attempts[pt.Index]
	if attempt == 0 {
		p.started++
	}
	if !o.onFloor {
		r.orderWait(o)
		o.onFloor, o.began = true, r.clk.Now()
		r.onFloor++
		r.models[o.model].onFloor++
		r.note(record.Note{Kind: record.BoatBegun, Order: i, Mold: None, Part: None, Place: None})
	}
	o.started |= 1 << pt.Index
	if int(o.started) == 1<<len(r.plan.Models[o.model].Parts)-1 {
		o.open = false
		model := &r.models[o.model]
		at := slices.Index(model.open, i)
		model.open = append(model.open[:at], model.open[at+1:]...)
	}
	j := r.newPart(part, i, m)
	b := &r.jobs[j]
	if b.piece.color == p.last {
		p.run++
	} else {
		p.last, p.run = b.piece.color, 1
	}
	if m != None {
		x := &r.molds[m]
		r.moldSpan(x)
		x.state = inUse
	}
	if r.plan.Demand.MateLead > 0 || r.plan.Demand.Full {
		for _, mate := range r.plan.Models[o.model].Parts {
			if mate != part {
				r.rematch(mate)
			}
		}
	}
	r.advance(j)
}

// newPart makes the traveler of the part of an order in a mold.
func (r *Run) newPart(part int16, i, m int32) int32 {
	o := &r.orders[i]
	pt := &r.plan.Parts[part]
	attempt := o.attempts[pt.Index]
	j := r.newJob(partJob, pt.Route, o.key.At2(luckPart, uint64(pt.Index), uint64(attempt)))
	b := &r.jobs[j]
	b.order, b.number, b.part, b.mold = i, o.number, part, m
	b.unit = int32(r.parts[part].started)
	b.piece.color, b.piece.band, b.piece.attempt = o.color, None, int16(attempt)
	if pt.Color != None {
		b.piece.color = pt.Color
	}
	fin := &b.piece.fin
	fin.Grade = pt.Grade
	if b.piece.color != None {
		fin.Color = r.plan.Colors[b.piece.color].Look
	}
	if b.piece.banded = r.banded(o, pt); b.piece.banded {
		b.piece.band = o.band
		fin.Color = pt.BandLook
	}
	return j
}

// redo puts an order whose part was thrown away back at the head.
func (r *Run) redo(i int32, part, index int16) {
	o := &r.orders[i]
	o.started &^= 1 << index
	o.attempts[index]++
	if !o.open {
		o.open = true
		m := &r.models[o.model]
		m.open = slices.Insert(m.open, 0, i)
	}
	r.rematch(part)
}
