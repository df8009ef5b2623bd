package stats

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// Constants by independent quadrature with other software; the rows .90/20,
// .90/40 and .95/20 agree with the table in Law, Simulation Modeling and
// Analysis, section 10.4 (from memory, three decimals).
func TestDudewiczDalalTable(t *testing.T) {
	for _, row := range []struct {
		p    float64
		n0   int
		want []float64 // k = 2 … 10
	}{
		{.90, 20, []float64{1.8957, 2.3423, 2.5834, 2.7471, 2.8704, 2.9690, 3.0509, 3.1209, 3.1820}},
		{.90, 40, []float64{1.8519, 2.2831, 2.5136, 2.6689, 2.7851, 2.8775, 2.9540, 3.0190, 3.0756}},
		{.95, 20, []float64{2.4525, 2.8716, 3.1011, 3.2580, 3.3768, 3.4720, 3.5514, 3.6194, 3.6788}},
		{.95, 40, []float64{2.3856, 2.7858, 3.0026, 3.1497, 3.2603, 3.3486, 3.4218, 3.4842, 3.5386}},
	} {
		for i, want := range row.want {
			h, err := DudewiczDalalH(row.p, row.n0, i+2)
			if err != nil {
				t.Fatal(err)
			}
			within(t, fmt.Sprint("h₁ ", row.p, row.n0, i+2), h, want, 5.1e-5)
		}
	}
	for _, row := range []struct {
		variance float64
		n        int
		first    float64
	}{{2, 21, 1.085607}, {4.5, 34, .605267}, {9, 68, .309886}} {
		h, _ := DudewiczDalalH(.9, 20, 5)
		n, first := DudewiczDalalSize(h, row.variance, 1, 20)
		if n != row.n {
			t.Errorf("variance %v needs %d, want %d", row.variance, n, row.n)
		}
		within(t, "weight", first, row.first, 5.1e-7)
	}
}

// The same for Rinott's constant; with two alternatives it is that of Dudewicz
// and Dalal. The entry .95, 10, 6 is 3.858555 to seven digits by a third program
// (Gauss quadrature in x and y), where another list rounds to 3.8585.
func TestRinottTable(t *testing.T) {
	ks := []int{2, 3, 4, 5, 6, 8, 10, 20}
	for _, row := range []struct {
		p    float64
		n0   int
		want []float64
	}{
		{.90, 10, []float64{1.9986, 2.5875, 2.9126, 3.1367, 3.3073, 3.5601, 3.7459, 4.2865}},
		{.90, 20, []float64{1.8957, 2.4312, 2.7201, 2.9164, 3.0641, 3.2804, 3.4374, 3.8843}},
		{.90, 50, []float64{1.8437, 2.3541, 2.6265, 2.8102, 2.9478, 3.1480, 3.2924, 3.6990}},
		{.95, 10, []float64{2.6141, 3.1657, 3.4763, 3.6926, 3.8586, 4.1062, 4.2895, 4.8288}},
		{.95, 20, []float64{2.4525, 2.9372, 3.2032, 3.3854, 3.5235, 3.7268, 3.8753, 4.3017}},
		{.95, 50, []float64{2.3731, 2.8279, 3.0744, 3.2420, 3.3682, 3.5529, 3.6868, 4.0670}},
	} {
		for i, want := range row.want {
			h, err := RinottH(row.p, row.n0, ks[i])
			if err != nil {
				t.Fatal(err)
			}
			within(t, fmt.Sprint("h ", row.p, row.n0, ks[i]), h, want, 5.1e-5)
		}
		rinott, _ := RinottH(row.p, row.n0, 2)
		dudewicz, _ := DudewiczDalalH(row.p, row.n0, 2)
		within(t, "two alternatives", rinott, dudewicz, 1e-9)
	}
	h, _ := RinottH(.95, 20, 5)
	for _, row := range [][2]float64{{2, 23}, {4.5, 52}, {9, 104}, {.1, 20}} {
		if n := RinottSize(h, row[0], 1, 20); n != int(row[1]) {
			t.Errorf("variance %v needs %d, want %v", row[0], n, row[1])
		}
	}
}

