package view

import "moldturn/sim/stats"

// plus prints a difference with its sign and interval, whether clear or not:
// for lists of parts that add up. A difference that is not clear says so.
func (m Money) plus(d stats.Difference) string {
	if d.N == 0 {
		return "–"
	}
	s := m.amount(d.Summary)
	if d.Mean > 0 {
		s = "+" + s
	}
	if d.Known() && !d.Clear && d.Half > 0 {
		s += " (not clear)"
	}
	return s
}

// dearer puts a difference of costs in words.
func (m Money) dearer(d stats.Difference) string {
	switch {
	case d.N == 1 && d.Mean < 0:
		return "in the one repeat " + m.whole(-d.Mean, 1) + " a year cheaper"
	case d.N == 1:
		return "in the one repeat " + m.whole(d.Mean, 1) + " a year dearer"
	case !d.Clear:
		return "not clearly dearer or cheaper (" + m.amount(d.Summary) + " a year)"
	case d.Mean > 0:
		return m.amount(d.Summary) + " a year dearer"
	}
	less := d.Summary
	less.Mean = -less.Mean
	return m.amount(less) + " a year cheaper"
}

// plusClaims prints how many claims fewer, as a change: fewer is below zero.
func plusClaims(fewer stats.Difference) string {
	digits := decimals(fewer.Half, 1)
	return signed(-fewer.Mean, digits) + plusOrNothing(fewer.Half, digits)
}

// plusBoats prints a difference of boats.
func plusBoats(d stats.Difference) string {
	digits := decimals(d.Half, 1)
	return signed(d.Mean, digits) + plusOrNothing(d.Half, digits)
}
