package climate

import (
	"math"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

var _ Conditions = (*Path)(nil)

// within fails unless got lies within tol of want.
func within(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.9g, want %.9g ± %g", what, got, want, tol)
	}
}

func ramp() Months {
	rh := [12]float64{.3, .35, .4, .45, .5, .55, .6, .65, .7, .75, .8, .85}
	return Months{
		PlantC:     [12]float64{10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21},
		HeatIndexF: [12]float64{50, 52, 54, 56, 58, 60, 62, 64, 66, 68, 70, 72},
		RH:         &rh,
	}
}

func TestSteppedMonthsHoldToTheLastHour(t *testing.T) {
	m := ramp()
	m.Stepped = true
	p := m.Path(shift.DateOf(2028, 1, 31), 3*24*40) // a leap year
	within(t, "31 January, last hour", p.MoldC(0, 24*clock.Hour-1), 10, 0)
	within(t, "1 February, first hour", p.MoldC(0, 24*clock.Hour), 11, 0)
	within(t, "29 February", p.MoldC(0, 30*clock.Day-1), 11, 0)
	within(t, "1 March", p.MoldC(0, 30*clock.Day), 12, 0)
	within(t, "1 March humidity", p.RH(0, 30*clock.Day), .4, 1e-7)
	within(t, "1 March heat index", p.HeatIndexF(0, 30*clock.Day), 54, 0)
}

func TestSmoothMonthsMeetTheirValuesAtMidMonth(t *testing.T) {
	p := ramp().Path(shift.DateOf(2027, 1, 1), 365*24)
	// Middle of April: 90 days and 15 more; hours are read at their middles.
	mid := 105 * clock.Day
	got := (p.MoldC(0, mid-1) + p.MoldC(0, mid)) / 2
	within(t, "mid-April", got, 13, 1e-3)
	// Half way from mid-April (day 105) to mid-May (day 135.5).
	got = p.MoldC(0, 120*clock.Day+6*clock.Hour)
	within(t, "between April and May", got, 13.5, 1e-3)
	for h := 1; h < p.Hours(); h++ {
		if d := math.Abs(p.Hourly(0)[h] - p.Hourly(0)[h-1]); d > 0.02 {
			t.Fatalf("hour %d: a jump of %g K", h, d)
		}
	}
}

func TestPathClampsTimeAndArea(t *testing.T) {
	p := ramp().Path(shift.DateOf(2027, 1, 1), 48)
	within(t, "before the start", p.MoldC(0, -5), p.Hourly(0)[0], 0)
	within(t, "after the end", p.MoldC(0, clock.Never), p.Hourly(0)[47], 0)
	within(t, "an area of its own is not needed", p.AirC(7, 0), p.AirC(0, 0), 0)
	within(t, "days clamp", p.HotDay(0, 99), p.HotDay(0, 1), 0)
	within(t, "margin", p.DewMargin(0, 0), p.MoldC(0, 0)-p.DewC(0, 0), 0)
}

func TestPeaksAndTheirMeans(t *testing.T) {
	p := newPath(1, 9*24+5)
	for h := range p.hours {
		p.areas[0].heat[h] = float32(10*(h/24) - (h%24-15)*(h%24-15))
	}
	p.finish()
	for day := range 9 {
		within(t, "peak at hour 15", p.HotDay(0, day), float64(10*day), 0)
	}
	within(t, "peak of the short last day", p.HotDay(0, 9), 90-11*11, 0)
	within(t, "day 0: the first week", p.PeakMean7(0, 0), 30, 0)
	within(t, "day 6: the first week", p.PeakMean7(0, 6), 30, 0)
	within(t, "day 7: days 0 … 6", p.PeakMean7(0, 7), 30, 0)
	within(t, "day 8: days 1 … 7", p.PeakMean7(0, 8), 40, 0)
	within(t, "day 9: days 2 … 8", p.PeakMean7(0, 9), 50, 0)
}

func TestSteady(t *testing.T) {
	p := Steady(Celsius(90), 0.60)
	// Weather Prediction Center: 90 °F and 60 % give a heat index of 100 °F.
	within(t, "heat index", math.Round(p.HeatIndexF(3, 1000*clock.Day)), 100, 0)
	within(t, "peak", p.HotDay(0, 1), p.HeatIndexF(0, 0), 0)
	within(t, "mean of peaks", p.PeakMean7(0, 400), p.HeatIndexF(0, 0), 0)
}

func TestLookupsDoNotAllocate(t *testing.T) {
	p := ramp().Path(shift.DateOf(2027, 1, 1), 24*365)
	var sum float64
	n := testing.AllocsPerRun(100, func() {
		for h := range 100 {
			at := clock.Time(h) * 61 * clock.Minute
			sum += p.MoldC(0, at) + p.DewMargin(1, at) + p.HeatIndexF(0, at) + p.PeakMean7(0, h)
		}
	})
	if n != 0 || sum == 0 {
		t.Errorf("%v allocations a run, sum %v", n, sum)
	}
}
