package cure

import "moldturn/sim/clock"

// Degree is the degree of cure along one series of mold temperatures. It is
// read-only after NewDegree and may be shared. Before and after the series it
// continues as Hours does.
type Degree struct {
	hours *Hours
	table *Table
	air   []hour
}

// hour is what the degree of cure needs to know of one hour of the series.
type hour struct {
	tempC, plateau float64
}

// NewDegree prepares the degree of cure for moldC, the temperatures that hours
// was made from, and the resin and thick-shot factor of table.
func NewDegree(moldC []float64, hours *Hours, table *Table) *Degree {
	d := &Degree{hours, table, make([]hour, len(hours.speed))}
	for i := range d.air {
		tempC := ReferenceC
		if i < len(moldC) {
			tempC = moldC[i]
		}
		d.air[i] = hour{tempC, table.p.Plateau(tempC)}
	}
	return d
}

// With is d for a part with the thick-shot factor of another table of the same
// resin; see Table.WithThick. It shares the memory of d.
func (d *Degree) With(table *Table) *Degree { return &Degree{d.hours, table, d.air} }

// At is the degree of cure at t, 0 … 1, of a shot whose last labor ended at
// start; 0 up to the end of the induction.
func (d *Degree) At(start, t clock.Time) float64 {
	return d.Advance(d.Fresh(), start, t).Degree
}

// Ready is the first instant up to limit at which a shot whose last labor ended
// at start has the degree target, to the nearest millisecond; start itself for
// a target of 0 or less. It gives limit and false when that is too late or the
// shop stays too cold: the plateau may lie below the target for ever.
func (d *Degree) Ready(start clock.Time, target float64, limit clock.Time) (t clock.Time, ok bool) {
	return d.ReadyFrom(d.Fresh(), start, target, limit)
}

// begin is where cure starts after left equivalent hours of induction: the
// hour, and the equivalent hours from the start of that hour.
func (d *Degree) begin(start clock.Time, left float64) (i int, from float64) {
	h := d.hours
	i = h.hour(start)
	from = h.into(i, start) + left
	j := h.find(i, h.sum[i]+from)
	return j, from - (h.sum[j] - h.sum[i])
}

// rest is the degree at the end of hour i, from degree a at from equivalent
// hours into it.
func (d *Degree) rest(i int, from, a float64) float64 {
	air := &d.air[i]
	if a >= air.plateau {
		return a
	}
	if from == 0 && d.table.hourly.covers(air.tempC, a) {
		return d.table.hourly.after(air.tempC, air.plateau, a)
	}
	return d.part(i, from, d.hours.speed[i], a)
}

// part is the degree at to, from degree a at from, both in equivalent hours
// from the start of hour i.
func (d *Degree) part(i int, from, to, a float64) float64 {
	if to <= from || a >= d.air[i].plateau {
		return a
	}
	s := d.scale(i)
	return d.table.after(&s, a, (to-from)/d.table.p.Thick)
}

func (d *Degree) scale(i int) scale {
	return newScale(d.table.p.At25(d.air[i].plateau))
}

// instant is when the degree that was a at from reaches target, at to the
// latest, all in hour i.
func (d *Degree) instant(i int, from, to, a, target float64) clock.Time {
	s, thick := d.scale(i), d.table.p.Thick
	time, ok := d.table.between(&s, a, target)
	if !ok {
		time = d.table.search(&s, a, target, (to-from)/thick)
	}
	into := min(from+time*thick, to) / d.hours.speed[i]
	return clock.Time(i)*clock.Hour + clock.FromHours(into)
}
