package weekly

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"time"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// LoadsID is the id of the figure of crafts and places.
const LoadsID = "limits-by-week"

// Limits is the section with use and waits of each craft and place by week of
// the year. Years is how many simulated years the runs have. ok is false where
// runs do not know their weeks, as those kept by an older program.
func Limits(r *study.Runs, p *sim.Plan, years int) (s page.Section, ok bool, err error) {
	pools := r.PoolWeeks()
	if len(pools) == 0 {
		return s, false, nil
	}
	slices.SortStableFunc(pools, func(a, b study.PoolWeeks) int { return cmp.Compare(yearOf(&b), yearOf(&a)) })
	c, err := loadsFigure(r.Name, pools, p, years).Build()
	if err != nil {
		return s, false, err
	}
	return page.Section{Heading: "Crews, booths and places, week by week", Blocks: []page.Block{c, page.Table{Table: byMonth(pools, p)}}}, true, nil
}

func loadsFigure(name string, pools []study.PoolWeeks, p *sim.Plan, years int) chart.Loads {
	c := chart.Loads{Figure: chart.Figure{ID: LoadsID, Finding: limitsFinding(seasonOf(pools, p)),
		Caption: fmt.Sprintf("“%s”, mean of each week over %s. Shade: share in use, of crews the hours on shift, of places day and night. Column below: hours that boats, parts and molds wait for it in that week, all on one scale; the figure at the right is the longest. Rows with the longest waits stand first. Gaps are weeks in which the plant is shut.",
			cells.OneLine(name), simulated(years)),
		Alt: fmt.Sprintf("Grid of %d crews and places by week of the year: share in use, and hours that work waits.", len(pools))}}
	last := 0
	for i := range pools {
		for w := range pools[i].Weeks {
			if pools[i].Weeks[w].Open > 0 {
				last = max(last, w)
			}
		}
	}
	month := time.Month(0)
	for w := range last + 1 {
		d := study.WeekThursday(w)
		c.Weeks = append(c.Weeks, fmt.Sprintf("week %d, about %s", w+1, d.Format("Jan 2")))
		tick := ""
		if d.Month() != month {
			month, tick = d.Month(), d.Format("Jan")
		}
		c.Ticks = append(c.Ticks, tick)
	}
	for i := range pools {
		c.Rows = append(c.Rows, poolName(p, pools[i].Pool))
		use, wait := make([]float64, last+1), make([]float64, last+1)
		for w := range use {
			use[w], wait[w] = math.NaN(), math.NaN()
			if x := pools[i].Weeks[w]; x.Open > 0 {
				wait[w] = x.Wait
				if x.Has {
					use[w] = 100 * x.Load
				}
			}
		}
		c.Use, c.Wait = append(c.Use, use), append(c.Wait, wait)
	}
	return c
}

func simulated(years int) string {
	if years == 1 {
		return "1 simulated year"
	}
	return fmt.Sprintf("%d simulated years", years)
}

// poolName is the name of a crew or place.
func poolName(p *sim.Plan, i int) string {
	if i < len(p.Crafts) {
		return view.CrewName(p.Crafts[i].Name)
	}
	return p.Places[i-len(p.Crafts)].Name
}

// yearOf is the hours that work waits for it in an open week, over the year.
func yearOf(x *study.PoolWeeks) float64 { return mean(x, func(int) bool { return true }) }

// monthOf is the same in the weeks of a month.
func monthOf(x *study.PoolWeeks, m time.Month) float64 { return x.Wait(int(m) - 1) }

func mean(x *study.PoolWeeks, in func(week int) bool) float64 {
	sum, n := 0.0, 0
	for w := range record.WeeksOfYear {
		if k := x.Weeks[w].Open; k > 0 && in(w) {
			sum, n = sum+float64(k)*x.Weeks[w].Wait, n+k
		}
	}
	return sum / float64(max(n, 1))
}
