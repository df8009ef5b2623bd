package draw

import (
	"math"
	"testing"
)

// sampleSize is the n of the tests by sampling.
func sampleSize() int {
	if testing.Short() {
		return 100_000
	}
	return 1_000_000
}

// ksLimit is the distance that a Kolmogorov–Smirnov test at level 0.001 allows:
// the limit law gives 2·Σ(-1)^(k-1)·exp(-2k²c²) = 0.001 at c = 1.94947.
func ksLimit(n int) float64 { return 1.94947 / math.Sqrt(float64(n)) }

// ksDistance is the largest distance between the distribution function of the
// sorted sample and cdf.
func ksDistance(sorted []float64, cdf func(float64) float64) float64 {
	n, worst := float64(len(sorted)), 0.0
	for i, x := range sorted {
		f := cdf(x)
		worst = max(worst, f-float64(i)/n, float64(i+1)/n-f)
	}
	return worst
}

func meanOf(x []float64) float64 {
	sum := 0.0
	for _, v := range x {
		sum += v
	}
	return sum / float64(len(x))
}

func varianceOf(x []float64) float64 {
	m, sum := meanOf(x), 0.0
	for _, v := range x {
		sum += (v - m) * (v - m)
	}
	return sum / float64(len(x)-1)
}

func correlation(x, y []float64) float64 {
	mx, my := meanOf(x), meanOf(y)
	sxy, sxx, syy := 0.0, 0.0, 0.0
	for i := range x {
		sxy += (x[i] - mx) * (y[i] - my)
		sxx += (x[i] - mx) * (x[i] - mx)
		syy += (y[i] - my) * (y[i] - my)
	}
	return sxy / math.Sqrt(sxx*syy)
}

// relative is the difference of a and b over b.
func relative(a, b float64) float64 { return math.Abs(a-b) / math.Abs(b) }

// must is for laws whose parameters are known to be good.
func must(d Dist, err error) Dist {
	if err != nil {
		panic(err)
	}
	return d
}
