package draw

import (
	"slices"
	"strconv"
)

// Empirical is the continuous law through observed values: straight lines
// between the sorted observations, the i-th of n at probability (i-1)/(n-1).
// Its quantiles are those of type 7 in Hyndman and Fan, "Sample Quantiles in
// Statistical Packages", The American Statistician 50, 1996. It never leaves
// the range of the observations; its mean and variance are those of this law,
// not of the sample. One observation, or equal ones, give a Constant. Needs at
// least one value, each 0 to 1e12; the slice is copied.
func Empirical(values ...float64) (Dist, error) {
	if len(values) == 0 {
		return nil, &ParamError{"empirical", "number of values", 0, "1 or more"}
	}
	for i, v := range values {
		if err := amount("empirical", "values["+strconv.Itoa(i)+"]", v); err != nil {
			return nil, err
		}
	}
	x := slices.Clone(values)
	slices.Sort(x)
	low, high := x[0], x[len(x)-1]
	if low == high {
		return always(low), nil
	}
	mean, variance := polygonMoments(x)
	return &law{
		sampler:  Sampler{kind: other, other: polygon(x)},
		mean:     mean,
		variance: variance,
		low:      low, high: high,
		text: call("empirical", x...),
	}, nil
}

// polygon is a distribution function of straight lines through sorted values.
type polygon []float64

// Quantile interpolates between the two neighbours of position (n-1)·u.
func (x polygon) Quantile(u float64) float64 {
	h := u * float64(len(x)-1)
	i := min(int(h), len(x)-2)
	return min(x[i]+(h-float64(i))*(x[i+1]-x[i]), x[i+1])
}

// polygonMoments treats the law as an even mix of uniform laws.
func polygonMoments(x []float64) (mean, variance float64) {
	pieces := float64(len(x) - 1)
	for i := range len(x) - 1 {
		mean += (x[i] + x[i+1]) / 2 / pieces
	}
	for i := range len(x) - 1 {
		shift, width := (x[i]+x[i+1])/2-mean, x[i+1]-x[i]
		variance += (shift*shift + width*width/12) / pieces
	}
	return mean, variance
}
