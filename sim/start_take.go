package sim

import (
	"cmp"
	"math"
	"slices"

	"moldturn/sim/clock"
)

// TakeStock writes the plant down as it stands now, as a shop does: what is
// where since when, not what luck has in store. A run that begins from it has
// other futures, of which the one of this run is one; see Snapshot for the very
// same. Molds that were drawn are told with their counters.
func (r *Run) TakeStock() *Start {
	s := &Start{At: r.clk.Now(), Out: r.outs, Pieces: make([]int, len(r.plan.Background))}
	rows := map[int32]int32{} // by row of an order: its number in s
	for number := int32(0); number < r.made; number++ {
		for i := range r.orders {
			if o := &r.orders[i]; o.number == number && !o.ended {
				rows[int32(i)] = int32(len(s.Orders))
				row := StartOrder{Model: o.model, Color: o.color, Band: o.band, Arrived: o.arrived, Began: Unknown, Due: o.due, Urgent: o.urgent}
				if o.onFloor {
					row.Began = o.began
				}
				s.Orders = append(s.Orders, row)
			}
		}
	}
	for i := range r.molds {
		s.Molds = append(s.Molds, r.stockOfMold(int32(i)))
	}
	for _, j := range r.oldestFirst() {
		b := &r.jobs[j]
		begun, left := r.progress(b)
		switch b.kind {
		case partJob, boatJob:
			w := StartWork{Order: rows[b.order], Part: b.part, Mold: b.mold, Step: b.step, Begun: begun, Since: Unknown, Left: left}
			if begun == Unknown && b.state != stored {
				w.Since = b.asked
			}
			r.times(b, &w)
			s.Work = append(s.Work, w)
			if b.mold != None {
				s.Molds[b.mold].Stands = MoldWithPart
			}
		case backgroundJob:
			s.Pieces[slices.IndexFunc(r.plan.Background, func(g Background) bool { return g.Route == b.route })]++
		case careJob:
			m := &s.Molds[b.mold]
			m.Stands, m.Step, m.Begun, m.Left, m.When = MoldInCare, b.step, begun, left, b.asked
		}
	}
	s.Molds = slices.DeleteFunc(s.Molds, func(m StartMold) bool { // the plan says when it comes
		return m.Stands == MoldAway && r.plan.Molds[m.Mold].Arrives > s.At
	})
	s.Down = r.stockOfDown()
	return s
}

// stockOfDown is what is down now or will be. Of what broke down by itself half a
// usual repair is thought to be over; gun sets are not told.
func (r *Run) stockOfDown() []StartDown {
	var out []StartDown
	for _, d := range r.downs {
		if d.To > r.clk.Now() {
			out = append(out, d)
		}
	}
	for f := range r.fails {
		if fail := &r.plan.Failures[f]; r.fails[f].down && fail.Gun == None {
			to := r.clk.Now() + clock.FromHours(fail.Repair.Quantile(0.5)/2)
			out = append(out, StartDown{Place: fail.Place, Unit: fail.Unit, From: r.clk.Now(), To: max(to, r.clk.Now()+1)})
		}
	}
	return out
}

// oldestFirst lists the jobs by since when they are in their state, the older job
// first where that is the same.
func (r *Run) oldestFirst() []int32 {
	var out []int32
	for j := range r.jobs {
		if r.jobs[j].state != unused {
			out = append(out, int32(j))
		}
	}
	slices.SortFunc(out, func(i, k int32) int {
		a, b := &r.jobs[i], &r.jobs[k]
		return cmp.Or(cmp.Compare(r.standsSince(a), r.standsSince(b)), cmp.Compare(a.serial, b.serial))
	})
	return out
}

func (r *Run) standsSince(b *job) clock.Time {
	switch {
	case b.state == working || b.resumed:
		return b.begun
	case b.state == timed || b.state == stored:
		return b.since
	}
	return b.asked
}

func (r *Run) stockOfMold(i int32) StartMold {
	m := &r.molds[i]
	s := StartMold{Mold: i, Turns: int(m.turns), Since: int(m.since), Surface: m.surface, Reading: m.reading, When: m.at, Begun: Unknown, Left: Unknown, Back: Unknown}
	switch m.state {
	case resting:
		s.Stands = MoldInReserve
	case gone:
		s.Stands = MoldAway
		if m.replaced > 0 {
			s.Back = m.readyAt
		}
	case ready:
		s.Stands, s.When = MoldReady, m.readyAt
	}
	return s
}

// progress is when the present step of a job was begun, and the hours it still
// takes.
func (r *Run) progress(b *job) (begun clock.Time, left float64) {
	now := r.clk.Now()
	switch {
	case b.state == working:
		worked := now - b.since
		if b.pace != 1 {
			worked = clock.Time(math.Round(float64(worked) / b.pace))
		}
		return min(b.begun, now), max(b.left-worked, 0).Hours()
	case b.resumed:
		return b.begun, b.left.Hours()
	case b.state == timed:
		if r.step(b).Pace == ByPolicy {
			return b.since, Unknown // from the end of the last labor
		}
		return b.since, max(b.ends-now, 0).Hours()
	}
	return Unknown, Unknown
}

// times are the instants of a part that a traveler has.
func (r *Run) times(b *job, w *StartWork) {
	w.Sprayed, w.Skinned, w.Laminated = Unknown, Unknown, Unknown
	p := &b.piece
	switch {
	case b.kind != partJob:
		return
	case p.sprayed > 0:
		w.Sprayed = p.sprayed
	case p.made.skinned > 0:
		w.Sprayed = p.made.skinned - clock.FromHours(p.late)
	}
	if p.made.skinned > 0 {
		w.Skinned = p.made.skinned
	}
	if p.laborEnded > 0 {
		w.Laminated = p.laborEnded
	}
}
