package study

import (
	"math"
	"testing"

	"moldturn/sim/draw"
)

// station is a made-up plant for the search alone: boats a week are what the
// scarcest of several things allows, a little less where things are near to
// each other, with luck on top. It is no plant model; the search on the real
// engine is tested with the command.
func staircase(per []float64) func(size []int) float64 {
	return func(size []int) float64 {
		sum := 0.0
		for i, n := range size {
			sum += math.Pow(float64(n)*per[i], -8)
		}
		return math.Pow(sum, -1.0/8)
	}
}

// sameAbove is what Reach looks at where every replication gives the same.
func sameAbove(n int, above float64) [][]float64 {
	out := make([][]float64, n)
	for r := range out {
		out[r] = []float64{above}
	}
	return out
}

// Against looking at every size: the same cost or at most 2 % dearer, with
// under a fifth of the sizes tried.
func TestSizeAgainstEverySize(t *testing.T) {
	key := draw.Root(5, 0)
	worse, most, tried := 0, 0.0, 0
	for e := range 40 {
		k := key.At1(3, uint64(e))
		per, moves := make([]float64, 4), make([]Move, 4)
		for i := range per {
			per[i] = 1 + 1.4*k.U(uint64(i))
			moves[i] = Move{Now: 1, Start: 1, Least: 1, Most: 9, Price: math.Round(20 + 80*k.U(uint64(10+i)))}
		}
		boats := staircase(per)
		const target = 7.0
		z := &Sizing{Moves: moves, Budget: 2000, Runs: 4, Try: func(sizes [][]int, luck, n int) ([]Trial, error) {
			out := make([]Trial, len(sizes))
			for i, s := range sizes {
				out[i] = Trial{Boats: boats(s), Score: boats(s) / target, Parts: []float64{boats(s) / target}, Above: sameAbove(n, (boats(s)-target)*1e6)}
			}
			return out, nil
		}}
		got, err := z.Size()
		if err != nil {
			t.Fatal(err)
		}
		if !got.Met {
			t.Fatalf("plant %d: the target was not met: %+v of %v", e, got, per)
		}
		best := math.Inf(1)
		for a := 1; a <= 9; a++ {
			for b := 1; b <= 9; b++ {
				for c := 1; c <= 9; c++ {
					for d := 1; d <= 9; d++ {
						if s := []int{a, b, c, d}; boats(s) >= target {
							best = min(best, z.price(s))
						}
					}
				}
			}
		}
		share := got.Price/best - 1
		tried = max(tried, got.Tried)
		most = max(most, share)
		if share > 0.02 {
			worse++
		}
		if got.Tried > 9*9*9*9/5 {
			t.Errorf("plant %d: %d of %d sizes tried", e, got.Tried, 9*9*9*9)
		}
	}
	t.Logf("%d sizes tried at most", tried)
	t.Logf("%d of 40 plants more than 2 %% dearer than the cheapest; the worst by %.1f %%", worse, 100*most)
	if worse > 0 {
		t.Errorf("%d of 40 plants are more than 2 %% dearer than the cheapest", worse)
	}
}

func TestSizeSaysWhenNothingHelps(t *testing.T) {
	z := &Sizing{Moves: []Move{{Now: 1, Start: 1, Least: 1, Most: 3, Price: 1}}, Budget: 100, Runs: 4, Try: func(sizes [][]int, luck, n int) ([]Trial, error) {
		out := make([]Trial, len(sizes))
		for i := range out {
			out[i] = Trial{Score: 0.5, Parts: []float64{0.5}, Above: sameAbove(n, -1)}
		}
		return out, nil
	}}
	got, err := z.Size()
	if err != nil || got.Met || got.Size[0] != 1 {
		t.Errorf("%+v, %v", got, err)
	}
}

// Where the luck of the search was kind to one thing that is asked for, the search
// asks for more of that one: of another there may be no more to have.
func TestSizeAsksForMoreOnlyOfWhatFellShort(t *testing.T) {
	const target, kind, most = 7.0, 1.06, 1.015
	z := &Sizing{Moves: []Move{{Now: 5, Start: 5, Least: 1, Most: 20, Price: 1}}, Budget: 200, Runs: 4, Try: func(sizes [][]int, luck, n int) ([]Trial, error) {
		out := make([]Trial, len(sizes))
		for i, s := range sizes {
			boats := 0.1 * float64(s[0]+50)
			part := boats / target
			if luck == 0 {
				part *= kind
			}
			out[i] = Trial{Boats: boats, Parts: []float64{part, most}, Above: sameAbove(n, (part-1)*1e6)}
			out[i].Score = score(out[i].Parts)
			for r := range out[i].Above {
				out[i].Above[r] = append(out[i].Above[r], 1)
			}
		}
		return out, nil
	}}
	got, err := z.Size()
	if err != nil || !got.Met || got.Size[0] != 20 {
		t.Errorf("%+v, %v", got, err)
	}
}

// What was added first can stand in the way: cheap molds of one model bring boats
// and spoil the mix, and then nothing that is added helps. The search begins anew
// from more of everything.
func TestSizeLeavesADeadEnd(t *testing.T) {
	z := &Sizing{Moves: []Move{{Now: 3, Start: 3, Least: 1, Most: 9, Price: 1}, {Now: 3, Start: 3, Least: 1, Most: 9, Price: 10}}, Budget: 200, Runs: 4,
		Try: func(sizes [][]int, luck, n int) ([]Trial, error) {
			out := make([]Trial, len(sizes))
			for i, s := range sizes {
				boats, mix := min(0.15*float64(s[0])+0.1*float64(s[1])+1e-9, 1), 1-0.05*max(0, float64(s[0]-4))
				out[i] = Trial{Parts: []float64{boats, mix}, Score: score([]float64{boats, mix}), Above: sameAbove(n, (min(boats, mix)-1)*1e6)}
			}
			return out, nil
		}}
	got, err := z.Size()
	if err != nil || !got.Met || got.Size[0] != 4 || got.Size[1] != 4 {
		t.Errorf("%v, met %v, %v", got.Size, got.Met, err)
	}
}
