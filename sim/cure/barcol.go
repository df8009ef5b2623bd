package cure

import "sort"

// Mark ties a degree of cure to the Barcol hardness read there.
type Mark struct {
	Degree, Barcol float64
}

// Barcol translates between degree of cure and Barcol hardness by straight
// lines between marks, both rising. Below the first mark the hardness is the
// first mark's; the last line goes on beyond the last mark. It needs two marks.
type Barcol []Mark

// DefaultBarcol is an assumption, fitted to plausible shop behavior: a plant
// should replace it with its own log. A fully cured laminate reads 40 – 50 (from
// memory).
func DefaultBarcol() Barcol {
	return Barcol{{0.68, 0}, {0.74, 15}, {0.80, 28}, {0.85, 37}, {0.90, 44}, {0.95, 49}}
}

// At is the Barcol hardness at degree of cure a.
func (b Barcol) At(a float64) float64 {
	if a <= b[0].Degree {
		return b[0].Barcol
	}
	i := b.line(sort.Search(len(b), func(i int) bool { return b[i].Degree >= a }))
	return b[i].Barcol + (a-b[i].Degree)*(b[i+1].Barcol-b[i].Barcol)/(b[i+1].Degree-b[i].Degree)
}

// Degree is the lowest degree of cure at which hardness reads; 0 when hardness
// is not above the first mark's, because every part has that.
func (b Barcol) Degree(hardness float64) float64 {
	if hardness <= b[0].Barcol {
		return 0
	}
	i := b.line(sort.Search(len(b), func(i int) bool { return b[i].Barcol >= hardness }))
	return b[i].Degree + (hardness-b[i].Barcol)*(b[i+1].Degree-b[i].Degree)/(b[i+1].Barcol-b[i].Barcol)
}

// line is the mark that starts the line on which the search ended.
func (b Barcol) line(found int) int { return min(max(found-1, 0), len(b)-2) }
