package validate

import (
	"slices"
	"strings"
)

// Cases lists all cases by group, in the order to show them in.
func Cases() []Case {
	all := slices.Concat(
		oneServer(), severalServers(), anyLaw(), priorities(), breakdowns(),
		byHand(), shifts(), loopShifts(),
		steadyLoops(), moldLoops(), insensitive(), oneMold(), finiteSource(), sharedCrews(),
		blocking(), bays(), orderBook(), pairs(), closedPairs(), plantInMiniature(),
		pennyFabs(), fromEmpty(),
	)
	for i := range all {
		all[i].Rare = rare(&all[i])
	}
	return all
}

// rare is how much longer a case runs than others, so that the number with the
// largest relative error, mostly one that is near 0, meets largest as well.
func rare(c *Case) float64 {
	for _, x := range []struct {
		group, name string
		times       float64
	}{
		{"one server", "", 4}, {"loops with shifts", "12 h on, 12 h off, 1 molds", 2}, {"loops with shifts", "five days of 8 h, 1 molds", 6}, {"loops with shifts", "five days of 8 h", 3},
		{"mold loops", "loop C, 1 molds", 4.5}, {"mold loops", "1 molds", 2}, {"mold loops", "2 molds", 2.5}, {"mold loops", "4 molds", 3},
		{"mold loops", "3 molds", 2}, {"mold loops", "loop C, 8 molds", 3}, {"any law of cure", "", 3.5},
		{"blocking", "3 molds, 2 bays", 8}, {"blocking", "4 molds, 2 bays", 2},
		{"hull and deck", "1 molds of each, stores of 1", 3}, {"hull and deck", "1 molds of each, stores of 2", 12},
		{"hull and deck", "2 molds of each, stores of 1", 2}, {"hull and deck", "2 molds of each, stores of 2", 13},
		{"start from empty", "load 0.5", 2.5}, {"start from empty", "load 0.8", 2},
	} {
		if c.Group == x.group && strings.Contains(c.Name, x.name) {
			return x.times
		}
	}
	return 0
}

// Largest is the standard error that a full check may leave, as a share of the
// exact number: 0.5 % in loops, 2 % at a load of 0.9, 1 % otherwise.
func (c *Case) Largest() float64 {
	switch c.Group {
	case "one server", "any law of work", "start from empty":
		if strings.Contains(c.Name, "0.9") {
			return 0.02
		}
	case "loops with shifts", "mold loops", "any law of cure", "work that is not exponential", "one mold", "few molds", "one crew for wax and pull",
		"blocking", "bay kept from lay-up to pull", "production lines":
		return 0.005
	case "hull and deck":
		if !strings.Contains(c.Name, "at random") {
			return 0.005
		}
	}
	return 0.01
}
