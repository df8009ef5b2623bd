package permit

// Portion is one material over twelve months as the option of content sees it.
type Portion struct {
	Operation Operation
	Method    Method
	Mg        float64
	HAP       float64 // weight percent
}

// Content is the weighted-average organic HAP content of one group of Table 2
// with its limit.
type Content struct {
	Operation Operation
	Atomized  bool // tells the two groups of resin apart; true for gel coat
	Mg        float64
	Percent   float64 // §63.5713 Equation 1
	Limit     float64
}

// Complies tells whether the content is at or below the limit.
func (c *Content) Complies() bool { return c.Percent <= c.Limit }

// ContentOf judges materials by content: groups in the order of Table 2, those
// without material left out. The average of a group is Σ M·HAP / ΣM; the
// variables are those of §63.5713 Equation 1, the form is from memory.
func ContentOf(materials []Portion) []Content {
	var out []Content
	for o := range Operation(averaged) {
		for _, atomized := range []bool{true, false} {
			c := Content{Operation: o, Atomized: atomized}
			for _, x := range materials {
				if x.Operation != o || atomized != (o.Gel() || x.Method.Atomized()) {
					continue
				}
				c.Mg += x.Mg
				c.Percent += x.Mg * x.HAP
				c.Limit, _ = o.Content(x.Method)
			}
			if c.Mg > 0 {
				c.Percent /= c.Mg
				out = append(out, c)
			}
		}
	}
	return out
}

// SolventLimit is the highest organic HAP content of solvents that clean resin
// and gel coat equipment, weight percent: §63.5734, from memory.
const SolventLimit = 5.0
