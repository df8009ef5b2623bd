package climate

import (
	"math"
	"slices"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/shift"

	"pgregory.net/rapid"
)

// flat is outdoor air that never changes, from a Monday.
func flat(c, dew float64, hours int) *Outdoor {
	out := newOutdoor(shift.DateOf(2027, 1, 4), hours)
	for h := range hours {
		out.AirC[h], out.DewC[h] = c, dew
	}
	return out
}

// single makes the path of one area.
func single(out *Outdoor, a Area) *Path { return Plant(out, []Area{a}) }

// An area without gain, heating, cooling and lag is as outdoors.
func TestOpenAreaIsOutdoors(t *testing.T) {
	out := Coast().Outdoor(draw.Root(1, 1), newYear, 8760)
	open := OpenArea("shed")
	open.LagHours = 0
	p := single(out, open)
	for h := range p.Hours() {
		at := clock.Time(h) * clock.Hour
		within(t, "mold", p.MoldC(0, at), out.AirC[h], 0)
		within(t, "air", p.AirC(0, at), out.AirC[h], 3e-6)
		within(t, "dew point", p.DewC(0, at), out.DewC[h], 3e-6)
		within(t, "humidity", p.RH(0, at), RHFromDew(out.AirC[h], out.DewC[h]), 1e-7)
		if t.Failed() {
			t.Fatalf("hour %d", h)
		}
	}
}

// Moist air at 30 °C and 70 % from the reference implementation (psychrolib
// 1.1.1) has a dew point of 23.927892 °C; cooled to 26 °C it keeps it, cooled
// to 20 °C it is saturated and loses water.
func TestMoistureIsCarriedIn(t *testing.T) {
	out := flat(30, 23.927892, 24)
	for _, c := range []struct{ gain, cool, most, air, dew, rh float64 }{
		{0, math.Inf(1), 1, 30, 23.927892, .70},
		{5, math.Inf(1), 1, 35, 23.927892, .7 * 4246.0302 / 5627.81945},
		{0, 26, 1, 26, 23.927892, .7 * 4246.0302 / Saturation(26)},
		{0, 20, 1, 20, 20, 1},
		{0, 25, .60, 25, 16.701132, .60}, // dew point of 25 °C and 60 %, same source
	} {
		a := OpenArea("shop")
		a.GainK, a.Day.Cool, a.Night.Cool, a.MostRH = c.gain, c.cool, c.cool, c.most
		p := single(out, a)
		within(t, "air", p.AirC(0, 0), c.air, 1e-9)
		within(t, "dew point", p.DewC(0, 0), c.dew, 2e-3)
		within(t, "humidity", p.RH(0, 0), c.rh, 1e-4)
		within(t, "heat index", p.HeatIndexF(0, 0), HeatIndexF(Fahrenheit(c.air), c.rh), .03)
		within(t, "margin", p.DewMargin(0, 0), c.air-c.dew, 2e-3)
	}
}

func TestSetBack(t *testing.T) {
	a := OpenArea("shop").Heated(21)
	a.LagHours = 0
	a.Night.Heat = 15
	a.From, a.To, a.Weekend = 20*60, 4*60+30, true
	p := single(flat(5, 0, 14*24), a)
	for hour, want := range map[int]float64{3: 15, 4: 21, 5: 21, 19: 21, 20: 15, 23: 15} {
		for _, day := range []int{0, 4, 7} {
			within(t, "working day", p.Hourly(0)[24*day+hour], want, 0)
		}
		for _, day := range []int{5, 6, 12} {
			within(t, "weekend", p.Hourly(0)[24*day+hour], 15, 0)
		}
	}
	a.From, a.To, a.Weekend = 6*60, 6*60, false
	within(t, "no night", single(flat(5, 0, 24), a).Hourly(0)[6], 21, 0)
	// A run that starts on a Sunday.
	out := flat(5, 0, 48)
	out.Start = shift.DateOf(2027, 1, 3)
	a.Weekend = true
	p = single(out, a)
	within(t, "Sunday noon", p.Hourly(0)[12], 15, 0)
	within(t, "Monday noon", p.Hourly(0)[36], 21, 0)
}

// The solution of dm/dt = (a − m)/τ after a step of the air from 10 to 20 °C is
// 20 − 10·e^(−x/τ), x hours after it; molds are compared with its hourly means.
func TestMoldLagIsExact(t *testing.T) {
	for _, tau := range []float64{0.5, 1, 3} {
		out := flat(20, 0, 30)
		out.AirC[0] = 10
		a := OpenArea("shop")
		a.LagHours = tau
		p := single(out, a)
		within(t, "at the start", p.MoldC(0, 0), 10, 1e-12)
		for n := range 25 {
			// Integrated anew at the middle of each second.
			want := 0.0
			for s := range 3600 {
				x := float64(n) + (float64(s)+.5)/3600
				want += (20 - 10*math.Exp(-x/tau)) / 3600
			}
			within(t, "mold", p.Hourly(0)[n+1], want, 1e-6)
		}
	}
}

// areaOf draws an area whose set points agree.
func areaOf(t *rapid.T) Area {
	a := OpenArea("any")
	a.GainK = rapid.Float64Range(-5, 15).Draw(t, "gain")
	a.Day.Heat = rapid.Float64Range(5, 22).Draw(t, "heat")
	a.Day.Cool = rapid.Float64Range(22, 40).Draw(t, "cool")
	a.Night.Heat = rapid.Float64Range(5, 22).Draw(t, "night heat")
	a.Night.Cool = rapid.Float64Range(22, 40).Draw(t, "night cool")
	a.From, a.To = rapid.IntRange(0, 1439).Draw(t, "from"), rapid.IntRange(0, 1439).Draw(t, "to")
	a.Weekend = rapid.Bool().Draw(t, "weekend")
	a.MostRH = rapid.Float64Range(.3, 1).Draw(t, "most RH")
	a.LagHours = rapid.Float64Range(0, 5).Draw(t, "lag")
	return a
}

