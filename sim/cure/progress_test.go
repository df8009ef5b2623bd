package cure

import (
	"math"
	"testing"

	"moldturn/sim/clock"

	"pgregory.net/rapid"
)

// A shot that stops at any instants on its way is as far as one that does not.
func TestAdvanceInPieces(t *testing.T) {
	tables := testTables()
	rapid.Check(t, func(t *rapid.T) {
		s := anySeries(t, tables, -5, 45)
		p, at := s.d.Fresh(), s.start
		for range rapid.IntRange(1, 6).Draw(t, "pieces") {
			next := at + clock.Time(rapid.Int64Range(0, int64(20*clock.Hour)).Draw(t, "piece"))
			p = s.d.Advance(p, at, next)
			at = next
		}
		if want := s.d.At(s.start, at); math.Abs(p.Degree-want) > 2e-6 {
			t.Fatalf("in pieces %v, at once %v", p.Degree, want)
		}
	})
}

// 12 h at 15 °C, then warmth: the degree goes on from where it was, at the pace
// of the warm place, and meets direct integration along the joined series.
func TestAdvanceIntoWarmPlace(t *testing.T) {
	p := Default()
	table := NewTable(p)
	shop, warm := []float64{15}, []float64{35}
	cold := NewDegree(shop, NewHours(shop, p), table)
	oven := NewDegree(warm, NewHours(warm, p), table)
	at := 12 * clock.Hour
	mid := cold.Advance(cold.Fresh(), 0, at)
	both := make([]float64, 40)
	for i := range both {
		both[i] = 15
		if i >= 12 {
			both[i] = 35
		}
	}
	for h := 13; h < 40; h++ {
		end := clock.Time(h) * clock.Hour
		got, want := oven.Advance(mid, at, end).Degree, slowDegree(both, p, 0, end)
		if math.Abs(got-want) > 1e-6 {
			t.Errorf("%d h: %v, want %v", h, got, want)
		}
	}
	ready, ok := oven.ReadyFrom(mid, at, 0.85, clock.Never)
	if !ok || math.Abs(slowDegree(both, p, 0, ready)-0.85) > 1e-6 {
		t.Errorf("0.85 at %v %v, where it is %v", ready, ok, slowDegree(both, p, 0, ready))
	}
}

// The degree after 24 h at 21 °C, by independent integration in steps of 1e-4 h
// of the model's equation (fourth-order Runge-Kutta).
func TestReference(t *testing.T) {
	for _, c := range []struct{ thick, want float64 }{{2, rungeKutta(2)}, {1, rungeKutta(1)}} {
		p := Default()
		p.Thick = c.thick
		if got := NewTable(p).Reference(); math.Abs(got-c.want) > 2e-6 {
			t.Errorf("factor %v: %v, want %v", c.thick, got, c.want)
		}
	}
	if got := NewTable(Default()).Reference(); math.Abs(got-0.8346) > 5e-5 {
		t.Errorf("%v, worked out before as 0.8346", got)
	}
}

func rungeKutta(thick float64) float64 {
	const step = 1e-4
	p := Default()
	s := Speed(21, p.ActivationEnergy)
	most := p.Plateau(21)
	rate := func(a float64) float64 {
		return s / thick * (p.K1 + p.K2*math.Pow(a, p.M)) * math.Pow(max(0, most-a), p.N)
	}
	a := 0.0
	for t := p.Induction * thick / s; t < 24; t += step {
		h := min(step, 24-t)
		k1 := rate(a)
		k2 := rate(a + h/2*k1)
		k3 := rate(a + h/2*k2)
		k4 := rate(a + h*k3)
		a += h / 6 * (k1 + 2*k2 + 2*k3 + k4)
	}
	return a
}
