package permit

import "slices"

// Ledger is what the counted months of one run mean, seen at the end of each.
type Ledger struct {
	Months []MonthEnd
	HAP    float64 // kg estimated to go into the air in all counted months
	Boats  int64   // shipped in them
}

// MonthEnd is one calendar month with its look back over twelve months.
type MonthEnd struct {
	Month Month
	Grams []int64 // used in the month, by material
	HAP   float64 // kg estimated to go into the air in the month
	Boats int64   // shipped in the month

	Known   bool    // all twelve months up to this end are known; the rest is zero otherwise
	Used    []int64 // grams in twelve months, by material
	Rolling float64 // kg of HAP estimated to go into the air in them
	One     float64 // of that, the largest single HAP of each material
	Average Average
	Content []Content // of the materials that are judged by content
	Groups  []Content // of all materials, as if all were judged by content
}

// Ledger makes the ledger of one run's counts.
func (s *Setup) Ledger(c *Counts) *Ledger {
	l := &Ledger{}
	past, known := s.past()
	first := s.Plant.First()
	for n := first; n < min(s.Plant.End(), len(c.Months)); n++ {
		m := MonthEnd{Month: s.Plant.Month(n), Grams: s.Grams(&c.Months[n])}
		for _, boats := range c.Months[n].Shipped {
			m.Boats += boats
		}
		m.HAP = s.emitted(m.Grams)
		past = append(past, m.Grams)
		if known || n-first+1 >= Year {
			s.look(&m, past[len(past)-Year:])
		}
		l.HAP += m.HAP
		l.Boats += m.Boats
		l.Months = append(l.Months, m)
	}
	return l
}

// past is the use of the twelve months before the counted time, in grams; known
// is false where the plant has not given it.
func (s *Setup) past() (months [][]int64, known bool) {
	for i := range s.Materials {
		known = known || s.Materials[i].Before != nil
	}
	if !known {
		return nil, false
	}
	for k := range Year {
		grams := make([]int64, len(s.Materials))
		for i := range s.Materials {
			if b := s.Materials[i].Before; b != nil {
				grams[i] = int64(1000*b[k] + 0.5)
			}
		}
		months = append(months, grams)
	}
	return months, true
}

// look fills in what twelve months mean at their end.
func (s *Setup) look(m *MonthEnd, months [][]int64) {
	m.Known = true
	m.Used = make([]int64, len(s.Materials))
	for _, grams := range months {
		for i, g := range grams {
			m.Used[i] += g
		}
	}
	var averaged []Applied
	var byContent, all []Portion
	for i := range s.Materials {
		x := &s.Materials[i]
		kg := float64(m.Used[i]) / 1000
		hap := x.Emitted(kg)
		m.Rolling += hap
		m.One += hap * x.largest()
		p := Portion{x.Operation, x.Method, kg / kgPerMg, x.HAP}
		all = append(all, p)
		if x.Averaged {
			averaged = append(averaged, Applied{x.Operation, p.Mg, x.Point()})
		} else {
			byContent = append(byContent, p)
		}
	}
	m.Average = AverageOf(averaged)
	m.Content, m.Groups = ContentOf(byContent), ContentOf(all)
}

// emitted is the estimate for grams of each material, kg.
func (s *Setup) emitted(grams []int64) float64 {
	sum := 0.0
	for i := range s.Materials {
		sum += s.Materials[i].Emitted(float64(grams[i]) / 1000)
	}
	return sum
}

// Complies tells whether the plant keeps to Subpart VVVV at the month's end, as
// far as the ledger can tell: the averaging, and each group judged by content.
func (m *MonthEnd) Complies() bool {
	for i := range m.Content {
		if !m.Content[i].Complies() {
			return false
		}
	}
	return m.Average.Complies()
}

// Highest is the number of the month whose twelve months have the most HAP, -1
// when no month knows its twelve.
func (l *Ledger) Highest() int {
	best := -1
	for i := range l.Months {
		if l.Months[i].Known && (best < 0 || l.Months[i].Rolling > l.Months[best].Rolling) {
			best = i
		}
	}
	return best
}

// Crossed is the number of the first month whose twelve months have more HAP
// than a cap in kg, -1 for none.
func (l *Ledger) Crossed(limit float64) int {
	return slices.IndexFunc(l.Months, func(m MonthEnd) bool { return m.Known && m.Rolling > limit })
}

// PerBoat is the kg of HAP for one boat shipped, everything counted; false when
// none was.
func (l *Ledger) PerBoat() (float64, bool) {
	if l.Boats == 0 {
		return 0, false
	}
	return l.HAP / float64(l.Boats), true
}

// Left is how many boats more, at the present mix, the twelve months with the
// most HAP could hold under a cap in kg; below zero when they are over it. ok is
// false when no month knows its twelve or no boat was shipped.
func (l *Ledger) Left(limit float64) (boats float64, ok bool) {
	i := l.Highest()
	per, some := l.PerBoat()
	if i < 0 || !some || per <= 0 {
		return 0, false
	}
	return (limit - l.Months[i].Rolling) / per, true
}

// PerYear is the kg of HAP of a year of the counted months.
func (l *Ledger) PerYear() float64 {
	if len(l.Months) == 0 {
		return 0
	}
	return l.HAP * Year / float64(len(l.Months))
}
