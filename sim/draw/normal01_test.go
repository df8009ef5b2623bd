package draw

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mathext"
)

// The three check values printed in Wichura 1988, p. 481 (page from memory).
func TestNormal01PublishedValues(t *testing.T) {
	for _, c := range []struct{ u, want float64 }{
		{0.25, -0.6744897501960817},
		{0.001, -3.090232306167814},
		{1e-20, -9.262340089798408},
	} {
		if got := Normal01(c.u); relative(got, c.want) > 4e-16 {
			t.Errorf("%g: %.17g, want %.17g", c.u, got, c.want)
		}
	}
}

func TestNormal01AgainstGonum(t *testing.T) {
	k := Root(11, 0)
	for n := range uint64(200_000) {
		u := k.U(n)
		if n%2 == 0 {
			u = math.Exp(-700 * u) // the far lower tail
		}
		want := mathext.NormalQuantile(u)
		if got := Normal01(u); math.Abs(got-want) > 2e-15*math.Abs(want)+1e-17 {
			t.Fatalf("%g: %.17g, gonum %.17g", u, got, want)
		}
	}
}

// Through the distribution function of the standard library, to 15 digits. Near
// the median u itself holds z only to its last bit, 2e-16.
func TestNormal01AgainstErfc(t *testing.T) {
	for z := -8.0; z <= 8; z += 1.0 / 64 {
		u := math.Erfc(math.Abs(z)/math.Sqrt2) / 2
		if got := Normal01(u); math.Abs(got+math.Abs(z)) > 1e-15*math.Abs(z)+2e-16 {
			t.Errorf("z %g: %.17g", z, got)
		}
	}
}

func TestNormal01IsOddAndRises(t *testing.T) {
	k, before := Root(12, 0), math.Inf(-1)
	for n := range uint64(100_000) {
		if u := k.U(n); Normal01(u) != -Normal01(1-u) {
			t.Fatalf("not odd at %g", u)
		}
		if z := Normal01((float64(n) + 0.5) / 100_000); z <= before {
			t.Fatalf("does not rise at %d", n)
		} else {
			before = z
		}
	}
}
