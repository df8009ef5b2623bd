package draw

import "math"

// Weibull is the law of a life that ends at the first of many weak points: of
// falling risk with age for a cv above 1, rising below. cv is standard deviation
// over mean; cv 0 or mean 0 give a Constant. Needs 0 ≤ mean ≤ 1e12 and a cv of
// 0, or 0.001 to 5.
func Weibull(mean, cv float64) (Dist, error) {
	if err := meanAndCV("weibull", mean, cv); err != nil {
		return nil, err
	}
	if mean == 0 || cv == 0 {
		return always(mean), nil
	}
	inverse := weibullInverseShape(cv)
	return newWeibull(inverse, mean/math.Gamma(1+inverse), mean, cv), nil
}

// WeibullShape is the Weibull law with a given shape, 0.35 to 1000, and scale,
// 0 to 1e12: the age that 63 % of lives do not reach.
func WeibullShape(shape, scale float64) (Dist, error) {
	if err := within("weibull", "shape", shape, 0.35, 1000); err != nil {
		return nil, err
	}
	if err := amount("weibull", "scale", scale); err != nil {
		return nil, err
	}
	if scale == 0 {
		return always(0), nil
	}
	cv := math.Sqrt(math.Expm1(weibullLogSpread(1 / shape)))
	return newWeibull(1/shape, scale, scale*math.Gamma(1+1/shape), cv), nil
}

func newWeibull(inverseShape, scale, mean, cv float64) *law {
	return &law{
		sampler:  Sampler{kind: weibull, a: scale, b: inverseShape},
		mean:     mean,
		variance: mean * mean * cv * cv,
		high:     math.Inf(1),
		text:     call("weibull", mean, cv),
	}
}

// weibullQuantile is scale · (-ln(1-u))^(1/shape).
func weibullQuantile(scale, inverseShape, u float64) float64 {
	return scale * math.Exp(inverseShape*math.Log(exponentialQuantile(u)))
}

// weibullLogSpread is ln(1 + cv²) of the law with the given 1/shape.
func weibullLogSpread(inverseShape float64) float64 {
	square, _ := math.Lgamma(1 + 2*inverseShape)
	mean, _ := math.Lgamma(1 + inverseShape)
	return square - 2*mean
}

// weibullInverseShape solves for 1/shape by halving an interval that holds every
// allowed cv: weibullLogSpread rises with its argument.
func weibullInverseShape(cv float64) float64 {
	want := math.Log1p(cv * cv)
	low, high := 0.0, 5.0
	for range 80 {
		if middle := (low + high) / 2; weibullLogSpread(middle) < want {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}
