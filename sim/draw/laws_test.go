package draw

import (
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// known is a law with values from outside this package: mean, variance, excess
// kurtosis and seven quantiles computed with scipy 1.10.1 (scipy.stats), to the
// digits printed, and the distribution function from gonum's stat/distuv.
type known struct {
	name           string
	d              Dist
	mean, variance float64
	kurtosis       float64
	quantiles      [7]float64
	cdf, survival  func(x float64) float64
}

var probabilities = [7]float64{.01, .05, .25, .50, .75, .95, .99}

// outside is a law of gonum.
type outside interface {
	CDF(x float64) float64
	Survival(x float64) float64
}

func with(o outside) (cdf, survival func(float64) float64) { return o.CDF, o.Survival }

func knownLaws() []known {
	var list []known
	add := func(d Dist, err error) func(o outside, mean, variance, kurtosis float64, q ...float64) {
		return func(o outside, mean, variance, kurtosis float64, q ...float64) {
			k := known{d: must(d, err), mean: mean, variance: variance, kurtosis: kurtosis}
			copy(k.quantiles[:], q)
			k.cdf, k.survival = with(o)
			k.name = fmt.Sprint(k.d)
			list = append(list, k)
		}
	}
	add(Triangular(1, 2, 4))(distuv.NewTriangle(1, 4, 2, nil), 2.33333333, .38888889, -.6,
		1.173205, 1.387298, 1.866025, 2.267949, 2.775255, 3.452277, 3.755051)
	add(Triangular(8, 10, 16))(distuv.NewTriangle(8, 16, 10, nil), 11.33333333, 2.88888889, -.6,
		8.4, 8.894427, 10, 11.101021, 12.535898, 14.450807, 15.307180)
	add(Triangular(2, 2, 5))(distuv.NewTriangle(2, 5, 2, nil), 3, .5, -.6,
		2.015038, 2.075962, 2.401924, 2.878680, 3.5, 4.329180, 4.7)
	add(PERT(1, 2, 4))(stretched{distuv.Beta{Alpha: 7. / 3, Beta: 11. / 3}, 1, 3}, 2.16666667, .30555556, -.545455,
		1.157091, 1.328497, 1.739667, 2.127438, 2.555990, 3.139862, 3.466060)
	add(PERT(8, 10, 16))(stretched{distuv.Beta{Alpha: 2, Beta: 4}, 8, 8}, 10.66666667, 2.03174603, -.375,
		8.261457, 8.611523, 9.550109, 10.510481, 11.633445, 13.259267, 14.223422)
	add(Lognormal(10, .5))(distuv.LogNormal{Mu: math.Log(10) - math.Log(1.25)/2, Sigma: math.Sqrt(math.Log(1.25))}, 10, 25, 5.035156,
		2.980501, 4.112439, 6.503870, 8.944272, 12.300369, 19.453178, 26.841125)
	add(Lognormal(24, .1))(distuv.LogNormal{Mu: math.Log(24) - math.Log(1.01)/2, Sigma: math.Sqrt(math.Log(1.01))}, 24, 5.76, .161506,
		18.935195, 20.267169, 22.327016, 23.880893, 25.542914, 28.138958, 30.118361)
	add(Lognormal(2, 1))(distuv.LogNormal{Mu: math.Ln2 / 2, Sigma: math.Sqrt(math.Ln2)}, 2, 4, 38,
		.203877, .359566, .806561, 1.414214, 2.479664, 5.562258, 9.809833)
	add(Gamma(10, .5))(distuv.Gamma{Alpha: 4, Beta: .4}, 10, 25, 1.5,
		2.058122, 3.415796, 6.338301, 9.180152, 12.773569, 19.384141, 25.112794)
	add(Gamma(10, .8))(distuv.Gamma{Alpha: 1.5625, Beta: 1 / 6.4}, 10, 64, 3.84,
		.425614, 1.252996, 4.154267, 7.966224, 13.665755, 25.697057, 37.104320)
	add(Gamma(2, math.Sqrt2))(distuv.Gamma{Alpha: .5, Beta: .25}, 2, 8, 12,
		.000314, .007864, .203062, .909873, 2.646607, 7.682918, 13.269793)
	add(Erlang(2, 3))(distuv.Gamma{Alpha: 2, Beta: 2. / 3}, 3, 4.5, 3,
		.222832, .533042, 1.441918, 2.517520, 4.038952, 7.115797, 9.957528)
	add(WeibullShape(1.5, 10))(distuv.Weibull{K: 1.5, Lambda: 10}, 9.02745293, 37.56902848, 1.390404,
		.465715, 1.380513, 4.357879, 7.832198, 12.432839, 20.781106, 27.679854)
	add(WeibullShape(.8, 5))(distuv.Weibull{K: .8, Lambda: 5}, 5.66501548, 50.99137385, 12.740742,
		.015911, .122052, 1.053443, 3.162291, 7.521238, 19.706012, 33.730836)
	add(Exponential(2))(distuv.Exponential{Rate: .5}, 2, 4, 6,
		.020101, .102587, .575364, 1.386294, 2.772589, 5.991465, 9.210340)
	add(Normal(2, 2))(cut{distuv.Normal{Mu: 2, Sigma: 2}}, 2.57519994, 2.51874514, .001381,
		.068373, .321913, 1.330949, 2.400347, 3.610511, 5.454370, 6.780937)
	return list
}

// stretched is a beta law from low to low + width.
type stretched struct {
	distuv.Beta
	low, width float64
}

func (s stretched) CDF(x float64) float64      { return s.Beta.CDF((x - s.low) / s.width) }
func (s stretched) Survival(x float64) float64 { return s.Beta.Survival((x - s.low) / s.width) }

// cut is a normal law given that it is not negative.
type cut struct{ distuv.Normal }

func (c cut) CDF(x float64) float64 {
	return (c.Normal.CDF(x) - c.Normal.CDF(0)) / c.Normal.Survival(0)
}
func (c cut) Survival(x float64) float64 { return c.Normal.Survival(x) / c.Normal.Survival(0) }

func TestMomentsAndQuantilesOfKnownLaws(t *testing.T) {
	for _, k := range knownLaws() {
		if math.Abs(k.d.Mean()-k.mean) > 0.501e-8 {
			t.Errorf("%s: mean %.10f, want %.8f", k.name, k.d.Mean(), k.mean)
		}
		if math.Abs(k.d.Variance()-k.variance) > 0.501e-8 {
			t.Errorf("%s: variance %.10f, want %.8f", k.name, k.d.Variance(), k.variance)
		}
		for i, p := range probabilities {
			if got := k.d.Quantile(p); math.Abs(got-k.quantiles[i]) > 0.51e-6 {
				t.Errorf("%s: quantile %g is %.8f, want %.6f", k.name, p, got, k.quantiles[i])
			}
		}
	}
}

// The row normal(10, 2) of scipy 1.10.1 is of the law without a cut, whose tail
// below 0 is 2.9e-7: enough to move the 1 % quantile by 2e-5.
func TestNormalWithoutCut(t *testing.T) {
	want := [7]float64{5.347304, 6.710293, 8.651020, 10, 11.348980, 13.289707, 14.652696}
	for i, p := range probabilities {
		if got := 10 + 2*Normal01(p); math.Abs(got-want[i]) > 0.501e-6 {
			t.Errorf("quantile %g: %.8f, want %.6f", p, got, want[i])
		}
	}
}

// Shape and scale by a solver of scipy 1.10.1.
func TestWeibullFromMeanAndCV(t *testing.T) {
	for _, c := range []struct{ mean, cv, shape, scale float64 }{
		{10, .5, 2.1013490947, 11.2906338954},
		{100, 1.3, .7776190824, 86.4306024344},
		{24, .1, 12.1534341950, 25.0329043395},
	} {
		s := Compile(must(Weibull(c.mean, c.cv)))
		if math.Abs(1/s.b-c.shape) > 1e-9 || math.Abs(s.a-c.scale) > 1e-9 {
			t.Errorf("mean %g cv %g: shape %.10f scale %.10f, want %.10f %.10f", c.mean, c.cv, 1/s.b, s.a, c.shape, c.scale)
		}
	}
}

// Type 7 quantiles as numpy and R give them; mean and variance of the broken
// line by exact fractions.
func TestEmpirical(t *testing.T) {
	d := must(Empirical(3.0, 1.2, 5.9, 1.9, 2.3, 4.4, 2.8, 3.7))
	for i, p := range []float64{.05, .1, .25, .5, .75, .9, .99} {
		want := []float64{1.445, 1.69, 2.2, 2.9, 3.875, 4.85, 5.795}[i]
		if got := d.Quantile(p); math.Abs(got-want) > 1e-12 {
			t.Errorf("quantile %g: %.12f, want %g", p, got, want)
		}
	}
	if math.Abs(d.Mean()-3.092857143) > 0.501e-9 || math.Abs(d.Variance()-1.322806122) > 0.501e-9 {
		t.Errorf("mean %.10f variance %.10f", d.Mean(), d.Variance())
	}
}

func TestDiscrete(t *testing.T) {
	d := must(Discrete([]float64{5, 1, 2, 9}, []float64{2, 5, 3, 0}))
	if math.Abs(d.Mean()-2.1) > 1e-12 || math.Abs(d.Variance()-2.29) > 1e-12 {
		t.Errorf("mean %g variance %g, want 2.1 and 2.29", d.Mean(), d.Variance())
	}
	for u, want := range map[float64]float64{1e-12: 1, .4999: 1, .5001: 2, .7999: 2, .8001: 5, 1 - 1e-12: 5} {
		if got := d.Quantile(u); got != want {
			t.Errorf("quantile %g: %g, want %g", u, got, want)
		}
	}
	if got := d.String(); got != "discrete(1: 0.5, 2: 0.3, 5: 0.2)" {
		t.Error(got)
	}
}

// Weights and rates of the law with squared cv 4 and balanced means, from its
// formula in exact arithmetic: p = 0.8872983346, rates 1.7745966692, 0.2254033308.
func TestHyperexponential(t *testing.T) {
	m := newMixShape(4)
	if math.Abs(m.p1-0.8872983346) > 1e-10 || math.Abs(2*m.p2-0.2254033308) > 1e-10 {
		t.Errorf("p %.10f, second rate %.10f", m.p1, 2*m.p2)
	}
	d := must(Hyperexponential(1, 4))
	p, a, b := 0.8872983346207417, 1.7745966692414834, 0.2254033307585166
	for _, x := range []float64{1e-6, .01, .3, 1, 3, 10, 40, 100} {
		upper := p*math.Exp(-a*x) + (1-p)*math.Exp(-b*x)
		if got := d.Quantile(1 - upper); relative(got, x) > 1e-7 && upper > 1e-9 {
			t.Errorf("survival %g at %g, not %g", upper, got, x)
		}
	}
}
