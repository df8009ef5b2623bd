package draw

import "math"

// Normal is the normal law cut off at 0 and drawn again when it falls below, as
// lengths of work demand. mean and sd are those before the cut; Mean and Variance
// are those after it, and WarningOf reports a mean that moved by more than 1 %.
// sd 0 gives a Constant. Needs 0 ≤ mean ≤ 1e12 and 0 ≤ sd ≤ 1e12.
func Normal(mean, sd float64) (Dist, error) {
	if err := amount("normal", "mean", mean); err != nil {
		return nil, err
	}
	if err := amount("normal", "sd", sd); err != nil {
		return nil, err
	}
	if sd == 0 {
		return always(mean), nil
	}
	alpha := -mean / sd
	kept := normalCDF(-alpha)
	hazard := math.Exp(-alpha*alpha/2) / math.Sqrt(2*math.Pi) / kept
	l := &law{
		sampler:  Sampler{kind: other, other: &cutNormal{mean, sd, normalCDF(alpha), kept}},
		mean:     mean + sd*hazard,
		variance: sd * sd * (1 + alpha*hazard - hazard*hazard),
		high:     math.Inf(1),
		text:     call("normal", mean, sd),
	}
	l.warning = meanMoved(l.text, mean, l.mean)
	return l, nil
}

// meanMoved warns when the cut moves the mean by more than 1 %.
func meanMoved(text string, written, actual float64) *Warning {
	if actual <= written*1.01 {
		return nil
	}
	return &Warning{text, written, actual,
		"a normal law loses its negative values here; lognormal keeps the mean as written"}
}

// cutNormal draws from a normal law given that it is not negative.
type cutNormal struct {
	mean, sd  float64
	cut, kept float64 // probabilities below and above 0
}

// Quantile works from the nearer tail, where the probability is more exact.
func (n *cutNormal) Quantile(u float64) float64 {
	z := 0.0
	if below := n.cut + u*n.kept; below < 0.5 {
		z = Normal01(below)
	} else {
		z = -Normal01((1 - u) * n.kept)
	}
	return max(0, n.mean+n.sd*z)
}

// normalCDF is the standard normal distribution function.
func normalCDF(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }
