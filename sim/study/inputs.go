package study

import (
	"math"

	"moldturn/sim/param"
)

// Inputs lists what a scenario may say about studies: what people and places
// cost a year, for choosing the cheapest size of a plant.
func Inputs() []param.Row {
	const why = "for comparing sizes of a plant only; put in your own"
	row := func(path, def, doc string, mark param.Mark, source string) param.Row {
		return param.Row{Path: path, Kind: param.Money, Low: 0, High: math.Inf(1), Default: def, Doc: doc, Mark: mark, Source: source}
	}
	return []param.Row{
		row("size.person", "$57k", "a person a year, loaded", param.Memory, "about $21/h, × 1.3 for loading, 2,080 h; not verified; "+why),
		row("size.booth", "$45k", "a booth a year: write-off, air and heat", param.Assumption, why),
		row("size.guns", "$4k", "a gun set a year: pump, hoses, guns, upkeep", param.Assumption, why),
		row("size.hoist", "$8k", "a hoist a year", param.Assumption, why),
		row("size.place", "$5k", "any other place a year", param.Assumption, why),
		row("size.mold_per_m2", "$240", "a mold a year, per m² of its area", param.Memory, "about $40k for a 24 ft hull of 34 m² over five years, not verified; "+why),
	}
}
