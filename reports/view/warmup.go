package view

import (
	"fmt"
	"math"

	"moldturn/reports/chart"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// settling is how an alternative settled at the start.
type settling struct {
	alternative int
	study.WarmUp
}

// settling is the alternative whose cut looks too short, the first of several;
// else the base.
func (s *Study) settling() settling {
	for i := range s.Alternatives {
		if w := s.Alternatives[i].WarmUp(len(s.Alternatives)); w.Short {
			return settling{i, w}
		}
	}
	return settling{0, s.Base().WarmUp(len(s.Alternatives))}
}

// Unsettled warns that the years left out at the start look too few; empty where
// they do not.
func (s *Study) Unsettled() string {
	w := s.settling()
	if !w.Short {
		return ""
	}
	return fmt.Sprintf("Warning: the %s left out at the start of each run look too few. In %s the first weeks that are counted ship %s than later ones; set run.warm_up to %d.",
		count(s.Warm, "year"), quoted(s.Alternatives[w.alternative].Name), fewer(w.Late), s.Warm+1)
}

// fewer prints how much less, or more, the first term is.
func fewer(d stats.Difference) string {
	digits := decimals(d.Half, 2)
	than := "fewer"
	if d.Mean > 0 {
		than = "more"
	}
	return fmt.Sprintf("%s%s boats a week %s", fixed(math.Abs(d.Mean), digits), plusMinus(d.Half, digits), than)
}

// Settled says what the check of the warm-up found.
func (s *Study) Settled() string {
	const rule = "Checked by MSER-5 (White, Cobb and Spratt 2000) on boats a week against the mean of the same week of the year."
	w := s.settling()
	switch {
	case w.Short:
		return s.Unsettled() + " " + rule
	case !w.Known:
		return "Whether enough was left out at the start cannot be checked: that takes two counted years in each run, and boats that settle within them."
	}
	return fmt.Sprintf("The %s left out at the start %s enough: of %d open weeks the rule, which goes in steps of 5, would leave out %d; %d were left out. %s",
		count(s.Warm, "year"), isAre(s.Warm), len(w.Weeks), w.Settle, w.Cut, rule)
}

// batchWeeks is the weeks that one point of the picture stands for, as in
// MSER-5.
const batchWeeks = 5

// Start is the picture behind Settled: boats a week against the mean of the same
// week of the year, from the first day on; ok is false where it cannot be
// checked.
func (s *Study) Start() (c chart.Lines, ok bool) {
	w := s.settling()
	if len(w.Weeks) < 4*batchWeeks || !w.Known {
		return c, false
	}
	out := chart.Series{Label: "left out"}
	in := chart.Series{Label: "counted"}
	for i := 0; i+batchWeeks <= len(w.Weeks); i += batchWeeks {
		mean := 0.0
		for _, week := range w.Weeks[i : i+batchWeeks] {
			mean += week.Deviation / batchWeeks
		}
		before, after := math.NaN(), math.NaN()
		if i < w.Cut {
			before = mean
		} else {
			after = mean
		}
		out.Values, in.Values = append(out.Values, before), append(in.Values, after)
		c.X = append(c.X, fmt.Sprintf("%d", w.Weeks[i].Number+1))
	}
	c.Figure = chart.Figure{ID: "start", Finding: s.startFinding(&w),
		Caption: fmt.Sprintf("Boats shipped a week in %s less the mean of the same week of the counted years, %d open weeks a point, mean over %s.",
			quoted(s.Alternatives[w.alternative].Name), batchWeeks, count(s.Replications, "repeat")),
		Alt: "Line of boats a week from the first week on, against the mean of the same week of the year."}
	c.XTitle, c.Y = "week of the run", chart.Axis{Name: "boats against the mean of the same week", Unit: "a week", Digits: 1, Zero: true}
	c.Series = []chart.Series{in}
	if w.Cut >= batchWeeks {
		c.Series = []chart.Series{out, in}
	}
	return c, true
}

func (s *Study) startFinding(w *settling) string {
	if w.Short {
		return "The plant had not settled when counting began"
	}
	if w.Settle == 0 {
		return "The plant is settled from the first weeks on"
	}
	return fmt.Sprintf("The plant settles within %s, before counting begins", count(w.Weeks[min(w.Settle, len(w.Weeks)-1)].Number, "week"))
}
