package climate

import "math"

// HeatBranch says which formula a heat index comes from.
type HeatBranch uint8

// Branches of the National Weather Service's procedure.
const (
	HeatSimple HeatBranch = iota // the simple formula, below 80 °F
	HeatFull                     // the regression as it is
	HeatDry                      // the regression less the adjustment for dry air
	HeatWet                      // the regression plus the adjustment for humid air
)

// hottestCharted is the largest heat index in °F of the service's printed chart.
const hottestCharted = 137

// Heat is a heat index with the formula it comes from.
type Heat struct {
	F      float64 // °F
	Branch HeatBranch

	// Beyond marks a value outside the published chart, above 137 °F, of which
	// the service says that its regression is not valid there. It is a warning:
	// the value is the formula's all the same.
	Beyond bool
}

// HeatIndexF is the heat index in °F of air at a temperature in °F and a
// relative humidity 0 … 1.
func HeatIndexF(f, rh float64) float64 { return HeatIndex(f, rh).F }

// HeatIndex follows the procedure of the National Weather Service (Weather
// Prediction Center, "The heat index equation"; regression of Rothfusz,
// technical attachment SR 90-23, 1990; error ± 1.3 °F), for a temperature in °F
// and a relative humidity 0 … 1.
//
// The page can be read two ways: its simple formula already averages with the
// temperature by its factor 0.5, and the text says the result is averaged once
// more. Here the text is followed: the value reported below 80 °F, and compared
// with 80 °F, is the twice averaged one.
func HeatIndex(f, rh float64) Heat {
	r := 100 * rh
	if s := (f + simpleHeat(f, r)) / 2; s < 80 {
		return Heat{F: s, Branch: HeatSimple}
	}
	by, branch := heatAdjustment(f, r)
	hi := fullHeat(f, r) + by
	return Heat{hi, branch, hi > hottestCharted}
}

// simpleHeat is the formula for mild air; f in °F, r in percent.
func simpleHeat(f, r float64) float64 {
	return 0.5 * (f + 61 + (f-68)*1.2 + r*0.094)
}

// fullHeat is Rothfusz's regression without adjustments; f in °F, r in percent.
func fullHeat(f, r float64) float64 {
	return -42.379 + 2.04901523*f + 10.14333127*r - 0.22475541*f*r -
		0.00683783*f*f - 0.05481717*r*r +
		0.00122874*f*f*r + 0.00085282*f*r*r - 0.00000199*f*f*r*r
}

// heatAdjustment is what the procedure adds to the regression in dry and in
// humid air, in °F.
func heatAdjustment(f, r float64) (float64, HeatBranch) {
	switch {
	case r < 13 && f >= 80 && f <= 112:
		return -(13 - r) / 4 * math.Sqrt((17-math.Abs(f-95))/17), HeatDry
	case r > 85 && f >= 80 && f <= 87:
		return (r - 85) / 10 * (87 - f) / 5, HeatWet
	}
	return 0, HeatFull
}
