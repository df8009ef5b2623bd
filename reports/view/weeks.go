package view

import (
	"fmt"
	"math"
	"time"

	"moldturn/reports/chart"
	"moldturn/sim/record"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// weeksOfYear is how many weeks a year can touch, counted from 1 January.
const weeksOfYear = 53

// Weeks is boats shipped by week of the year over all simulated years of an
// alternative: the mean, and the band from the 10th to the 90th percentile.
// Weeks that are shut down leave gaps. ok is false where no week was open.
func (s *Study) Weeks(i int) (c chart.Band, ok bool) {
	a := &s.Alternatives[i]
	boats := byWeek(&a.Runs)
	places := lastWeek(boats)
	if places < 2 {
		return c, false
	}
	c = chart.Band{
		Figure: chart.Figure{ID: fmt.Sprintf("weeks-%d", i+1), Finding: season(quoted(a.Name), quarters(&a.Runs)),
			Caption: fmt.Sprintf("%s over %d simulated years, with orders always waiting. Gaps are weeks in which the plant is shut.", quoted(a.Name), s.SimulatedYears()),
			Alt:     "Line of boats shipped in each week of the year, with a band around it."},
		XTitle: "week that begins about", Y: chart.Axis{Name: "boats shipped", Unit: "a week", Digits: 1, Zero: true},
		Middle: "mean", Range: "8 years in 10", Series: make([]chart.Ribbon, 1),
	}
	if x, ok := a.Summary(metric("orders_per_week")); ok {
		goal, words := ordersLine(&a.Plan.Demand, x.Mean, places)
		c.Goals, c.Caption = []chart.Goal{goal}, c.Caption+words
	}
	r := &c.Series[0]
	for w := range places {
		c.X = append(c.X, WeekName(w))
		low, middle, high := math.NaN(), math.NaN(), math.NaN()
		if len(boats[w]) > 0 {
			q := stats.Quantiles(boats[w], 0.1, 0.9)
			low, middle, high = q[0], stats.Mean(boats[w]), q[1]
		}
		r.Low, r.Middle, r.High = append(r.Low, low), append(r.Middle, middle), append(r.High, high)
	}
	return c, true
}

// WeekName is the day on which week w of a year, 0 first, begins, but for the weekday: of
// the years that are shown together each has its own.
func WeekName(w int) string {
	return time.Date(2027, time.January, 1+7*w, 0, 0, 0, 0, time.UTC).Format("Jan 2")
}

// byWeek is the boats shipped in each open week, by week of the year. Weeks
// that are open in fewer than half as many years as the most are left out: the
// 53rd, and those at the edge of a shutdown.
func byWeek(r *study.Runs) [weeksOfYear][]float64 {
	var out [weeksOfYear][]float64
	fullest := 0
	for i := range r.Outcomes {
		x := capacity(&r.Outcomes[i])
		for k, w := range x.WeekYear {
			if x.WeekOpen[k] {
				out[w] = append(out[w], float64(x.WeekShips[k]))
				fullest = max(fullest, len(out[w]))
			}
		}
	}
	for w := range out {
		if 2*len(out[w]) < fullest {
			out[w] = nil
		}
	}
	return out
}

func lastWeek(boats [weeksOfYear][]float64) int {
	last := 0
	for w := range boats {
		if len(boats[w]) > 0 {
			last = w + 1
		}
	}
	return last
}

// capacity is the run with orders always waiting, or else the only one.
func capacity(o *study.Outcome) *record.Result {
	if o.Capacity != nil {
		return o.Capacity
	}
	return o.Dated
}

// quarters is boats per open week by quarter of the year, one of each
// replication; none of a quarter in which some replication was never open.
func quarters(r *study.Runs) [4][]float64 {
	var out [4][]float64
	for q := range out {
		for i := range r.Outcomes {
			x := capacity(&r.Outcomes[i])
			boats, open := 0, 0
			for m := 3 * q; m < 3*q+3; m++ {
				boats, open = boats+x.MonthShip[m], open+x.MonthOpen[m]
			}
			if open == 0 {
				out[q] = nil
				break
			}
			out[q] = append(out[q], float64(boats)/float64(open))
		}
	}
	return out
}

// quarterNames are the quarters in words.
var quarterNames = [4]string{"January to March", "April to June", "July to September", "October to December"}

// season says which quarter ships fewest boats, where that is clear even though
// the two were picked from the six pairs there are.
func season(name string, quarters [4][]float64) string {
	slow, fast := -1, -1
	for q := range quarters {
		if len(quarters[q]) == 0 {
			continue
		}
		if slow < 0 || stats.Mean(quarters[q]) < stats.Mean(quarters[slow]) {
			slow = q
		}
		if fast < 0 || stats.Mean(quarters[q]) > stats.Mean(quarters[fast]) {
			fast = q
		}
	}
	if slow >= 0 && slow != fast {
		d := stats.Paired(quarters[fast], quarters[slow], stats.Bonferroni(study.Confidence, 6))
		if d.Clear {
			return fmt.Sprintf("%s: from %s an open week ships %s fewer boats than from %s", name, quarterNames[slow],
				fixed(d.Mean, decimals(d.Half, 2)), quarterNames[fast])
		}
	}
	return name + ": no season is clearly slower than another"
}
