package scenarios

import (
	"fmt"
	"time"

	"moldturn/sim/draw"
	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// need panics unless v has a value of one of the kinds.
func (v *Value) need(kinds ...param.Kind) *Value {
	for _, k := range kinds {
		if v.branch.row.Kind == k {
			if !v.given {
				panic(fmt.Sprintf("scenarios: %s was left out and is read without asking", v.path))
			}
			return v
		}
	}
	panic(fmt.Sprintf("scenarios: %s is %v and is read as %v", v.branch.path, v.branch.row.Kind, kinds[0]))
}

// Text is a Text, the word of a Choice, or the name in a Ref.
func (v *Value) Text() string { return v.need(param.Text, param.Choice, param.Ref).text }

// Flag is a Flag.
func (v *Value) Flag() bool { return v.need(param.Flag).number != 0 }

// Count is a Count.
func (v *Value) Count() int { return int(v.need(param.Count).number) }

// Number is a Number or a Count.
func (v *Value) Number() float64 { return v.need(param.Number, param.Count).number }

// Share is a Share, 0 … 1 unless its row says otherwise.
func (v *Value) Share() float64 { return v.need(param.Share).number }

// Hours is a Duration in hours.
func (v *Value) Hours() float64 { return v.need(param.Duration).number }

// Celsius is a Temperature in °C.
func (v *Value) Celsius() float64 { return v.need(param.Temperature).number }

// Kelvins is a Difference in K.
func (v *Value) Kelvins() float64 { return v.need(param.Difference).number }

// SquareMeters is an Area in m².
func (v *Value) SquareMeters() float64 { return v.need(param.Area).number }

// Millimeters is a Length in mm.
func (v *Value) Millimeters() float64 { return v.need(param.Length).number }

// Kilograms is a Mass in kg.
func (v *Value) Kilograms() float64 { return v.need(param.Mass).number }

// Liters is a Volume in L.
func (v *Value) Liters() float64 { return v.need(param.Volume).number }

// Dollars is Money in dollars.
func (v *Value) Dollars() float64 { return v.need(param.Money).number }

// PerWeek is a Rate per week.
func (v *Value) PerWeek() float64 { return v.need(param.Rate).number }

// Date is a Date, at midnight UTC.
func (v *Value) Date() time.Time { return unit.Day(v.need(param.Date).number) }

// MonthDay is a DayMonth.
func (v *Value) MonthDay() (time.Month, int) { return unit.MonthDay(v.need(param.DayMonth).number) }

// Minutes is a ClockTime in minutes after midnight, 0 … 1440.
func (v *Value) Minutes() int { return int(v.need(param.ClockTime).number) }

// HasWeekday reports whether a day is among the Weekdays.
func (v *Value) HasWeekday(d time.Weekday) bool {
	return unit.Has(v.need(param.Weekdays).number, (int(d)+6)%7)
}

// HasMonth reports whether a month is among the Months.
func (v *Value) HasMonth(m time.Month) bool {
	return unit.Has(v.need(param.Months).number, int(m)-1)
}

// Dist is a Dist, in hours, or a NumberDist.
func (v *Value) Dist() draw.Dist { return v.need(param.Dist, param.NumberDist).dist }

// Base is the value of any kind that is one number, in its base unit; a Flag is
// 0 or 1, sets are bits (see package unit).
func (v *Value) Base() float64 {
	if k := v.branch.row.Kind; !isNumber(k) {
		panic(fmt.Sprintf("scenarios: %s is %v and has no number", v.branch.path, k))
	}
	return v.need(v.branch.row.Kind).number
}

// Format writes the value in the units of sys so that reading it again gives
// the same value; a distribution as it was written. Empty if not given.
func (v *Value) Format(sys unit.System) string {
	switch k := v.branch.row.Kind; {
	case !v.given || k.Container() || k == param.Changes:
		return ""
	case isNumber(k):
		return unit.Format(k, v.number, sys)
	}
	return v.text
}

// isNumber reports whether values of the kind are one number.
func isNumber(k param.Kind) bool {
	switch k {
	case param.Text, param.Choice, param.Ref, param.Dist, param.NumberDist, param.Changes:
		return false
	}
	return !k.Container()
}
