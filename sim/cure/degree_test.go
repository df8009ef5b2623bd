package cure

import (
	"math"
	"testing"

	"moldturn/sim/clock"

	"pgregory.net/rapid"
)

// slowDegree integrates directly, hour by hour.
func slowDegree(temps []float64, p Params, start, t clock.Time) float64 {
	a, idle := 0.0, p.Induction*p.Thick
	for at := start; at < t; {
		i := int(math.Floor(at.Hours()))
		end := min(t, clock.Time(i+1)*clock.Hour)
		temp := ReferenceC
		if len(temps) > 0 {
			temp = temps[min(max(i, 0), len(temps)-1)]
		}
		te := (end - at).Hours() * Speed(temp, p.ActivationEnergy)
		used := min(idle, te)
		idle -= used
		a = p.At25(p.Plateau(temp)).After(a, (te-used)/p.Thick)
		at = end
	}
	return a
}

// A year of hours, holds that begin at any minute, every 5 hours, and end whole
// and broken hours later.
func TestDegreeOverAYear(t *testing.T) {
	for thick, table := range testTables() {
		p := Default()
		p.Thick = thick
		for _, shift := range []float64{-12, 0, 12} {
			temps := waves(8760)
			for i := range temps {
				temps[i] += shift
			}
			d := NewDegree(temps, NewHours(temps, p), table)
			worst := 0.0
			for start := clock.Time(0); start < 8760*clock.Hour; start += 97*clock.Hour + 7919*clock.Second {
				for _, wait := range []clock.Time{3*clock.Hour + 1, 12 * clock.Hour, 30*clock.Hour + 1799999} {
					worst = max(worst, math.Abs(d.At(start, start+wait)-slowDegree(temps, p, start, start+wait)))
				}
			}
			if worst > 1e-6 {
				t.Errorf("thick-shot factor %v, %+v °C: degree wrong by up to %g", thick, shift, worst)
			}
		}
	}
}

type series struct {
	temps []float64
	start clock.Time
	thick float64
	p     Params
	d     *Degree
}

// anySeries is a shop of any temperatures and a shot that starts before, in or
// after it.
func anySeries(t *rapid.T, tables map[float64]*Table, low, high float64) series {
	s := series{
		temps: rapid.SliceOfN(rapid.Float64Range(low, high), 0, 60).Draw(t, "temps"),
		start: clock.Time(rapid.Int64Range(-5*int64(clock.Hour), 70*int64(clock.Hour)).Draw(t, "start")),
		thick: rapid.SampledFrom([]float64{1, 2}).Draw(t, "thick"),
		p:     Default(),
	}
	s.p.Thick = s.thick
	s.d = NewDegree(s.temps, NewHours(s.temps, s.p), tables[2]).With(tables[s.thick])
	return s
}

func testTables() map[float64]*Table {
	two := NewTable(Default())
	return map[float64]*Table{1: two.WithThick(1), 2: two}
}

// Degrees along a series agree with direct integration to 1e-6, in a shop of
// 5 … 45 °C and far outside it.
func TestDegreeAgainstDirectIntegration(t *testing.T) {
	tables := testTables()
	for _, span := range [][2]float64{{5, 45}, {15, 30}, {-30, 70}} {
		rapid.Check(t, func(t *rapid.T) {
			s := anySeries(t, tables, span[0], span[1])
			end := s.start + clock.Time(rapid.Int64Range(0, 80*int64(clock.Hour)).Draw(t, "wait"))
			want := slowDegree(s.temps, s.p, s.start, end)
			if got := s.d.At(s.start, end); !(math.Abs(got-want) <= 1e-6) {
				t.Fatalf("degree %.9f, integrated %.9f", got, want)
			}
		})
	}
}

// Ready finds the instant at which At has the target, and says so when there
// is none.
func TestDegreeReady(t *testing.T) {
	tables := testTables()
	rapid.Check(t, func(t *rapid.T) {
		s := anySeries(t, tables, 5, 45)
		target := rapid.Float64Range(0.001, 0.96).Draw(t, "target")
		limit := s.start + clock.Time(rapid.Int64Range(0, 100*int64(clock.Hour)).Draw(t, "limit"))
		at, ok := s.d.Ready(s.start, target, limit)
		if !ok {
			if a := s.d.At(s.start, limit); at != limit || a > target {
				t.Fatalf("not ready at %v, but the degree is %v", at, a)
			}
			return
		}
		// A millisecond of a hot resin moves the degree by less than 1e-6.
		if a := s.d.At(s.start, at); at < s.start || at > limit || math.Abs(a-target) > 2e-6 {
			t.Fatalf("ready at %v (limit %v): degree %.8f, want %.8f", at, limit, a, target)
		}
	})
}

// A part warmed and then cooled below its plateau stays as it is.
func TestCoolingKeepsTheDegree(t *testing.T) {
	p := Default()
	temps := []float64{45, 45, 45, 45, 45, 45, 45, 45, 10, 10, 10, 10}
	d := NewDegree(temps, NewHours(temps, p), NewTable(p))
	hot := d.At(0, 8*clock.Hour)
	for _, end := range []clock.Time{9 * clock.Hour, 11*clock.Hour + 7, 1000 * clock.Hour} {
		if got := d.At(0, end); got != hot || hot < p.Plateau(10) {
			t.Errorf("degree %v when hot, %v at %v", hot, got, end)
		}
	}
	if at, ok := d.Ready(0, 0.95, 100*clock.Hour); ok || at != 100*clock.Hour {
		t.Errorf("out of reach, yet ready at %v", at)
	}
	if at, ok := d.Ready(5, 0, 7); !ok || at != 5 {
		t.Errorf("a target of nothing is ready at %v, %v", at, ok)
	}
}

func BenchmarkAt24(b *testing.B) {
	p := Default()
	m := waves(10 * 8760)
	d := NewDegree(m, NewHours(m, p), NewTable(p))
	b.ReportAllocs()
	b.ResetTimer()
	sink := 0.0
	for i := 0; i < b.N; i++ {
		from := clock.Time(i%80000)*clock.Hour + 12345
		sink += d.At(from, from+clock.Day)
	}
	_ = sink
}

func BenchmarkNewDegree10Years(b *testing.B) {
	p := Default()
	m := waves(10 * 8760)
	tb := NewTable(p)
	for i := 0; i < b.N; i++ {
		NewDegree(m, NewHours(m, p), tb)
	}
}
