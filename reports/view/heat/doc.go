// Package heat shows what warm air, build-up and the hold do to boats: luster
// by turns since a strip, build-up through the year, the staircase of the hold,
// and the card for the wall. Each is a section of the page of a comparison.
// Titles are findings by named rules, each in a function of its own.
package heat

import (
	"fmt"
	"strconv"

	"moldturn/sim/record"
	"moldturn/sim/study"
)

// runs gives the run of each replication that figures of capacity are taken
// from.
func runs(r *study.Runs) []*record.Result {
	var out []*record.Result
	for i := range r.Outcomes {
		x := r.Outcomes[i].Capacity
		if x == nil {
			x = r.Outcomes[i].Dated
		}
		if x != nil {
			out = append(out, x)
		}
	}
	return out
}

// fixed prints a number that is above zero.
func fixed(v float64, digits int) string { return strconv.FormatFloat(v, 'f', digits, 64) }

// named is the study's figure of that name. A name that it does not have is an
// error of the program.
func named(name string) *study.Metric {
	m, ok := study.MetricNamed(name)
	if !ok {
		panic("heat: there is no figure " + name)
	}
	return &m
}

func years(n int) string {
	if n == 1 {
		return "1 year"
	}
	return fmt.Sprintf("%d years", n)
}

func turns(n int) string {
	if n == 1 {
		return "1 turn"
	}
	return fmt.Sprintf("%d turns", n)
}
