package study

import (
	"fmt"

	"moldturn/sim/stats"
)

// Reach decides, for each of several sizes of a plant, whether it reaches what is
// asked, by a fully sequential check of feasibility (Batur and Kim 2010, Finding
// feasible systems in the presence of constraints on multiple performance
// measures, ACM Transactions on Modeling and Computer Simulation 20, article 13;
// Andradóttir and Kim 2010, Naval Research Logistics 57:403–421; from memory),
// with c = 1: the sum of what a figure is above its bar, replication by
// replication, until it leaves a triangle that shrinks to nothing.
//
// Values come in tolerances: a figure of +1 or more, in the mean over all luck,
// is above the bar without doubt, of -1 or less it falls short without doubt, and
// between the two either answer is right. With chance 1-alpha every size whose
// figures are all above is found to reach, and none with one that falls short.
// Luck may be shared among sizes, since the errors of all are added up
// (Bonferroni). It holds for figures that are about normal.
type Reach struct {
	rule  stats.Screening
	first int
}

// NewReach makes the check of so many sizes with so many figures each, alpha the
// chance of any error, from first replications on, at least 2.
func NewReach(sizes, figures, first int, alpha float64) (*Reach, error) {
	if sizes < 1 || figures < 1 || !(alpha > 0 && alpha < 1) {
		return nil, fmt.Errorf("study: cannot check %d sizes by %d figures with an error of %v", sizes, figures, alpha)
	}
	rule, err := stats.KimNelson(alpha/float64(sizes*figures), first, 2)
	if err != nil {
		return nil, err
	}
	return &Reach{rule: rule, first: first}, nil
}

// Decide looks at a size after each replication, xs[r][f] being figure f in
// tolerances above its bar: 1 it reaches, -1 it does not, 0 more replications are
// needed. What was decided earlier stays.
func (c *Reach) Decide(xs [][]float64) int {
	if len(xs) < c.first {
		return 0
	}
	reached := 0
	for f := range xs[0] {
		switch c.figure(xs, f) {
		case -1:
			return -1
		case 1:
			reached++
		}
	}
	if reached == len(xs[0]) {
		return 1
	}
	return 0
}

// figure decides one figure.
func (c *Reach) figure(xs [][]float64, f int) int {
	early, sum := make([]float64, c.first), 0.0
	for r := range early {
		early[r] = xs[r][f]
		sum += early[r]
	}
	variance := stats.Variance(early)
	for r := c.first; ; r++ {
		mean, lag := sum/float64(r), c.rule.Lag(variance, 1, r)
		switch {
		case mean >= 0 && mean >= lag:
			return 1
		case mean <= -lag:
			return -1
		}
		if r == len(xs) {
			return 0
		}
		sum += xs[r][f]
	}
}
