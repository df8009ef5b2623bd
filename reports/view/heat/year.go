package heat

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim/climate"
	"moldturn/sim/param/unit"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// quarter is the number of weeks of a quarter.
const quarter = 13

// weeksOf is the weeks of the year over all replications.
func weeksOf(r *study.Runs) (out [record.WeeksOfYear]record.Heat) {
	for _, x := range runs(r) {
		for w := range out {
			out[w] = out[w].Plus(x.Heat[w])
		}
	}
	return out
}

// usual is the weeks in which parts are pulled often enough to be drawn: at
// least a fourth as many as in the busiest. The others are shut down, or are
// seldom in a year.
func usual(weeks *[record.WeeksOfYear]record.Heat) (at []int) {
	most := 0
	for w := range weeks {
		most = max(most, weeks[w].Pulls)
	}
	for w := range weeks {
		if weeks[w].Pulls > 0 && 4*weeks[w].Pulls >= most {
			at = append(at, w)
		}
	}
	return at
}

// Year is build-up and the pulls between strips through the year, and heat
// beside them in the units of the scenario, with the hot season of the policy
// marked. ok is false where too few weeks have pulls.
func Year(s *view.Study) (buildUp, heat chart.Lines, ok bool) {
	a := s.Base()
	weeks := weeksOf(&a.Runs)
	at := usual(&weeks)
	if len(at) < 2*quarter {
		return buildUp, heat, false
	}
	end := at[len(at)-1] + 1
	x := make([]string, end)
	dirty, between := blank(end), blank(end)
	work, peak := blank(end), blank(end)
	style := s.Money.Style()
	for w := range end {
		x[w] = view.WeekName(w)
		if h := &weeks[w]; slices.Contains(at, w) {
			dirty[w] = h.BuildUp / float64(h.Pulls)
			work[w], _ = shown(h.HeatIndex/float64(h.Pulls), style)
			between[w] = pullsPerStrip(&weeks, w)
		}
		if weeks[w].Looks > 0 {
			peak[w], _ = shown(weeks[w].Peak/float64(weeks[w].Looks), style)
		}
	}
	hot := hotWeeks(&weeks, end)
	_, sign := shown(0, style)
	buildUp = chart.Lines{
		Figure: chart.Figure{ID: "build-up-by-week", Finding: leaves(quarters(&a.Runs, coolFirst(&weeks, at))),
			Caption: fmt.Sprintf("“%s” over %d simulated years, all molds. Build-up is counted in pulls of a cool, smooth mold. Strips follow the policy: pulls between strips is parts pulled over strips in %d weeks of all years, the week in the middle. Gaps are weeks in which the plant is shut.", a.Name, s.SimulatedYears(), 2*beside+1),
			Alt:     "Lines of build-up and of pulls between strips by week of the year; the hot season is shaded."},
		XTitle: "week that begins about", X: x, Y: chart.Axis{Name: "pulls", Digits: 1, Zero: true}, Stretches: hot,
		Series: []chart.Series{{Label: "build-up before a pull", Values: dirty}},
	}
	if some(between) {
		buildUp.Series = append(buildUp.Series, chart.Series{Label: "pulls between strips", Values: between})
	}
	heat = chart.Lines{
		Figure: chart.Figure{ID: "heat-by-week", Finding: switches(&weeks, end, policyHot(a)),
			Caption: "Heat index of the plant air (National Weather Service). While parts are made: mean from spray to last shot. Where it is drawn, the daily peak is the mean of seven days that a seasonal policy looks at.",
			Alt:     "Lines of the heat index by week of the year; the hot season is shaded."},
		XTitle: "week that begins about", X: x, Y: chart.Axis{Name: "heat index", Unit: sign, Digits: 0}, Stretches: hot,
		Series: []chart.Series{{Label: "while parts are made", Values: work}},
	}
	if some(peak) {
		heat.Series = append(heat.Series, chart.Series{Label: "daily peak, 7-day mean", Values: peak})
	}
	if p := &a.Plan.Season; p.Kind == policy.ByHeatPeak {
		heat.Goals = []chart.Goal{switchAt("the hot season begins above", p.On, style), switchAt("and ends below", p.Off, style)}
	}
	return buildUp, heat, true
}

// shown is a heat index of so many °F in the unit of the style, with its sign.
func shown(f float64, style unit.Style) (x float64, sign string) {
	return style.Degrees(climate.Celsius(f))
}

// switchAt is the line of a heat index in °F at which the season changes.
func switchAt(when string, f float64, style unit.Style) chart.Goal {
	x, _ := shown(f, style)
	return chart.Goal{Label: when + " " + style.Temperature(climate.Celsius(f)), Value: x}
}

// beside is how many weeks on either side of a week its strips are counted in:
// a week alone has few, and its ratio jumps about. A choice of this report.
const beside = 2

// pullsPerStrip is the parts pulled over the strips in the weeks around w; NaN
// without a strip.
func pullsPerStrip(weeks *[record.WeeksOfYear]record.Heat, w int) float64 {
	var sum record.Heat
	for i := max(w-beside, 0); i <= min(w+beside, len(weeks)-1); i++ {
		sum = sum.Plus(weeks[i])
	}
	if sum.Strips == 0 {
		return math.NaN()
	}
	return float64(sum.Pulls) / float64(sum.Strips)
}

