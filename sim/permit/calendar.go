package permit

import (
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Month is a calendar month of a run.
type Month struct {
	Year  int
	Month time.Month
}

// monthsAfter is the month n months later.
func (m Month) monthsAfter(n int) Month {
	d := shift.DateOf(m.Year, m.Month+time.Month(n), 1)
	return Month{d.Year, d.Month}
}

// calendar numbers the calendar months of a run from that of its start.
type calendar struct {
	start     shift.Date
	at, until clock.Time // of the month found last
	last      int
}

// of is the number of the month of t. It remembers the last month, since facts
// come nearly in order of time.
func (c *calendar) of(t clock.Time) int {
	if t < c.at || t >= c.until {
		d := shift.DateAt(c.start, t)
		c.at = shift.Midnight(c.start, shift.DateOf(d.Year, d.Month, 1))
		c.until = shift.Midnight(c.start, shift.DateOf(d.Year, d.Month+1, 1))
		c.last = 12*(d.Year-c.start.Year) + int(d.Month-c.start.Month)
	}
	return c.last
}

// First is the number of the first month that is counted: the first that begins
// no more than a week before the counted time. A run that begins on the first
// Monday of January counts January.
func (p *Plant) First() int {
	d := shift.DateAt(p.Start, p.From)
	begins := shift.Midnight(p.Start, shift.DateOf(d.Year, d.Month, 1))
	n := 12*(d.Year-p.Start.Year) + int(d.Month-p.Start.Month)
	if p.From-begins > clock.Week {
		n++
	}
	return n
}

// End is the number of the month after the last that the run lives to see
// whole.
func (p *Plant) End() int {
	d := shift.DateAt(p.Start, p.To)
	return 12*(d.Year-p.Start.Year) + int(d.Month-p.Start.Month)
}

// Month is month n of the run, from 0 for that of its start.
func (p *Plant) Month(n int) Month {
	return Month{p.Start.Year, p.Start.Month}.monthsAfter(n)
}
