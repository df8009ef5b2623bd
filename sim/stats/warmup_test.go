package stats

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

// Worked by hand from the definition in White, Cobb and Spratt (2000).
func TestMSERByHand(t *testing.T) {
	zs := []float64{10, 6, 3, 2.2, 1.9, 2.1, 2.0, 1.8, 2.2, 2.0}
	w := MSER(zs)
	if w.Drop != 3 || w.Short {
		t.Errorf("%+v", w)
	}
	within(t, "statistic", w.Statistic, .00274052, 5.1e-9)
	within(t, "mean", w.Mean, 2.028571, 5.1e-7)
	for d, want := range []float64{.63716, .17451303, .015, .00274052, .00277778, .00352, .005, .00888889, .005} {
		left := zs[d:]
		within(t, "definition", Variance(left)*float64(len(left)-1)/float64(len(left)*len(left)), want, 5.1e-9)
	}
}

// MSER against its definition written out, on series of all shapes.
func TestMSERAgainstDefinition(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 27))
	for range 300 {
		zs := make([]float64, 2+rng.IntN(60))
		for i := range zs {
			zs[i] = 1e6 + 20*math.Exp(-float64(i)/8) + rng.NormFloat64()
		}
		best, at := math.Inf(1), -1
		for d := 0; d <= len(zs)/2; d++ {
			left := zs[d:]
			v := Variance(left) * float64(len(left)-1) / float64(len(left)*len(left))
			if v < best {
				best, at = v, d
			}
		}
		w := MSER(zs)
		if w.Drop != at || w.Short != (at == len(zs)/2) {
			t.Fatalf("%+v, by definition %d", w, at)
		}
		within(t, "statistic", w.Statistic, best, 1e-6*best)
	}
}

func TestMSER5(t *testing.T) {
	var xs []float64
	for _, z := range []float64{10, 6, 3, 2.2, 1.9, 2.1, 2.0, 1.8, 2.2, 2.0} {
		xs = append(xs, z-1, z+1, z, z+2, z-2)
	}
	if w := MSER5(append(xs, 99, 99, 99, 99)); w.Drop != 15 || math.Abs(w.Mean-2.028571) > 1e-6 {
		t.Errorf("%+v", w)
	}
	if w := MSER5(make([]float64, 50)); w.Drop != 0 || w.Short {
		t.Errorf("a constant series: %+v", w)
	}
	growing := make([]float64, 100)
	for i := range growing {
		growing[i] = float64(i)
	}
	if w := MSER5(growing); !w.Short || w.Drop != 50 {
		t.Errorf("a series that grows all the time: %+v", w)
	}
	for n := range 10 {
		if w := MSER5(make([]float64, n)); !w.Short || w.Drop != 0 || w.Mean != 0 {
			t.Errorf("%d observations: %+v", n, w)
		}
	}
}

// A first-order autoregressive series xᵢ = φ xᵢ₋₁ + eᵢ has a mean whose variance
// over n values tends to 1/(n(1-φ)²) (Priestley 1981, Spectral Analysis and
// Time Series, section 5.3): long batches cover, short ones warn.
func TestBatchMeans(t *testing.T) {
	const experiments, n, phi = 1000, 8000, .8
	rng := rand.New(rand.NewPCG(4, 28))
	in, warned, shortWarned := 0, 0, 0
	halves := make([]float64, experiments)
	for e := range experiments {
		xs := make([]float64, n)
		x := rng.NormFloat64() / math.Sqrt(1-phi*phi)
		for i := range xs {
			x = phi*x + rng.NormFloat64()
			xs[i] = x
		}
		b := BatchMeans(xs, 20, .9)
		in += covers(b.Summary, 0)
		halves[e] = b.Half * b.Half
		if len(b.Warnings) > 0 {
			warned++
		}
		if s := BatchMeans(xs, 2000, .9); len(s.Warnings) == 1 && strings.Contains(s.Warnings[0], "batches of 4 are too short") {
			shortWarned++
		}
	}
	share(t, "coverage", in, experiments, .9, .005)
	want := TQuantile(.95, 19) * TQuantile(.95, 19) / (n * (1 - phi) * (1 - phi))
	within(t, "half width squared", Mean(halves), want, 4*SD(halves)/math.Sqrt(experiments)+.02*want)
	if warned > experiments/10 || shortWarned != experiments {
		t.Errorf("warned of long batches %d times, of short ones %d times in %d", warned, shortWarned, experiments)
	}
}

func TestBatchMeansLeavesOutTheStart(t *testing.T) {
	b := BatchMeans([]float64{99, 1, 2, 3, 4, 5, 6}, 2, .9)
	if b.Size != 3 || b.Means[0] != 2 || b.Means[1] != 5 || b.N != 2 {
		t.Errorf("%+v", b)
	}
	for _, k := range []int{-1, 0, 8} {
		if b := BatchMeans([]float64{1, 2, 3}, k, .9); b.Known() || b.N != 0 || len(b.Warnings) == 0 {
			t.Errorf("%d batches of 3 values: %+v", k, b)
		}
	}
}
