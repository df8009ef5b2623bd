package study

import (
	"math"
	"testing"
)

// reaching checks sizes of given means, in tolerances, standard deviation sd,
// with a share of luck in common, and gives what was decided and how many
// replications that took.
func reaching(t *testing.T, experiment int, means []float64, sd, common, alpha float64) (said []int, used int) {
	t.Helper()
	check, err := NewReach(len(means), 1, 10, alpha)
	if err != nil {
		t.Fatal(err)
	}
	draws := normals(experiment, make([]float64, len(means)), common)
	for a, mean := range means {
		var xs [][]float64
		for r, got := 0, 0; got == 0; r += 10 {
			ys, _ := draws([]int{a}, r, 10)
			for _, y := range ys[0] {
				xs = append(xs, []float64{mean + sd*y})
			}
			if got = check.Decide(xs); got != 0 {
				said = append(said, got)
			}
		}
		used += len(xs)
	}
	return said, used
}

// At the least favorable means, just short of the bar by the tolerance and just
// above it by as much, all of several sizes are decided right at least as often
// as promised, less two standard errors.
func TestReachKeepsItsPromise(t *testing.T) {
	const experiments, alpha = 500, 0.1
	means := []float64{-1, -1, -1, 1, 1}
	for _, common := range []float64{0, 0.6} {
		right, used := 0, 0
		for e := range experiments {
			said, n := reaching(t, e, means, 2.5, common, alpha)
			used += n
			all := true
			for i, s := range said {
				all = all && float64(s) == means[i]
			}
			if all {
				right++
			}
		}
		rate, se := float64(right)/experiments, math.Sqrt(alpha*(1-alpha)/experiments)
		t.Logf("common luck %.1f: all five right %.3f of the time, %.0f replications an experiment", common, rate, float64(used)/experiments)
		if rate < 1-alpha-2*se {
			t.Errorf("all five right %.3f of the time, promised %.2f", rate, 1-alpha)
		}
	}
}

// A size must reach all that is asked of it, and what has no spread is decided
// at once.
func TestReachByHand(t *testing.T) {
	check, err := NewReach(1, 2, 2, 0.05)
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		xs   [][]float64
		want int
	}{
		{[][]float64{{1, 1}}, 0},
		{[][]float64{{1, 1}, {1, 1}}, 1},
		{[][]float64{{1, -1}, {1, -1}}, -1},
		{[][]float64{{9, 1}, {-8, 1}}, 0},
		{[][]float64{{9, -1}, {-8, -1}}, -1},
	} {
		if got := check.Decide(row.xs); got != row.want {
			t.Errorf("%v: %d, want %d", row.xs, got, row.want)
		}
	}
	if _, err := NewReach(0, 1, 2, 0.05); err == nil {
		t.Error("nothing to check")
	}
}
