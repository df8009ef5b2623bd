package stats

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// weighted is a density on a grid: what integrates against it. Grids are equal
// steps in a variable in which the density dies fast at both ends, where the
// trapezoid rule converges faster than any power of the step (Trefethen and
// Weideman 2014, SIAM Review 56:385–458).
type weighted struct{ at, weight []float64 }

func (g weighted) integrate(f func(float64) float64) float64 {
	var s sum
	for i, x := range g.at {
		s.add(g.weight[i] * f(x))
	}
	return s.value()
}

// normalReach is where sinh of it leaves no normal mass in a float64.
const normalReach = 3.4

// tReach is the same for Student's t.
func tReach(nu float64) float64 { return max(36/nu+1, normalReach+1) }

// sinhGrid puts a density on the whole line on t = sinh(s), |s| up to reach. The
// steps are fine enough for a rise of width 1 at distance h, down to a ten
// thousandth.
func sinhGrid(reach, h float64, density func(float64) float64) weighted {
	step := max(1e-4, 0.25/max(h, 2))
	var g weighted
	for i := -int(reach / step); i <= int(reach/step); i++ {
		s := float64(i) * step
		g.at = append(g.at, math.Sinh(s))
		g.weight = append(g.weight, step*math.Cosh(s)*density(math.Sinh(s)))
	}
	return g
}

// chiSquaredGrid puts the density of chi-squared on x = exp(s), in steps of a
// quarter of the spread of s, as far as there is mass.
func chiSquaredGrid(nu float64) weighted {
	dist := distuv.ChiSquared{K: nu}
	step := math.Sqrt(2/nu) / 4
	top := math.Log(nu + 12*math.Sqrt(2*nu) + 80)
	bottom := math.Log(nu) - 74/nu - 9*math.Sqrt(2/nu)
	var g weighted
	for s := bottom; s < top; s += step {
		x := math.Exp(s)
		if w := step * x * dist.Prob(x); w > 1e-18 {
			g.at = append(g.at, x)
			g.weight = append(g.weight, w)
		}
	}
	return g
}

// solve gives the h above 0 at which rising reaches p, to twelve digits.
// rising(0) must be below p and its limit above.
func solve(p float64, rising func(float64) float64) float64 {
	low, high := 0.0, 4.0
	for rising(high) < p && high < 1e9 {
		low, high = high, 2*high
	}
	for high-low > 1e-12*high {
		h := low + (high-low)/2
		if rising(h) < p {
			low = h
		} else {
			high = h
		}
	}
	return low + (high-low)/2
}
