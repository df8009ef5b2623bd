package study

import (
	"fmt"

	"moldturn/sim/stats"
)

// Pick says how the best of several alternatives is chosen.
type Pick struct {
	Chance  float64 // of choosing the best when it leads by Matters or more
	Matters float64 // the lead that matters, in the figure's unit, more than 0
	First   int     // replications of each before any drops out, at least 2
	Round   int     // replications added at a time, at least 1
	Budget  int     // replications of one alternative at most
}

// Drop is an alternative that fell too far behind.
type Drop struct {
	Alternative, By int // and whose lead it was
	After           int // replications
	Behind          float64
}

// Picked is what was chosen.
type Picked struct {
	Best    int   // the one left, or the leader where the budget ended it
	Left    []int // all that were still in
	Drops   []Drop
	Used    []int // replications of each alternative
	Decided bool
}

// Saved is the share of replications saved against giving every alternative as
// many as the one that got most.
func (p *Picked) Saved() float64 {
	most, sum := 0, 0
	for _, n := range p.Used {
		most, sum = max(most, n), sum+n
	}
	if most == 0 {
		return 0
	}
	return 1 - float64(sum)/float64(most*len(p.Used))
}

// Draws gives figures, more is better: of each named alternative the
// replications first, first+1, … first+n-1, under luck that they share.
type Draws func(alternatives []int, first, n int) ([][]float64, error)

// Select chooses the best of k alternatives by the procedure of Kim and Nelson
// (2001, ACM Transactions on Modeling and Computer Simulation 11:251–273), fully
// sequential screening on paired differences, with c = 1. It holds for figures
// that are about normal, as means over simulated years are, and is not weakened
// by luck that alternatives share: that makes the differences narrower. Within
// a round all replications are looked at one by one, in their order.
func Select(k int, p Pick, draws Draws) (*Picked, error) {
	if k < 1 || p.First < 2 || p.Round < 1 || !(p.Matters > 0) || p.Budget < p.First {
		return nil, fmt.Errorf("study: cannot choose among %d alternatives with %+v", k, p)
	}
	out := &Picked{Used: make([]int, k)}
	for i := range k {
		out.Left = append(out.Left, i)
	}
	if k == 1 {
		out.Decided = true
		return out, nil
	}
	rule, err := stats.KimNelson(1-p.Chance, p.First, k)
	if err != nil {
		return nil, err
	}
	s := &selection{rule: rule, p: p, out: out, xs: make([][]float64, k), sums: make([]float64, k)}
	for first, n := 0, p.First; len(out.Left) > 1 && first < p.Budget; first, n = first+n, min(p.Round, p.Budget-first-n) {
		ys, err := draws(out.Left, first, n)
		if err != nil {
			return nil, err
		}
		for i, a := range out.Left {
			s.xs[a] = append(s.xs[a], ys[i]...)
			out.Used[a] += n
		}
		s.look(first, first+n)
	}
	out.Decided = len(out.Left) == 1
	out.Best = s.leader()
	return out, nil
}

// selection is a Select under way.
type selection struct {
	rule      stats.Screening
	p         Pick
	out       *Picked
	xs        [][]float64 // by alternative
	sums      []float64   // of the first r, the replications looked at
	variances map[[2]int]float64
}

// look screens after each replication from..to, beginning with the first p.First.
func (s *selection) look(from, to int) {
	for r := from + 1; r <= to; r++ {
		for _, a := range s.out.Left {
			s.sums[a] += s.xs[a][r-1]
		}
		if r >= s.p.First {
			s.screen(r)
		}
		if len(s.out.Left) == 1 {
			return
		}
	}
}

// screen drops what has fallen too far behind another after r replications.
func (s *selection) screen(r int) {
	var kept []int
	for _, i := range s.out.Left {
		by, behind := -1, 0.0
		for _, l := range s.out.Left {
			if l == i {
				continue
			}
			d := (s.sums[l] - s.sums[i]) / float64(r)
			if d > s.rule.Lag(s.variance(i, l), s.p.Matters, r) && d > behind {
				by, behind = l, d
			}
		}
		if by >= 0 {
			s.out.Drops = append(s.out.Drops, Drop{Alternative: i, By: by, After: r, Behind: behind})
			continue
		}
		kept = append(kept, i)
	}
	if len(kept) == 0 { // all level to the last digit: the leader stays
		kept = []int{s.leader()}
	}
	s.out.Left = kept
}

// variance is that of the differences of two alternatives in the first p.First
// replications.
func (s *selection) variance(i, l int) float64 {
	key := [2]int{min(i, l), max(i, l)}
	if v, ok := s.variances[key]; ok {
		return v
	}
	d := make([]float64, s.p.First)
	for r := range d {
		d[r] = s.xs[i][r] - s.xs[l][r]
	}
	if s.variances == nil {
		s.variances = map[[2]int]float64{}
	}
	v := stats.Variance(d)
	s.variances[key] = v
	return v
}

// leader is who has the highest sum among those left; the first of equals.
func (s *selection) leader() int {
	best := s.out.Left[0]
	for _, a := range s.out.Left[1:] {
		if s.sums[a] > s.sums[best] {
			best = a
		}
	}
	return best
}
