package study

import (
	"cmp"
	"slices"

	"moldturn/sim/permit"
	"moldturn/sim/stats"
)

// Permits is a plant's permit ledger over replications. There is at least one.
type Permits struct {
	Setup   *permit.Setup
	Counts  []*permit.Counts
	Ledgers []*permit.Ledger
}

// NewPermits makes the ledgers of what was counted in each replication.
func NewPermits(s *permit.Setup, counts []*permit.Counts) *Permits {
	p := &Permits{Setup: s, Counts: counts}
	for _, c := range counts {
		p.Ledgers = append(p.Ledgers, s.Ledger(c))
	}
	return p
}

// PermitMonth is one month-end over replications. Masses are in kg.
type PermitMonth struct {
	Month      permit.Month
	HAP, Boats float64 // means of the month
	Known      bool    // the twelve months up to its end are known

	// Of the twelve months: the estimate of HAP in the air, its mean and the
	// range of 8 replications in 10.
	Rolling, Low, High float64

	Emissions, Limit float64 // means of the averaging of Subpart VVVV
	Worst            float64 // the largest emissions over limit
	Fails            int     // replications that do not keep to Subpart VVVV
	Over             int     // replications above the cap
	Major            int     // replications at a threshold of a major source
}

// Months are the month-ends in order.
func (p *Permits) Months() []PermitMonth {
	var out []PermitMonth
	for n := range p.Ledgers[0].Months {
		out = append(out, p.month(n))
	}
	return out
}

func (p *Permits) month(n int) PermitMonth {
	first := &p.Ledgers[0].Months[n]
	m := PermitMonth{Month: first.Month, Known: first.Known}
	var hap, boats, rolling, emissions, limits []float64
	for _, l := range p.Ledgers {
		x := &l.Months[n]
		hap, boats = append(hap, x.HAP), append(boats, float64(x.Boats))
		if !m.Known {
			continue
		}
		rolling, emissions, limits = append(rolling, x.Rolling), append(emissions, x.Average.Emissions), append(limits, x.Average.Limit)
		if x.Average.Limit > 0 {
			m.Worst = max(m.Worst, x.Average.Emissions/x.Average.Limit)
		}
		m.Fails += count(!x.Complies())
		m.Over += count(p.Setup.Cap > 0 && x.Rolling > p.Setup.Cap)
		m.Major += count(permit.Major(x.One, x.Rolling))
	}
	m.HAP, m.Boats = stats.Mean(hap), stats.Mean(boats)
	if m.Known {
		q := stats.Quantiles(rolling, 0.1, 0.9)
		m.Rolling, m.Low, m.High = stats.Mean(rolling), q[0], q[1]
		m.Emissions, m.Limit = stats.Mean(emissions), stats.Mean(limits)
	}
	return m
}

func count(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// PerYear is the HAP of a year over replications, kg.
func (p *Permits) PerYear() stats.Summary {
	return p.over(func(l *permit.Ledger) (float64, bool) { return l.PerYear(), len(l.Months) > 0 })
}

// PerBoat is the HAP of a boat over replications, kg.
func (p *Permits) PerBoat() stats.Summary { return p.over((*permit.Ledger).PerBoat) }

// Left is how many boats the fullest twelve months could hold on top under a
// cap in kg.
func (p *Permits) Left(limit float64) stats.Summary {
	return p.over(func(l *permit.Ledger) (float64, bool) { return l.Left(limit) })
}

func (p *Permits) over(of func(*permit.Ledger) (float64, bool)) stats.Summary {
	var xs []float64
	for _, l := range p.Ledgers {
		if x, ok := of(l); ok {
			xs = append(xs, x)
		}
	}
	return stats.TInterval(xs, Confidence)
}

// Crossings are the replications by the number of the month in which they first
// pass a cap in kg; never counts those that do not.
func (p *Permits) Crossings(limit float64) (byMonth []int, never int) {
	byMonth = make([]int, len(p.Ledgers[0].Months))
	for _, l := range p.Ledgers {
		if n := l.Crossed(limit); n >= 0 {
			byMonth[n]++
		} else {
			never++
		}
	}
	return byMonth, never
}

// PermitLever is what a lever saves, on the same counts.
type PermitLever struct {
	Name      string
	Saves     stats.Summary // kg of HAP a year
	Room      stats.Summary // boats more under the cap; not known without one
	Complying bool          // every known month-end of every replication keeps to Subpart VVVV
}

// Levers are the levers that apply, those that save most first.
func (p *Permits) Levers() []PermitLever {
	var out []PermitLever
	for _, lever := range p.Setup.Levers() {
		moved := NewPermits(lever.Setup, p.Counts)
		x := PermitLever{Name: lever.Name, Complying: moved.Complying()}
		var saves, room []float64
		for i, l := range moved.Ledgers {
			base := p.Ledgers[i]
			saves = append(saves, base.PerYear()-l.PerYear())
			before, ok := base.Left(p.Setup.Cap)
			after, known := l.Left(p.Setup.Cap)
			if p.Setup.Cap > 0 && ok && known {
				room = append(room, after-before)
			}
		}
		x.Saves, x.Room = stats.TInterval(saves, Confidence), stats.TInterval(room, Confidence)
		out = append(out, x)
	}
	slices.SortStableFunc(out, func(a, b PermitLever) int { return cmp.Compare(b.Saves.Mean, a.Saves.Mean) })
	return out
}

// Complying tells whether every known month-end of every replication keeps to
// Subpart VVVV.
func (p *Permits) Complying() bool {
	for _, l := range p.Ledgers {
		for i := range l.Months {
			if m := &l.Months[i]; m.Known && !m.Complies() {
				return false
			}
		}
	}
	return true
}

// Material is the use of material i in a year and the HAP of it, kg, means over
// replications.
func (p *Permits) Material(i int) (kg, hap float64) {
	months := 0
	for _, l := range p.Ledgers {
		for _, m := range l.Months {
			used := float64(m.Grams[i]) / 1000
			kg += used
			hap += p.Setup.Materials[i].Emitted(used)
			months++
		}
	}
	if months == 0 {
		return 0, 0
	}
	k := permit.Year / float64(months)
	return kg * k, hap * k
}
