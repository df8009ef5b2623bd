package exact

import "testing"

// Cobham 1954 with one server; the waits also by Markov chain. Each row keeps
// Kleinrock's conservation law Σρᵢ·Wqᵢ = ρ·Wq of first come first served.
func TestCobham(t *testing.T) {
	for _, row := range []struct {
		rates, means, want [2]float64
		fcfs               float64
	}{
		{[2]float64{.2, .6}, [2]float64{1, 1}, [2]float64{1, 5}, 4},
		{[2]float64{.4, .4}, [2]float64{1, 1}, [2]float64{4. / 3, 20. / 3}, 4},
		{[2]float64{.2, .3}, [2]float64{1, 2}, [2]float64{1.75, 8.75}, 7},
		{[2]float64{.3, .2}, [2]float64{2, 1}, [2]float64{3.5, 17.5}, 7},
	} {
		var classes []Class
		load, kept := 0.0, 0.0
		for i, rate := range row.rates {
			classes = append(classes, Class{rate, WorkOf(row.means[i], 1)})
			load += rate * row.means[i]
			kept += rate * row.means[i] * row.want[i]
		}
		got, err := Cobham(classes)
		if err != nil {
			t.Fatal(err)
		}
		for i := range got {
			near(t, "Wq", got[i], row.want[i], 1e-12)
		}
		near(t, "Σρ·Wq", kept, load*row.fcfs, 1e-12)
	}
}

// Cobham 1954 with several servers.
func TestCobhamSeveralServers(t *testing.T) {
	for _, row := range []struct {
		rates []float64
		c     int
		want  []float64
	}{
		{[]float64{1, .6}, 2, []float64{0.71111111, 3.55555556}},
		{[]float64{.5, .5, 1.4}, 3, []float64{0.25887640, 0.38831461, 1.61797753}},
	} {
		got, err := CobhamMMC(row.rates, 1, row.c)
		if err != nil {
			t.Fatal(err)
		}
		for i := range got {
			near(t, "Wq", got[i], row.want[i], 5e-9)
		}
	}
	if _, err := CobhamMMC([]float64{1, 1.5}, 1, 2); err == nil {
		t.Error("overload and no error")
	}
}

// Failures at any time: Avi-Itzhak and Naor 1963; while working: Gaver 1962.
// All rows also computed as Markov chains.
func TestBreakdowns(t *testing.T) {
	for _, row := range []struct{ rate, mu, xi, eta, l, w, lWork, wWork float64 }{
		{.5, 1, .1, .5, 1.91666667, 3.83333333, 1.75, 3.5},
		{.5, 1, .05, .2, 3, 6, 2.5, 5},
		{.1, .2, .01, .1, 1.42424242, 14.24242424, 1.33333333, 13.33333333},
	} {
		b := Breakdowns{row.xi, WorkOf(1/row.eta, 1)}
		s, err := b.AnyTime(row.rate, 1/row.mu)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "L", s.L, row.l, 5e-9)
		near(t, "W", s.W, row.w, 5e-9)
		s, err = MG1(row.rate, b.WhileWorking(WorkOf(1/row.mu, 1)))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "L", s.L, row.lWork, 5e-9)
		near(t, "W", s.W, row.wWork, 5e-9)
	}
}

// Hopp and Spearman, Factory Physics, chapter 8 (inputs of the first rows from
// memory), and the same formulas at the size of a mold.
func TestEffectiveTimes(t *testing.T) {
	for _, row := range []struct{ mean, scv, up, repair, repairSCV, a, te, ce float64 }{
		{15, .05, 744, 248, 1, .75, 20, 6.25},
		{15, .05, 114, 38, 1, .75, 20, 1},
		{10, .04, 95, 5, 1, .95, 10.526316, .0875},
		{10, .04, 95, 5, 0, .95, 10.526316, .06375},
	} {
		a, w := Outages(row.mean, row.scv, row.up, row.repair, row.repairSCV)
		near(t, "A", a, row.a, 1e-12)
		near(t, "te", w.Mean, row.te, 5e-7)
		near(t, "ce²", w.SCV(), row.ce, 1e-9)
	}
	for _, row := range []struct {
		mean, scv     float64
		n             int
		setUp, upSCV  float64
		te, se2, ceSq float64
	}{
		{1, .0625, 10, 2, .0625, 1.2, .4475, .310764},
		{10, .04, 5, 6, .25, 11.2, 11.56, .092156},
	} {
		w := SetUps(row.mean, row.scv, row.n, row.setUp, row.upSCV)
		near(t, "te", w.Mean, row.te, 1e-12)
		near(t, "σe²", w.Square-w.Mean*w.Mean, row.se2, 1e-9)
		near(t, "ce²", w.SCV(), row.ceSq, 1e-6)
	}
}

// Flatto and Hahn 1984; Nelson and Tantawi 1988. Rows .3 and .5 also by Markov
// chain.
func TestPair(t *testing.T) {
	for _, row := range []struct{ rho, both, waits float64 }{
		{.1, 1.652777778, .541666667}, {.3, 2.089285714, .660714286}, {.5, 2.875, .875}, {.8, 7, 2},
	} {
		both, waits, err := Pair(row.rho, 1)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "R₂", both, row.both, 5e-10)
		near(t, "wait for the mate", waits, row.waits, 5e-10)
	}
}

// E[D₂] = ρ/(1+ρ); others computed by the same kind of recursion in another
// language (the model of Kelton and Law 1985, Operations Research 33:378–396).
func TestFirstWaits(t *testing.T) {
	at := []int{2, 3, 5, 10, 25, 50, 100, 250, 500, 1000}
	for rho, want := range map[float64][10]float64{
		.5: {.333333, .518519, .720622, .907162, .993264, .999837, 1.000000, 1, 1, 1},
		.8: {.444444, .751715, 1.188959, 1.859832, 2.797181, 3.410509, 3.810376, 3.987564, 3.999745, 4.000000},
		.9: {.473684, .816154, 1.329465, 2.195003, 3.667232, 4.998451, 6.399234, 7.991069, 8.703418, 8.961346},
	} {
		waits := FirstWaits(rho, 1000)
		for i, n := range at {
			near(t, "wait", waits[n-1], want[i], 6e-7)
		}
	}
	sum := 0.0
	for _, w := range FirstWaits(.9, 25) { // arrivals at rate 1, work of 0.9 h
		sum += .9 * w
	}
	near(t, "mean of the first 25 waits", sum/25, 2.124489, 5e-7)
}
