package climate

import (
	"math"

	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

// Normal is one month of a climate.
type Normal struct {
	MeanC      float64 // mean temperature, °C
	RangeK     float64 // mean difference of a day's highest and lowest temperature, K; 0 or more
	SpreadK    float64 // standard deviation of the days' mean temperatures, K; 0 or more
	DewC       float64 // mean dew point, °C
	DewSpreadK float64 // standard deviation of the days' mean dew points, K; 0 or more
	DewTie     float64 // correlation of the days' mean dew points with their temperatures, −1 … 1
}

// Normals describe a climate by its months, from which Outdoor makes weather.
//
// The model. A day's mean temperature is the month's, on a smooth curve through
// the year whose monthly means are those given, plus a residual. The residuals
// of the days are a first-order autoregression with standard normal law, times
// the month's spread. Within the day a sine of the month's range is added. Dew
// points follow the same way, with residuals that are correlated with those of
// temperature, and never exceed the temperature. Residuals run smoothly from
// day to day without a change of any day's mean.
type Normals struct {
	Months      [12]Normal // January first
	PeakHour    float64    // hour of the day's highest temperature, 0 … 24
	Persistence float64    // correlation of a day's residual with the day before, 0 … below 1
}

// Defaults of the shape of weather, assumptions for want of a record; Fit
// replaces the second.
const (
	DefaultPeakHour    = 15
	DefaultPersistence = 0.7
)

// Purposes of the weather's random streams below the key of a replication. They
// lie apart from those of the plant and keep their numbers.
const (
	luckAir  draw.Purpose = 1001 + iota // a number for each day: residual of temperature
	luckDew                             // a number for each day: residual of dew point
	luckYear                            // year of a weather file that a replication begins with
)

// Outdoor makes the weather of one replication, whose key is given, for a run
// of hours from midnight of a date.
func (n Normals) Outdoor(replication draw.Key, start shift.Date, hours int) *Outdoor {
	out := newOutdoor(start, hours)
	days := n.days(replication, start, (len(out.AirC)+hoursPerDay-1)/hoursPerDay)
	wave := n.wave()
	for h := range out.AirC {
		d, hour := h/hoursPerDay, h%hoursPerDay
		before, day, after := &days[d], &days[d+1], &days[d+2]
		u := (float64(hour) + 0.5) / hoursPerDay
		t := keepMean(before.air, day.air, after.air, u) + day.half*wave[hour]
		out.AirC[h] = t
		out.DewC[h] = min(t, keepMean(before.dew, day.dew, after.dew, u))
	}
	return out
}

// dayWeather is what the hours of a day are made from.
type dayWeather struct {
	air, dew float64 // means, °C
	half     float64 // half the day's range, K
}

// days gives the days of a run with one more at either end.
func (n Normals) days(replication draw.Key, start shift.Date, count int) []dayWeather {
	air := newResiduals(replication.At0(luckAir), n.Persistence)
	own := newResiduals(replication.At0(luckDew), n.Persistence)
	days := make([]dayWeather, count+2)
	c := cursorAt(start.AddDays(-1))
	for i := range days {
		m := n.on(c)
		x := air.next()
		y := m.DewTie*x + math.Sqrt(1-m.DewTie*m.DewTie)*own.next()
		days[i] = dayWeather{m.MeanC + m.SpreadK*x, m.DewC + m.DewSpreadK*y, m.RangeK / 2}
		c = c.next()
	}
	return days
}

// wave is the day's sine at the middles of the hours, from −1 to 1.
func (n Normals) wave() (w [hoursPerDay]float64) {
	for h := range w {
		w[h] = math.Cos(2 * math.Pi * (float64(h) + 0.5 - n.PeakHour) / hoursPerDay)
	}
	return w
}

// on is the climate of a day, on smooth curves through the months.
func (n Normals) on(c cursor) Normal {
	before, here, after := &n.Months[(c.month+10)%12], &n.Months[c.month-1], &n.Months[c.month%12]
	u := (float64(c.day) - 0.5) / float64(daysIn(c.year, c.month))
	return Normal{
		keepMean(before.MeanC, here.MeanC, after.MeanC, u),
		max(0, keepMean(before.RangeK, here.RangeK, after.RangeK, u)),
		max(0, keepMean(before.SpreadK, here.SpreadK, after.SpreadK, u)),
		keepMean(before.DewC, here.DewC, after.DewC, u),
		max(0, keepMean(before.DewSpreadK, here.DewSpreadK, after.DewSpreadK, u)),
		max(-1, min(1, keepMean(before.DewTie, here.DewTie, after.DewTie, u))),
	}
}

// keepMean is the value at u, 0 … 1 along a span, of a curve through spans with
// given means: within each span the parabola that has the span's mean and meets
// its neighbors half way between the two means. Straight lines from middle to
// middle would flatten hills and fill valleys.
func keepMean(before, here, after, u float64) float64 {
	left, right := (before+here)/2, (here+after)/2
	return left*(1-4*u+3*u*u) + right*(3*u*u-2*u) + 6*here*(u-u*u)
}

// residuals is a stationary first-order autoregression with standard normal
// law, day after day.
type residuals struct {
	key         draw.Key
	persistence float64
	fresh       float64 // weight of a day's own number
	n           uint64
	last        float64
}

// newResiduals begins in the stationary state.
func newResiduals(key draw.Key, persistence float64) residuals {
	return residuals{key, persistence, math.Sqrt(1 - persistence*persistence), 1, draw.Normal01(key.U(0))}
}

// next is the next day's residual.
func (r *residuals) next() float64 {
	r.last = r.persistence*r.last + r.fresh*draw.Normal01(r.key.U(r.n))
	r.n++
	return r.last
}
