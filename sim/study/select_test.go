package study

import (
	"math"
	"testing"

	"moldturn/sim/draw"
)

// normals are draws with given means, standard deviation 1 and a share of luck
// in common.
func normals(experiment int, means []float64, common float64) Draws {
	key := draw.Root(77, experiment)
	return func(alternatives []int, first, n int) ([][]float64, error) {
		out := make([][]float64, len(alternatives))
		for i, a := range alternatives {
			for r := first; r < first+n; r++ {
				own := draw.Normal01(key.At1(1, uint64(a)).U(uint64(r)))
				shared := draw.Normal01(key.At0(2).U(uint64(r)))
				out[i] = append(out[i], means[a]+math.Sqrt(common)*shared+math.Sqrt(1-common)*own)
			}
		}
		return out, nil
	}
}

// In the least favorable configuration, the best one lead ahead of all others
// that are level, the best is chosen at least as often as promised, less two
// standard errors: the promise of Kim and Nelson (2001).
func TestSelectKeepsItsPromise(t *testing.T) {
	const experiments, k, chance, lead = 500, 5, 0.90, 0.5
	means := make([]float64, k)
	means[k-1] = lead
	for _, common := range []float64{0, 0.6} {
		right, used, most := 0, 0, 0
		for e := range experiments {
			got, err := Select(k, Pick{Chance: chance, Matters: lead, First: 10, Round: 4, Budget: 10_000}, normals(e, means, common))
			if err != nil {
				t.Fatal(err)
			}
			if !got.Decided {
				t.Fatalf("experiment %d ended without a decision", e)
			}
			if got.Best == k-1 {
				right++
			}
			top := 0
			for _, n := range got.Used {
				used += n
				top = max(top, n)
			}
			most += top * k
		}
		rate := float64(right) / experiments
		se := math.Sqrt(chance * (1 - chance) / experiments)
		t.Logf("common luck %.1f: right %.3f of the time, %.1f replications an experiment, %.0f %% saved against equal numbers", common, rate, float64(used)/experiments, 100*(1-float64(used)/float64(most)))
		if rate < chance-2*se {
			t.Errorf("chosen right %.3f of the time, promised %.2f", rate, chance)
		}
	}
}

// Shared luck makes the choice cheaper.
func TestSelectIsCheaperWithSharedLuck(t *testing.T) {
	means := []float64{0, 0.1, 0.5}
	cost := func(common float64) (n int) {
		for e := range 100 {
			got, err := Select(3, Pick{Chance: 0.95, Matters: 0.3, First: 10, Round: 1, Budget: 5000}, normals(e, means, common))
			if err != nil {
				t.Fatal(err)
			}
			for _, u := range got.Used {
				n += u
			}
		}
		return n
	}
	apart, together := cost(0), cost(0.8)
	if together >= apart {
		t.Errorf("%d replications with shared luck, %d without", together, apart)
	}
}

func TestSelectEdges(t *testing.T) {
	one, err := Select(1, Pick{Chance: 0.9, Matters: 1, First: 2, Round: 1, Budget: 10}, nil)
	if err != nil || !one.Decided || one.Best != 0 {
		t.Errorf("a single alternative is the best: %+v, %v", one, err)
	}
	if _, err := Select(3, Pick{Chance: 0.9, Matters: 0, First: 2, Round: 1, Budget: 10}, nil); err == nil {
		t.Error("a lead of nothing cannot matter")
	}
	level, err := Select(3, Pick{Chance: 0.9, Matters: 0.001, First: 5, Round: 5, Budget: 20}, normals(1, []float64{0, 0, 0}, 0))
	if err != nil || level.Decided || len(level.Left) < 2 {
		t.Errorf("a budget that ends before the decision says so: %+v, %v", level, err)
	}
}
