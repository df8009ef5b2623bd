package cure

import (
	"testing"

	"pgregory.net/rapid"
)

func TestBarcol(t *testing.T) {
	b := DefaultBarcol()
	for _, m := range b {
		near(t, "hardness at a mark", b.At(m.Degree), m.Barcol, 1e-12)
	}
	for _, m := range b[1:] {
		near(t, "degree of a mark", b.Degree(m.Barcol), m.Degree, 1e-12)
	}
	near(t, "between marks", b.At(0.825), 32.5, 1e-12)
	near(t, "beyond the last mark", b.At(0.97), 51, 1e-12)
	near(t, "before the first mark", b.At(0.3), 0, 0)
	near(t, "degree of no hardness", b.Degree(0), 0, 0)
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(0.01, 60).Draw(t, "hardness")
		if a := b.Degree(h); !(b.At(a)-h < 1e-9 && h-b.At(a) < 1e-9) {
			t.Fatalf("hardness %v → degree %v → hardness %v", h, a, b.At(a))
		}
	})
}

// Dropping the highest and the lowest of ten leaves eight; worked by hand.
func TestAverageReading(t *testing.T) {
	mean, enough := AverageReading([]float64{35, 60, 34, 36, 33, 37, 0, 35, 36, 34})
	near(t, "mean of ten", mean, 280.0/8, 1e-12)
	if !enough {
		t.Error("ten readings are not enough")
	}
	mean, enough = AverageReading([]float64{30, 40})
	near(t, "mean of two", mean, 35, 1e-12)
	if enough {
		t.Error("two readings are enough")
	}
	mean, _ = AverageReading(nil)
	near(t, "mean of none", mean, 0, 0)
}
