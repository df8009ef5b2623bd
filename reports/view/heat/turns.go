package heat

import (
	"fmt"
	"math"

	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// fewest is how many parts a mean of luster is drawn from at least. Assumption
// of this report, no source.
const fewest = 30

// farther is by how many turns molds of an alternative must run farther than
// those of the base for its lines to be drawn in their place.
const farther = 2

// curve is the mean luster by turns since a strip in one season; NaN where
// fewer than fewest parts were pulled.
type curve [record.MostTurns + 1]float64

// seasons are the curves of an alternative, cool and hot.
func seasons(r *study.Runs) (out [2]curve) {
	for s := range out {
		for turn := range out[s] {
			var all record.Lusters
			for _, x := range runs(r) {
				l := x.ByTurn[s][turn]
				all.N, all.Sum = all.N+l.N, all.Sum+l.Sum
			}
			if out[s][turn] = all.Mean(); all.N < fewest {
				out[s][turn] = math.NaN()
			}
		}
	}
	return out
}

// last is the highest turn that a curve has, 0 for none.
func (c *curve) last() int {
	for turn := len(c) - 1; turn > 0; turn-- {
		if !math.IsNaN(c[turn]) {
			return turn
		}
	}
	return 0
}

// falls is the first turn whose mean is under the target, 0 for none.
func (c *curve) falls(target float64) int {
	for turn := 1; turn < len(c); turn++ {
		if c[turn] < target {
			return turn
		}
	}
	return 0
}

// seasonNames are the seasons in the order of Result.ByTurn.
var seasonNames = [2]string{"cool season", "hot season"}

// seasonName is the season of a curve; a plant without seasons has one.
func seasonName(a *view.Alternative, k int) string {
	if a.Plan.Season.Kind == policy.NoSeason {
		return "all year"
	}
	return seasonNames[k]
}

// Turns is luster by turns since a strip and season, of the base, or of the
// alternative whose molds run farthest, if that is clearly farther. ok is false
// where no season has two turns.
func Turns(s *view.Study) (c chart.Lines, ok bool) {
	a, most := farthest(s)
	if most < 2 {
		return c, false
	}
	target := runs(&a.Runs)[0].Frame.Target
	c = chart.Lines{
		Figure: chart.Figure{ID: "luster-by-turns",
			Caption: fmt.Sprintf("Mean luster of parts as pulled, before any rework, all colors together, over %d simulated years of “%s”, %s. White parts hide haze; dark ones lie lower. Points from fewer than %d parts are left out; %d stands for all turns from there on.",
				s.SimulatedYears(), a.Name, whose(a == s.Base()), fewest, record.MostTurns),
			Alt: "Lines of mean luster against the number of parts pulled from a mold since its strip, by season, with the target."},
		XTitle: "parts pulled since the strip", Y: chart.Axis{Name: "luster as pulled", Unit: "of 100", Digits: 1},
		Goals: []chart.Goal{{Label: fmt.Sprintf("target, %g", target), Value: target}},
	}
	for turn := 1; turn <= most; turn++ {
		c.X = append(c.X, fmt.Sprintf("%d", turn))
	}
	pair := seasons(&a.Runs)
	for k := range pair {
		if pair[k].last() > 0 {
			c.Series = append(c.Series, chart.Series{Label: seasonName(a, k), Values: pair[k][1 : most+1]})
		}
	}
	c.Finding = fall(&pair[0], &pair[1], target)
	return c, true
}

func whose(base bool) string {
	if base {
		return "the base"
	}
	return "whose molds run farthest between strips"
}

// farthest is the alternative to draw, and how many turns its molds make.
func farthest(s *view.Study) (a *view.Alternative, most int) {
	for i := range s.Alternatives {
		pair := seasons(&s.Alternatives[i].Runs)
		n := max(pair[0].last(), pair[1].last())
		if i == 0 || n >= most+farther {
			a, most = &s.Alternatives[i], n
		}
	}
	return a, most
}

// fall says from which turn on the average part misses the target. The rule: the
// first turn of each season whose mean is under the target; with none in either,
// how many turns were seen.
func fall(cool, hot *curve, target float64) string {
	c, h := cool.falls(target), hot.falls(target)
	switch {
	case c == 0 && h == 0:
		return fmt.Sprintf("The average part stays at %g or above through all %s since a strip", target, turns(max(cool.last(), hot.last())))
	case cool.last() == 0 || hot.last() == 0 || c == h:
		return fmt.Sprintf("From turn %d since a strip on, the average part is under %g", max(c, h), target)
	case c == 0:
		return fmt.Sprintf("In the hot season the average part is under %g from turn %d since a strip on; in the cool season it never is", target, h)
	case h == 0:
		return fmt.Sprintf("In the cool season the average part is under %g from turn %d since a strip on; in the hot season it never is", target, c)
	}
	return fmt.Sprintf("In the hot season the average part is under %g from turn %d since a strip on, in the cool season from turn %d", target, h, c)
}

// TurnsSection is luster by turns since a strip.
func TurnsSection(s *view.Study) (out page.Section, ok bool, err error) {
	lines, ok := Turns(s)
	if !ok {
		return out, false, nil
	}
	c, err := lines.Build()
	return page.Section{Heading: "Luster between strips", Blocks: []page.Block{c}}, true, err
}
