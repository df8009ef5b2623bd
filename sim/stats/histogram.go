package stats

import "math"

// Histogram counts values in bins of one width. Bin i is
// [Low + i·Width, Low + (i+1)·Width).
type Histogram struct {
	Low, Width float64
	Counts     []int
	N          int // values counted
}

// Bins counts xs in about the number of bins asked for, 1 or more, with a width
// of 1, 2 or 5 times a power of ten and edges at its multiples, so that edges
// can be read. Values that are not finite are not counted. Without values there
// are no bins.
func Bins(xs []float64, about int) Histogram {
	xs = onlyFinite(xs)
	if len(xs) == 0 {
		return Histogram{}
	}
	ends := Quantiles(xs, 0, 1)
	n := float64(max(about, 1))
	h := Histogram{Width: roundWidth(ends[1]/n - ends[0]/n), N: len(xs)}
	if largest := max(-ends[0], ends[1]); h.Width == 0 || largest/h.Width > 1<<50 {
		h.Width = roundWidth(largest / 8)
	}
	if h.Width == 0 {
		h.Width = 1
	}
	first := h.bin(ends[0])
	h.Low = h.edge(first)
	h.Counts = make([]int, int(h.bin(ends[1])-first)+1)
	for _, x := range xs {
		h.Counts[int(h.bin(x)-first)]++
	}
	return h
}

// Edge gives the lower edge of bin i, the upper edge of bin i-1. Edges are the
// nearest numbers to their decimals: the third tenth is 0.3.
func (h Histogram) Edge(i int) float64 {
	return h.edge(math.Round(h.Low/h.Width) + float64(i))
}

// edge is k·Width. Widths below 1 are one over a whole number.
func (h Histogram) edge(k float64) float64 {
	if h.Width >= 1 {
		return k * h.Width
	}
	return k / math.Round(1/h.Width)
}

// bin gives the number of the bin of x counted from 0, not from Low.
func (h Histogram) bin(x float64) float64 {
	k := math.Floor(x / h.Width)
	switch {
	case x >= h.edge(k+1):
		return k + 1
	case x < h.edge(k):
		return k - 1
	}
	return k
}

// roundWidth gives the least of 1, 2, 5 times a power of ten that is at least w;
// 0 for 0.
func roundWidth(w float64) float64 {
	if !(w > 0) {
		return 0
	}
	power := math.Pow(10, math.Floor(math.Log10(w)))
	for _, m := range []float64{1, 2, 5} {
		if w <= m*power {
			return m * power
		}
	}
	return 10 * power
}
