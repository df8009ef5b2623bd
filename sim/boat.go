package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/finish"
	"moldturn/sim/record"
)

// routeEnd does what follows the last step of a route.
func (r *Run) routeEnd(j int32) {
	switch r.jobs[j].kind {
	case partJob:
		r.partDone(j)
	case careJob:
		r.careDone(j)
	case boatJob:
		r.ship(j)
	default:
		r.releaseAll(j)
		r.endJob(j)
	}
}

// partDone puts a finished part beside its mates; the last of them makes the
// boat.
func (r *Run) partDone(j int32) {
	if r.jobs[j].mold != None && !r.verbPulled(j) { // the route has no pull: it comes out of its mold now
		return
	}
	if r.plan.Demand.AnyMate {
		r.rebind(j)
	}
	b := &r.jobs[j]
	o := &r.orders[b.order]
	index := r.plan.Parts[b.part].Index
	b.state = stored
	b.since = r.clk.Now()
	b.cause = record.Cause{Reason: record.MateMissing, Of: None}
	o.done |= 1 << index
	o.jobs[index] = j
	if int(o.done) == 1<<len(r.plan.Models[o.model].Parts)-1 {
		r.assemble(b.order)
	}
}

// assemble joins the parts of an order into a boat, which takes over the
// places they stand in.
func (r *Run) assemble(i int32) {
	model := r.orders[i].model
	j := r.newJob(boatJob, r.plan.Models[model].Boat, r.orders[i].key.At1(luckBoat, 0))
	o := &r.orders[i]
	boat := &r.jobs[j]
	boat.order, boat.number = i, o.number
	r.countBoat(boat, model)
	boat.piece.luster = 100
	for k := range r.plan.Models[model].Parts {
		part := &r.jobs[o.jobs[k]]
		r.span(part, false)
		boat.held = append(boat.held, part.held...)
		part.held = part.held[:0]
		if r.plan.Parts[part.part].Visible {
			luster := part.piece.luster
			if part.piece.fin.Buffs > 0 {
				luster = finish.Luster(&r.plan.Finish, &part.piece.fin)
			}
			boat.piece.luster = min(boat.piece.luster, luster)
		}
		boat.piece.conceded = boat.piece.conceded || part.piece.conceded
		r.join(boat, part)
		for _, h := range boat.held {
			if h.unit != None {
				r.pools[r.place(h.place)].units[h.unit].holder = j
			}
		}
		r.endJob(o.jobs[k])
		o.jobs[k] = None
	}
	r.advance(j)
}

// ship ends a boat.
func (r *Run) ship(j int32) {
	r.releaseAll(j)
	b := &r.jobs[j]
	i := b.order
	o := &r.orders[i]
	f := &r.fact.ship
	*f = record.Ship{At: r.clk.Now(), Arrived: o.arrived, Released: o.began, Due: o.due, Order: o.number, Model: o.model, Color: o.color, Luster: b.piece.luster, Conceded: b.piece.conceded}
	r.escapes(b, f)
	r.endJob(j)
	if o.cancelled != 0 {
		r.clk.Cancel(o.cancelled)
	}
	r.onFloor--
	r.models[o.model].onFloor--
	o.ended = true
	r.freeOrders = append(r.freeOrders, i)
	r.obs.Ship(f)
	for _, p := range r.blocked {
		r.parts[p].blocked = false
		r.rematch(p)
	}
	r.blocked = r.blocked[:0]
	if pieces := r.perBoat; len(pieces) > 0 {
		for _, k := range pieces {
			r.backgroundForBoat(k)
		}
	}
}

// startBackground lays out the weekly background work: pieces evenly spaced
// over the working time of their craft.
func (r *Run) startBackground() {
	for k := range r.plan.Background {
		g := &r.plan.Background[k]
		r.backs = append(r.backs, backState{})
		if g.PerBoat > 0 {
			r.perBoat = append(r.perBoat, int32(k))
		}
		if g.PerWeek <= 0 || g.Piece <= 0 {
			continue
		}
		work := r.hours[g.Craft].Worked(0, r.plan.Length)
		weeks := float64(r.plan.Length) / float64(clock.Week)
		pieces := g.PerWeek / g.Piece * weeks
		r.backs[k].gap = clock.Time(float64(work) / pieces)
		if r.backs[k].gap > 0 {
			r.nextBackground(int32(k))
		}
	}
}

// backState is how far a kind of background work has come.
type backState struct {
	gap  clock.Time // working time between pieces
	made uint64
	owed float64 // labor hours of shipped boats not yet made a piece
}

func (r *Run) nextBackground(k int32) {
	t := r.hours[r.plan.Background[k].Craft].Finish(r.clk.Now(), r.backs[k].gap)
	if t < r.plan.Length {
		r.clk.At(t, clock.Change, evBackground, k)
	}
}

// background brings one piece of background work.
func (r *Run) background(k int32) {
	r.backgroundPiece(k)
	r.nextBackground(k)
}

func (r *Run) backgroundPiece(k int32) {
	g := &r.plan.Background[k]
	key := r.root.At2(luckBackground, uint64(k), r.backs[k].made)
	r.backs[k].made++
	r.advance(r.newJob(backgroundJob, g.Route, key))
}

// backgroundForBoat brings the pieces that a shipped boat's small parts need.
func (r *Run) backgroundForBoat(k int32) {
	g := &r.plan.Background[k]
	for r.backs[k].owed += g.PerBoat; r.backs[k].owed >= g.Piece && g.Piece > 0; r.backs[k].owed -= g.Piece {
		r.backgroundPiece(k)
	}
}
