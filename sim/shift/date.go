package shift

import (
	"fmt"
	"time"

	"moldturn/sim/clock"
)

// Date is a day of the Gregorian calendar. The zero value is no date. A Date
// that ParseDate or DateAt gave is valid; DateOf repairs any other.
type Date struct {
	Year  int
	Month time.Month
	Day   int
}

// DateOf gives the date of year, month and day; days outside the month move
// into its neighbors, so the 31st of June is the 1st of July.
func DateOf(year int, month time.Month, day int) Date {
	return fromTime(time.Date(year, month, day, 0, 0, 0, 0, time.UTC))
}

// ParseDate reads an ISO date, "2027-01-04". Days that do not exist are errors.
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return Date{}, fmt.Errorf("not a date: %q (allowed: year-month-day, like 2027-01-04)", s)
	}
	return fromTime(t), nil
}

// String writes d as year-month-day, ISO 8601.
func (d Date) String() string {
	return fmt.Sprintf("%04d-%02d-%02d", d.Year, int(d.Month), d.Day)
}

// IsZero is true for no date.
func (d Date) IsZero() bool { return d == Date{} }

// Weekday of d.
func (d Date) Weekday() time.Weekday { return d.time().Weekday() }

// AddDays gives the date n days after d, before it for negative n.
func (d Date) AddDays(n int) Date { return DateOf(d.Year, d.Month, d.Day+n) }

// DaysSince counts the days from e to d; negative if d is earlier.
func (d Date) DaysSince(e Date) int {
	return int((d.time().Unix() - e.time().Unix()) / secondsPerDay)
}

// Before is true if d is earlier than e.
func (d Date) Before(e Date) bool {
	if d.Year != e.Year {
		return d.Year < e.Year
	}
	return d.dayMonth() < e.dayMonth()
}

// Monday gives the Monday of the week of d; weeks run Monday to Sunday.
func (d Date) Monday() Date { return d.AddDays(-daysFromMonday(d.Weekday())) }

// ISOWeek gives the year and number (1 … 53) of the week of d, ISO 8601.
func (d Date) ISOWeek() (year, week int) { return d.time().ISOWeek() }

// DateAt gives the date of instant t of a scenario that starts on start.
func DateAt(start Date, t clock.Time) Date { return start.AddDays(dayOf(t)) }

// Midnight gives the instant at which d begins; negative before start.
func Midnight(start, d Date) clock.Time {
	return clock.Time(d.DaysSince(start)) * clock.Day
}

// MonthAt gives the month of instant t of a scenario that starts on start.
func MonthAt(start Date, t clock.Time) time.Month { return DateAt(start, t).Month }

// WeekAt numbers the Monday–Sunday weeks of a scenario: week 0 holds the start
// date and may be cut short, the next Monday begins week 1.
func WeekAt(start Date, t clock.Time) int {
	return int(floorDiv(int64(dayOf(t)+daysFromMonday(start.Weekday())), 7))
}

// WeekStart gives the Monday midnight that begins week n of WeekAt; for week 0
// it is negative unless the scenario starts on a Monday.
func WeekStart(start Date, n int) clock.Time {
	return clock.Time(7*n-daysFromMonday(start.Weekday())) * clock.Day
}

const secondsPerDay = 24 * 60 * 60

func (d Date) time() time.Time {
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC)
}

// dayMonth orders the days of a year, the 29th of February in its place.
func (d Date) dayMonth() int { return int(d.Month)*100 + d.Day }

func fromTime(t time.Time) Date {
	y, m, d := t.Date()
	return Date{y, m, d}
}

func daysFromMonday(w time.Weekday) int { return (int(w) + 6) % 7 }

// dayOf numbers the days of a scenario; the day before its start is -1.
func dayOf(t clock.Time) int { return int(floorDiv(int64(t), int64(clock.Day))) }

func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}
