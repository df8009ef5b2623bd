package validate

import "slices"

// Cases lists all cases by group, in the order to show them in.
func Cases() []Case {
	return slices.Concat(
		oneServer(), severalServers(), anyLaw(), priorities(), breakdowns(),
		byHand(), shifts(), loopShifts(),
		steadyLoops(), moldLoops(), insensitive(), finiteSource(), sharedCrews(),
		blocking(), bays(), orderBook(), pairs(), closedPairs(), plantInMiniature(),
		pennyFabs(), fromEmpty(),
	)
}
