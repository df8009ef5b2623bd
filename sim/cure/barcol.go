package cure

import (
	"slices"
	"sort"

	"moldturn/sim/param"
)

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

// AverageReading is the hardness of a laminate from single readings, as the
// shop takes it: the highest and the lowest are dropped and the rest averaged.
// It reports false with fewer than ten readings; the mean is then still given,
// of all of them below three. No reading gives 0.
//
// Source: practice with ASTM D2583, "Indentation Hardness of Rigid Plastics by
// Means of a Barcol Impressor": 10 – 12 readings, near 25 °C.
func AverageReading(readings []float64) (mean float64, enough bool) {
	sorted := slices.Sorted(slices.Values(readings))
	if len(sorted) > 2 {
		sorted = sorted[1 : len(sorted)-1]
	}
	for _, r := range sorted {
		mean += r / float64(len(sorted))
	}
	return mean, len(readings) >= 10
}

func barcolInputs() []param.Row {
	return []param.Row{
		{Path: "cure.barcol", Kind: param.List, Low: 2, High: 50, Optional: true,
			Doc:  "Barcol hardness by degree of cure, both rising; without it 0.68→0, 0.74→15, 0.80→28, 0.85→37, 0.90→44, 0.95→49",
			Mark: param.Assumption, Source: shop},
		{Path: "cure.barcol[].degree", Kind: param.Share, Doc: "degree of cure", Mark: param.User, Source: "the plant's own Barcol log"},
		{Path: "cure.barcol[].hardness", Kind: param.Number, Low: 0, High: 100, Doc: "Barcol hardness read there", Mark: param.User, Source: "the plant's own Barcol log"},
	}
}
