package study

import (
	"fmt"
	"math"
	"slices"

	"moldturn/sim/stats"
)

// Shortlist keeps the most promising of k alternatives, to be chosen among by
// Select: replications go where they tell most, by the optimal computing budget
// allocation (Chen, Lin, Yücesan and Chick 2000, Discrete Event Dynamic Systems
// 10:251–270), first of each and then step at a time until budget replications
// are spent. It gives the keep with the highest means, best first, and how many
// replications each alternative had. The allocation is a heuristic and carries
// no promise of its own.
func Shortlist(k, keep, first, step, budget int, draws Draws) (kept, used []int, err error) {
	if k < 1 || keep < 1 || first < 2 || step < 1 {
		return nil, nil, fmt.Errorf("study: no shortlist of %d out of %d from %d replications each", keep, k, first)
	}
	xs := make([][]float64, k)
	used = make([]int, k)
	more := func(a, n int) error {
		ys, err := draws([]int{a}, used[a], n)
		if err != nil {
			return err
		}
		xs[a] = append(xs[a], ys[0]...)
		used[a] += n
		return nil
	}
	spent := 0
	for a := range k {
		if err := more(a, first); err != nil {
			return nil, nil, err
		}
		spent += first
	}
	for k > keep && spent < budget {
		want := wanted(xs, float64(spent+step))
		a := furthest(want, used)
		n := min(step, budget-spent)
		if err := more(a, n); err != nil {
			return nil, nil, err
		}
		spent += n
	}
	for a := range k {
		kept = append(kept, a)
	}
	slices.SortStableFunc(kept, func(a, b int) int {
		switch x, y := stats.Mean(xs[a]), stats.Mean(xs[b]); {
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return 0
	})
	return kept[:min(keep, k)], used, nil
}

// wanted is the allocation for a budget; equal shares where it has none, as
// when two lead by the same mean.
func wanted(xs [][]float64, budget float64) []float64 {
	means, sds := make([]float64, len(xs)), make([]float64, len(xs))
	for a := range xs {
		means[a], sds[a] = stats.Mean(xs[a]), stats.SD(xs[a])
	}
	shares, err := stats.Allocate(means, sds, budget, true)
	if err != nil {
		shares = make([]float64, len(xs))
		for a := range shares {
			shares[a] = budget / float64(len(xs))
		}
	}
	return shares
}

// furthest is the alternative furthest below its share; the first of equals.
func furthest(want []float64, used []int) int {
	best, gap := 0, math.Inf(-1)
	for a := range want {
		if g := want[a] - float64(used[a]); g > gap {
			best, gap = a, g
		}
	}
	return best
}