// policyHot tells whether an alternative strips by season.
func policyHot(a *view.Alternative) bool { return a.Plan.Strip.Kind == policy.StripSeasonal }

func blank(n int) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = math.NaN()
	}
	return out
}

func some(xs []float64) bool {
	return slices.ContainsFunc(xs, func(x float64) bool { return !math.IsNaN(x) })
}

// isHot tells whether a week is in the hot season in half of the years or more.
func isHot(h *record.Heat) bool { return h.Looks > 0 && 2*h.Hot >= h.Looks }

// hotWeeks are the runs of hot weeks. Weeks that no run looked at go with the
// week before.
func hotWeeks(weeks *[record.WeeksOfYear]record.Heat, end int) (out []chart.Stretch) {
	open := false
	for w := range end {
		hot := isHot(&weeks[w]) || weeks[w].Looks == 0 && open
		switch {
		case hot && open:
			out[len(out)-1].To = w
		case hot:
			out = append(out, chart.Stretch{Label: "hot season of the policy, in most years", From: w, To: w})
		}
		open = hot
	}
	return out
}

// coolFirst is the weeks in order of the heat index while parts are made, as
// far as there are two quarters of them.
func coolFirst(weeks *[record.WeeksOfYear]record.Heat, at []int) []int {
	out := slices.Clone(at)
	mean := func(w int) float64 { return weeks[w].HeatIndex / float64(weeks[w].Pulls) }
	slices.SortStableFunc(out, func(a, b int) int {
		switch {
		case mean(a) < mean(b):
			return -1
		case mean(a) > mean(b):
			return 1
		}
		return a - b
	})
	return out
}

// grown is what a pull adds to a mold on average, by replication, in the coolest
// and in the hottest quarter of the year.
type grown struct{ cool, hot []float64 }

func quarters(r *study.Runs, coolFirst []int) (out grown) {
	mean := func(x *record.Result, weeks []int) float64 {
		var sum record.Heat
		for _, w := range weeks {
			sum = sum.Plus(x.Heat[w])
		}
		return sum.Grown / float64(max(sum.Pulls, 1))
	}
	for _, x := range runs(r) {
		out.cool = append(out.cool, mean(x, coolFirst[:quarter]))
		out.hot = append(out.hot, mean(x, coolFirst[len(coolFirst)-quarter:]))
	}
	return out
}

// leaves says how much more a pull leaves on its mold in the hottest quarter of
// the year than in the coolest. The rule: the paired difference between the two
// is clear, and then the ratio of the means is told.
func leaves(g grown) string {
	d := stats.Paired(g.hot, g.cool, study.Confidence)
	cool, hot := stats.Mean(g.cool), stats.Mean(g.hot)
	switch {
	case !d.Clear || cool <= 0:
		return "Heat makes no clear difference to what a pull leaves on its mold"
	case d.Mean < 0:
		return fmt.Sprintf("In the hottest quarter of the year a pull leaves less build-up on its mold than in the coolest: %s of it", fixed(hot/cool, 2))
	}
	return fmt.Sprintf("In the hottest quarter of the year a pull leaves %s times the build-up it leaves in the coolest", fixed(hot/cool, 2))
}

// switches says when the season changes. The rule: a week is hot if it is in
// half of the years or more; when the first hot week begins and the last ends is
// told. Where strips do not go by season it says so.
func switches(weeks *[record.WeeksOfYear]record.Heat, end int, bySeason bool) string {
	looks, first, last, cool := 0, -1, -1, 0
	for w := range end {
		looks += weeks[w].Looks
		switch {
		case isHot(&weeks[w]):
			if last = w; first < 0 {
				first = w
			}
		case weeks[w].Looks > 0:
			cool++
		}
	}
	tail := ""
	if !bySeason {
		tail = "; strips do not go by it"
	}
	switch {
	case looks == 0:
		return "The plant has no seasons: strips go by the same rule all year"
	case first < 0:
		return "No week is in the hot season in half of the years" + tail
	case cool == 0:
		return "Every week is in the hot season in half of the years or more" + tail
	}
	begins, ends := view.WeekName(first), "at the end of December"
	if last+1 < record.WeeksOfYear {
		ends = "about " + view.WeekName(last+1)
	}
	return fmt.Sprintf("The hot season begins about %s and ends %s in most years%s", begins, ends, tail)
}

// YearSection is build-up and heat through the year, below the warnings about the
// air of the plant.
func YearSection(s *view.Study) (out page.Section, ok bool, err error) {
	out.Heading = "Heat and build-up through the year"
	for _, warning := range s.Air {
		out.Blocks = append(out.Blocks, page.Remark(sentence(warning)))
	}
	buildUp, heat, ok := Year(s)
	if !ok {
		return out, len(out.Blocks) > 0, nil
	}
	a, err := buildUp.Build()
	if err != nil {
		return out, false, err
	}
	b, err := heat.Build()
	out.Blocks = append(out.Blocks, a, b)
	return out, true, err
}

// sentence makes a warning a sentence.
func sentence(warning string) string {
	return strings.ToUpper(warning[:1]) + warning[1:] + "."
}
