package climate

import "moldturn/sim/shift"

// DefaultRH is the relative humidity of a table of months that gives none, an
// assumption: mid-range, and far enough from the dew point that it stops no
// work.
const DefaultRH = 0.5

// Months is the simplest climate: a table of twelve months that holds inside
// the plant, in all areas, day and night. Molds are as warm as the air.
type Months struct {
	PlantC     [12]float64  // plant temperature of each month, °C, January first
	HeatIndexF [12]float64  // heat index of each month, °F, as it is in working hours
	RH         *[12]float64 // relative humidity, 0 … 1; nil means DefaultRH
	Stepped    bool         // true: a month's values hold from its first to its last day
}

// Path lays the table along a run that starts at midnight of a date and lasts a
// number of hours. Unless Stepped, values run in straight lines from the middle
// of each month to the middle of the next, so there is no jump at a month's end
// (the means of warm and cold months then come out a little milder than their
// entries).
func (m Months) Path(start shift.Date, hours int) *Path {
	p := newPath(1, hours)
	s := &p.areas[0]
	c := cursorAt(start)
	for h := range p.hours {
		t, heat, rh := m.at(c, h%hoursPerDay)
		s.mold[h], s.air[h] = t, float32(t)
		s.heat[h], s.rh[h] = float32(heat), float32(rh)
		s.dew[h] = float32(DewPoint(t, rh))
		if h%hoursPerDay == hoursPerDay-1 {
			c = c.next()
		}
	}
	return p.finish()
}

// at reads the table at the middle of an hour.
func (m Months) at(c cursor, hour int) (t, heat, rh float64) {
	a, b, share := c.between(float64(hour) + 0.5)
	if m.Stepped {
		a, b, share = c.month-1, c.month-1, 0
	}
	rh = DefaultRH
	if m.RH != nil {
		rh = blend(m.RH[a], m.RH[b], share)
	}
	return blend(m.PlantC[a], m.PlantC[b], share), blend(m.HeatIndexF[a], m.HeatIndexF[b], share), rh
}

// blend goes from a to b by share 0 … 1, and gives a exactly when they agree.
func blend(a, b, share float64) float64 { return a + (b-a)*share }

// Steady is a Path whose every hour is the same in every area: a temperature in
// °C and a relative humidity 0 … 1, with the heat index that follows from them.
// For checks by hand and for plants without seasons.
func Steady(tempC, rh float64) *Path {
	p := newPath(1, 1)
	s := &p.areas[0]
	s.mold[0], s.air[0] = tempC, float32(tempC)
	s.heat[0], s.rh[0] = float32(HeatIndexF(Fahrenheit(tempC), rh)), float32(rh)
	s.dew[0] = float32(DewPoint(tempC, rh))
	return p.finish()
}
