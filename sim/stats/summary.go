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

// Known is true if there is an interval: two values at least.
func (s Summary) Known() bool { return s.N >= 2 && s.Confidence > 0 }

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
		if s.SD == 0 {
			s.warn("all %d values are the same", s.N)
		}
	}
	s.setInterval(confidence, float64(s.N-1))
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
