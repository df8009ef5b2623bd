package stats

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestBinsHaveReadableEdges(t *testing.T) {
	h := Bins([]float64{.1, .2, .3, .3, .7, .99, math.NaN()}, 10)
	if h.Width != .1 || h.N != 6 || !slices.Equal(h.Counts, []int{1, 1, 2, 0, 0, 0, 1, 0, 1}) {
		t.Errorf("%+v", h)
	}
	if h.Edge(0) != .1 || h.Edge(2) != .3 || h.Edge(9) != 1 {
		t.Errorf("edges %v %v %v", h.Edge(0), h.Edge(2), h.Edge(9))
	}
	if h := Bins([]float64{-7, 38}, 9); h.Low != -10 || h.Width != 5 || len(h.Counts) != 10 {
		t.Errorf("%+v", h)
	}
	if h := Bins(nil, 5); h.Counts != nil {
		t.Errorf("no values: %+v", h)
	}
	for _, x := range []float64{0, 5, -3e-9, 1e300} {
		if h := Bins([]float64{x, x, x}, 5); len(h.Counts) != 1 || h.Counts[0] != 3 {
			t.Errorf("only %v: %+v", x, h)
		}
	}
}

// Every value is counted in the bin whose edges it lies between.
func TestBinsAgainstEdges(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scale := rapid.SampledFrom([]float64{1e-9, .01, .1, 1, 7, 1e6}).Draw(t, "scale")
		xs := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) float64 {
			return scale * float64(rapid.IntRange(-1000, 1000).Draw(t, "x"))
		}), 1, 40).Draw(t, "xs")
		about := rapid.IntRange(1, 30).Draw(t, "about")
		h := Bins(xs, about)
		want := make([]int, len(h.Counts))
		for _, x := range xs {
			for i := range want {
				if h.Edge(i) <= x && x < h.Edge(i+1) {
					want[i]++
				}
			}
		}
		if !slices.Equal(want, h.Counts) || len(want) > about+2 {
			t.Fatalf("%+v, by edges %v", h, want)
		}
	})
}
