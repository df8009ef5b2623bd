package cure

import "moldturn/sim/clock"

// Progress is how far the last shot of a part has cured. It is plain data, so a
// part may go on curing in a place with other temperatures.
type Progress struct {
	Left   float64 // equivalent hours of the induction still to come
	Degree float64 // of cure, 0 … 1
}

// Fresh is a shot whose last labor ends now.
func (d *Degree) Fresh() Progress { return Progress{Left: d.table.p.Induction * d.table.p.Thick} }

// Advance is what becomes of p by to along the series of d, for a shot that had
// p at from; p itself when to is not after from. The degree never falls.
func (d *Degree) Advance(p Progress, from, to clock.Time) Progress {
	if to <= from {
		return p
	}
	if p.Left > 0 {
		if passed := d.hours.Equivalent(from, to); passed <= p.Left {
			p.Left -= passed
			return p
		}
	}
	i, begin := d.begin(from, p.Left)
	a, last := p.Degree, d.hours.hour(to)
	for ; i < last; i++ {
		a = d.rest(i, begin, a)
		begin = 0
	}
	return Progress{Degree: d.part(last, begin, d.hours.into(last, to), a)}
}

// ReadyFrom is the first instant up to limit at which a shot that had p at from
// has the degree target, as Ready.
func (d *Degree) ReadyFrom(p Progress, from clock.Time, target float64, limit clock.Time) (t clock.Time, ok bool) {
	if target <= p.Degree && from <= limit {
		return from, true
	}
	i, begin := d.begin(from, p.Left)
	last := d.hours.hour(limit)
	a := p.Degree
	for ; i <= last; i++ {
		before, to := a, d.hours.speed[i]
		if i < last {
			a = d.rest(i, begin, a)
		} else {
			to = d.hours.into(i, limit)
			a = d.part(i, begin, to, a)
		}
		if a >= target {
			return d.instant(i, begin, to, before, target), true
		}
		begin = 0
	}
	return limit, false
}

// Reference is the degree of a part pulled in good time: after Params.DoneAfter
// at Params.DoneC. What a part lacks of it at the pull makes it green.
func (t *Table) Reference() float64 {
	shop := []float64{t.p.DoneC}
	return NewDegree(shop, NewHours(shop, t.p), t).At(0, clock.FromHours(t.p.DoneAfter))
}

// Params is the resin of the table.
func (t *Table) Params() Params { return t.p }
