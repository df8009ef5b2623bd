package climate

import (
	"math"
	"slices"
	"testing"

	"moldturn/sim/draw"
	"moldturn/sim/shift"

	"pgregory.net/rapid"
)

var newYear = shift.DateOf(2027, 1, 1)

// still is a climate without chance.
func still() Normals {
	n := Normals{PeakHour: DefaultPeakHour, Persistence: DefaultPersistence}
	for i := range n.Months {
		warm := -math.Cos(2 * math.Pi * (float64(i) + .5) / 12)
		n.Months[i] = Normal{MeanC: 15 + 10*warm, RangeK: 8, DewC: 5 + 10*warm}
	}
	return n
}

// The curve through the year has exactly the means that are given, in common
// years and up to its steps of a day.
func TestMonthsKeepTheirMeans(t *testing.T) {
	n := still()
	out := n.Outdoor(draw.Root(1, 0), newYear, 8760)
	h := 0
	for m := range 12 {
		var air, dew float64
		hours := 24 * daysIn(2027, m+1)
		for range hours {
			air += out.AirC[h] / float64(hours)
			dew += out.DewC[h] / float64(hours)
			h++
		}
		within(t, "mean", air, n.Months[m].MeanC, 2e-3)
		within(t, "dew point", dew, n.Months[m].DewC, 2e-3)
	}
}

func TestDayPeaksAtTheGivenHour(t *testing.T) {
	n := still()
	for i := range n.Months {
		n.Months[i] = Normal{MeanC: 20, RangeK: 10, DewC: 10}
	}
	n.PeakHour = 14.5 // the middle of an hour
	out := n.Outdoor(draw.Root(1, 0), newYear, 24)
	within(t, "peak", out.AirC[14], 25, 1e-9)
	within(t, "low, twelve hours earlier", out.AirC[2], 15, 1e-9)
	within(t, "between", out.AirC[8], 20+5*math.Cos(2*math.Pi*6/24), 1e-9)
}

func TestKeepMean(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SliceOfN(rapid.Float64Range(-30, 30), 4, 4).Draw(t, "means")
		// Simpson's rule is exact for a parabola.
		at := func(u float64) float64 { return keepMean(x[0], x[1], x[2], u) }
		mean := (at(0) + 4*at(.5) + at(1)) / 6
		if math.Abs(mean-x[1]) > 1e-12*30 {
			t.Fatalf("mean %v, want %v", mean, x[1])
		}
		if jump := at(1) - keepMean(x[1], x[2], x[3], 0); math.Abs(jump) > 1e-12*30 {
			t.Fatalf("a jump of %v", jump)
		}
	})
}

// Without a month's smooth curve in the way, days have the spread, persistence
// and tie that were asked for. 200 years are worth 73000·(1−φ²)/(1+φ²) = 25000
// free days: standard errors of 0.0045 of the spread and 0.003 of a correlation.
func TestResidualsAsAsked(t *testing.T) {
	n := Normals{PeakHour: 15, Persistence: .7}
	for i := range n.Months {
		n.Months[i] = Normal{MeanC: 20, SpreadK: 3, DewC: -20, DewSpreadK: 2, DewTie: .6}
	}
	m := describe(daily(n.Outdoor(draw.Root(7, 3), newYear, 200*8760)))
	var all monthly
	for _, x := range m {
		all.mean += x.mean / 12
		all.sd += x.sd / 12
		all.dewSD += x.dewSD / 12
		all.lag += x.lag / 12
		all.tie += x.tie / 12
	}
	within(t, "mean", all.mean, 20, 4*3*.0063)
	within(t, "spread", all.sd, 3, 4*3*.0045)
	within(t, "dew spread", all.dewSD, 2, 4*2*.0045)
	within(t, "persistence", all.lag, .7, 4*.003)
	within(t, "tie", all.tie, .6, 4*.005)
}

func TestWeatherBelongsToTheReplication(t *testing.T) {
	n := Coast()
	a := n.Outdoor(draw.Root(5, 2), newYear, 1000)
	b := n.Outdoor(draw.Root(5, 2), newYear, 3000)
	c := n.Outdoor(draw.Root(5, 3), newYear, 1000)
	if !slices.Equal(a.AirC, b.AirC[:1000]) || !slices.Equal(a.DewC, b.DewC[:1000]) {
		t.Error("a longer run has other weather at its start")
	}
	if slices.Equal(a.AirC, c.AirC) {
		t.Error("two replications have the same weather")
	}
	n.PeakHour = 14 // an input changes what it says and moves no luck
	d := n.Outdoor(draw.Root(5, 2), newYear, 1000)
	for h := 0; h < 984; h += 24 {
		var x, y float64
		for i := h; i < h+24; i++ {
			x += a.AirC[i]
			y += d.AirC[i]
		}
		within(t, "sum of a day", y, x, 1e-9)
	}
}

func TestFitFindsWhatWasPutIn(t *testing.T) {
	want := Coast()
	var days []Day
	for _, d := range daily(want.Outdoor(draw.Root(1, 1), shift.DateOf(1900, 1, 1), 100*8766)) {
		days = append(days, d.Day)
	}
	got, err := Fit(days)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "persistence", got.Persistence, want.Persistence, .02)
	for i, w := range want.Months {
		g := got.Months[i]
		within(t, "mean", g.MeanC, w.MeanC, 4*w.SpreadK*.042)
		within(t, "spread", g.SpreadK, w.SpreadK, w.SpreadK*.08)
		// Saturated nights take a little off the dew points, and passing
		// fronts widen the range.
		within(t, "dew point", g.DewC, w.DewC, 1)
		within(t, "range", g.RangeK, w.RangeK, 1.2)
	}
}

func TestFitRefusesTooLittle(t *testing.T) {
	days := make([]Day, 40)
	for i := range days {
		days[i] = Day{Date: newYear.AddDays(i)}
	}
	if _, err := Fit(days); err == nil || err.Error() != "9 days of month 2; allowed: 20 or more" {
		t.Error(err)
	}
	days = make([]Day, 365)
	for i := range days {
		days[i] = Day{Date: newYear.AddDays(i)}
	}
	if _, err := Fit(days); err == nil {
		t.Error("days that do not differ were fitted")
	}
}
