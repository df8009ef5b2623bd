package climate

import (
	"errors"
	"fmt"
	"math"

	"moldturn/sim/shift"
)

// Day is one day of a weather record.
type Day struct {
	Date              shift.Date
	MinC, MeanC, MaxC float64 // temperature, °C
	DewC              float64 // mean dew point, °C
}

// leastDays is how many days of each month a fit needs.
const leastDays = 20

// Fit finds the Normals of a daily record in the order of dates, of at least
// 20 days of every month; days may be missing. Spreads are those about the
// smooth curve through the year, all years together, so that differences
// between years count as differences between days.
func Fit(days []Day) (Normals, error) {
	n := Normals{PeakHour: DefaultPeakHour}
	var count [12]float64
	for _, d := range days {
		m := &n.Months[d.Date.Month-1]
		count[d.Date.Month-1]++
		m.MeanC += d.MeanC
		m.RangeK += d.MaxC - d.MinC
		m.DewC += d.DewC
	}
	for i, k := range count {
		if k < leastDays {
			return n, fmt.Errorf("%.0f days of month %d; allowed: %d or more", k, i+1, leastDays)
		}
		m := &n.Months[i]
		m.MeanC, m.RangeK, m.DewC = m.MeanC/k, m.RangeK/k, m.DewC/k
	}
	n.fitSpreads(days, count)
	return n, n.fitPersistence(days)
}

// fitSpreads finds the spreads about the curves of n, and how dew point and
// temperature go together.
func (n *Normals) fitSpreads(days []Day, count [12]float64) {
	var air, dew, both [12]float64
	for _, d := range days {
		i := d.Date.Month - 1
		m := n.on(cursorAt(d.Date))
		x, y := d.MeanC-m.MeanC, d.DewC-m.DewC
		air[i] += x * x
		dew[i] += y * y
		both[i] += x * y
	}
	for i := range n.Months {
		m := &n.Months[i]
		m.SpreadK, m.DewSpreadK = math.Sqrt(air[i]/count[i]), math.Sqrt(dew[i]/count[i])
		if air[i] > 0 && dew[i] > 0 {
			m.DewTie = max(-1, min(1, both[i]/math.Sqrt(air[i]*dew[i])))
		}
	}
}

// fitPersistence finds the correlation of the standardized residuals of
// temperature with those of the day before.
func (n *Normals) fitPersistence(days []Day) error {
	var last, lag, before float64
	for i, d := range days {
		m := n.on(cursorAt(d.Date))
		x := (d.MeanC - m.MeanC) / m.SpreadK
		if i > 0 && d.Date.DaysSince(days[i-1].Date) == 1 {
			lag += x * last
			before += last * last
		}
		last = x
	}
	if !(before > 0) || math.IsInf(before, 0) {
		return errors.New("the days do not differ in temperature, or no two follow each other")
	}
	n.Persistence = max(0, min(0.99, lag/before))
	return nil
}
