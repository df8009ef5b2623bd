package shift

import (
	"sort"

	"moldturn/sim/clock"
)

// Worked gives the working time in [from, to); zero if to is not after from.
func (c *Calendar) Worked(from, to clock.Time) clock.Time {
	if to <= from {
		return 0
	}
	return c.workedBefore(to) - c.workedBefore(from)
}

// OffShift gives the time in [from, to) that is not working time.
func (c *Calendar) OffShift(from, to clock.Time) clock.Time {
	if to <= from {
		return 0
	}
	return to - from - c.Worked(from, to)
}

// Finish gives the instant at which work is done that is taken up at t, or as
// soon after t as the calendar is on, and that rests while it is off. Work done
// exactly at the end of an interval is done there, not at the start of the
// next. No work (zero or less) is done at t itself, on or off. clock.Never if
// the horizon is too short.
func (c *Calendar) Finish(t, work clock.Time) clock.Time {
	if work <= 0 {
		return t
	}
	if c.full {
		return orNever(max(t, 0)+work, c.end)
	}
	i := c.at(t)
	if i == len(c.intervals) {
		return clock.Never
	}
	iv := &c.intervals[i]
	from := max(t, iv.From)
	if work <= iv.To-from {
		return from + work
	}
	return c.whenWorked(i+1, c.before[i]+from-iv.From+work)
}

// whenWorked gives the instant at which total working time since 0 is reached,
// known not to be before interval i. Near intervals are tried first, since most
// work is done within a shift or two.
func (c *Calendar) whenWorked(i int, total clock.Time) clock.Time {
	n := len(c.intervals)
	for near := min(i+4, n); i < near; i++ {
		if c.before[i+1] >= total {
			return c.intervals[i].From + total - c.before[i]
		}
	}
	i += sort.Search(n-i, func(k int) bool { return c.before[i+k+1] >= total })
	if i == n {
		return clock.Never
	}
	return c.intervals[i].From + total - c.before[i]
}

// workedBefore gives the working time in [0, t).
func (c *Calendar) workedBefore(t clock.Time) clock.Time {
	if c.full {
		return min(max(t, 0), c.end)
	}
	i := c.at(t)
	if i == len(c.intervals) {
		return c.total
	}
	if t <= c.intervals[i].From {
		return c.before[i]
	}
	return c.before[i] + t - c.intervals[i].From
}

// at gives the index of the first interval that ends after t: the one that t
// lies in, or else the next. It is the number of intervals if there is none.
func (c *Calendar) at(t clock.Time) int {
	n := len(c.intervals)
	if t >= c.end {
		return n
	}
	if t < 0 {
		return 0
	}
	i, last := 0, n
	if c.first != nil {
		day := t / clock.Day
		i, last = int(c.first[day]), int(c.first[day+1])
	}
	if last-i > 12 {
		return i + sort.Search(last-i, func(k int) bool { return c.intervals[i+k].To > t })
	}
	for i < n && c.intervals[i].To <= t {
		i++
	}
	return i
}

func orNever(t, end clock.Time) clock.Time {
	if t > end {
		return clock.Never
	}
	return t
}
