package floor

import (
	"errors"
	"fmt"
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// The last day that spreadsheets count, 9999-12-31, in both systems (ECMA-376
// part 1, 18.17.4.1).
const (
	last1900 = 2958465
	last1904 = 2957003
)

// FromSerial reads the number that a spreadsheet keeps for a date: days, with
// the time of day as a fraction, rounded to the second. In the usual system day
// 1 is 1900-01-01 and day 60 is 1900-02-29, a day that never was and that is an
// error here; in the system of 1904, day 0 is 1904-01-01. Source: ECMA-376,
// Office Open XML File Formats, part 1, 18.17.4.1 Date Conversion for Serial
// Values (from memory).
func FromSerial(x float64, since1904 bool) (Moment, error) {
	first, last, zero := 1.0, float64(last1900), shift.Date{Year: 1899, Month: 12, Day: 30}
	if since1904 {
		first, last, zero = 0, last1904, shift.Date{Year: 1904, Month: 1, Day: 1}
	}
	if !(x >= first && x < last+1) {
		return Moment{}, fmt.Errorf("spreadsheets count no day %g", x)
	}
	day := math.Floor(x)
	seconds := math.Round((x - day) * 24 * 3600)
	if seconds == 24*3600 {
		day, seconds = day+1, 0
	}
	if !since1904 {
		if day == 60 {
			return Moment{}, errors.New("day 60 of a spreadsheet is 1900-02-29, which never was")
		}
		if day < 60 {
			zero = shift.Date{Year: 1899, Month: 12, Day: 31}
		}
	}
	return Moment{Date: zero.AddDays(int(day)), Clock: clock.Time(seconds) * clock.Second, Timed: day != x}, nil
}
