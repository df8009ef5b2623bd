package heat

import (
	"fmt"
	"math"
	"strings"

	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Holds is boats and luster by the clock hours in the mold. ok is false where
// the other holds were not run.
func Holds(s *view.Study) (boats, luster chart.Lines, ok bool) {
	c := s.Holds
	if c == nil || len(c.Points) < 2 {
		return boats, luster, false
	}
	b, l := named("boats_per_week"), named("luster_p10")
	if _, _, _, ok = c.Gain(b); !ok {
		return boats, luster, false
	}
	if _, _, _, ok = c.Gain(l); !ok {
		return boats, luster, false
	}
	boats = lines(c, b, "boats-by-hold", chart.Axis{Name: "boats shipped", Unit: "a week", Digits: 2}, stairs(c, b))
	luster = lines(c, l, "luster-by-hold", chart.Axis{Name: "luster that 9 parts in 10 reach", Unit: "of 100", Digits: 2}, knee(c, l))
	how := fmt.Sprintf("The base with other clock hours in the mold and nothing else changed, %d runs of %s each with orders always waiting, under the same luck. The plant holds %s h.",
		c.Points[0].N(), years(s.Years), trim(c.Base))
	boats.Caption = how + " People pull only while they are on shift, so boats go in steps." + known(c, b)
	luster.Caption = how + " Luster is as pulled; waviness that comes out weeks later is not in it, and shows as escapes." + known(c, l)
	return boats, luster, true
}

func lines(c *study.HoldCurve, m *study.Metric, id string, y chart.Axis, finding string) chart.Lines {
	out := chart.Lines{Figure: chart.Figure{ID: id, Finding: finding, Alt: "Line of " + y.Name + " against the hours a part stays in its mold."},
		XTitle: "clock hours in the mold after the last labor", Y: y, Series: []chart.Series{{Label: y.Name}}}
	for i, h := range c.Hours {
		x, _ := c.Points[i].Mean(m)
		out.X = append(out.X, fmt.Sprintf("%d", h))
		out.Series[0].Values = append(out.Series[0].Values, x)
		if float64(h) == c.Base {
			out.Stretches = []chart.Stretch{{Label: fmt.Sprintf("the plant holds %d h", h), From: i, To: i}}
		}
	}
	return out
}

// known is how well steps from one hold to the next are known.
func known(c *study.HoldCurve, m *study.Metric) string {
	steps, ok := c.Steps(m)
	if !ok {
		return ""
	}
	wide := 0.0
	for _, d := range steps {
		wide = max(wide, d.Half)
	}
	if !(wide > 0) || math.IsInf(wide, 0) {
		return ""
	}
	return fmt.Sprintf(" From one hold to the next, differences are known to ± %s or better, all together with %.0f %% confidence.", fixed(wide, 2), 100*study.Confidence)
}

// stairs says where boats peak and where the staircase falls most. The rules:
// best and worst hold differ clearly, in intervals for all pairs together, else
// nothing is said; the step told is the largest clear one away from the best, in
// intervals for all steps together.
func stairs(c *study.HoldCurve, m *study.Metric) string {
	gain, best, worst, _ := c.Gain(m)
	if !gain.Clear {
		return fmt.Sprintf("From %d to %d h in the mold, no clear difference in %s", c.Hours[0], c.Hours[len(c.Hours)-1], strings.ToLower(m.Label))
	}
	text := fmt.Sprintf("Most boats at %d h in the mold, %s a week more than at %d h", c.Hours[best], fixed(math.Abs(gain.Mean), 1), c.Hours[worst])
	if steps, ok := c.Steps(m); ok {
		if i := steepest(steps, best); i >= 0 {
			return text + fmt.Sprintf("; the largest step is from %d to %d h", c.Hours[i], c.Hours[i+1])
		}
	}
	return text + "; no single step stands out"
}

// steepest is the largest clear step that leads down, going away from the best;
// -1 for none.
func steepest(steps []stats.Difference, best int) int {
	at := -1
	for i, d := range steps {
		down := d.Mean < 0
		if i < best {
			down = d.Mean > 0 // to the left of the best the way down is backward
		}
		if d.Clear && down && (at < 0 || math.Abs(d.Mean) > math.Abs(steps[at].Mean)) {
			at = i
		}
	}
	return at
}

// knee says from which hold on more hours bring little luster. The rules: best
// and worst hold differ clearly; the knee is the hold with the fewest steps from
// the worst that brings nine tenths of what the best has over it.
func knee(c *study.HoldCurve, m *study.Metric) string {
	gain, best, worst, _ := c.Gain(m)
	if !gain.Clear {
		return fmt.Sprintf("From %d to %d h in the mold, no clear difference in luster", c.Hours[0], c.Hours[len(c.Hours)-1])
	}
	at, _ := c.Knee(m)
	points := fixed(math.Abs(gain.Mean), 2)
	if at == best {
		return fmt.Sprintf("Luster is %s points better at %d h in the mold than at %d h, and has no knee before", points, c.Hours[best], c.Hours[worst])
	}
	return fmt.Sprintf("The knee is at %d h in the mold: nine tenths of the %s points of luster that %d h have over %d h", c.Hours[at], points, c.Hours[best], c.Hours[worst])
}

// trim is a number without needless zeros.
func trim(v float64) string { return fmt.Sprintf("%g", v) }

// HoldSection is the staircase of the hold; ok is false where it was not run.
func HoldSection(s *view.Study) (out page.Section, ok bool, err error) {
	boats, luster, ok := Holds(s)
	if !ok {
		return out, false, nil
	}
	a, err := boats.Build()
	if err != nil {
		return out, false, err
	}
	b, err := luster.Build()
	return page.Section{Heading: "Hours in the mold", Blocks: []page.Block{a, b}}, true, err
}

// CardSection is the card for the wall, with its cautions.
func CardSection(s *view.Study) (out page.Section, ok bool, err error) {
	if s.Card == nil {
		return out, false, nil
	}
	return page.Section{Heading: "Hold card for the wall", Blocks: []page.Block{
		page.Table{Table: view.HoldCard(s.Card, s.Money.Style())}, page.List(view.HoldCautions()),
	}}, true, nil
}
