package stats

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// BechhoferH gives the constant h of choosing the best of k normal populations
// of the same known standard deviation σ: with (h σ/δ)² values of each, the
// largest mean belongs to the best with probability p if the best leads by δ
// (Bechhofer 1954, Annals of Mathematical Statistics 25:16–39). k is 2 or more,
// p above 1/k.
func BechhoferH(p float64, k int) (float64, error) {
	if err := checkSelection(p, 2, k); err != nil {
		return 0, err
	}
	return solve(p, func(h float64) float64 {
		grid := sinhGrid(normalReach, h, distuv.UnitNormal.Prob)
		return grid.integrate(func(t float64) float64 {
			return math.Pow(distuv.UnitNormal.CDF(t+h), float64(k-1))
		})
	}), nil
}

// DudewiczDalalH gives the constant h₁ of the two-stage choice of the best of k
// after n0 values of each with unknown spreads: the h for which
//
//	∫ F(t+h)ᵏ⁻¹ f(t) dt = p
//
// with F and f of Student's t, n0-1 degrees of freedom (Dudewicz and Dalal 1975,
// Sankhya B 37:28–78). k and n0 are 2 or more, p above 1/k.
func DudewiczDalalH(p float64, n0, k int) (float64, error) {
	if err := checkSelection(p, n0, k); err != nil {
		return 0, err
	}
	dist := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(n0 - 1)}
	return solve(p, func(h float64) float64 {
		grid := sinhGrid(tReach(dist.Nu), h, dist.Prob)
		return grid.integrate(func(t float64) float64 {
			return math.Pow(dist.CDF(t+h), float64(k-1))
		})
	}), nil
}

// DudewiczDalalSize gives how many values an alternative needs in all, n, when
// its first n0 have this variance and a lead of delta matters, and the weight
// of the mean of the first n0 in the weighted mean that is then compared; the
// mean of the later ones weighs 1-first. A weight above 1 is normal.
func DudewiczDalalSize(h, variance, delta float64, n0 int) (n int, first float64) {
	needed := h * h * variance / (delta * delta)
	n = max(n0+1, ceil(needed))
	share, later := float64(n0)/float64(n), float64(n-n0)
	inner := 1 - 1/share*(1-ratio(later, needed))
	return n, share * (1 + math.Sqrt(max(inner, 0)))
}

// RinottH gives the constant h of Rinott's two-stage choice, for which plain
// means are compared (Rinott 1978, Communications in Statistics A 7:799–811):
//
//	∫ [∫ Φ(h / √(ν(1/x + 1/y))) f(x) dx]ᵏ⁻¹ f(y) dy = p
//
// with f of chi-squared, ν = n0-1 degrees of freedom. k and n0 are 2 or more, p
// above 1/k.
func RinottH(p float64, n0, k int) (float64, error) {
	if err := checkSelection(p, n0, k); err != nil {
		return 0, err
	}
	nu := float64(n0 - 1)
	grid := chiSquaredGrid(nu)
	return solve(p, func(h float64) float64 {
		return grid.integrate(func(y float64) float64 {
			return math.Pow(grid.integrate(func(x float64) float64 {
				return distuv.UnitNormal.CDF(h / math.Sqrt(nu*(1/x+1/y)))
			}), float64(k-1))
		})
	}), nil
}

// RinottSize gives how many values an alternative needs in all when its first
// n0 have this variance and a lead of delta, more than 0, matters.
func RinottSize(h, variance, delta float64, n0 int) int {
	return max(n0, ceil(h*h*variance/(delta*delta)))
}

// ceil rounds up; what is too large for the largest sensible size is that.
func ceil(x float64) int { return int(min(math.Ceil(x), 1<<53)) }

func checkSelection(p float64, n0, k int) error {
	switch {
	case k < 2:
		return fmt.Errorf("%d alternatives (allowed: 2 or more)", k)
	case n0 < 2:
		return fmt.Errorf("%d first replications (allowed: 2 or more)", n0)
	case !(p > 1/float64(k) && p < 1):
		return fmt.Errorf("probability %v of choosing the best of %d (allowed: between %.3g and 1)", p, k, 1/float64(k))
	}
	return nil
}
