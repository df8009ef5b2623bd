package permit

import "math"

// resinPoints are the factors of Table 3 by kind of spraying and Bag, with the
// exponents of the kinds: 40 CFR 63 Subpart VVVV, Table 3 (66 FR 44232, 66 FR
// 50504).
var resinPoints = [2]struct {
	factor   [bagging]float64
	exponent float64
}{
	{[bagging]float64{0.014, 0.01185, 0.00945}, 2.425},
	{[bagging]float64{0.014, 0.0110, 0.0076}, 2.275},
}

// PointValue is the point value of a material in kg of organic HAP per Mg
// applied: Table 3 to Subpart VVVV. hap is its organic HAP content in weight
// percent, 0 to 100. It is a surrogate for compliance, not an estimate of
// emissions; 0 for Solvent, which the averaging does not know.
func PointValue(o Operation, m Method, hap float64) float64 {
	switch {
	case o.Gel():
		return 0.445 * math.Pow(hap, 1.675)
	case o.Resin():
		row := &resinPoints[1]
		if m.Atomized() {
			row = &resinPoints[0]
		}
		return row.factor[m.Bag()] * math.Pow(hap, row.exponent)
	}
	return 0
}

// Filled is the point value of a filled resin as applied, §63.5714 Equation 1:
// the point value of the resin without filler times the share that is not
// filler. filler is in weight percent, 0 to 100. The form is from memory.
func Filled(point, filler float64) float64 { return point * (100 - filler) / 100 }

// FilledComplies tells whether a filled resin judged by itself complies: at most
// 46 kg/Mg for production and 54 for tooling, §63.5714(b) and (c). Operations
// without such a rule never do.
func FilledComplies(o Operation, filled float64) bool {
	return o.Resin() && filled <= o.Coefficient()
}
