package finish

import (
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/param"
)

// PostCure holds the numbers of the post-cure term.
type PostCure struct {
	PerGreen float64 // points per degree of cure missing, light color
	AtOnce   float64 // share that shows at inspection
	Later    float64 // h, time constant of the rest
}

func defaultPostCure() PostCure { return PostCure{PerGreen: 44, AtOnce: 0.4, Later: 3 * 168} }

// postcureLoss is the waviness of a part that went on curing and shrinking
// with no mold to hold its face. Part shows at once, the rest comes out over
// weeks.
//
// Source of the mechanism: "relaxation keeps changing waviness for long
// after", J. Compos. Mater. (2023), doi 10.1177/00219983221150046. The numbers
// are assumptions; PerGreen belongs to a thick-shot factor of 2, with 1 it is
// about 116.
func postcureLoss(p *Params, part *Part) float64 {
	c := &p.PostCure
	return c.PerGreen * p.Colors[part.Color].PostCure * max(part.Green, 0) * c.shown(part.Since)
}

// shown is the share of the waviness that has come out.
func (c *PostCure) shown(since clock.Time) float64 {
	if since <= 0 {
		return c.AtOnce
	}
	if since >= clock.Never || c.Later <= 0 {
		return 1
	}
	return 1 - (1-c.AtOnce)*math.Exp(-since.Hours()/c.Later)
}

var postcureInputs = []input{
	{param.Row{Path: "finish.postcure.per_green", Kind: param.Number, Low: 0, High: 1000, Default: "44",
		Doc:  "points of luster lost per degree of cure (0 … 1) missing at the pull, light color; 44 for a thick-shot factor of 2, 116 for 1",
		Mark: param.Assumption, Source: "chosen so that a pull after 12 h at 21 °C instead of 24 h costs a light part 2 points in the end"},
		func(p *Params) *float64 { return &p.PostCure.PerGreen }},
	{param.Row{Path: "finish.postcure.at_once", Kind: param.Share, Default: "40 %",
		Doc:  "share of that loss that shows at the first inspection",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.PostCure.AtOnce }},
	{param.Row{Path: "finish.postcure.later", Kind: param.Duration, Low: 0, High: 8760, Default: "3 wk",
		Doc:  "time constant in which the rest of that loss comes out",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.PostCure.Later }},
}
