package sim

import (
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

// growth is the build-up a pull adds to a mold.
func (r *Run) growth(part int16, heatF, green float64) float64 {
	p := &r.plan.Parts[part]
	return finish.Grow(&r.plan.Finish, finish.Pull{Grade: p.Grade, Shape: p.Zone, HeatIndexF: heatF, Green: green})
}

// darkHaze is the share of haze from which a part counts as dark.
const darkHaze = 0.9

// verbPulled takes the part from its mold: its luster is what the mold and the
// cure made of it; the mold ages by a turn and goes to its care.
func (r *Run) verbPulled(j int32) bool {
	b := &r.jobs[j]
	if b.mold == None {
		return true
	}
	r.closes(b)
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
	fin.Green = 0
	if piece.laborEnded > 0 {
		r.settle(b, int(piece.made.area))
		fin.Green = r.green(b)
	}
	piece.luster = finish.Luster(&r.plan.Finish, fin)
	piece.reading = piece.luster
	r.readMold(b, m)
	r.flaw(b, defect.PreRelease, defect.PrintThrough, defect.Sticking)
	scrapped := r.stick(b, m)
	dark := r.plan.Finish.Colors[fin.Color].Haze >= darkHaze
	f := &r.fact.pull
	*f = record.Pull{
		At: now, Order: b.number, Mold: b.mold, Model: p.Model, Part: b.part, Color: piece.color, Turns: m.since,
		Luster: piece.luster, Green: fin.Green, Dark: dark, Stuck: piece.stuck, Scrapped: scrapped,
		HeatIndex: heat, BuildUp: fin.BuildUp, Grown: r.growth(b.part, heat, fin.Green), Sprayed: piece.sprayBegan, Laminated: piece.laborEnded, Hold: now - piece.laborEnded,
	}
	if m.lastPull > 0 {
		f.Cycle = now - m.lastPull
	}
	m.buildUp += f.Grown
	r.obs.Pull(f)
	m.lastPull = now
	m.coats--
	m.stripped = false
	if m.breakIn > 0 {
		m.breakIn--
	}
	i := b.mold
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
		r.scrap(j, i)
		return false
	}
	return true
}

// stick sees to a part that stuck in its mold, and says whether it is thrown
// away.
func (r *Run) stick(b *job, m *mold) (scrap bool) {
	if b.piece.made.flaws&(1<<defect.Sticking) == 0 {
		return false
	}
	out := defect.Look(r.plan.Defects, defect.Sticking, b.flawLuck(defect.Sticking))
	b.piece.stuck, b.piece.stuckHours = true, out.Hours
	m.repair = out.Mold
	m.coats = int32(r.plan.Life.RepairCoats) + 1
	r.note(record.Note{Kind: record.Stuck, Order: b.order, Mold: b.mold, Part: b.part, Place: None, Value: m.repair})
	return out.Scrap
}

// readMold notes the reading of a part at its pull, as if it were dark, for the
// strip policy of its mold.
func (r *Run) readMold(b *job, m *mold) {
	s := &r.plan.Strip
	if s.Kind != policy.StripByLuster {
		return
	}
	fin := b.piece.fin
	fin.Color = r.plan.Parts[b.part].BandLook
	m.reading = finish.Reading(&r.plan.Finish, finish.Luster(&r.plan.Finish, &fin), b.key.U(luckPullReading))
	m.low++
	if m.reading >= s.Limit {
		m.low = 0
	}
}
