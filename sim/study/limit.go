package study

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Limit is one craft or place with how it stood in some months.
type Limit struct {
	Pool int     // crafts first, then places
	Load float64 // worked over available hours, overtime apart
	Wait float64 // hours that work waited for it, per week
}

// Limits ranks what work waited for in the given months (0 … 11), over all
// replications: what stands first limits the plant. Pools without capacity
// are left out. Waits are those of open weeks with their Thursday in one of the
// months; of results that do not know their weeks, all waits over open weeks.
func (r *Runs) Limits(months ...int) []Limit {
	var out []Limit
	if len(r.Outcomes) == 0 {
		return nil
	}
	first := of(&r.Outcomes[0])
	weekly := map[int]*PoolWeeks{}
	for _, p := range r.PoolWeeks() {
		weekly[p.Pool] = &p
	}
	for pool := range first.Load {
		var l record.Load
		var wait clock.Time
		weeks := 0
		for i := range r.Outcomes {
			x := of(&r.Outcomes[i])
			for _, m := range months {
				l.Used += x.Load[pool][m].Used
				l.Capacity += x.Load[pool][m].Capacity
				wait += x.Waits[m][pool]
				weeks += x.MonthOpen[m]
			}
		}
		if l.Capacity == 0 {
			continue
		}
		hours := wait.Hours() / float64(max(weeks, 1))
		if p := weekly[pool]; p != nil {
			hours = p.Wait(months...)
		}
		out = append(out, Limit{Pool: pool, Load: float64(l.Used) / float64(l.Capacity), Wait: hours})
	}
	slices.SortStableFunc(out, func(a, b Limit) int {
		switch {
		case a.Wait > b.Wait:
			return -1
		case a.Wait < b.Wait:
			return 1
		}
		return a.Pool - b.Pool
	})
	return out
}

// of is the run that figures of capacity are taken from.
func of(o *Outcome) *record.Result {
	if o.Capacity != nil {
		return o.Capacity
	}
	return o.Dated
}