// With two first replications Student's t is Cauchy's distribution, and the sum
// of two is Cauchy's of twice the width: h = 2 tan(π(p-1/2)).
func TestSelectionOfTwoInClosedForm(t *testing.T) {
	for _, p := range []float64{.6, .9, .99} {
		want := 2 * math.Tan(math.Pi*(p-.5))
		dudewicz, _ := DudewiczDalalH(p, 2, 2)
		rinott, _ := RinottH(p, 2, 2)
		within(t, "Dudewicz and Dalal", dudewicz, want, 1e-8*want)
		within(t, "Rinott", rinott, want, 1e-8*want)
		known, _ := BechhoferH(p, 2)
		within(t, "Bechhofer", known, math.Sqrt2*NormalQuantile(p), 1e-10)
	}
}

// Bechhofer's table I, four decimals, k = 2 … 5 and 10.
func TestBechhoferTable(t *testing.T) {
	ks := []int{2, 3, 4, 5, 10}
	for _, row := range []struct {
		p    float64
		want []float64
	}{
		{.95, []float64{2.3262, 2.7101, 2.9162, 3.0552, 3.4182}},
		{.90, []float64{1.8124, 2.2302, 2.4516, 2.5997, 2.9829}},
	} {
		for i, want := range row.want {
			h, err := BechhoferH(row.p, ks[i])
			if err != nil {
				t.Fatal(err)
			}
			within(t, fmt.Sprint("h ", row.p, ks[i]), h, want, 5.1e-5)
		}
	}
}

func TestSelectionRefuses(t *testing.T) {
	for _, row := range []struct {
		p     float64
		n0, k int
	}{{.9, 1, 3}, {.9, 10, 1}, {.5, 10, 2}, {1, 10, 3}, {math.NaN(), 10, 3}} {
		for name, f := range map[string]func(float64, int, int) (float64, error){"Rinott": RinottH, "Dudewicz and Dalal": DudewiczDalalH} {
			if h, err := f(row.p, row.n0, row.k); err == nil {
				t.Errorf("%s of %+v is %v", name, row, h)
			}
		}
		if s, err := KimNelson(1-row.p, row.n0, row.k); err == nil {
			t.Errorf("Kim and Nelson of %+v is %+v", row, s)
		}
	}
}

// Constants from the formula, by other software.
func TestKimNelsonTable(t *testing.T) {
	ks := []int{2, 3, 5, 10}
	for _, row := range []struct {
		n0      int
		eta, h2 []float64
	}{
		{5, []float64{1.081139, 1.736068, 2.662278, 4.243416}, []float64{8.6491, 13.8885, 21.2982, 33.9473}},
		{10, []float64{.334050, .472944, .634967, .859083}, []float64{6.0129, 8.5130, 11.4294, 15.4635}},
		{20, []float64{.137137, .185363, .237238, .302934}, []float64{5.2112, 7.0438, 9.0151, 11.5115}},
	} {
		for i, k := range ks {
			s, err := KimNelson(.05, row.n0, k)
			if err != nil {
				t.Fatal(err)
			}
			within(t, "η", s.Eta, row.eta[i], 5.1e-7)
			within(t, "h²", s.H2, row.h2[i], 5.1e-5)
		}
	}
}

// The promise itself: with the best ahead by just the lead that matters and
// all others level, it is chosen at least as often as promised.
func TestChoicesKeepTheirPromise(t *testing.T) {
	const experiments, k, n0, delta = 1000, 4, 10, 1.0
	rng := rand.New(rand.NewPCG(5, 29))
	h, _ := RinottH(.9, n0, k)
	rule, _ := KimNelson(.1, n0, k)
	rinott, screened := 0, 0
	for range experiments {
		if chooseRinott(rng, h, n0, k, delta) == 0 {
			rinott++
		}
		if chooseScreened(rng, rule, n0, k, delta) == 0 {
			screened++
		}
	}
	slack := 4 * math.Sqrt(.9*.1/experiments)
	for name, n := range map[string]int{"Rinott": rinott, "Kim and Nelson": screened} {
		if float64(n)/experiments < .9-slack {
			t.Errorf("%s: best chosen %d times in %d, promised 9 in 10", name, n, experiments)
		}
	}
}

