package exact

import (
	"math"
	"testing"
)

// near fails unless got is want to within an absolute tolerance: half a unit of
// the last digit that the source prints, or of the arithmetic.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s = %.12g, want %.12g ± %g", what, got, want, tolerance)
	}
}
