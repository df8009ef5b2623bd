package stats

import (
	"math"
	"slices"
)

// Mean of xs; 0 for none. The sum is compensated, so the error is that of one
// rounding unless the values cancel.
func Mean(xs []float64) float64 {
	if len(xs) == 0 {
		return 0
	}
	n := float64(len(xs))
	m := Sum(xs) / n
	var rest sum
	for _, x := range xs {
		rest.add(x - m)
	}
	return m + rest.value()/n
}

// Variance of the sample, divisor n-1; 0 for fewer than two values. It takes
// two passes, so a mean that is large against the spread costs no digits
// (Chan, Golub and LeVeque 1983, The American Statistician 37:242–247, the
// corrected two-pass algorithm).
func Variance(xs []float64) float64 {
	n := float64(len(xs))
	if n < 2 {
		return 0
	}
	m := Mean(xs)
	var squares, rest sum
	for _, x := range xs {
		squares.add((x - m) * (x - m))
		rest.add(x - m)
	}
	r := rest.value()
	return max(squares.value()-r*r/n, 0) / (n - 1)
}

// SD is the standard deviation of the sample, divisor n-1; 0 for fewer than two
// values.
func SD(xs []float64) float64 { return math.Sqrt(Variance(xs)) }

// Lag1 is the correlation of each value with the one before it, as NIST defines
// it: Σ(xᵢ-x̄)(xᵢ₋₁-x̄) / Σ(xᵢ-x̄)². It is 0 for fewer than two values and for
// values that are all the same.
func Lag1(xs []float64) float64 {
	m := Mean(xs)
	var products, squares sum
	for i, x := range xs {
		squares.add((x - m) * (x - m))
		if i > 0 {
			products.add((x - m) * (xs[i-1] - m))
		}
	}
	return ratio(products.value(), squares.value())
}

// Correlation of the pairs (a[i], b[i]) over the common first part; -1 … 1, and
// 0 where one of them does not vary.
func Correlation(a, b []float64) float64 {
	n := min(len(a), len(b))
	a, b = a[:n], b[:n]
	ma, mb := Mean(a), Mean(b)
	var ab, aa, bb sum
	for i := range a {
		ab.add((a[i] - ma) * (b[i] - mb))
		aa.add((a[i] - ma) * (a[i] - ma))
		bb.add((b[i] - mb) * (b[i] - mb))
	}
	r := ratio(ab.value(), math.Sqrt(aa.value())*math.Sqrt(bb.value()))
	return max(-1, min(r, 1))
}

// Sum of xs, compensated.
func Sum(xs []float64) float64 {
	var s sum
	for _, x := range xs {
		s.add(x)
	}
	return s.value()
}

// Quantile gives the value below which the share p of xs lies, between the
// sorted values by straight lines with the lowest at p = 0 and the highest at
// p = 1 (Hyndman and Fan 1996, The American Statistician 50:361–365, type 7).
// It is 0 for no values; p outside 0 … 1 gives an end. xs is not changed.
func Quantile(xs []float64, p float64) float64 {
	return Quantiles(xs, p)[0]
}

// Quantiles gives Quantile for each of ps with one sort.
func Quantiles(xs []float64, ps ...float64) []float64 {
	out := make([]float64, len(ps))
	if len(xs) == 0 {
		return out
	}
	sorted := slices.Clone(xs)
	slices.Sort(sorted)
	for i, p := range ps {
		out[i] = between(sorted, p*float64(len(sorted)-1))
	}
	return out
}

// P10 is the value that nine in ten of xs reach: the quantile at 0.1.
func P10(xs []float64) float64 { return Quantile(xs, 0.1) }

// between reads sorted at place h, counted from 0 and not always whole.
func between(sorted []float64, h float64) float64 {
	last := len(sorted) - 1
	if !(h > 0) {
		return sorted[0]
	}
	if h >= float64(last) {
		return sorted[last]
	}
	i := int(h)
	return sorted[i] + (h-float64(i))*(sorted[i+1]-sorted[i])
}

// sum adds numbers and keeps what rounding loses (Neumaier 1974, ZAMM
// 54:39–51). The zero value is 0.
type sum struct{ total, lost float64 }

func (s *sum) add(x float64) {
	t := s.total + x
	if math.Abs(s.total) >= math.Abs(x) {
		s.lost += s.total - t + x
	} else {
		s.lost += x - t + s.total
	}
	s.total = t
}

func (s *sum) value() float64 { return s.total + s.lost }

// ratio is a/b, or 0 where that is not a number.
func ratio(a, b float64) float64 {
	if r := a / b; finite(r) {
		return r
	}
	return 0
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
