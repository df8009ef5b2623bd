package climate

import (
	"math"
	"time"
)

// Plant makes the conditions of the areas of a plant, at least one, from the
// outdoor air, hour by hour.
//
// Air. An area is GainK warmer than outdoors, raised to its heating set point
// and lowered to its cooling one; heating and cooling are strong enough. Air
// comes in with its moisture: the humidity ratio stays that of outdoors, which
// at the one pressure of a plant is the same as the vapor pressure. What the
// air cannot hold, or a dehumidifier takes out, is lost.
//
// Molds follow the air with a first-order lag. With air constant through an
// hour the step is exact, and the hour's mean is what is kept: a mold m₀ behind
// air a with time constant τ is at a + (m₀ − a)·e^(−1/τ) an hour later, and had
// the mean a + (m₀ − a)·τ·(1 − e^(−1/τ)). At the start molds are as warm as the
// air.
func Plant(out *Outdoor, areas []Area) *Path {
	if len(areas) == 0 {
		areas = []Area{OpenArea("plant")}
	}
	p := newPath(len(areas), len(out.AirC))
	vapor := make([]float64, p.hours)
	for h, dew := range out.DewC[:p.hours] {
		vapor[h] = Saturation(dew)
	}
	first := (int(out.Start.Weekday()-time.Monday) + 7) % 7 * hoursPerDay
	for i := range areas {
		p.areas[i].breathe(out, vapor, &areas[i], first)
		p.areas[i].follow(areas[i].LagHours)
	}
	return p.finish()
}

// breathe works out the air of an area. The air temperatures are left in mold
// as well, in full precision, for follow. hour is that of the week at the start.
func (s *series) breathe(out *Outdoor, vapor []float64, a *Area, hour int) {
	week := a.week()
	for h, t := range out.AirC {
		set := &week[hour]
		if hour++; hour == len(week) {
			hour = 0
		}
		t = min(max(t+a.GainK, set.Heat), set.Cool)
		most := Saturation(t)
		rh, dew := vapor[h]/most, out.DewC[h]
		if rh > a.MostRH {
			rh = a.MostRH
			dew = DewAt(rh * most)
		}
		s.mold[h], s.air[h] = t, float32(t)
		s.rh[h], s.dew[h] = float32(rh), float32(dew)
		s.heat[h] = float32(HeatIndexF(Fahrenheit(t), rh))
	}
}

// follow turns the air temperatures in mold into those of molds that lag.
func (s *series) follow(lag float64) {
	if lag <= 0 {
		return
	}
	left := math.Exp(-1 / lag)
	mean := lag * (1 - left)
	m := s.mold[0]
	for h, air := range s.mold {
		behind := m - air
		s.mold[h] = air + behind*mean
		m = air + behind*left
	}
}
