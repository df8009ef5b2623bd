package stats

import (
	"math"
	"math/big"
	"os"
	"strconv"
	"strings"
	"testing"
)

// Certified values of the NIST Statistical Reference Datasets, univariate
// (www.itl.nist.gov/div898/strd/univ). The numerical accuracy sets are made by
// their rule, Michelso is printed in full, the others are in testdata/nist.
func TestNISTUnivariate(t *testing.T) {
	for _, set := range []struct {
		name           string
		xs             []float64
		mean, sd, lag1 float64
		digits         float64 // relative rounding of the data against their spread
	}{
		{"NumAcc1", []float64{10000001, 10000003, 10000002}, 10000002, 1, -.5, 0},
		{"NumAcc2", numAcc(1), 1.2, .1, -.999, rounding(1)},
		{"NumAcc3", numAcc(1000000), 1000000.2, .1, -.999, rounding(1000000)},
		{"NumAcc4", numAcc(10000000), 10000000.2, .1, -.999, rounding(10000000)},
		{"Michelso", michelson(), 299.852400000000, 0.0790105478190518, 0.535199668621283, rounding(299) * 3},
		{"Lew", nistSet(t, "lew"), -177.435000000000, 277.332168044316, -0.307304800605679, 0},
		{"Lottery", nistSet(t, "lottery"), 518.958715596330, 291.699727470969, -0.120948622967393, 0},
		{"Mavro", nistSet(t, "mavro"), 2.00185600000000, 0.000429123454003053, 0.937989183438248, rounding(2) * .1 / .000429},
		{"PiDigits", nistDigits(t), 4.53480000000000, 2.86733906028871, -0.00355099287237972, 0},
	} {
		t.Run(set.name, func(t *testing.T) {
			within(t, "mean", Mean(set.xs), set.mean, 5e-15*math.Abs(set.mean))
			within(t, "sd", SD(set.xs), set.sd, (5e-15+set.digits)*set.sd)
			within(t, "lag-1 correlation", Lag1(set.xs), set.lag1, 5e-15+4*set.digits)
		})
	}
}

// nistSet reads a set of testdata/nist.
func nistSet(t *testing.T, name string) []float64 {
	t.Helper()
	data, err := os.ReadFile("testdata/nist/" + name + ".txt")
	if err != nil {
		t.Fatal(err)
	}
	_, numbers, _ := strings.Cut(string(data), "\n")
	var xs []float64
	for _, word := range strings.Fields(numbers) {
		x, err := strconv.ParseFloat(word, 64)
		if err != nil {
			t.Fatal(err)
		}
		xs = append(xs, x)
	}
	return xs
}

// nistDigits reads PiDigits, whose numbers are single digits.
func nistDigits(t *testing.T) []float64 {
	t.Helper()
	data, err := os.ReadFile("testdata/nist/pidigits.txt")
	if err != nil {
		t.Fatal(err)
	}
	_, digits, _ := strings.Cut(string(data), "\n")
	var xs []float64
	for _, c := range digits {
		if c >= '0' && c <= '9' {
			xs = append(xs, float64(c-'0'))
		}
	}
	return xs
}

// rounding is half the last bit of a number of about this size, against the
// spread of 0.1 that the sets have: what the data themselves are off by. For
// NumAcc4 it leaves eight digits, for any algorithm in this arithmetic.
func rounding(size float64) float64 {
	return (math.Nextafter(size+.5, math.Inf(1)) - (size + .5)) / 2 / .1
}

// The same sets against exact arithmetic on the very numbers stored: the
// algorithm itself loses next to nothing.
func TestVarianceAgainstExactArithmetic(t *testing.T) {
	for _, base := range []float64{1, 1e6, 1e7, 1e9} {
		xs := numAcc(base)
		want := exactVariance(xs)
		within(t, "variance", Variance(xs), want, 2e-15*want)
	}
}

func exactVariance(xs []float64) float64 {
	total, squares := new(big.Rat), new(big.Rat)
	for _, x := range xs {
		r := new(big.Rat).SetFloat64(x)
		total.Add(total, r)
		squares.Add(squares, new(big.Rat).Mul(r, r))
	}
	n := new(big.Rat).SetInt64(int64(len(xs)))
	total.Mul(total, total)
	squares.Sub(squares, total.Quo(total, n))
	out, _ := squares.Quo(squares, new(big.Rat).SetInt64(int64(len(xs)-1))).Float64()
	return out
}

// numAcc is the rule of NumAcc2, 3 and 4: base + 0.2, then base + 0.1 and base
// + 0.3, 500 times.
func numAcc(base float64) []float64 {
	xs := []float64{base + .2}
	for range 500 {
		xs = append(xs, base+.1, base+.3)
	}
	return xs
}

// michelson gives Michelson's 100 measurements of the speed of light of 1879,
// in Mm/s (Stigler 1977, Annals of Statistics 5:1055–1098, table 6; the set
// Michelso). The numbers are from memory; the certified mean, spread and lag-1
// correlation confirm them and their order.
func michelson() []float64 {
	xs := []float64{
		850, 740, 900, 1070, 930, 850, 950, 980, 980, 880, 1000, 980, 930, 650, 760, 810, 1000, 1000, 960, 960,
		960, 940, 960, 940, 880, 800, 850, 880, 900, 840, 830, 790, 810, 880, 880, 830, 800, 790, 760, 800,
		880, 880, 880, 860, 720, 720, 620, 860, 970, 950, 880, 910, 850, 870, 840, 840, 850, 840, 840, 840,
		890, 810, 810, 820, 800, 770, 760, 740, 750, 760, 910, 920, 890, 860, 880, 720, 840, 850, 850, 780,
		890, 840, 780, 810, 760, 810, 790, 810, 820, 850, 870, 870, 810, 740, 810, 940, 950, 800, 810, 870,
	}
	for i, x := range xs {
		xs[i] = (299000 + x) / 1000
	}
	return xs
}

func within(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.17g, want %.17g ± %.2g (off by %.2g)", what, got, want, tolerance, got-want)
	}
}
