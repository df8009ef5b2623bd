package cure

import "math"

// Kinetics is one law of cure at one temperature: dα/dt = (K1 + K2·α^M)·max(0,
// Max − α)^N for the degree of cure α. K1 and K2 are per unit of time; with
// Max 1 it is the form of Kamal and Sourour. The zero value never cures.
//
// Source: M. R. Kamal and S. Sourour, "Kinetics and thermal characterization
// of thermoset cure", Polym. Eng. Sci. 13 (1973) 59.
type Kinetics struct {
	K1, K2, M, N, Max float64
}

// At25 is the law of a thin laminate at 25 °C that stops at a plateau, per hour.
func (p Params) At25(plateau float64) Kinetics {
	return Kinetics{p.K1, p.K2, p.M, p.N, plateau}
}

// Rate is dα/dt at degree a ≥ 0; 0 from Max on.
func (k Kinetics) Rate(a float64) float64 {
	left := k.Max - a
	if !(left > 0) {
		return 0
	}
	return (k.K1 + k.K2*math.Pow(max(a, 0), k.M)) * math.Pow(left, k.N)
}

// tolerance is the error allowed in one step of After.
const tolerance = 1e-11

// After is the degree that follows degree a by a length of time, integrated
// directly with a step that adapts (Dormand and Prince's pair of orders 5 and
// 4, J. Comput. Appl. Math. 6 (1980) 19). It never falls, whatever a is: a part
// above the plateau stays as it is. With K1 = 0 nothing starts by itself; give
// a seed. The error is below 1e-8, mostly far below.
func (k Kinetics) After(a, time float64) float64 {
	step := min(time, 1e-6)
	for time > 0 {
		step = min(step, time)
		next, err := k.step(a, step)
		if err <= tolerance {
			a, time = max(a, min(next, max(a, k.Max))), time-step
		}
		step *= min(max(0.9*math.Pow(tolerance/(err+1e-300), 0.2), 0.2), 5)
		if math.IsInf(step, 0) || math.IsNaN(step) {
			return a
		}
	}
	return a
}

// step is one step of the pair, with the difference of its two orders.
func (k Kinetics) step(a, h float64) (next, err float64) {
	k1 := k.Rate(a)
	k2 := k.Rate(a + h*k1/5)
	k3 := k.Rate(a + h*(3*k1+9*k2)/40)
	k4 := k.Rate(a + h*(44.0/45*k1-56.0/15*k2+32.0/9*k3))
	k5 := k.Rate(a + h*(19372.0/6561*k1-25360.0/2187*k2+64448.0/6561*k3-212.0/729*k4))
	k6 := k.Rate(a + h*(9017.0/3168*k1-355.0/33*k2+46732.0/5247*k3+49.0/176*k4-5103.0/18656*k5))
	next = a + h*(35.0/384*k1+500.0/1113*k3+125.0/192*k4-2187.0/6784*k5+11.0/84*k6)
	k7 := k.Rate(next)
	return next, math.Abs(h * (71.0/57600*k1 - 71.0/16695*k3 + 71.0/1920*k4 - 17253.0/339200*k5 + 22.0/525*k6 - k7/40))
}

// Constant is the degree of cure after hours at a constant tempC, counted from
// the end of the last labor in the mold, integrated directly.
func (p Params) Constant(tempC, hours float64) float64 {
	thin := hours*Speed(tempC, p.ActivationEnergy)/p.Thick - p.Induction
	return p.At25(p.Plateau(tempC)).After(0, thin)
}

// Reference is the degree of cure of a part pulled in good time: after 24 h at
// 21 °C. What lacks to it at the pull is Green.
func (p Params) Reference() float64 { return p.Constant(21, 24) }

// Green is the degree of cure that a part pulled at degree a lacks against
// reference; never negative.
func Green(reference, a float64) float64 { return max(0, reference-a) }
