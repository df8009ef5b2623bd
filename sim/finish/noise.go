package finish

import (
	"moldturn/sim/draw"
	"moldturn/sim/param"
)

// Noise holds the number of the noise term.
type Noise struct {
	SD float64 // points
}

func defaultNoise() Noise { return Noise{SD: 0.3} }

// noiseLoss is normal, by inversion of the part's one uniform number; a high
// number is a good part.
func noiseLoss(p *Params, part *Part) float64 {
	return -p.Noise.SD * draw.Normal01(part.Noise)
}

var noiseInputs = []input{
	{param.Row{Path: "finish.noise", Kind: param.Number, Low: 0, High: 20, Default: "0.3",
		Doc:  "standard deviation of luster from part to part without a known cause, points",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Noise.SD }},
}
