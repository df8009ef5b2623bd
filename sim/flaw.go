package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/record"
)

// Flaws are drawn when what drives them is over: those of the gel coat when it
// is sprayed, alligatoring when it is laminated on, the others at the pull. A
// stuck part is seen at once, the rest at the first inspection, or never.

// flawLuck is a part's own stream for a defect; a part that is sprayed again
// has another.
func (b *job) flawLuck(i int) draw.Key {
	return b.key.At2(luckFlaw, uint64(i), uint64(b.piece.made.sprays))
}

// flaw draws whether a part has each of some defects.
func (r *Run) flaw(b *job, kinds ...int) {
	p := r.plan.Defects
	if p == nil {
		return
	}
	past := &r.fact.past
	*past = r.history(b)
	m := &b.piece.made
	for _, i := range kinds {
		m.flaws &^= 1 << i
		if b.flawLuck(i).U(0) < defect.Chance(p, i, past)*r.newHands(b) {
			m.flaws |= 1 << i
		}
	}
}

// history is what defects may depend on, as far as it has happened.
func (r *Run) history(b *job) defect.Part {
	m := &b.piece.made
	h := defect.Part{Film: r.plan.Film, SprayC: m.sprayC, Humidity: m.humidity, Window: b.piece.late}
	if b.mold == None {
		return h
	}
	x := &r.molds[b.mold]
	h.MissingCoats, h.BuildUp, h.AfterStrip = float64(max(1-x.coats, 0)), x.buildUp, x.stripped
	if k := r.plan.BreakIn.Turns(); x.breakIn > 0 && int(x.breakIn) <= k {
		h.BreakIn = k - int(x.breakIn) + 1
	}
	h.PullC = r.air.MoldC(int(m.area), r.clk.Now())
	h.CureC = h.PullC
	for t := m.skinned; t > 0 && t < r.clk.Now(); t += clock.Hour {
		h.CureC = max(h.CureC, r.air.MoldC(int(m.area), t))
	}
	h.Green = b.piece.fin.Green
	return h
}

// sprayedIn keeps the air a part was sprayed in and draws the flaws of the
// spray.
func (r *Run) sprayedIn(b *job, area int) {
	m := &b.piece.made
	m.sprayC, m.humidity = r.air.MoldC(area, r.clk.Now()), r.air.RH(area, r.clk.Now())
	r.flaw(b, defect.Porosity, defect.Sag)
}

// inspectFlaws is the first look at a part for flaws: what is found is to be
// put right, or the part is thrown away. It gives false when the job has ended.
func (r *Run) inspectFlaws(j int32) bool {
	b := &r.jobs[j]
	m := &b.piece.made
	p := r.plan.Defects
	if p == nil || m.seen {
		return true
	}
	m.seen = true
	scrap := false
	for i := range defect.Count {
		if m.flaws&(1<<i) == 0 || i == defect.Sticking {
			continue
		}
		out := defect.Look(p, i, b.flawLuck(i))
		kind := record.FlawFound
		switch {
		case !out.Found:
			kind = record.FlawMissed
			m.missed |= 1 << i
		case out.Scrap:
			scrap = true
		}
		m.mend += out.Hours
		r.note(record.Note{Kind: kind, Of: int16(i), Order: b.order, Mold: None, Part: b.part, Place: None, Value: out.Hours})
	}
	if scrap {
		r.scrap(j, None)
		return false
	}
	return true
}

// scrap throws a part away; its order goes back to the head.
func (r *Run) scrap(j, mold int32) {
	b := &r.jobs[j]
	order, part := b.order, b.part
	r.note(record.Note{Kind: record.Scrapped, Order: order, Mold: mold, Part: part, Place: None})
	r.releaseAll(j)
	r.endJob(j)
	r.redo(order, part, r.plan.Parts[part].Index)
}

func (r *Run) verbTouchedUp(j int32) bool {
	b := &r.jobs[j]
	r.note(record.Note{Kind: record.TouchedUp, Order: b.order, Mold: None, Part: b.part, Place: None, Value: b.piece.made.mend})
	b.piece.made.mend = 0
	return true
}

// join takes what is known of a part over to its boat.
func (r *Run) join(boat, part *job) {
	m := &boat.piece.made
	m.missed |= part.piece.made.missed
	if !r.plan.Parts[part.part].Visible {
		return
	}
	shown := part.piece.luster
	if fin := &part.piece.fin; fin.Green > 0 || fin.Buffs > 0 {
		fin.Since = clock.Never // the part is no more after this
		shown = finish.Luster(&r.plan.Finish, fin)
	}
	if m.shown == 0 || shown < m.shown {
		m.shown = shown
	}
}

// escapes fills in what a customer will see of a boat that is shipped.
func (r *Run) escapes(b *job, f *record.Ship) {
	m := &b.piece.made
	f.Missed, f.Shown = m.missed, m.shown
	if m.shown == 0 {
		f.Shown = f.Luster
	}
	dull := f.Shown < r.plan.Rework.Target-r.plan.Rework.Slack
	if f.Escaped = dull || m.missed != 0; f.Escaped {
		r.note(record.Note{Kind: record.Escaped, Order: b.order, Mold: None, Part: None, Place: None, Value: r.plan.Rework.Target - f.Shown})
	}
}
