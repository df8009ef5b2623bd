package cure

import (
	"math"
	"testing"

	"moldturn/sim/clock"
)

// square is days of 12 h at one temperature and 12 h at another, °C.
func square(day, night float64, days int) []float64 {
	var temps []float64
	for h := range 24 * days {
		if h%24 < 12 {
			temps = append(temps, day)
		} else {
			temps = append(temps, night)
		}
	}
	return temps
}

// thinHours is the equivalent hours of a square wave from its start, in closed
// form: whole half days, and the rest of one.
func thinHours(day, night, hours, ea float64) float64 {
	whole := math.Floor(hours / 24)
	rest := hours - 24*whole
	return (12*whole+min(rest, 12))*Speed(day, ea) + (12*whole+max(rest-12, 0))*Speed(night, ea)
}

// A square wave of temperature has an exact number of equivalent hours, and an
// exact time for a number of them (ASTM C1074: equivalent age is the integral of
// the relative rate).
func TestSquareWaveOfEquivalentHours(t *testing.T) {
	p := Default()
	const day, night = 30.0, 12.0
	h := NewHours(square(day, night, 10), p)
	for _, hours := range []float64{0.25, 5, 12, 12.5, 24, 36, 61.75, 239} {
		want := thinHours(day, night, hours, p.ActivationEnergy)
		if got := h.Equivalent(0, clock.FromHours(hours)); math.Abs(got-want) > 1e-10 {
			t.Errorf("%v h: %v equivalent hours, want %v", hours, got, want)
		}
		if got := h.Ready(0, want); got.Hours() < hours-1e-6 || got.Hours() > hours+1e-6 {
			t.Errorf("%v equivalent hours: ready at %v h, want %v", want, got.Hours(), hours)
		}
	}
	// From noon to noon it is the same number whatever the half that comes first.
	if a, b := h.Equivalent(0, clock.Day), h.Equivalent(12*clock.Hour, 36*clock.Hour); math.Abs(a-b) > 1e-12 {
		t.Errorf("%v by day first, %v by night first", a, b)
	}
}

// nth is the exact degree of a reaction of order n with one rate: with u what is
// left to the plateau, u^(1−n) grows by (n−1)·k·t.
func nth(k, n, most, hours float64) float64 {
	return most - math.Pow(math.Pow(most, 1-n)+(n-1)*k*max(hours, 0), 1/(1-n))
}

// With one rate of order n and one plateau the degree over a square wave is exact
// too: that of its equivalent hours.
func TestSquareWaveOfDegree(t *testing.T) {
	p := Default()
	p.K1, p.K2, p.PlateauPerC = 0.5, 0, 0
	const day, night = 30.0, 12.0
	temps := square(day, night, 10)
	d := NewDegree(temps, NewHours(temps, p), NewTable(p))
	for _, hours := range []float64{0.5, 3, 12, 12.5, 24, 36, 61.75, 239} {
		thin := thinHours(day, night, hours, p.ActivationEnergy)/p.Thick - p.Induction
		want := nth(p.K1, p.N, p.PlateauAt15, thin)
		if got := d.At(0, clock.FromHours(hours)); !(math.Abs(got-want) <= 1e-6) {
			t.Errorf("%v h: degree %.9f, want %.9f", hours, got, want)
		}
	}
}

// Nights that cool below the plateau add nothing: the degree is exactly that of
// the days alone, is a number at every minute, and never falls.
func TestNightsBelowThePlateau(t *testing.T) {
	p := Default()
	p.K1, p.K2, p.PlateauPerC = 0.5, 0, 0.03
	const day, night, days = 25.0, 0.0, 6
	temps := square(day, night, days)
	d := NewDegree(temps, NewHours(temps, p), NewTable(p))
	if first := d.At(0, 12*clock.Hour); first < p.Plateau(night) {
		t.Fatalf("degree %v after the first day is not above the plateau of the night, %v", first, p.Plateau(night))
	}
	for k := 1; k <= days; k++ {
		thin := 12*float64(k)*Speed(day, p.ActivationEnergy)/p.Thick - p.Induction
		want := nth(p.K1, p.N, p.Plateau(day), thin)
		for _, at := range []clock.Time{clock.Time(24*k-12) * clock.Hour, clock.Time(24*k-5) * clock.Hour, clock.Time(24*k) * clock.Hour} {
			if got := d.At(0, at); !(math.Abs(got-want) <= 1e-6) {
				t.Errorf("day %d, %v h: degree %.9f, want %.9f", k, at.Hours(), got, want)
			}
		}
	}
	before := 0.0
	for at := clock.Time(0); at <= days*clock.Day; at += 7 * clock.Minute {
		got := d.At(0, at)
		if math.IsNaN(got) || got < before-1e-9 || got > 1 {
			t.Fatalf("%v h: degree %v after %v", at.Hours(), got, before)
		}
		before = got
	}
}
