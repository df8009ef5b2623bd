package climate

import "moldturn/sim/shift"

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

// cursor walks the calendar a day at a time.
type cursor struct{ year, month, day int }

// cursorAt stands on a date.
func cursorAt(d shift.Date) cursor { return cursor{d.Year, int(d.Month), d.Day} }

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
