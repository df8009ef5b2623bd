package record

import (
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// WeeksOfYear is how many weeks a year can touch; see Frame.WeekYear.
const WeeksOfYear = 53

// PoolWeek is how much of a craft or place was used, and how long boats, parts
// and molds waited for it, in one week of the year. All are sums in
// milliseconds: of units for Load, of jobs for Wait.
type PoolWeek struct {
	Load
	Wait clock.Time
}

// ByWeek is a PoolWeek for each week of the year. Only open weeks that lie
// wholly in the frame are in it; how many those are, by week of the year, is
// told by Result.OpenWeeks.
type ByWeek [WeeksOfYear]PoolWeek

// OpenWeeks is the number of counted weeks by week of the year.
func (r *Result) OpenWeeks() (n [WeeksOfYear]int) {
	for i, w := range r.WeekYear {
		if r.WeekOpen[i] {
			n[w]++
		}
	}
	return n
}

// weeks splits time at Mondays. Like months it remembers the week found last.
type weeks struct {
	at, until clock.Time
	year      int // week of the year, -1 for one that is not counted
}

// of gives the week of the year of t, -1 where it is not counted, and when the
// week ends.
func (w *weeks) of(f *Frame, t clock.Time) (int, clock.Time) {
	if t < w.at || t >= w.until {
		n := shift.WeekAt(f.Start, t)
		w.at, w.until = shift.WeekStart(f.Start, n), shift.WeekStart(f.Start, n+1)
		w.year = -1
		if w.at >= f.From && w.until <= f.To && !f.shut(n) {
			w.year = f.WeekYear(n)
		}
	}
	return w.year, w.until
}

// useByWeek counts the use of a pool; from and to lie in the frame.
func (t *Tally) useByWeek(u *Use, from, to clock.Time) {
	for from < to {
		week, end := t.useWeek[u.Pool].of(&t.frame, from)
		until := min(end, to)
		if week >= 0 {
			t.r.ByWeek[u.Pool][week].add(u, until-from)
		}
		from = until
	}
}

// waitByWeek counts a wait for a pool; from and to lie in the frame.
func (t *Tally) waitByWeek(pool int, from, to clock.Time) {
	for from < to {
		week, end := t.waitWeek.of(&t.frame, from)
		until := min(end, to)
		if week >= 0 {
			t.r.ByWeek[pool][week].Wait += until - from
		}
		from = until
	}
}

// add counts use for a length of time; what is over the capacity is overtime.
func (l *Load) add(u *Use, d clock.Time) {
	within := min(u.Used, u.Capacity)
	l.Used += d * clock.Time(within)
	l.Over += d * clock.Time(u.Used-within)
	l.Capacity += d * clock.Time(u.Capacity)
}
