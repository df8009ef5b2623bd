package draw

import "math"

// Lognormal is the law whose logarithm is normal, given by the mean and the cv
// of the amount itself, not of its logarithm: σ² = ln(1 + cv²), μ = ln(mean) − σ²/2.
// cv 0 or mean 0 give a Constant. Needs 0 ≤ mean ≤ 1e12 and a cv of 0, or 0.001
// to 5.
func Lognormal(mean, cv float64) (Dist, error) {
	if err := meanAndCV("lognormal", mean, cv); err != nil {
		return nil, err
	}
	if mean == 0 || cv == 0 {
		return always(mean), nil
	}
	sigma2 := math.Log1p(cv * cv)
	return &law{
		sampler:  Sampler{kind: lognormal, a: mean * math.Exp(-sigma2/2), b: math.Sqrt(sigma2)},
		mean:     mean,
		variance: mean * mean * cv * cv,
		high:     math.Inf(1),
		text:     call("lognormal", mean, cv),
	}, nil
}

// lognormalQuantile scales exp of a normal quantile by the median.
func lognormalQuantile(median, sigma, u float64) float64 {
	return median * math.Exp(sigma*Normal01(u))
}
