package sim

import "moldturn/sim/clock"

// standDown has every unit that is said to be down go down, and up, at its time.
func (r *Run) standDown(list []StartDown) {
	for _, d := range list {
		first, last := d.Unit, d.Unit
		if d.Unit == None {
			first, last = 0, int16(r.plan.Places[d.Place].Count)-1
		}
		for u := first; u <= last; u++ {
			r.watched = true
			i := int32(len(r.downs))
			r.downs = append(r.downs, StartDown{Place: d.Place, Unit: u, From: d.From, To: d.To})
			switch {
			case d.To <= r.from:
			case d.From <= r.from:
				r.goesDown(i)
			case d.From < r.plan.Length:
				r.clk.At(d.From, clock.Change, evDown, i)
			}
		}
	}
}

// goesDown takes a unit out of use until its time is over.
func (r *Run) goesDown(i int32) {
	d := &r.downs[i]
	if d.To < r.plan.Length {
		r.clk.At(d.To, clock.Change, evUp, i)
	}
	r.stopUnit(d.Place, d.Unit)
}

// comesUp gives a unit back.
func (r *Run) comesUp(i int32) {
	d := &r.downs[i]
	r.freeUnit(d.Place, d.Unit)
	if j := r.pools[r.place(d.Place)].units[d.Unit].holder; j != None {
		r.wake(j)
	}
}
