package stats

import (
	"fmt"
	"math"
)

// Few is the number of replications below which a summary warns. With skewed
// data, t intervals from fewer cover clearly less often than they say.
const Few = 10

// Summary is a mean and how well it is known.
type Summary struct {
	N    int     // values used
	Mean float64 // 0 for no values
	SD   float64 // of one value; 0 for fewer than two
	SE   float64 // of the mean; 0 for fewer than two

	// Low … High covers the true mean with probability Confidence; it is
	// Mean ± Half. If Known is false, Half is 0 and says nothing.
	Half, Low, High float64
	Confidence      float64 // 0 … 1; 0 if it was not a confidence

	Warnings []string // what a reader should know, in words; nil for nothing
}

// Known is true if there is an interval: two values at least that differ.
// Values that are all the same have no spread to judge by, and in few runs that
// is chance more often than certainty. They count as known from so many on that
// their signs alone would show it: 2^(1-N), the chance that N signs agree, is at
// most 1-Confidence, 6 values for 95 % (the sign test: Conover, Practical
// Nonparametric Statistics, ch. 3).
func (s Summary) Known() bool {
	if s.N < 2 || s.Confidence <= 0 {
		return false
	}
	return !s.same() || math.Pow(2, 1-float64(s.N)) <= 1-s.Confidence
}

// TInterval summarizes independent values, one of each replication, with the
// interval of Student's t. Confidence is a share such as 0.95.
func TInterval(xs []float64, confidence float64) Summary {
	used := onlyFinite(xs)
	s := Summary{N: len(used), Mean: Mean(used), SD: SD(used)}
	if lost := len(xs) - s.N; lost > 0 {
		s.warn("%d of %d values are not finite numbers and are left out", lost, len(xs))
	}
	s.warnOfFew()
	if s.N >= 2 {
		s.SE = s.SD / math.Sqrt(float64(s.N))
	}
	s.setInterval(confidence, float64(s.N-1))
	if s.N >= 2 && s.same() {
		s.warnOfSame()
	}
	return s
}

// setInterval fills in the interval from Mean and SE.
func (s *Summary) setInterval(confidence, df float64) {
	s.Low, s.High = s.Mean, s.Mean
	if !(confidence > 0 && confidence < 1) {
		s.warn("a confidence of %v is not between 0 and 1", confidence)
		return
	}
	s.Confidence = confidence
	if s.N < 2 || s.SE == 0 {
		return
	}
	s.Half = TQuantile(0.5+confidence/2, df) * s.SE
	s.Low, s.High = s.Mean-s.Half, s.Mean+s.Half
}

func (s *Summary) warnOfFew() {
	switch {
	case s.N == 0:
		s.warn("no replications")
	case s.N == 1:
		s.warn("only 1 replication: no interval")
	case s.N < Few:
		s.warn("only %d replications", s.N)
	}
}

// same is true for values that do not differ, but for the rounding of a
// difference of two numbers.
func (s Summary) same() bool { return s.SD <= 1e-12*math.Abs(s.Mean) }

func (s *Summary) warnOfSame() {
	if s.Known() {
		s.warn("all %d values are the same", s.N)
		return
	}
	s.warn("all %d values are the same: too few to be sure that it is not by chance", s.N)
}

func (s *Summary) warn(format string, args ...any) {
	s.Warnings = append(s.Warnings, fmt.Sprintf(format, args...))
}

// onlyFinite leaves out what is not finite; xs itself if that is nothing.
func onlyFinite(xs []float64) []float64 {
	for i, x := range xs {
		if !finite(x) {
			out := append([]float64(nil), xs[:i]...)
			for _, x := range xs[i:] {
				if finite(x) {
					out = append(out, x)
				}
			}
			return out
		}
	}
	return xs
}
