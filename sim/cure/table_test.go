package cure

import (
	"math"
	"testing"
)

// The table against direct integration, for the default resin and for others
// that a scenario may name, over plateaus of −20 … 60 °C.
func TestTableAgainstDirectIntegration(t *testing.T) {
	for what, change := range map[string]func(*Params){
		"default":  func(*Params) {},
		"m 1, n 2": func(p *Params) { p.M, p.N = 1, 2 },
		"low n":    func(p *Params) { p.N = 1.2 },
		"high n":   func(p *Params) { p.N = 2.5 },
		"fast":     func(p *Params) { p.K1, p.K2 = 1, 10 },
		"low cap":  func(p *Params) { p.PlateauMost = 0.88 },
	} {
		p := Default()
		change(&p)
		table := NewTable(p)
		worst := 0.0
		for c := -20.0; c <= 60; c += 7.3 {
			k := p.At25(p.Plateau(c))
			s := newScale(k)
			for a := 0.0; a < k.Max; a += 0.0537 {
				for _, h := range []float64{0.001, 0.1, 1, 10, 100} {
					worst = max(worst, math.Abs(table.after(&s, a, h)-k.After(a, h)))
				}
			}
		}
		if worst > 1e-6 {
			t.Errorf("%s: degree wrong by up to %g", what, worst)
		}
	}
}

// The time to a degree and the degree after a time are inverse.
func TestBetweenInvertsAfter(t *testing.T) {
	p := Default()
	table := NewTable(p)
	for _, c := range []float64{5, 21, 33, 45} {
		s := newScale(p.At25(p.Plateau(c)))
		for a := 0.0; a < 0.75; a += 0.05 {
			for _, h := range []float64{0.01, 0.3, 2, 20} {
				b := table.after(&s, a, h)
				time, ok := table.between(&s, a, b)
				again := table.after(&s, a, time)
				if !ok || math.Abs(again-b) > 2e-7 {
					t.Fatalf("%v °C from %v in %v h: %v, back %v h, again %v", c, a, h, b, time, again)
				}
				near(t, "by halving", table.search(&s, a, b, h+1), time, 1e-3*h+1e-4)
			}
		}
	}
}

func BenchmarkNewTable(b *testing.B) {
	for i := 0; i < b.N; i++ {
		NewTable(Default())
	}
}

func BenchmarkAfter(b *testing.B) {
	p := Default()
	tab := NewTable(p)
	s := newScale(p.At25(0.87))
	x := 0.0
	for i := 0; i < b.N; i++ {
		x += tab.after(&s, float64(i%80)*0.01, 1)
	}
	_ = x
}
