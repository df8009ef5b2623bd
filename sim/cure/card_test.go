package cure

import (
	"testing"

	"moldturn/sim/clock"
)

// The card against direct integration of the same temperature.
func TestCard(t *testing.T) {
	p, b := Default(), DefaultBarcol()
	temps := []float64{10, 14.7, 18.3, 21, 25, 30}
	rows := Card(NewTable(p), b, temps, 35, clock.Day, clock.Never)
	for i, r := range rows {
		near(t, "temperature", r.TempC, temps[i], 0)
		near(t, "hardness after the clock hold", r.AtClock, b.At(p.Constant(r.TempC, 24)), 1e-4)
		near(t, "ceiling", r.Ceiling, b.At(p.Constant(r.TempC, 1e7)), 0.01)
		if r.NeedsHeat != (temps[i] < 14.72) {
			t.Errorf("%v °C: needs heat %v", r.TempC, r.NeedsHeat)
		}
		if r.NeedsHeat {
			if r.Wait != clock.Never || r.Hold != clock.Never {
				t.Errorf("%v °C: out of reach but wait %v, hold %v", r.TempC, r.Wait, r.Hold)
			}
			continue
		}
		near(t, "wait", r.Wait.Hours(), hoursTo(p, r.TempC, b.Degree(35)), 1e-3)
		if r.Hold != max(r.Wait, clock.Day) {
			t.Errorf("%v °C: wait %v, hold %v", r.TempC, r.Wait, r.Hold)
		}
	}
	// Three days at most: 15.5 °C would take eight.
	if r := Card(NewTable(p), b, []float64{15.5}, 35, 0, 3*clock.Day)[0]; !r.NeedsHeat || r.Ceiling < 35 {
		t.Errorf("a wait beyond the longest: %+v", r)
	}
}
