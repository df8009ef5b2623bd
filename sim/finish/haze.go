package finish

import "moldturn/sim/param"

// Haze holds the numbers of the haze term.
type Haze struct {
	FullPoint float64 // build-up that costs one point on a dark part
	Most      float64 // points; haze never costs more
}

func defaultHaze() Haze { return Haze{FullPoint: 5, Most: 25} }

// hazeLoss grows with the square of the mold's build-up: the first pulls after
// a strip lose nothing one can see.
func hazeLoss(p *Params, part *Part) float64 {
	b := part.BuildUp / p.Haze.FullPoint
	return min(p.Haze.Most, p.Colors[part.Color].Haze*b*b)
}

var hazeInputs = []input{
	{param.Row{Path: "finish.haze.full_point", Kind: param.Number, Low: 0.1, High: 100, Default: "5",
		Doc:  "build-up on a mold, in pulls of a cool mold, that costs a dark part one point of luster",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Haze.FullPoint }},
	{param.Row{Path: "finish.haze.most", Kind: param.Number, Low: 0, High: 100, Default: "25",
		Doc:  "the most points of luster that haze costs",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Haze.Most }},
}

// HazeOf is the points of luster that a part loses to haze, before any buffing.
func HazeOf(p *Params, part *Part) float64 { return hazeLoss(p, part) }
