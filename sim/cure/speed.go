package cure

import "math"

const (
	gasConstant = 8.314462618 // J/(mol·K), exact since the SI of 2019 to these digits
	zeroC       = 273.15      // 0 °C in K
	ReferenceC  = 25.0        // °C, where cure runs at speed 1
)

// Speed is how fast cure runs at tempC against 25 °C: exp(ea/R·(1/298.15 −
// 1/T)), ea in J/mol. It is exactly 1 at 25 °C and rises with temperature;
// tempC must lie above −273.15.
//
// Source: the Arrhenius form of equivalent age, ASTM C1074, "Standard Practice
// for Estimating Concrete Strength by the Maturity Method".
func Speed(tempC, ea float64) float64 {
	const ref = ReferenceC + zeroC
	// 1/ref − 1/T written as one quotient, which is exactly 0 at 25 °C.
	return math.Exp(ea / gasConstant * (tempC - ReferenceC) / (ref * (tempC + zeroC)))
}