// Whatever the areas are: air lies between the set points, molds between the
// extremes of the air, humidity between 0 and its limit, dew point at most the
// air's temperature; and no area matters to another.
func TestPlantRanges(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := areaOf(t), areaOf(t)
		out := Coast().Outdoor(draw.Root(rapid.Uint64().Draw(t, "seed"), 0), newYear, 24*30)
		p := Plant(out, []Area{a, b})
		air, _, dew, rh := p.HourlyAir(0)
		coldest, hottest := float64(slices.Min(air)), float64(slices.Max(air))
		for h, m := range p.Hourly(0) {
			switch {
			case float64(air[h]) < min(a.Day.Heat, a.Night.Heat)-1e-5, float64(air[h]) > max(a.Day.Cool, a.Night.Cool)+1e-5:
				t.Fatalf("hour %d: air %v", h, air[h])
			case m < coldest-1e-5, m > hottest+1e-5:
				t.Fatalf("hour %d: mold %v, air %v … %v", h, m, coldest, hottest)
			case rh[h] < 0, float64(rh[h]) > a.MostRH+1e-6, dew[h] > air[h]+1e-3:
				t.Fatalf("hour %d: RH %v, dew point %v in air of %v", h, rh[h], dew[h], air[h])
			case float64(dew[h]) > out.DewC[h]+1e-3:
				t.Fatalf("hour %d: moisture from nowhere", h)
			}
		}
		if !slices.Equal(p.Hourly(1), single(out, b).Hourly(0)) {
			t.Fatal("one area changes another")
		}
	})
}

// Warmer weather, more gain and higher set points never make a mold colder.
func TestPlantIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := areaOf(t)
		by := rapid.Float64Range(0, 3).Draw(t, "by")
		n := Coast()
		out := n.Outdoor(draw.Root(4, 4), newYear, 24*20)
		for i := range n.Months {
			n.Months[i].MeanC += by
		}
		warmer := n.Outdoor(draw.Root(4, 4), newYear, 24*20)
		gain, heated := a, a
		gain.GainK += by
		heated.Day.Heat = min(heated.Day.Heat+by, heated.Day.Cool)
		base := single(out, a).Hourly(0)
		for name, p := range map[string]*Path{"weather": single(warmer, a), "gain": single(out, gain), "heating": single(out, heated)} {
			for h, m := range p.Hourly(0) {
				if m < base[h]-1e-9 {
					t.Fatalf("%s: hour %d: %v, before %v", name, h, m, base[h])
				}
			}
		}
	})
}

func TestClimateChooses(t *testing.T) {
	areas := []Area{OpenArea("shop").Heated(20), OpenArea("store")}
	months := ramp()
	c := Climate{Months: &months, Areas: areas}
	if p := c.Path(draw.Root(1, 1), newYear, 100); p.Areas() != 2 || p.MoldC(1, 0) != months.Path(newYear, 100).MoldC(0, 0) {
		t.Error("months do not hold in all areas")
	}
	c.Months, c.File = nil, mustEPW(t, epwYearText(2001, 365, nil))
	p := c.Path(draw.Root(1, 1), newYear, 100)
	within(t, "heated", p.MoldC(0, 0), 20, 0)
	within(t, "file", p.MoldC(1, 0), 1.01, 1e-9)
	c.File, c.Normals = nil, Coast()
	if a, b := c.Path(draw.Root(1, 1), newYear, 100), c.Path(draw.Root(1, 2), newYear, 100); slices.Equal(a.Hourly(1), b.Hourly(1)) {
		t.Error("two replications are alike")
	}
	if err := c.Check(); err != nil {
		t.Error(err)
	}
	c.Areas[0].Day.Cool = 19
	if err := c.Check(); err == nil || err.Error() != `area "shop": by day it is heated to 20.0 C and cooled to 19.0 C; allowed: heating at or below cooling` {
		t.Error(err)
	}
	c.Areas, c.Normals.Months[2].DewC = nil, 16
	if err := c.Check(); err == nil || err.Error() != "month 3: mean dew point 16.0 C above the mean temperature 15.0 C; allowed: at or below it" {
		t.Error(err)
	}
}

func TestWarningsOfHeatBeyondTheChart(t *testing.T) {
	if w := single(flat(30, 24, 10), OpenArea("a")).Warnings(); w != nil {
		t.Error(w)
	}
	w := single(flat(45, 30, 10), OpenArea("a")).Warnings()
	if len(w) != 1 || w[0] != "area 1: the heat index is above 137 °F, beyond its published chart, in 10 of 10 hours" {
		t.Error(w)
	}
}

// Twenty years of three areas; 60 ms is the aim.
func BenchmarkTwentyYearsOfThreeAreas(b *testing.B) {
	dry := OpenArea("spray").Heated(21)
	dry.MostRH = .6
	c := Climate{Normals: Coast(), Areas: []Area{OpenArea("shop").Heated(18), dry, OpenArea("store")}}
	b.ReportAllocs()
	for i := range b.N {
		c.Path(draw.Root(1, i), newYear, 20*8766)
	}
}

func BenchmarkLookup(b *testing.B) {
	p := Plant(Coast().Outdoor(draw.Root(1, 1), newYear, 20*8766), []Area{OpenArea("shop")})
	var c Conditions = p
	sum := 0.0
	for i := range b.N {
		sum += c.MoldC(0, clock.Time(i%100000)*7919*clock.Second)
	}
	if sum == 0 {
		b.Fatal("cold")
	}
}
