package study

import (
	"math"

	"moldturn/sim/stats"
)

// Ratio is the ratio of two means with its interval.
type Ratio struct {
	Value     float64
	Low, High float64
	Bounded   bool // the interval is finite: the mean below the line is clearly not zero
}

// RatioOfMeans is the mean of x over the mean of y, pair by pair from the same
// replications, with the interval of E. C. Fieller ("Some problems in interval
// estimation", Journal of the Royal Statistical Society B 16, 1954, 175–185): all
// r for which x - r·y does not clearly differ from zero. Where the mean of y is
// not clear there is no bounded interval. False for fewer than two pairs.
func RatioOfMeans(x, y []float64, confidence float64) (Ratio, bool) {
	n := min(len(x), len(y))
	if n < 2 {
		return Ratio{}, false
	}
	mx, my := stats.Mean(x[:n]), stats.Mean(y[:n])
	vx, vy := stats.Variance(x[:n])/float64(n), stats.Variance(y[:n])/float64(n)
	vxy := stats.Correlation(x[:n], y[:n]) * math.Sqrt(vx*vy)
	t := stats.TQuantile(0.5+confidence/2, float64(n-1))
	a, b, c := my*my-t*t*vy, mx*my-t*t*vxy, mx*mx-t*t*vx
	if my == 0 {
		return Ratio{}, false
	}
	r := Ratio{Value: mx / my}
	if a <= 0 {
		return r, true
	}
	root := math.Sqrt(max(b*b-a*c, 0))
	r.Low, r.High, r.Bounded = (b-root)/a, (b+root)/a, true
	return r, true
}
