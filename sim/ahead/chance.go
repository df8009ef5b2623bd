package ahead

import (
	"math"
	"slices"

	"moldturn/sim/clock"
)

// When is when one thing happens over all futures: one instant for each, or
// clock.Never where it does not happen in the time looked at.
type When []clock.Time

// By is the share of futures in which it has happened before t.
func (w When) By(t clock.Time) float64 {
	n := 0
	for _, x := range w {
		if x < t {
			n++
		}
	}
	return float64(n) / float64(max(len(w), 1))
}

// Ever is the share of futures in which it happens.
func (w When) Ever() float64 { return w.By(clock.Never) }

// Surely is the instant by which it happens with chance p, as "9 times in 10 by":
// the ⌈p·(n+1)⌉-th smallest of n futures, which one more future stays under with
// that chance (order statistics: David and Nagaraja, Order Statistics, section
// 2; from memory). clock.Never when it does not happen in so many.
func (w When) Surely(p float64) clock.Time {
	if len(w) == 0 {
		return clock.Never
	}
	sorted := slices.Sorted(slices.Values(w))
	k := int(math.Ceil(p*float64(len(w)+1) - 1e-9))
	return sorted[min(max(k, 1), len(w))-1]
}

// Given is w where it happens at all.
func (w When) Given() When {
	return slices.DeleteFunc(slices.Clone(w), func(t clock.Time) bool { return t == clock.Never })
}

// Shipped is when each of the first n orders leaves, over all futures.
func Shipped(futures []Future, n int) []When {
	out := make([]When, n)
	for i := range out {
		out[i] = never(len(futures))
	}
	for f := range futures {
		for k := range futures[f].Ships {
			if s := &futures[f].Ships[k]; int(s.Order) < n {
				out[s.Order][f] = s.At
			}
		}
	}
	return out
}

func never(n int) When {
	w := make(When, n)
	for i := range w {
		w[i] = clock.Never
	}
	return w
}
