package draw

import (
	"math"
	"slices"
	"testing"
)

// allLaws is every law at ordinary and extreme parameters.
func allLaws() []Dist {
	laws := []Dist{
		must(Constant(0)), must(Constant(24)),
		must(Uniform(0, 1)), must(Uniform(8, 16)), must(Uniform(0.1, 0.3)),
		must(Triangular(0, 0, 1)), must(Triangular(0, 1, 1)),
		must(PERT(0, 0, 1)), must(PERT(0, 1, 1)), must(PERT(8, 8.001, 16)), must(PERT(0.1, 0.2, 0.7)),
		must(Normal(10, 2)), must(Normal(0, 1)), must(Normal(1, 5)), must(Normal(100, 1)),
		must(Empirical(1, 2)), must(Empirical(1, 1, 1, 4, 4, 9)), must(Empirical(0.1, 0.3, 0.7)),
		must(Discrete([]float64{1, 2, 5}, []float64{5, 3, 2})),
		must(Discrete([]float64{3, 1, 2}, []float64{1, 1e-9, 1})),
		must(Exponential(0)), must(WeibullShape(0.35, 1)), must(WeibullShape(1000, 1)),
		must(Erlang(1, 2)), must(Erlang(1_000_000, 2)),
		must(Hyperexponential(1, 1.0001)), must(Hyperexponential(3, 4)), must(Hyperexponential(1, 25)),
		must(Scaled(must(PERT(8, 10, 16)), 1.3)), must(Scaled(must(Normal(2, 2)), 0.1)),
		must(Scaled(must(Scaled(must(Empirical(1, 5, 6)), 2)), 3)),
	}
	for _, cv := range []float64{0, minCV, 0.02, 0.3, 1, 2, maxCV} {
		laws = append(laws, must(Lognormal(10, cv)), must(Gamma(10, cv)), must(Weibull(10, cv)))
	}
	for _, k := range knownLaws() {
		laws = append(laws, k.d)
	}
	return laws
}

// grid is a rising list of probabilities, from far below the reach of Key.U to
// the largest number below 1, dense in between and at the ends of the tables.
func grid() []float64 {
	u := []float64{1e-300, 1e-100, 1e-30, 1e-17, 1e-12}
	for e := -36; e < -1; e++ {
		for m := range 16 {
			u = append(u, math.Ldexp(1+float64(m)/16, e))
		}
	}
	n := len(u)
	for i := range 20_000 {
		u = append(u, (float64(i)+0.5)/20_000)
	}
	for i := range n {
		u = append(u, 1-u[i])
	}
	u = slices.DeleteFunc(u, func(x float64) bool { return x >= 1 })
	u = append(u, math.Nextafter(1, 0))
	slices.Sort(u)
	return u
}

func TestQuantilesRiseWithinBounds(t *testing.T) {
	points := grid()
	for _, d := range allLaws() {
		low, high := d.Bounds()
		before := low
		for _, u := range points {
			x := d.Quantile(u)
			if !(x >= low && x <= high) || math.IsInf(x, 0) {
				t.Errorf("%s: quantile %g is %g, bounds %g and %g", d, u, x, low, high)
			}
			// Rounding of the last digit or two is all that may fall.
			if x < before*(1-1e-15) {
				t.Errorf("%s: falls to %.17g from %.17g at %g", d, x, before, u)
			}
			before = x
		}
	}
}

func TestTailsAreOrdered(t *testing.T) {
	for _, d := range allLaws() {
		low, mid, high := d.Quantile(1e-12), d.Quantile(0.5), d.Quantile(1-1e-12)
		if !(low <= mid && mid <= high) || math.IsInf(high, 0) || d.Variance() > 0 && low == high {
			t.Errorf("%s: %g, %g, %g", d, low, mid, high)
		}
	}
}

func TestCompiledDrawsAreTheSame(t *testing.T) {
	points := grid()
	for _, d := range allLaws() {
		s := Compile(d)
		for _, u := range points {
			if a, b := s.Quantile(u), d.Quantile(u); a != b {
				t.Fatalf("%s: compiled %.17g, law %.17g at %g", d, a, b, u)
			}
		}
	}
}

// foreign is a Dist that this package does not know.
type foreign struct{ Dist }

func (foreign) Quantile(u float64) float64 { return 7 + u }

func TestCompileKeepsForeignLaws(t *testing.T) {
	s := Compile(foreign{must(Constant(1))})
	if got := s.Quantile(0.5); got != 7.5 {
		t.Errorf("got %g", got)
	}
	var zero Sampler
	if got := zero.Quantile(0.5); got != 0 {
		t.Errorf("zero Sampler gives %g", got)
	}
}

func TestDrawsDoNotAllocate(t *testing.T) {
	sum := 0.0
	for _, d := range allLaws() {
		s := Compile(d)
		if n := testing.AllocsPerRun(10, func() { sum += s.Quantile(0.3) + s.Quantile(0.9) }); n != 0 {
			t.Errorf("%s: %v allocations", d, n)
		}
	}
}

// Mean and variance against the integral of the quantile function, by the
// midpoint rule with steps that shrink towards both ends. 1 - cos is such a map.
func TestMomentsAreThoseOfTheQuantiles(t *testing.T) {
	for _, d := range allLaws() {
		mean, square := 0.0, 0.0
		for i := range 20_000 {
			u, weight := crowdedEnds(i, 20_000)
			x := d.Quantile(u) - d.Mean()
			mean += weight * x
			square += weight * x * x
		}
		if math.Abs(mean) > 1e-4*d.Mean() {
			t.Errorf("%s: mean %g misses the integral by %g", d, d.Mean(), mean)
		}
		if math.Abs(square-d.Variance()) > 2e-3*d.Variance() {
			t.Errorf("%s: variance %g, integral %g", d, d.Variance(), square)
		}
	}
}

// crowdedEnds is the i-th of n points of u = t³(10 - 15t + 6t²) and its weight.
func crowdedEnds(i, n int) (u, weight float64) {
	t := (float64(i) + 0.5) / float64(n)
	u = t * t * t * (10 - 15*t + 6*t*t)
	return u, 30 * t * t * (1 - t) * (1 - t) / float64(n)
}

// The distribution function of gonum must agree that the quantile at u is right
// but for a relative error: of rounding for closed forms, of the table else.
func TestQuantilesInvertTheDistribution(t *testing.T) {
	for _, k := range knownLaws() {
		delta, digit := 1e-13, 0.0
		switch Compile(k.d).kind {
		case tabled:
			delta = 2 * tableError
		case other: // the cut normal law adds its mean, and so keeps its last digit
			digit = 4e-16 * k.mean
		}
		for _, u := range grid() {
			if u < 1e-30 {
				continue
			}
			x := k.d.Quantile(u)
			x0, x1 := x*(1-delta)-digit, x*(1+delta)+digit
			below, above, want, slack := k.cdf(x0), k.cdf(x1), u, 1e-11*u
			if u > 0.5 {
				below, above, want = k.survival(x1), k.survival(x0), 1-u
				slack = 1e-11*want + 4e-16 // some of gonum's are 1 - CDF
			}
			if digit > 0 {
				slack += 2e-16 // the cut law's function here is a difference
			}
			if below > want+slack || above < want-slack {
				t.Errorf("%s: quantile at %g is %.12g, where gonum has %.12g to %.12g", k.name, u, x, below, above)
				break
			}
		}
	}
}
