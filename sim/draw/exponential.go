package draw

import "math"

// Exponential is the law of a wait that does not age: what is left of it has
// the same law however long it has lasted. Its standard deviation equals its
// mean. A mean of 0 gives a Constant. Needs 0 ≤ mean ≤ 1e12.
func Exponential(mean float64) (Dist, error) {
	if err := amount("exponential", "mean", mean); err != nil {
		return nil, err
	}
	if mean == 0 {
		return always(0), nil
	}
	return &law{
		sampler:  Sampler{kind: exponential, a: mean},
		mean:     mean,
		variance: mean * mean,
		high:     math.Inf(1),
		text:     call("exponential", mean),
	}, nil
}

// exponentialQuantile is -ln(1-u), of mean 1. For the numbers of Key.U the
// difference 1-u is exact; below the branch, where it need not be for other u,
// the slower Log1p takes over.
func exponentialQuantile(u float64) float64 {
	if u < 0x1p-12 {
		return -math.Log1p(-u)
	}
	return -ln(1 - u)
}
