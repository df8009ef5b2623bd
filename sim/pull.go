package sim

import (
	"moldturn/sim/finish"
	"moldturn/sim/record"
)

// growth is the build-up a pull adds to a mold.
func (r *Run) growth(part int16, heatF, green float64) float64 {
	p := &r.plan.Parts[part]
	return finish.Grow(&r.plan.Finish, finish.Pull{Grade: p.Grade, Shape: p.Zone, HeatIndexF: heatF, Green: green})
}

// verbPulled takes the part from its mold: its luster is what the mold and the
// cure made of it; the mold ages by a turn and goes to its care.
func (r *Run) verbPulled(j int32) bool {
	b := &r.jobs[j]
	if b.mold == None {
		return true
	}
	now := r.clk.Now()
	m := &r.molds[b.mold]
	p := &r.plan.Parts[b.part]
	piece := &b.piece
	heat := 70.0
	if piece.heats > 0 {
		heat = piece.heat / piece.heats
	}
	m.turns++
	m.since++
	m.waxed++
	fin := &piece.fin
	fin.BuildUp, fin.Surface = m.buildUp, m.surface
	fin.MissingCoats = float64(max(1-m.coats, 0))
	fin.ExcessCoats = float64(max(m.coats-2, 0))
	fin.Noise = b.key.U(luckLuster)
	fin.Since = 0
	piece.luster = finish.Luster(&r.plan.Finish, fin)
	piece.reading = piece.luster
	r.stick(j, m)
	f := &r.fact.pull
	*f = record.Pull{
		At: now, Order: b.number, Mold: b.mold, Model: p.Model, Part: b.part, Color: piece.color, Turns: m.since,
		Luster: piece.luster, Green: fin.Green, Stuck: piece.stuck, Scrapped: piece.stuckHours > p.Stuck.Scrap && piece.stuck,
		HeatIndex: heat, Sprayed: piece.sprayBegan, Laminated: piece.laborEnded, Hold: now - piece.laborEnded,
	}
	if m.lastPull > 0 {
		f.Cycle = now - m.lastPull
	}
	scrapped := f.Scrapped
	r.obs.Pull(f)
	m.lastPull = now
	m.buildUp += r.growth(b.part, heat, fin.Green)
	m.coats--
	m.stripped = false
	if m.breakIn > 0 {
		m.breakIn--
	}
	i, order, part, index := b.mold, b.order, b.part, p.Index
	key := b.key.At1(luckMold, 0)
	b.mold = None
	m.at = now
	if m.goBack && !m.out {
		r.parts[m.part].inRotation--
		r.toReserve(i)
		r.admit(m.part)
	} else {
		r.care(i, key, 0)
	}
	if scrapped {
		r.note(record.Note{Kind: record.Scrapped, Order: order, Mold: i, Part: part, Place: None})
		r.releaseAll(j)
		r.endJob(j)
		r.redo(order, part, index)
		return false
	}
	return true
}

// stick draws whether the part sticks, and what that costs.
func (r *Run) stick(j int32, m *mold) {
	b := &r.jobs[j]
	chance := r.stickChance(m)
	if chance <= 0 || b.key.U(luckStick) >= chance {
		return
	}
	s := &r.plan.Parts[b.part].Stuck
	b.piece.stuck = true
	b.piece.stuckHours = s.Part.Quantile(b.key.U(luckStickPart))
	m.repair = s.Mold.Quantile(b.key.U(luckStickMold))
	m.coats = int32(s.Coats) + 1
	r.note(record.Note{Kind: record.Stuck, Order: b.order, Mold: b.mold, Part: b.part, Place: None, Value: m.repair})
}

// stickChance is the chance that the part now pulled sticks in its mold.
func (r *Run) stickChance(m *mold) float64 {
	if k := r.plan.BreakIn.Turns(); m.breakIn > 0 && int(m.breakIn) <= k && len(r.plan.BreakIn.Stick) == k {
		return r.plan.BreakIn.Stick[k-int(m.breakIn)]
	}
	return r.plan.Sticking.Chance(m.stripped, int(max(1-m.coats, 0)), m.buildUp, r.air.MoldC(0, r.clk.Now()))
}
