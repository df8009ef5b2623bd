package sim

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// occupy gives a job a unit of a place, to keep until it is released.
func (r *Run) occupy(j int32, p int16, spray Spray) {
	q := r.place(p)
	u := int16(None)
	if !r.pools[q].endless {
		u = r.pickUnit(p, j, spray)
		r.pools[q].units[u].holder = j
	}
	r.take(q, 1)
	b := &r.jobs[j]
	b.held = append(b.held, hold{p, u})
}

// release gives back all units of a place that a job holds, a boat those of
// all its parts; a place that the job does not hold is passed over.
func (r *Run) release(b *job, p int16) {
	q := r.place(p)
	for i := len(b.held) - 1; i >= 0; i-- {
		if b.held[i].place != p {
			continue
		}
		u := b.held[i].unit
		b.held = slices.Delete(b.held, i, i+1)
		if u != None {
			unit := &r.pools[q].units[u]
			unit.holder = None
			if unit.down { // in use by nobody, and free only when it is repaired
				continue
			}
		}
		r.give(q, 1)
	}
}

// pickUnit chooses among the free units of a place: for spraying the first
// whose guns need no flush for the job's color, otherwise the first.
func (r *Run) pickUnit(p int16, j int32, spray Spray) int16 {
	units := r.pools[r.place(p)].units
	first := int16(None)
	for u := range units {
		if units[u].holder != None || units[u].down {
			continue
		}
		if spray == NoSpray || len(units[u].guns) == 0 { // guns that nobody listed are always there
			return int16(u)
		}
		g := r.gunFor(p, int16(u), r.sprayColor(j, spray), spray)
		if g == None {
			continue
		}
		if units[u].guns[g].color == r.sprayColor(j, spray) {
			return int16(u)
		}
		if first == None {
			first = int16(u)
		}
	}
	return first
}

// sprayColor is the color a job sprays next: its band, or its own color.
func (r *Run) sprayColor(j int32, spray Spray) int16 {
	if b := &r.jobs[j]; spray == SprayBand {
		return b.piece.band
	}
	return r.jobs[j].piece.color
}

// gunFor chooses the gun set of a unit for a color: one kept for that color,
// one that holds it, a clean one, the one not used for longest. None when no
// gun of the kind works.
func (r *Run) gunFor(p, u, color int16, spray Spray) int16 {
	guns := r.plan.Places[p].Guns[u]
	state := r.pools[r.place(p)].units[u].guns
	best, bestRank := int16(None), 0
	for g := range guns {
		if state[g].down || guns[g].Pot != (spray == SprayBand) || guns[g].Color != None && guns[g].Color != color {
			continue
		}
		rank := 1
		switch {
		case guns[g].Color == color:
			rank = 4
		case state[g].color == color:
			rank = 3
		case state[g].color == None:
			rank = 2
		}
		if rank > bestRank || rank == 1 && bestRank == 1 && state[g].used < state[best].used {
			best, bestRank = int16(g), rank
		}
	}
	if best == None && spray == SprayBand { // without pot guns, bands go through the pumped sets
		return r.gunFor(p, u, color, SprayBase)
	}
	return best
}

// flush changes the color of the gun that sprays a job next, and gives the
// time that takes.
func (r *Run) flush(b *job, spray Spray) clock.Time {
	p, u := r.boothOf(b)
	if p == None || len(r.plan.Places[p].Guns) == 0 {
		return 0
	}
	color := b.piece.color
	if spray == SprayBand {
		color = b.piece.band
	}
	g := r.gunFor(p, u, color, spray)
	if g == None {
		return 0
	}
	unit := &r.pools[r.place(p)].units[u]
	unit.gun = g
	state := &unit.guns[g]
	gun := &r.plan.Places[p].Guns[u][g]
	before := state.color
	state.color, state.used = color, r.clk.Now()
	if before == color || before == None {
		return 0
	}
	r.note(record.Note{Kind: record.Flushed, Order: b.order, Mold: b.mold, Part: b.part, Place: p, Value: float64(gun.Flush) / float64(clock.Minute)})
	return gun.Flush
}

// boothOf is the booth a job stands in.
func (r *Run) boothOf(b *job) (place, unit int16) {
	for i := len(b.held) - 1; i >= 0; i-- {
		if r.plan.Places[b.held[i].place].Kind == Booth {
			return b.held[i].place, b.held[i].unit
		}
	}
	return None, None
}

// gunless has a job wait whose own booth has no gun set that works.
func (r *Run) gunless(j int32, s *Step) bool {
	p, u := r.boothOf(&r.jobs[j])
	if p == None || u == None || len(r.plan.Places[p].Guns) == 0 || r.gunFor(p, u, r.sprayColor(j, s.Spray), s.Spray) != None {
		return false
	}
	r.shut(j, record.Cause{Reason: record.NoGun, Of: p}, clock.Never)
	return true
}
