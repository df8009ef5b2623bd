package study

import (
	"slices"

	"moldturn/sim/stats"
)

// Worth is what one step of a lever does to boats a week: over the year and in
// single months, each as a paired difference from the base.
type Worth struct {
	Run    int // index of its run
	Lever  int // index of the lever
	Steps  int // +1 or -1
	Year   stats.Difference
	Months [12]stats.Difference
	Money  stats.Difference // contribution a week; Known only where the study has it
	Priced bool
}

// RankWorth makes a Worth of every run but the first, which is the base: run
// i+1 moved lever levers[i] by steps[i]. Intervals hold together for all of
// them (Bonferroni). Rows come in the order of what they add over the year,
// most first.
func RankWorth(runs []Runs, levers, steps []int) []Worth {
	boats, _ := MetricNamed("boats_per_week")
	money, priced := MetricNamed("contribution_per_week")
	k := len(runs) - 1
	var out []Worth
	for i := range k {
		r := &runs[i+1]
		w := Worth{Run: i + 1, Lever: levers[i], Steps: steps[i]}
		w.Year, _ = r.Together(&runs[0], &boats, k)
		for m := range w.Months {
			metric := Metric{Of: func(o *Outcome) (float64, bool) { return boatsIn(o, m) }}
			w.Months[m], _ = r.Together(&runs[0], &metric, k)
		}
		if priced {
			w.Money, w.Priced = r.Together(&runs[0], &money, k)
		}
		out = append(out, w)
	}
	slices.SortStableFunc(out, func(a, b Worth) int {
		switch {
		case a.Year.Mean > b.Year.Mean:
			return -1
		case a.Year.Mean < b.Year.Mean:
			return 1
		}
		return 0
	})
	return out
}

// boatsIn is boats shipped a week in the open weeks of one month.
func boatsIn(o *Outcome, month int) (float64, bool) {
	r := of(o)
	return ratio(float64(r.MonthShip[month]), float64(r.MonthOpen[month]))
}
