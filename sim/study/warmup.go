package study

import (
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/stats"
)

// WarmUp is a look at whether the weeks left out at the start are enough.
//
// Boats a week are held against the mean of the same week of the year over the
// counted years, so that the seasons do not look like a warm-up. Averaged over
// replications, these deviations go through MSER-5 (White, Cobb and Spratt 2000,
// see stats.MSER5). Whole years are left out whatever the rule says; the rule
// only tells whether one more is needed.
type WarmUp struct {
	Weeks  []Week // open whole weeks of the run, in order
	Cut    int    // index in Weeks of the first counted week
	Settle int    // index of the first week that MSER-5 would keep

	// Known is false if the rule cannot tell: fewer than two counted years, no
	// week open in two of them, or no end of the unrest in half the run.
	Known bool

	// Short is true if boats a week were still changing after the cut: MSER-5
	// would leave out more weeks, and what it would leave out differs clearly
	// from what follows (paired by replication).
	Short bool

	// Late is boats a week, less the weeks of the year's mean, from the cut to
	// Settle less that after Settle; not Known where Settle is not after Cut.
	Late stats.Difference
}

// Week is one week of a run.
type Week struct {
	Number    int     // from the Monday on or before the start, 0 first
	Boats     float64 // shipped, mean over replications
	Deviation float64 // Boats less the mean of the same week of the counted years
}

// WarmUp looks at the runs with orders always waiting, or the only ones. Where
// several alternatives are looked at, their intervals hold together
// (Bonferroni), so that many alternatives do not make a warning.
func (r *Runs) WarmUp(several int) WarmUp {
	if len(r.Outcomes) == 0 {
		return WarmUp{}
	}
	var series [][]int // by replication: boats by week
	for i := range r.Outcomes {
		series = append(series, of(&r.Outcomes[i]).RunShips)
	}
	return warmUp(&of(&r.Outcomes[0]).Frame, series, stats.Bonferroni(Confidence, several))
}

// warmUp judges boats by week of several replications of one frame.
func warmUp(f *record.Frame, series [][]int, confidence float64) WarmUp {
	var w WarmUp
	weeks, means := yearMeans(f, series)
	deviations := make([][]float64, len(series))
	for _, n := range weeks {
		if n < f.Counted() {
			w.Cut++
		}
		week := Week{Number: n}
		for i, ships := range series {
			boats := float64(ships[n])
			week.Boats += boats / float64(len(series))
			deviations[i] = append(deviations[i], boats-means[f.WeekYear(n)])
		}
		week.Deviation = week.Boats - means[f.WeekYear(n)]
		w.Weeks = append(w.Weeks, week)
	}
	w.judge(deviations, confidence)
	w.Known = w.Known && f.To-f.From >= 2*year
	w.Short = w.Short && w.Known
	return w
}

// year is the shortest a year can be.
const year = 365 * clock.Day

// judge applies the rule to deviations by replication and week.
func (w *WarmUp) judge(deviations [][]float64, confidence float64) {
	all := make([]float64, len(w.Weeks))
	for i := range all {
		all[i] = w.Weeks[i].Deviation
	}
	m := stats.MSER5(all)
	w.Settle, w.Known = m.Drop, !m.Short
	if w.Settle <= w.Cut || w.Settle >= len(all) {
		return
	}
	early, late := make([]float64, len(deviations)), make([]float64, len(deviations))
	for i, d := range deviations {
		early[i], late[i] = stats.Mean(d[w.Cut:w.Settle]), stats.Mean(d[w.Settle:])
	}
	w.Late = stats.Paired(early, late, confidence)
	w.Short = w.Late.Clear
	if m.Short && w.Late.Clear {
		w.Known = true // no end of the unrest, and it is no luck
	}
}

// yearMeans gives the open weeks that lie wholly in the run and whose week of
// the year was open in two counted years at least, and the mean boats of each
// week of the year over replications and counted years.
func yearMeans(f *record.Frame, series [][]int) (weeks []int, means [weeksOfYear]float64) {
	var sum, count [weeksOfYear]float64
	var years [weeksOfYear]int
	first, end := f.WholeWeeks()
	for n := max(first, f.Counted()); n < end; n++ {
		if f.IsShut(n) {
			continue
		}
		y := f.WeekYear(n)
		years[y]++
		for _, ships := range series {
			sum[y] += float64(ships[n])
			count[y]++
		}
	}
	for y := range means {
		means[y] = sum[y] / math.Max(count[y], 1)
	}
	for n := first; n < end; n++ {
		if !f.IsShut(n) && years[f.WeekYear(n)] >= 2 {
			weeks = append(weeks, n)
		}
	}
	return weeks, means
}

// weeksOfYear is how many weeks a year can touch.
const weeksOfYear = 53
