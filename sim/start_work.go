package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/record"
)

// standWork puts a piece of work of a start on the floor, with what is known of
// its past.
func (r *Run) standWork(s *Start, w *StartWork) {
	r.onTheFloor(s, w.Order)
	if w.Part == None {
		r.standBoat(w)
		return
	}
	r.startedBefore(w.Order, w.Part)
	j := r.newPart(w.Part, w.Order, w.Mold)
	b := &r.jobs[j]
	b.step = w.Step
	if w.Mold != None {
		r.molds[w.Mold].state = inUse
	}
	r.past(j, w)
	if steps := r.steps[b.route]; int(w.Step) < len(steps) && steps[w.Step].When != Always {
		r.force(steps[w.Step].When, j)
	}
	if p := &r.parts[w.Part]; w.Sprayed != Unknown || w.Begun != Unknown {
		p.last, p.run = b.piece.color, 1
	}
	r.standAt(j, w.Begun, w.Since, w.Left)
}

// standBoat puts a boat into assembly whose parts are joined.
func (r *Run) standBoat(w *StartWork) {
	o := &r.orders[w.Order]
	parts := r.plan.Models[o.model].Parts
	r.startedBefore(w.Order, parts...)
	o.done = o.started
	for k := range o.jobs {
		o.jobs[k] = None
	}
	j := r.newJob(boatJob, r.plan.Models[o.model].Boat, o.key.At1(luckBoat, 0))
	b := &r.jobs[j]
	b.order, b.number, b.step = w.Order, o.number, w.Step
	r.countBoat(b, o.model)
	b.piece.luster = 100
	for _, p := range parts {
		if !r.plan.Parts[p].Visible {
			continue
		}
		fin := r.typicalPart(o, p)
		b.piece.luster = min(b.piece.luster, finish.Luster(&r.plan.Finish, &fin))
		fin.Since = clock.Never
		if shown := finish.Luster(&r.plan.Finish, &fin); b.piece.made.shown == 0 || shown < b.piece.made.shown {
			b.piece.made.shown = shown
		}
	}
	r.standAt(j, w.Begun, w.Since, w.Left)
}

// typicalPart is a part of an order as a mold halfway between strips makes it.
func (r *Run) typicalPart(o *order, part int16) finish.Part {
	pt := &r.plan.Parts[part]
	fin := finish.Part{Grade: pt.Grade, Color: r.lookOf(o, pt), Noise: o.key.At2(luckPart, uint64(pt.Index), 0).U(luckLuster)}
	fin.BuildUp, fin.Surface = r.typicalMold(part)
	return fin
}

// past gives a part what the steps before its present one made of it. What
// nobody wrote down is taken as having happened just now, in this air.
func (r *Run) past(j int32, w *StartWork) {
	b := &r.jobs[j]
	p := &b.piece
	now := known(w.Begun, r.from)
	for _, s := range r.steps[b.route][:w.Step] {
		if s.When != Always && !(s.When == Banded && p.banded) {
			continue
		}
		switch s.Verb {
		case Sprayed:
			at := known(w.Sprayed, now)
			p.sprayed, p.sprayBegan = at, max(at-clock.FromHours(s.Mean), 1)
			p.heat, p.heats = r.air.HeatIndexF(s.Area, at), 1
			p.made.sprayC, p.made.humidity = r.air.MoldC(s.Area, at), r.air.RH(s.Area, at)
			r.flaw(b, defect.Porosity, defect.Sag)
			r.opens(b)
		case SkinBegun:
			p.made.skinned = known(w.Skinned, now)
			if p.sprayed > 0 {
				p.late = max(p.made.skinned-p.sprayed, 0).Hours()
				p.sprayed = 0
				r.flaw(b, defect.Alligatoring)
			}
			r.closes(b)
			r.laminatedAt(b, known(w.Laminated, now), s.Area)
		case LaborEnded:
			r.laminatedAt(b, known(w.Laminated, now), s.Area)
		case Pulled:
			r.pulledBefore(j)
		case Inspected:
			p.made.seen = true
			p.reading = finish.Reading(&r.plan.Finish, p.luster, b.key.U(luckReading))
		}
	}
	if s := r.steps[b.route]; int(w.Step) < len(s) && s[w.Step].Doing == record.Spraying && w.Begun != Unknown {
		p.sprayBegan = now
	}
}

// laminatedAt begins the cure of a shot that was laid up at an instant.
func (r *Run) laminatedAt(b *job, at clock.Time, area int) {
	b.piece.laborEnded = at
	m := &b.piece.made
	m.progress, m.at, m.area = r.air.degree[area].Fresh(), at, int16(area)
	b.piece.heat += r.air.HeatIndexF(area, at)
	b.piece.heats++
}

// pulledBefore gives a part the luster of a typical pull.
func (r *Run) pulledBefore(j int32) {
	b := &r.jobs[j]
	r.closes(b)
	noise := b.key.U(luckLuster)
	b.piece.fin.BuildUp, b.piece.fin.Surface = r.typicalMold(b.part)
	b.piece.fin.Noise = noise
	b.piece.luster = finish.Luster(&r.plan.Finish, &b.piece.fin)
	b.piece.reading = b.piece.luster
	for i := range r.molds { // its own, or one like it
		if r.molds[i].part == b.part {
			b.mold = int32(i)
			break
		}
	}
	r.flaw(b, defect.PreRelease, defect.PrintThrough)
	b.mold = None
}
