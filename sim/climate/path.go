package climate

import "moldturn/sim/clock"

// Path is the conditions of a run as hourly series per area; it implements
// Conditions by looking up the hour. Times before the first hour read the
// first, times after the last read the last; likewise areas, so that a Path of
// one area serves a plant of many. A Path does not change once built.
//
// Mold temperatures are kept as float64, since cure integrates them; the rest
// is float32 (7 digits, 2e-6 K at room temperature): 24 bytes an hour and area,
// 13 MB for 20 years of three areas. The zero value has no hours and must not
// be asked.
type Path struct {
	areas []series
	hours int
}

// series is one area's hours and, of every started day, the peak heat index and
// the mean of the seven peaks before that day.
type series struct {
	mold                []float64
	air, heat, dew, rh  []float32
	peak, meanPeaksPast []float32
}

// newPath makes room for a run of hours in a number of areas, both at least 1.
func newPath(areas, hours int) *Path {
	areas, hours = max(areas, 1), max(hours, 1)
	p := &Path{areas: make([]series, areas), hours: hours}
	for i := range p.areas {
		s := &p.areas[i]
		s.mold = make([]float64, hours)
		all := make([]float32, 4*hours)
		s.air, s.heat = all[:hours:hours], all[hours:2*hours:2*hours]
		s.dew, s.rh = all[2*hours:3*hours:3*hours], all[3*hours:]
	}
	return p
}

// Areas is the number of areas with series of their own, at least 1.
func (p *Path) Areas() int { return len(p.areas) }

// Hours is the number of hours of every series, at least 1.
func (p *Path) Hours() int { return p.hours }

// hour is the index of the hour that t lies in, inside the series.
func (p *Path) hour(t clock.Time) int {
	if t < 0 {
		return 0
	}
	return min(int(t/clock.Hour), p.hours-1)
}

// area is the series of an area, inside the table of areas.
func (p *Path) area(i int) *series { return &p.areas[min(max(i, 0), len(p.areas)-1)] }

// MoldC is the mold temperature in °C, the mean of the hour that t lies in.
func (p *Path) MoldC(area int, t clock.Time) float64 { return p.area(area).mold[p.hour(t)] }

// AirC is the temperature of the plant air in °C.
func (p *Path) AirC(area int, t clock.Time) float64 { return float64(p.area(area).air[p.hour(t)]) }

// HeatIndexF is the heat index of the plant air in °F.
func (p *Path) HeatIndexF(area int, t clock.Time) float64 {
	return float64(p.area(area).heat[p.hour(t)])
}

// DewMargin is the mold temperature minus the dew point of the plant air, in K;
// negative when water condenses on the mold.
func (p *Path) DewMargin(area int, t clock.Time) float64 {
	s, h := p.area(area), p.hour(t)
	return s.mold[h] - float64(s.dew[h])
}

// DewC is the dew point of the plant air in °C.
func (p *Path) DewC(area int, t clock.Time) float64 { return float64(p.area(area).dew[p.hour(t)]) }

// RH is the relative humidity of the plant air, 0 … 1.
func (p *Path) RH(area int, t clock.Time) float64 { return float64(p.area(area).rh[p.hour(t)]) }

// Hourly gives an area's mold temperatures in °C, one per hour from the start,
// for prefix sums of what depends on them. It is the Path's own memory: read,
// do not write.
func (p *Path) Hourly(area int) []float64 { return p.area(area).mold }

// HourlyAir gives an area's air as Hourly gives the molds: temperature in °C,
// heat index in °F, dew point in °C and relative humidity 0 … 1.
func (p *Path) HourlyAir(area int) (air, heat, dew, rh []float32) {
	s := p.area(area)
	return s.air, s.heat, s.dew, s.rh
}
