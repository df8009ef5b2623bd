package draw

import "math"

// Hyperexponential is a mix of two exponential laws, one short and frequent, one
// long and rare, that each bring half of the mean: the law of a wait with more
// spread than an exponential one. scv is variance over mean², 1 to 25; scv 1 is
// Exponential, mean 0 a Constant. Source for the balanced means: any text on
// queues, e.g. Tijms, A First Course in Stochastic Models, 2003, appendix B
// (from memory).
func Hyperexponential(mean, scv float64) (Dist, error) {
	if err := amount("hyperexponential", "mean", mean); err != nil {
		return nil, err
	}
	if err := within("hyperexponential", "scv", scv, 1, maxCV*maxCV); err != nil {
		return nil, err
	}
	if mean == 0 || scv == 1 {
		return Exponential(mean)
	}
	return &law{
		sampler:  Sampler{kind: tabled, b: mean, c: math.Inf(1), table: newTable(newMixShape(scv))},
		mean:     mean,
		variance: scv * mean * mean,
		high:     math.Inf(1),
		text:     call("hyperexponential", mean, scv),
	}, nil
}

// mixShape is the mix with mean 1: the two parts have weights p1 and p2 and
// rates 2·p1 and 2·p2.
type mixShape struct{ p1, p2 float64 }

func newMixShape(scv float64) *mixShape {
	r := math.Sqrt((scv - 1) / (scv + 1))
	return &mixShape{(1 + r) / 2, 1 / (scv + 1) / (1 + r)} // p2 = (1-r)/2, without its cancellation
}

// parts are the probabilities of each part together with exceeding y.
func (m *mixShape) parts(y float64) (first, second float64) {
	return m.p1 * math.Exp(-2*m.p1*y), m.p2 * math.Exp(-2*m.p2*y)
}

func (m *mixShape) density(y float64) (f, slope float64) {
	a, b := m.parts(y)
	f = 2 * (m.p1*a + m.p2*b)
	return f, -4 * (m.p1*m.p1*a + m.p2*m.p2*b) / f
}

// lower is Newton's method from 0. The distribution function is concave, so every
// step stops short of the solution and none has to be taken back.
func (m *mixShape) lower(p float64) float64 {
	y := 0.0
	for range maxSteps {
		f, _ := m.density(y)
		miss := p + m.p1*math.Expm1(-2*m.p1*y) + m.p2*math.Expm1(-2*m.p2*y)
		step := miss / f
		y += step
		if step <= 1e-15*y {
			break
		}
	}
	return y
}

// upper is Newton's method from 0 on the logarithm of the probability to exceed
// y, which is convex, so steps stop short here too.
func (m *mixShape) upper(q float64) float64 {
	y, want := 0.0, math.Log(q)
	for range maxSteps {
		a, b := m.parts(y)
		f, _ := m.density(y)
		step := (math.Log(a+b) - want) * (a + b) / f
		y += step
		if step <= 1e-15*y {
			break
		}
	}
	return y
}

// maxSteps ends an iteration that rounding keeps alive; about ten are needed.
const maxSteps = 100
