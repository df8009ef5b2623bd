package climate

// The calendar here is the proleptic Gregorian one with its leap days, counted
// in days since 1970-01-01.

// leap reports whether a year has a 29 February.
func leap(year int) bool { return year%4 == 0 && (year%100 != 0 || year%400 == 0) }

// daysIn is the length of a month, 1 … 12, in days.
func daysIn(year, month int) int {
	switch month {
	case 2:
		if leap(year) {
			return 29
		}
		return 28
	case 4, 6, 9, 11:
		return 30
	}
	return 31
}

// daysBefore is the number of days of a common year before each month.
var daysBefore = [12]int{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334}

// daysSince1970 counts the days from 1970-01-01 to a date of the years 1 … 9999.
func daysSince1970(year, month, day int) int {
	y := year - 1
	days := 365*y + y/4 - y/100 + y/400 + daysBefore[month-1] + day - 1
	if month > 2 && leap(year) {
		days++
	}
	return days - 719162
}

// cursor walks the calendar a day at a time.
type cursor struct{ year, month, day int }

// next is the day after c.
func (c cursor) next() cursor {
	c.day++
	if c.day > daysIn(c.year, c.month) {
		c.day = 1
		c.month++
	}
	if c.month > 12 {
		c.month = 1
		c.year++
	}
	return c
}

// between gives the two months, 0 … 11, whose middles a moment lies between and
// how far it is from the first to the second, 0 … 1. The moment is an hour of
// the day, 0 … 24.
func (c cursor) between(hour float64) (before, after int, share float64) {
	at := float64(c.day-1) + hour/hoursPerDay
	half := float64(daysIn(c.year, c.month)) / 2
	m := c.month - 1
	if at < half {
		before, after = (m+11)%12, m
		prev := float64(daysIn(c.year, before+1)) / 2
		return before, after, (at + prev) / (prev + half)
	}
	before, after = m, (m+1)%12
	following := float64(daysIn(c.year, after+1)) / 2
	return before, after, (at - half) / (half + following)
}
