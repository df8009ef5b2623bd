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
