package draw

import (
	"math"
	"testing"
)

// ln against the standard library, whose logarithm is within one unit in the
// last place (documentation of FreeBSD's e_log.c).
func TestLn(t *testing.T) {
	key := Root(11, 0)
	worst := 0.0
	for n := range uint64(2_000_000) {
		u := key.U(n)
		if n%3 == 0 {
			u = math.Ldexp(u, -int(n%52))
		}
		got, want := ln(u), math.Log(u)
		if got != want {
			ulp := math.Abs(got-want) / (math.Nextafter(math.Abs(want), math.Inf(1)) - math.Abs(want))
			worst = max(worst, ulp)
		}
	}
	for _, u := range []float64{0x1p-53, 0.5, math.Nextafter(1, 0), math.Sqrt2 / 2, 1, 1.5, 1e300} {
		if got, want := ln(u), math.Log(u); math.Abs(got-want) > 1e-15*max(math.Abs(want), 1e-300) {
			t.Errorf("ln %g = %g, want %g", u, got, want)
		}
	}
	t.Logf("at most %.0f units in the last place apart", worst)
	if worst > 1 {
		t.Errorf("%.1f units in the last place apart", worst)
	}
}

func BenchmarkLn(b *testing.B) {
	for _, f := range []struct {
		name string
		of   func(float64) float64
	}{{"ours", ln}, {"library", math.Log}} {
		b.Run(f.name, func(b *testing.B) {
			x, sum := 0.3, 0.0
			for b.Loop() {
				sum += f.of(x)
				x = x*0.9 + 0.01
			}
			if sum > 0 {
				b.Fatal(sum)
			}
		})
	}
}
