package shift

import "moldturn/sim/clock"

// builder collects shifts in the order of time and makes a calendar of them.
type builder struct {
	end       clock.Time
	intervals []Interval
	runs      []Run
	lastEnd   []clock.Time
}

// add puts in the part of pieces that lies in [from, end). It drops the shift
// if nothing does.
func (b *builder) add(shift, day int, pieces []Interval, from clock.Time) {
	run := Run{Shift: shift, Day: day, From: clock.Never}
	for _, p := range pieces {
		p.From, p.To = max(p.From, from), min(p.To, b.end)
		if p.From >= p.To {
			continue
		}
		p.Ends, p.Run = StartOfBreak, int32(len(b.runs))
		b.intervals = append(b.intervals, p)
		run.From, run.To = min(run.From, p.From), p.To
		run.Work += p.To - p.From
	}
	if run.Work == 0 {
		return
	}
	b.intervals[len(b.intervals)-1].Ends = EndOfShift
	b.runs = append(b.runs, run)
	b.endOfDay(day, run.To)
}

// endOfDay notes that a shift of day ends at t.
func (b *builder) endOfDay(day int, t clock.Time) {
	for len(b.lastEnd) < day+2 {
		b.lastEnd = append(b.lastEnd, none)
	}
	b.lastEnd[day+1] = max(b.lastEnd[day+1], t)
}

func (b *builder) calendar() *Calendar {
	c := &Calendar{
		intervals: b.intervals, runs: b.runs, lastEnd: b.lastEnd, end: b.end,
		before: make([]clock.Time, 1, len(b.intervals)+1),
	}
	if c.lastEnd == nil {
		c.lastEnd = []clock.Time{none}
	}
	var work clock.Time
	for _, iv := range c.intervals {
		work += iv.To - iv.From
		c.before = append(c.before, work)
	}
	c.total = work
	for _, r := range c.runs {
		c.longest = max(c.longest, r.Work)
	}
	c.full = b.end > 0 && work == b.end
	c.first = firstOfDays(c.intervals, b.end)
	return c
}

// firstOfDays gives, for each midnight of [0, end] and one more, the first
// interval that ends after it.
func firstOfDays(intervals []Interval, end clock.Time) []int32 {
	out := make([]int32, end/clock.Day+2)
	i := 0
	for day := range out {
		for i < len(intervals) && intervals[i].To <= clock.Time(day)*clock.Day {
			i++
		}
		out[day] = int32(i)
	}
	return out
}