// draw gives one value of alternative i; 0 leads by delta, spreads differ.
func draw(rng *rand.Rand, i int, delta float64) float64 {
	x := (1 + .5*float64(i)) * rng.NormFloat64()
	if i == 0 {
		x += delta
	}
	return x
}

func chooseRinott(rng *rand.Rand, h float64, n0, k int, delta float64) int {
	means := make([]float64, k)
	for i := range means {
		var xs []float64
		for len(xs) < n0 || len(xs) < RinottSize(h, Variance(xs[:n0]), delta, n0) {
			xs = append(xs, draw(rng, i, delta))
		}
		means[i] = Mean(xs)
	}
	return bestOf(means, true)
}

func chooseScreened(rng *rand.Rand, rule Screening, n0, k int, delta float64) int {
	xs, sums, left := make([][]float64, k), make([]float64, k), make([]int, k)
	for i := range xs {
		left[i] = i
		for range n0 {
			xs[i] = append(xs[i], draw(rng, i, delta))
		}
		sums[i] = Sum(xs[i])
	}
	var spread [8][8]float64
	for i := range xs {
		for j := range i {
			spread[i][j] = Paired(xs[i], xs[j], .9).SD
			spread[j][i] = spread[i][j]
		}
	}
	for r := n0; len(left) > 1; r++ {
		var stay []int
		for _, i := range left {
			ok := true
			for _, j := range left {
				behind := (sums[j] - sums[i]) / float64(r)
				ok = ok && (i == j || behind <= rule.Lag(spread[i][j]*spread[i][j], delta, r))
			}
			if ok {
				stay = append(stay, i)
			}
		}
		left = stay
		for _, i := range left {
			sums[i] += draw(rng, i, delta)
		}
	}
	return left[0]
}

// Worked from the formulas of Chen et al. (2000) by other software.
func TestAllocate(t *testing.T) {
	for _, row := range []struct {
		means, sds []float64
		budget     float64
		want       []float64
	}{
		{[]float64{1, 2, 3, 4, 5}, []float64{1, 1, 1, 1, 1}, 1000, []float64{421.823, 406.134, 101.534, 45.126, 25.383}},
		{[]float64{1.2, 2.1, 3.9, 4.2, 5.3}, []float64{3.3, 4.7, 3.5, 4.9, 6.0}, 100, []float64{36.413, 51.364, 3.165, 5.025, 4.034}},
		{[]float64{10, 11, 12}, []float64{2, 3, 1}, 60, []float64{23.656, 35.362, .982}},
	} {
		least, err := Allocate(row.means, row.sds, row.budget, false)
		if err != nil {
			t.Fatal(err)
		}
		negative := make([]float64, len(row.means))
		for i, m := range row.means {
			negative[i] = 7 - m
		}
		greatest, _ := Allocate(negative, row.sds, row.budget, true)
		for i, want := range row.want {
			within(t, "share", least[i], want, 5.1e-4)
			within(t, "share, greatest", greatest[i], want, 5.1e-4)
		}
		within(t, "budget", Sum(least), row.budget, 1e-9)
	}
	for _, bad := range [][2][]float64{
		{{1}, {1}}, {{1, 2}, {1}}, {{1, 1, 3}, {1, 1, 1}}, {{1, 2}, {0, 0}}, {{1, 2}, {1, math.NaN()}},
	} {
		if shares, err := Allocate(bad[0], bad[1], 100, false); err == nil {
			t.Errorf("%v shared as %v", bad, shares)
		}
	}
}
