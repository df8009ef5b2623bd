package draw

import (
	"errors"
	"math"
	"strings"
	"testing"
)

// Every bad parameter is named, with its value and what is allowed.
func TestBadParameters(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, c := range []struct {
		make func() (Dist, error)
		want string
	}{
		{func() (Dist, error) { return Constant(-1) }, "constant: value is -1; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Constant(nan) }, "constant: value is NaN; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Uniform(3, 2) }, "uniform: high is 2; allowed: low (3) or more"},
		{func() (Dist, error) { return Uniform(nan, 2) }, "uniform: low is NaN; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Triangular(8, 7, 16) }, "triangular: typical is 7; allowed: low (8) or more"},
		{func() (Dist, error) { return PERT(8, 17, 16) }, "pert: high is 16; allowed: typical (17) or more"},
		{func() (Dist, error) { return PERT(-1, 2, 3) }, "pert: low is -1; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return PERT(1, 2, inf) }, "pert: high is +Inf; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Lognormal(10, -0.5) }, "lognormal: cv is -0.5; allowed: 0, or 0.001 to 5"},
		{func() (Dist, error) { return Lognormal(-10, 0.5) }, "lognormal: mean is -10; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Gamma(10, 30) }, "gamma: cv is 30; allowed: 0, or 0.001 to 5"},
		{func() (Dist, error) { return Gamma(10, nan) }, "gamma: cv is NaN; allowed: 0, or 0.001 to 5"},
		{func() (Dist, error) { return Erlang(0, 3) }, "erlang: number of stages is 0; allowed: 1 to 1e+06"},
		{func() (Dist, error) { return Erlang(2, inf) }, "erlang: mean is +Inf; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Weibull(10, 1e-4) }, "weibull: cv is 0.0001; allowed: 0, or 0.001 to 5"},
		{func() (Dist, error) { return WeibullShape(0, 5) }, "weibull: shape is 0; allowed: 0.35 to 1000"},
		{func() (Dist, error) { return WeibullShape(2, -5) }, "weibull: scale is -5; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Exponential(-2) }, "exponential: mean is -2; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Normal(-2, 1) }, "normal: mean is -2; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Normal(2, -1) }, "normal: sd is -1; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Empirical() }, "empirical: number of values is 0; allowed: 1 or more"},
		{func() (Dist, error) { return Empirical(1, -2) }, "empirical: values[1] is -2; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Discrete([]float64{1, 2}, []float64{1}) },
			"discrete: number of weights is 1; allowed: as many as values, 2, and at least one"},
		{func() (Dist, error) { return Discrete([]float64{1}, []float64{-1}) }, "discrete: weights[0] is -1; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Discrete([]float64{nan}, []float64{1}) }, "discrete: values[0] is NaN; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Discrete([]float64{1}, []float64{0}) }, "discrete: sum of weights is 0; allowed: above 0"},
		{func() (Dist, error) { return Hyperexponential(1, 0.5) }, "hyperexponential: scv is 0.5; allowed: 1 to 25"},
		{func() (Dist, error) { return Hyperexponential(-1, 2) }, "hyperexponential: mean is -1; allowed: 0 to 1e+12"},
		{func() (Dist, error) { return Scaled(must(Constant(1)), -1) }, "scaled: factor is -1; allowed: 0 to 1e+06"},
	} {
		d, err := c.make()
		var p *ParamError
		if err == nil || d != nil || err.Error() != c.want || !errors.As(err, &p) {
			t.Errorf("got %v, %v; want %s", d, err, c.want)
		}
	}
}

func TestLawsWithoutSpreadAreConstant(t *testing.T) {
	for i, d := range []Dist{
		must(Uniform(7, 7)), must(Triangular(7, 7, 7)), must(PERT(7, 7, 7)), must(Lognormal(7, 0)),
		must(Gamma(7, 0)), must(Weibull(7, 0)), must(Normal(7, 0)), must(Empirical(7)), must(Empirical(7, 7)),
		must(Discrete([]float64{7, 1}, []float64{3, 0})), must(Scaled(must(Constant(3.5)), 2)),
	} {
		low, high := d.Bounds()
		if Compile(d).kind != constant || d.Quantile(0.1) != 7 || d.Mean() != 7 || d.Variance() != 0 ||
			low != 7 || high != 7 || d.String() != "7" {
			t.Errorf("case %d: %s is no constant 7", i, d)
		}
	}
	for i, d := range []Dist{
		must(Exponential(0)), must(Lognormal(0, 1)), must(Gamma(0, 1)), must(Weibull(0, 1)), must(WeibullShape(2, 0)),
		must(Erlang(3, 0)), must(Hyperexponential(0, 2)), must(Scaled(must(Exponential(2)), 0)),
	} {
		if Compile(d).kind != constant || d.Quantile(0.9) != 0 || d.Variance() != 0 {
			t.Errorf("case %d: %s is no constant 0", i, d)
		}
	}
}

func TestSlicesAreCopied(t *testing.T) {
	x := []float64{1, 2, 3}
	e, d := must(Empirical(x...)), must(Discrete(x, x))
	before := e.Quantile(0.9) + d.Quantile(0.9)
	x[2] = 100
	if e.Quantile(0.9)+d.Quantile(0.9) != before || x[0] != 1 {
		t.Error("a law shares the slice it was made from")
	}
}

func TestWarningOfCutNormal(t *testing.T) {
	w, ok := WarningOf(must(Normal(2, 2)))
	if !ok || w.Law != "normal(2, 2)" || w.Written != 2 || math.Abs(w.Actual-2.57519994) > 1e-8 {
		t.Errorf("%v %+v", ok, w)
	}
	if s := w.String(); !strings.HasPrefix(s, "normal(2, 2): the mean drawn is 2.575, not 2; ") {
		t.Error(s)
	}
	if w, ok := WarningOf(must(Scaled(must(Normal(2, 2)), 10))); !ok || w.Written != 20 {
		t.Errorf("scaled: %v %+v", ok, w)
	}
	for _, d := range []Dist{must(Normal(10, 2)), must(Normal(10, 4)), must(Exponential(2)), foreign{}} {
		if _, ok := WarningOf(d); ok {
			t.Errorf("%T warns", d)
		}
	}
	if _, ok := WarningOf(must(Normal(10, 5.5))); !ok { // moves the mean by 3 %
		t.Error("normal(10, 5.5) does not warn")
	}
}

// A scaled law draws factor times the value at the same luck.
func TestScaled(t *testing.T) {
	d := must(PERT(8, 10, 16))
	s := must(Scaled(d, 1.3))
	if got := s.Quantile(0.3); got != 1.3*d.Quantile(0.3) {
		t.Errorf("quantile %g", got)
	}
	low, high := s.Bounds()
	if low != 1.3*8 || high != 1.3*16 || relative(s.Mean(), 1.3*32/3) > 1e-15 || relative(s.Variance(), 1.69*d.Variance()) > 1e-15 {
		t.Errorf("bounds %g %g mean %g variance %g", low, high, s.Mean(), s.Variance())
	}
	if s.String() != "1.3 × pert(8, 10, 16)" || must(Scaled(d, 1)) != d {
		t.Error(s)
	}
}
