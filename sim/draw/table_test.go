package draw

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mathext"
	"gonum.org/v1/gonum/stat/distuv"
)

// tableWorst is the largest relative error of a table's values over random u of
// both tails, in the table and beyond, where the value is not too tiny. miss
// tells the relative error of y as the quantile of tail probability v.
func tableWorst(s shape, missLower, missUpper func(y, v float64) float64) (worst, at float64) {
	t, k := newTable(s), Root(5, 0)
	for n := range uint64(20_000) {
		v := k.U(n) / 2
		if n%2 == 0 {
			v = math.Exp2(-1 - 20*k.U(n)) // even over the octaves and beyond
		}
		low, high := t.at(v), t.at(1-v)
		e := max(missLower(low, v), missUpper(high, v))
		if low < tinyValue {
			e = missUpper(high, v)
		}
		if e > worst || math.IsNaN(e) {
			worst, at = e, v
		}
	}
	return worst, at
}

// Gamma tables against the distribution function of gonum: a probability missed
// by d is a value missed by d over the density. (Its inverse is not exact enough
// for small shapes.)
func TestGammaTables(t *testing.T) {
	for _, cv := range []float64{minCV, .01, .1, .3, .5, .8, 1.2, math.Sqrt2, 2, 3, 4, maxCV} {
		k := 1 / (cv * cv)
		logGamma, _ := math.Lgamma(k)
		law := distuv.Gamma{Alpha: k, Beta: k}
		worst, at := tableWorst(&gammaShape{k, logGamma},
			func(y, p float64) float64 { return math.Abs(mathext.GammaIncReg(k, k*y)-p) / law.Prob(y) / y },
			func(y, q float64) float64 { return math.Abs(mathext.GammaIncRegComp(k, k*y)-q) / law.Prob(y) / y })
		if !(worst <= 1e-6) {
			t.Errorf("cv %g: relative error %.2g at tail probability %g", cv, worst, at)
		}
		t.Logf("cv %g: %.1e", cv, worst)
	}
}

// The exact quantiles behind the tables against gonum's inverse where that holds,
// and its distribution function elsewhere, down to the smallest u of any use.
func TestGammaTails(t *testing.T) {
	for _, k := range []float64{.04, .1, .25, .5, 1, 1.7, 4, 20, 99, 101, 1e3, 1e6} {
		logGamma, _ := math.Lgamma(k)
		g := &gammaShape{k, logGamma}
		for _, p := range []float64{1e-100, 1e-30, 1e-17, 1e-12, 1e-6, .1, .5, .9, 1 - 1e-9} {
			y := g.lower(p)
			if got := mathext.GammaIncReg(k, k*y); y > 1e-300 && relative(got, p) > 1e-10 {
				t.Errorf("k %g: %g is reached with probability %g, not %g", k, y, got, p)
			}
		}
		for _, q := range []float64{1e-16, 1e-12, 1e-6, .1, .5} {
			y := g.upper(q)
			if got := mathext.GammaIncRegComp(k, k*y); relative(got, q) > 1e-10 {
				t.Errorf("k %g: %g is exceeded with probability %g, not %g", k, y, got, q)
			}
		}
	}
}

func TestPERTTables(t *testing.T) {
	for _, alpha := range []float64{1, 1.0001, 1.2, 2, 7. / 3, 3, 4, 4.9, 5} {
		beta := 6 - alpha
		worst, at := tableWorst(newBetaShape(alpha, beta),
			func(y, p float64) float64 { return relative(y, mathext.InvRegIncBeta(alpha, beta, p)) },
			func(y, q float64) float64 { return relative(y, 1-mathext.InvRegIncBeta(beta, alpha, q)) })
		t.Logf("alpha %g: %.1e", alpha, worst)
		if !(worst <= 1e-6) {
			t.Errorf("alpha %g: relative error %.2g at tail probability %g", alpha, worst, at)
		}
	}
}

// Exact quantiles of the mix by halving intervals on its distribution function.
func TestHyperexponentialTables(t *testing.T) {
	for _, scv := range []float64{1.0001, 1.5, 4, 25} {
		m := newMixShape(scv)
		below := func(y float64) float64 { return -m.p1*math.Expm1(-2*m.p1*y) - m.p2*math.Expm1(-2*m.p2*y) }
		beyond := func(y float64) float64 { return m.p1*math.Exp(-2*m.p1*y) + m.p2*math.Exp(-2*m.p2*y) }
		worst, at := tableWorst(m,
			func(y, p float64) float64 { return relative(y, halve(func(y float64) bool { return below(y) < p })) },
			func(y, q float64) float64 { return relative(y, halve(func(y float64) bool { return beyond(y) > q })) })
		t.Logf("scv %g: %.1e", scv, worst)
		if !(worst <= 1e-6) {
			t.Errorf("scv %g: relative error %.2g at tail probability %g", scv, worst, at)
		}
	}
}

// halve finds where small turns false on a logarithmic scale.
func halve(small func(y float64) bool) float64 {
	low, high := math.Log(1e-14), math.Log(1e4)
	for range 70 {
		if middle := (low + high) / 2; small(math.Exp(middle)) {
			low = middle
		} else {
			high = middle
		}
	}
	return math.Exp((low + high) / 2)
}

// At the joints of cells, octaves and tails the table gives the exact quantile
// or misses it by no more than the last digits.
func TestTableJoints(t *testing.T) {
	for _, s := range []shape{newBetaShape(2, 4), newBetaShape(1, 5), newMixShape(4), &gammaShape{k: 4, logGamma: math.Log(6)}} {
		table := newTable(s)
		for _, v := range []float64{tail, tail * 1.125, tail * 2, 0.0625, 0.25, 0.46875} {
			for _, u := range []float64{v, math.Nextafter(v, 0), 1 - v, 1 - v - 0x1p-53} {
				if got, want := table.at(u), table.exact(u); relative(got, want) > 1e-13 {
					t.Errorf("%T at %.17g: %.17g, exact %.17g", s, u, got, want)
				}
			}
		}
	}
}
