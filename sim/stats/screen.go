package stats

import "math"

// Screening is the rule of Kim and Nelson (2001, ACM Transactions on Modeling
// and Computer Simulation 11:251–273), with c = 1: after each replication the
// alternatives that have fallen too far behind drop out, until one is left.
type Screening struct {
	Eta float64
	H2  float64 // h² = 2 η (n0-1)
}

// KimNelson gives the constants for k alternatives, n0 first replications of
// each and a chance alpha of not choosing a best that leads by delta.
func KimNelson(alpha float64, n0, k int) (Screening, error) {
	if err := checkSelection(1-alpha, n0, k); err != nil {
		return Screening{}, err
	}
	nu := float64(n0 - 1)
	eta := (math.Pow(2*alpha/float64(k-1), -2/nu) - 1) / 2
	return Screening{Eta: eta, H2: 2 * eta * nu}, nil
}

// Lag gives how far the mean of r replications may lie behind another's before
// the alternative drops out. Variance is that of the differences of the two in
// the first n0 pairs; delta, more than 0, is the lead that matters. It shrinks
// with r and reaches 0, so the procedure ends.
func (s Screening) Lag(variance, delta float64, r int) float64 {
	n := float64(r)
	return max(0, delta/(2*n)*(s.H2*variance/(delta*delta)-n))
}
