package stats

import "math"

// Difference is the mean of one alternative less that of another.
type Difference struct {
	Summary // of the difference first less second; of Welch, N is the smaller number

	DF float64 // degrees of freedom of the interval; 0 for fewer than two values

	// Correlation of the pairs, -1 … 1. With the same luck for both
	// alternatives it should be well above 0. 0 if they were not paired.
	Correlation float64

	// Narrower is how many times as wide the interval would be without pairing
	// (Welch's half width over this one's). 0 if one of them is not known or
	// zero.
	Narrower float64

	// Clear is true if the interval leaves out 0. If it is false, the numbers
	// do not show which alternative is better.
	Clear bool
}

// Paired compares alternatives that met the same luck: a[i] and b[i] come from
// the same replication. It takes differences pair by pair and the interval of
// Student's t over them. Where one has more values than the other, the common
// first ones are used.
func Paired(a, b []float64, confidence float64) Difference {
	n := min(len(a), len(b))
	first, second, diffs := finitePairs(a[:n], b[:n])
	d := Difference{Summary: TInterval(diffs, confidence), Correlation: Correlation(first, second)}
	if len(diffs) < n {
		d.warn("%d of %d pairs have a value that is not a finite number and are left out", n-len(diffs), n)
	}
	if len(a) != len(b) {
		d.warn("%d and %d replications: the common first %d are compared", len(a), len(b), n)
	}
	if d.Known() {
		d.DF = float64(d.N - 1)
		d.Narrower = ratio(Welch(first, second, confidence).Half, d.Half)
	}
	d.decide()
	return d
}

// Welch compares alternatives whose values are independent of one another, with
// degrees of freedom after Welch (1947, Biometrika 34:28–35). Spreads and
// numbers may differ.
func Welch(a, b []float64, confidence float64) Difference {
	x, y := onlyFinite(a), onlyFinite(b)
	d := Difference{Summary: Summary{N: min(len(x), len(y)), Mean: Mean(x) - Mean(y)}}
	if lost := len(a) + len(b) - len(x) - len(y); lost > 0 {
		d.warn("%d of %d values are not finite numbers and are left out", lost, len(a)+len(b))
	}
	d.warnOfFew()
	if d.N >= 2 {
		d.DF = d.welch(x, y)
	}
	d.setInterval(confidence, d.DF)
	d.Narrower = ratio(d.Half, d.Half)
	d.decide()
	return d
}

// welch fills in the spread and gives the degrees of freedom.
func (d *Difference) welch(x, y []float64) float64 {
	vx, vy := Variance(x), Variance(y)
	nx, ny := float64(len(x)), float64(len(y))
	sx, sy := vx/nx, vy/ny
	d.SD, d.SE = math.Sqrt(vx+vy), math.Sqrt(sx+sy)
	part := ratio(sx, sx+sy)
	return 1 / (part*part/(nx-1) + (1-part)*(1-part)/(ny-1))
}

func (d *Difference) decide() {
	d.Clear = d.Known() && (d.Low > 0 || d.High < 0)
}

// finitePairs gives the pairs of which both values are finite, and their
// differences.
func finitePairs(a, b []float64) (first, second, diffs []float64) {
	for i := range a {
		if d := a[i] - b[i]; finite(d) {
			first, second, diffs = append(first, a[i]), append(second, b[i]), append(diffs, d)
		}
	}
	return first, second, diffs
}
