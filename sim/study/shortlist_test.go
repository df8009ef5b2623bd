package study

import (
	"math"
	"slices"
	"testing"
)

// With the same budget, the allocation keeps the best in the shortlist more
// often than equal shares do; how often is an experiment, not a promise.
func TestShortlistBeatsEqualShares(t *testing.T) {
	const experiments, k, keep, budget = 300, 30, 3, 300
	means := make([]float64, k)
	for i := range means {
		means[i] = -0.1 * float64(i)
	}
	clever, equal := 0, 0
	for e := range experiments {
		draws := normals(1000+e, means, 0)
		kept, used, err := Shortlist(k, keep, 5, 5, budget, draws)
		if err != nil {
			t.Fatal(err)
		}
		total := 0
		for _, n := range used {
			total += n
		}
		if total != budget {
			t.Fatalf("%d replications spent of %d", total, budget)
		}
		if slices.Contains(kept, 0) {
			clever++
		}
		flat, _, err := Shortlist(k, keep, budget/k, 5, budget, draws)
		if err != nil {
			t.Fatal(err)
		}
		if slices.Contains(flat, 0) {
			equal++
		}
	}
	t.Logf("the best of %d is among %d kept in %d of %d experiments, with equal shares in %d", k, keep, clever, experiments, equal)
	se := math.Sqrt(float64(experiments)) / 2
	if float64(clever) < float64(equal)-2*se {
		t.Errorf("kept the best %d times, equal shares %d times", clever, equal)
	}
}
