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
	a, b, c, ok := fieller(x, y, confidence)
	n := min(len(x), len(y))
	if !ok || stats.Mean(y[:n]) == 0 {
		return Ratio{}, false
	}
	r := Ratio{Value: stats.Mean(x[:n]) / stats.Mean(y[:n])}
	if a <= 0 {
		return r, true
	}
	root := math.Sqrt(max(b*b-a*c, 0))
	r.Low, r.High, r.Bounded = (b-root)/a, (b+root)/a, true
	return r, true
}

// Side is on which side of zero x - r·y is, in the means, from r = 0 on.
type Side struct {
	Sign int     // of x: -1 clearly below zero, 1 clearly above, 0 not clear
	To   float64 // it clearly stays there for every r from 0 up to this; +Inf for every r, 0 with Sign 0
}

// SideOfMeans tells what is known where the mean of y is not clear and Fieller's
// interval has no ends: up to which r the sign of x holds. To is the least r that
// his set contains, its lower end if r may not be below zero. The zero value for
// fewer than two pairs.
func SideOfMeans(x, y []float64, confidence float64) Side {
	a, b, c, ok := fieller(x, y, confidence)
	if !ok || c <= 0 {
		return Side{}
	}
	s := Side{Sign: 1, To: math.Inf(1)}
	if stats.Mean(x[:min(len(x), len(y))]) < 0 {
		s.Sign = -1
	}
	d := b*b - a*c
	if d < 0 {
		return s
	}
	// roots of a·r² - 2b·r + c, as c/(b ± √d), which holds for a = 0 too
	for _, below := range []float64{b - math.Sqrt(d), b + math.Sqrt(d)} {
		if below > 0 {
			s.To = min(s.To, c/below)
		}
	}
	return s
}

// fieller is what x - r·y must pass to differ clearly from zero: a·r² - 2b·r + c
// above zero. False for fewer than two pairs.
func fieller(x, y []float64, confidence float64) (a, b, c float64, ok bool) {
	n := min(len(x), len(y))
	if n < 2 {
		return 0, 0, 0, false
	}
	x, y = x[:n], y[:n]
	mx, my := stats.Mean(x), stats.Mean(y)
	vx, vy := stats.Variance(x)/float64(n), stats.Variance(y)/float64(n)
	vxy := stats.Correlation(x, y) * math.Sqrt(vx*vy)
	t := stats.TQuantile(0.5+confidence/2, float64(n-1))
	return my*my - t*t*vy, mx*my - t*t*vxy, mx*mx - t*t*vx, true
}
