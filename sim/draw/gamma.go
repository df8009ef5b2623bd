package draw

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// Gamma is the law of a sum of waits, given by its mean and its cv, the standard
// deviation over the mean: shape 1/cv², scale mean·cv². cv 1 is Exponential; cv
// 0 or mean 0 give a Constant. Needs 0 ≤ mean ≤ 1e12 and a cv of 0, or 0.001
// to 5.
func Gamma(mean, cv float64) (Dist, error) {
	if err := meanAndCV("gamma", mean, cv); err != nil {
		return nil, err
	}
	if mean == 0 || cv == 0 {
		return always(mean), nil
	}
	if cv == 1 {
		return Exponential(mean)
	}
	return newGamma(mean, cv, 1/(cv*cv)), nil
}

// Erlang is the law of the sum of stages equal exponential waits that last mean
// together: Gamma with shape stages. Needs 1 to 1,000,000 stages and 0 ≤ mean ≤
// 1e12.
func Erlang(stages int, mean float64) (Dist, error) {
	if err := within("erlang", "number of stages", float64(stages), 1, 1e6); err != nil {
		return nil, err
	}
	if err := amount("erlang", "mean", mean); err != nil {
		return nil, err
	}
	if stages == 1 || mean == 0 {
		return Exponential(mean)
	}
	return newGamma(mean, 1/math.Sqrt(float64(stages)), float64(stages)), nil
}

func newGamma(mean, cv, k float64) *law {
	logGamma, _ := math.Lgamma(k)
	return &law{
		sampler:  Sampler{kind: tabled, b: mean, c: unlimited, table: newTable(&gammaShape{k, logGamma})},
		mean:     mean,
		variance: mean * mean / k,
		high:     unlimited,
		text:     call("gamma", mean, cv),
	}
}

// gammaShape is the gamma law of shape k and mean 1.
type gammaShape struct {
	k        float64
	logGamma float64 // ln Γ(k)
}

// lower takes the power series near 0, x ≈ a + a²/(k+1) with a = (p·Γ(k+1))^(1/k),
// where gonum's inverse gives up for small k.
func (g *gammaShape) lower(p float64) float64 {
	a := math.Exp((math.Log(p*g.k) + g.logGamma) / g.k)
	if a < 1e-8 {
		return (a + a*a/(g.k+1)) / g.k
	}
	return mathext.GammaIncRegInv(g.k, p) / g.k
}

func (g *gammaShape) upper(q float64) float64 {
	x := mathext.GammaIncRegCompInv(g.k, q)
	if x < 1e-8 {
		return g.lower(1 - q)
	}
	return x / g.k
}

func (g *gammaShape) density(y float64) (f, slope float64) {
	x := g.k * y
	f = g.k * math.Exp((g.k-1)*math.Log(x)-x-g.logGamma)
	return f, (g.k-1)/y - g.k
}
