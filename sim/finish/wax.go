package finish

import "moldturn/sim/param"

// Wax holds the numbers of the wax term.
type Wax struct {
	PerMissing float64 // points per coat missing
	PerExcess  float64 // points per coat too many
}

func defaultWax() Wax { return Wax{PerMissing: 0.5, PerExcess: 0.2} }

// waxLoss: too little wax lets styrene at the mold, too much leaves a dull
// layer.
//
// Source that excess wax dulls: "Fibreglass boats", technical brief, Practical
// Action, pp. 6 – 10. The numbers are assumptions.
func waxLoss(p *Params, part *Part) float64 {
	return p.Wax.PerMissing*max(part.MissingCoats, 0) + p.Wax.PerExcess*max(part.ExcessCoats, 0)
}

var waxInputs = []input{
	{param.Row{Path: "finish.wax.per_missing", Kind: param.Number, Low: 0, High: 20, Default: "0.5",
		Doc:  "points of luster lost per coat of wax that is missing",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Wax.PerMissing }},
	{param.Row{Path: "finish.wax.per_excess", Kind: param.Number, Low: 0, High: 20, Default: "0.2",
		Doc:  "points of luster lost per coat of wax beyond two without polish",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Wax.PerExcess }},
}
