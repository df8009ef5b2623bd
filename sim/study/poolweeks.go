package study

import (
	"cmp"
	"slices"
	"time"

	"moldturn/sim/record"
)

// WaitByWeek is the hours that work waits for people and places, of an open week,
// by week of the year: the mean over all replications; 0 for weeks never open.
func (r *Runs) WaitByWeek() (hours [record.WeeksOfYear]float64) {
	for _, p := range r.PoolWeeks() {
		for w := range p.Weeks {
			hours[w] += p.Weeks[w].Wait
		}
	}
	return hours
}

// PoolWeeks is a craft or place through the year.
type PoolWeeks struct {
	Pool  int // crafts first, then places
	Weeks [record.WeeksOfYear]WeekUse
}

// WeekUse is one week of the year of a craft or place, over all replications.
type WeekUse struct {
	Open int     // weeks it is the mean of
	Load float64 // used over available hours, overtime apart
	Wait float64 // hours that work waited for it, of an open week
	Has  bool    // there were hours available
}

// Wait is the hours that work waits for it in the mean open week of some months,
// 0 … 11; a week belongs to the month of its Thursday.
func (p *PoolWeeks) Wait(months ...int) float64 {
	sum, n := 0.0, 0
	for w := range p.Weeks {
		if k := p.Weeks[w].Open; k > 0 && slices.Contains(months, int(WeekThursday(w).Month())-1) {
			sum, n = sum+float64(k)*p.Weeks[w].Wait, n+k
		}
	}
	return sum / float64(max(n, 1))
}

// WeekThursday is about the Thursday of a week of the year, 0 … 52, as
// record.Frame.WeekYear counts, in a year that begins on a Sunday.
func WeekThursday(week int) time.Time {
	return time.Date(2023, time.January, 4+7*week, 0, 0, 0, 0, time.UTC)
}

// Peak is the week, 0 … 52, in which work waits longest for it, the first of
// several, and these hours.
func (p *PoolWeeks) Peak() (week int, hours float64) {
	for w := range p.Weeks {
		if p.Weeks[w].Wait > hours {
			week, hours = w, p.Weeks[w].Wait
		}
	}
	return week, hours
}

// PoolWeeks is every craft and place with capacity by week of the year, in the
// order of the plan. Weeks that are open in fewer than half as many years as the
// most are left out, as the 53rd and those at the edge of a shutdown: Open is 0.
// Nothing where runs do not know their weeks.
func (r *Runs) PoolWeeks() []PoolWeeks {
	var open [record.WeeksOfYear]int
	var sums []record.ByWeek
	for i := range r.Outcomes {
		x := of(&r.Outcomes[i])
		for w, n := range x.OpenWeeks() {
			open[w] += n
		}
		if sums == nil {
			sums = make([]record.ByWeek, len(x.ByWeek))
		}
		for p := range x.ByWeek {
			for w := range x.ByWeek[p] {
				s, y := &sums[p][w], &x.ByWeek[p][w]
				s.Used, s.Over, s.Capacity, s.Wait = s.Used+y.Used, s.Over+y.Over, s.Capacity+y.Capacity, s.Wait+y.Wait
			}
		}
	}
	most := slices.MaxFunc(open[:], cmp.Compare[int])
	var out []PoolWeeks
	for p := range sums {
		one, has := PoolWeeks{Pool: p}, false
		for w, s := range sums[p] {
			if open[w] == 0 || 2*open[w] < most {
				continue
			}
			u := WeekUse{Open: open[w], Wait: s.Wait.Hours() / float64(open[w]), Has: s.Capacity > 0}
			if u.Has {
				u.Load, has = float64(s.Used)/float64(s.Capacity), true
			}
			one.Weeks[w] = u
		}
		if has {
			out = append(out, one)
		}
	}
	return out
}
