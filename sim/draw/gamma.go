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
		sampler:  Sampler{kind: tabled, b: mean, c: math.Inf(1), table: newTable(&gammaShape{k, logGamma})},
		mean:     mean,
		variance: mean * mean / k,
		high:     math.Inf(1),
		text:     call("gamma", mean, cv),
	}
}

// gammaShape is the gamma law of shape k and mean 1.
type gammaShape struct {
	k        float64
	logGamma float64 // ln Γ(k)
}

// lower is Newton's method on the logarithm of the distribution function over
// ln x. It is concave there, so every step but the first stops short of the
// solution. (gonum's own inverse fails for small p, with NaN or a panic.)
func (g *gammaShape) lower(p float64) float64 {
	x, want := g.start(p), math.Log(p)
	if x < 1e-8 {
		return (x + x*x/(g.k+1)) / g.k // two terms of the power series
	}
	for range maxSteps {
		reached := mathext.GammaIncReg(g.k, x)
		if reached == 0 {
			break // below the smallest float64, and so is p
		}
		y := x / g.k
		f, _ := g.density(y)
		step := (want - math.Log(reached)) * reached / (f * y)
		x *= math.Exp(step)
		if math.Abs(step) < 1e-14 {
			break
		}
	}
	return x / g.k
}

// start is a value near the quantile of the law with scale 1: the first term of
// the power series at 0, (p·Γ(k+1))^(1/k), which is never above it, and for large
// k the approximation of Wilson and Hilferty (Proc. Nat. Acad. Sci. 17, 1931).
func (g *gammaShape) start(p float64) float64 {
	x := math.Exp((math.Log(p) + math.Log(g.k) + g.logGamma) / g.k)
	if g.k < 100 {
		return x
	}
	root := 1 - 1/(9*g.k) + Normal01(p)/(3*math.Sqrt(g.k))
	return max(x, g.k*root*root*root)
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
