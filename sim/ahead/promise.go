package ahead

import (
	"cmp"
	"context"
	"math"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/stats"
)

// Promise is what taking some more boats means: when they leave, and what it does
// to the orders that are there.
type Promise struct {
	Boats  []When  // the boats asked for, in their order
	All    When    // when the last of them leaves
	Moved  []Moved // orders that leave later, the one that loses most first
	Until  clock.Time
	Start  *sim.Start // with the boats asked for at its end
	Before int        // orders of the start that stood there before
}

// Moved is what happens to one order because of others.
type Moved struct {
	Order    int        // index into Start.Orders
	Days     float64    // later on average, over the futures in which it leaves either way
	Half     float64    // half the interval of Days, over those futures pair by pair; 0 for fewer than two
	Without  When       // when it leaves
	With     When       // when it leaves with the others
	LateMore float64    // how much the chance rises that it leaves after its due date; 0 without one
	Due      clock.Time // clock.Never without one
}

// Ask runs the futures twice under the same luck, without some boats and with
// them at the end of the list of orders.
func Ask(ctx context.Context, s *Setup, boats []sim.StartOrder) (*Promise, error) {
	p := &Promise{Before: len(s.Start.Orders), Until: s.Plan.Length}
	more := *s.Start
	more.Orders = append(slices.Clip(more.Orders), boats...)
	p.Start = &more
	with := *s
	with.Start = &more
	after, err := with.Run(ctx)
	if err != nil {
		return nil, err
	}
	left := Shipped(after, len(more.Orders))
	p.Boats = left[p.Before:]
	p.All = never(s.Futures)
	for f := range p.All {
		last := clock.Time(0)
		for _, w := range p.Boats {
			last = max(last, w[f])
		}
		p.All[f] = last
	}
	if p.All.Surely(0.9) == clock.Never {
		return p, nil // the caller looks further ahead, or says no
	}
	before, err := s.Run(ctx)
	if err != nil {
		return nil, err
	}
	p.Moved = moved(p.Start.Orders, Shipped(before, p.Before), left[:p.Before], false)
	return p, nil
}

// shift is the fewest days, and late the least rise of the chance to be late,
// from which on an order counts as moved.
const (
	fewestDays = 0.5
	leastLate  = 0.1
)

// moves says whether an order moves by enough to be told: later or, where both
// are asked for, either way and clearly.
func (m *Moved) moves(both bool) bool {
	if !both {
		return m.Days >= fewestDays || m.LateMore >= leastLate
	}
	return math.Abs(m.Days) >= fewestDays && math.Abs(m.Days) > m.Half || math.Abs(m.LateMore) >= leastLate
}

// apart is by how many days something is later in b than in a, over the futures
// in which it happens in both.
func apart(a, b When) stats.Summary {
	var days []float64
	for f := range a {
		if a[f] != clock.Never && b[f] != clock.Never {
			days = append(days, float64(b[f]-a[f])/float64(clock.Day))
		}
	}
	return stats.TInterval(days, Confidence)
}

// moved finds the orders that leave later, the one that loses most first; those
// that leave earlier too where both are asked for, what moves most first.
func moved(orders []sim.StartOrder, without, with []When, both bool) []Moved {
	var out []Moved
	for i := range without {
		m := Moved{Order: i, Without: without[i], With: with[i], Due: orders[i].Due}
		d := apart(without[i], with[i])
		m.Days, m.Half = d.Mean, d.Half
		if m.Due != clock.Never {
			m.LateMore = m.Without.By(m.Due) - m.With.By(m.Due)
		}
		if m.moves(both) {
			out = append(out, m)
		}
	}
	slices.SortStableFunc(out, func(a, b Moved) int {
		return cmp.Or(cmp.Compare(math.Abs(b.Days), math.Abs(a.Days)), cmp.Compare(a.Order, b.Order))
	})
	return out
}
