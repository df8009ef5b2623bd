package view

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
)

// adds rounds lengths of time to whole steps so that they still add up to their
// rounded sum: those with the largest remainders are rounded up.
func adds(times []clock.Time, step clock.Time) []int64 {
	out := make([]int64, len(times))
	sum := clock.Time(0)
	rest := int64(0)
	order := make([]int, len(times))
	for i, t := range times {
		out[i] = int64(t / step)
		sum += t
		rest -= out[i]
		order[i] = i
	}
	rest += int64((sum + step/2) / step)
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(times[b]%step, times[a]%step) })
	for _, i := range order[:min(max(rest, 0), int64(len(order)))] {
		out[i]++
	}
	return out
}
