package view

import (
	"fmt"
	"time"

	"moldturn/reports/chart"
	"moldturn/sim"
)

// ordersLine is the orders that come in by week of the year, and a sentence for
// the caption. mean is what came in over the year in the runs; the months share
// it out as the plant's inputs say. An order book has no months of its own: its
// line is level.
func ordersLine(d *sim.Demand, mean float64, weeks int) (chart.Goal, string) {
	shares, known := orderMonths(d)
	if !known {
		return chart.Goal{Label: "orders that come in, mean of the year", Value: mean}, " Orders come from a book; their line is the mean of the year."
	}
	for m := range shares {
		shares[m] *= mean
	}
	if words, moves := ordersMove(shares); moves {
		g := chart.Goal{Label: "orders that come in, by month"}
		for w := range weeks {
			g.Values = append(g.Values, shares[middle(w).Month()-1])
		}
		return g, words
	}
	return chart.Goal{Label: "orders that come in, level all year", Value: mean}, " Orders are level: each month asks for the same."
}

// orderMonths is the orders of each month against the mean of the year, all
// models together; false where none are generated.
func orderMonths(d *sim.Demand) (out [12]float64, ok bool) {
	sum := 0.0
	for _, m := range d.Models {
		sum += m.PerWeek
	}
	if sum <= 0 || len(d.Dated) > 0 {
		return out, false
	}
	for _, m := range d.Models {
		for k := range out {
			out[k] += m.PerWeek * m.Monthly[k] / sum
		}
	}
	return out, true
}

// sameOrders is how much of the mean the busiest and the slowest month may differ
// before orders are said to move. Judgment of this report, no source.
const sameOrders = 0.02

// ordersMove says between what orders move through the year; false where they are
// level.
func ordersMove(months [12]float64) (string, bool) {
	low, high, sum := 0, 0, 0.0
	for m, x := range months {
		sum += x
		if x < months[low] {
			low = m
		}
		if x > months[high] {
			high = m
		}
	}
	if months[high]-months[low] <= sameOrders*sum/12 {
		return "", false
	}
	return fmt.Sprintf(" Orders move from %s a week in %s to %s in %s; the order book carries the difference.",
		fixed(months[low], 1), time.Month(low+1), fixed(months[high], 1), time.Month(high+1)), true
}

// middle is the day in the middle of week w of a year.
func middle(w int) time.Time { return time.Date(2027, time.January, 4+7*w, 0, 0, 0, 0, time.UTC) }
