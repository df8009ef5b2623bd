package finish

import (
	"math"

	"moldturn/sim/draw"
	"moldturn/sim/param"
)

// Inspect holds the numbers of reading and buffing.
type Inspect struct {
	ReadingSD float64 // points, error of one reading
	BuffBase  float64 // h per BuffArea for a part just below target
	BuffPoint float64 // h per BuffArea and point below target
	BuffArea  float64 // m²
	BuffCV    float64 // of the hours, lognormal
	Removed   float64 // share of haze, surface and wax that one round removes
}

func defaultInspect() Inspect {
	return Inspect{ReadingSD: 0.25, BuffBase: 1, BuffPoint: 0.8, BuffArea: 34, BuffCV: 0.5, Removed: 0.7}
}

// Reading is what inspection reads on a part of that luster; u is a uniform
// number strictly between 0 and 1.
func Reading(p *Params, luster, u float64) float64 {
	return min(max(luster+p.Inspect.ReadingSD*draw.Normal01(u), 0), 100)
}

// BuffHours is the labor hours to buff a part of area m² that was read below
// target; 0 when the reading reaches it. u is a uniform number strictly
// between 0 and 1.
func BuffHours(p *Params, reading, target, area, u float64) float64 {
	if reading >= target {
		return 0
	}
	mean := (p.Inspect.BuffBase + p.Inspect.BuffPoint*(target-reading)) * area / p.Inspect.BuffArea
	sigma2 := math.Log1p(p.Inspect.BuffCV * p.Inspect.BuffCV)
	return mean * math.Exp(math.Sqrt(sigma2)*draw.Normal01(u)-sigma2/2)
}

// Regain is the luster that one more round of buffing gives back.
func Regain(p *Params, part *Part) float64 {
	after := *part
	after.Buffs++
	return Luster(p, &after) - Luster(p, part)
}

// kept is the share of a buffed loss that is left after some rounds.
func (i *Inspect) kept(rounds int) float64 {
	left := 1.0
	for range rounds {
		left *= 1 - i.Removed
	}
	return left
}

var inspectInputs = []input{
	{param.Row{Path: "finish.reading_error", Kind: param.Number, Low: 0, High: 20, Default: "0.25",
		Doc:  "standard deviation of one reading of luster, points",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Inspect.ReadingSD }},
	{param.Row{Path: "finish.buff.base", Kind: param.Duration, Low: 0, High: 100, Default: "1 h",
		Doc:  "labor to buff a part of finish.buff.area just below target",
		Mark: param.Assumption, Source: hoursVary}, func(p *Params) *float64 { return &p.Inspect.BuffBase }},
	{param.Row{Path: "finish.buff.per_point", Kind: param.Duration, Low: 0, High: 100, Default: "0.8 h",
		Doc:  "further labor per point of luster below target and finish.buff.area",
		Mark: param.Assumption, Source: hoursVary}, func(p *Params) *float64 { return &p.Inspect.BuffPoint }},
	{param.Row{Path: "finish.buff.area", Kind: param.Area, Low: 1, High: 1000, Default: "34 m2",
		Doc:  "area that the labor of buffing is given for: a 24 ft hull",
		Mark: param.Assumption, Source: hoursVary}, func(p *Params) *float64 { return &p.Inspect.BuffArea }},
	{param.Row{Path: "finish.buff.variation", Kind: param.Share, Low: 0, High: 3, Default: "50 %",
		Doc:  "standard deviation of the labor of buffing over its mean",
		Mark: param.Assumption, Source: hoursVary}, func(p *Params) *float64 { return &p.Inspect.BuffCV }},
	{param.Row{Path: "finish.buff.removed", Kind: param.Share, Default: "70 %",
		Doc:  "share of the losses to haze, surface and wax that one round of buffing removes",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Inspect.Removed }},
}
