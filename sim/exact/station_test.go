package exact

import "testing"

// The closed forms of M/M/1: L = ρ/(1−ρ), W = 1/(μ−λ); Gross and Harris,
// chapter 2. Spreads: Whitt 1989, Management Science 35; Daley 1968.
func TestOneServer(t *testing.T) {
	for _, row := range []struct{ rate, mean, l, lq, w, wq, spreadL, spreadWq float64 }{
		{0.5, 1, 1, 0.5, 2, 1, 24, 29},
		{0.8, 1, 4, 3.2, 5, 4, 1800, 1976},
		{0.9, 1, 9, 8.1, 10, 9, 34200, 35901},
		{1, 0.9, 9, 8.1, 9, 8.1, 30780, 29079.81},
	} {
		s, err := MMC(row.rate, row.mean, 1)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "L", s.L, row.l, 1e-12)
		near(t, "Lq", s.Lq, row.lq, 1e-12)
		near(t, "W", s.W, row.w, 1e-12)
		near(t, "Wq", s.Wq, row.wq, 1e-12)
		near(t, "spread of L", MM1Spread(s.Load, row.mean), row.spreadL, 1e-6)
		near(t, "spread of Wq", MM1WaitSpread(s.Load, row.mean), row.spreadWq, 1e-6)
	}
}

// Printed table of 1 % blocking, offered loads of three digits (from memory).
func TestErlangB(t *testing.T) {
	for _, row := range []struct {
		c       int
		a, want float64
	}{{1, 0.0101, .009999}, {2, 0.153, .010049}, {3, 0.455, .009973}, {4, 0.869, .009985}, {5, 1.36, .009979}, {10, 4.46, .009985}, {20, 12, .009796}} {
		near(t, "B", ErlangB(row.c, row.a), row.want, 5e-7)
	}
	if ErlangB(0, 3) != 1 {
		t.Error("without servers all are lost")
	}
}

// Computed with the GNU Octave queueing package 1.2.7 (erlangc) and by the
// recursion in another language.
func TestErlangC(t *testing.T) {
	servers := []int{1, 2, 3, 4, 5, 6, 8, 10}
	for rho, row := range map[float64][8]float64{
		0.1:  {0.100000, 0.018182, 0.003704, 0.000794, 0.000176, 0.000040, 0.000002, 0.000000},
		0.2:  {0.200000, 0.066667, 0.024658, 0.009581, 0.003831, 0.001561, 0.000269, 0.000048},
		0.3:  {0.300000, 0.138462, 0.070029, 0.037050, 0.020139, 0.011146, 0.003537, 0.001157},
		0.4:  {0.400000, 0.228571, 0.141176, 0.090700, 0.059701, 0.039953, 0.018495, 0.008815},
		0.5:  {0.500000, 0.333333, 0.236842, 0.173913, 0.130371, 0.099143, 0.059044, 0.036105},
		0.6:  {0.600000, 0.450000, 0.354745, 0.287043, 0.236152, 0.196566, 0.139542, 0.101299},
		0.7:  {0.700000, 0.576471, 0.492344, 0.428654, 0.377838, 0.335978, 0.270603, 0.221731},
		0.8:  {0.800000, 0.711111, 0.647191, 0.596432, 0.554113, 0.517772, 0.457645, 0.409180},
		0.9:  {0.900000, 0.852632, 0.817061, 0.787753, 0.762493, 0.740126, 0.701533, 0.668732},
		0.95: {0.950000, 0.925641, 0.907009, 0.891419, 0.877799, 0.865589, 0.844169, 0.825586},
	} {
		for i, c := range servers {
			near(t, "C", ErlangC(c, rho*float64(c)), row[i], 5.1e-7)
		}
	}
	near(t, "C(1.6, 2)", ErlangC(2, 1.6), .71111111, 5e-9)
	near(t, "C(2.7, 3)", ErlangC(3, 2.7), .81706102, 5e-9)
	near(t, "C(4.5, 5)", ErlangC(5, 4.5), .76249322, 5e-9)
}

// First row: the eye clinic of Gross and Harris, exact fractions 1/9, 8/9,
// 26/9, 4/27, 13/27. Emergency room of Hillier and Lieberman (from memory).
// Others computed with the GNU Octave queueing package 1.2.7 (qsmmm).
func TestSeveralServers(t *testing.T) {
	for _, row := range []struct {
		rate, mean               float64
		c                        int
		p0, wait, lq, l, wq, w   float64
		tolerance, waitTolerance float64
	}{
		{6, 1. / 3, 3, 1. / 9, 4. / 9, 8. / 9, 26. / 9, 4. / 27, 13. / 27, 1e-12, 1e-12},
		{2, 1. / 3, 1, 1. / 3, 2. / 3, 4. / 3, 2, 2. / 3, 1, 1e-12, 1e-12},
		{2, 1. / 3, 2, .5, 1. / 6, 1. / 12, .75, 1. / 24, .375, 1e-12, 1e-12},
		{1.6, 1, 2, 0.11111111, 0.71111111, 2.84444444, 4.44444444, 1.77777778, 2.77777778, 5e-9, 5e-9},
		{2.4, 1, 3, 0.05617978, 0.64719101, 2.58876404, 4.98876404, 1.07865169, 2.07865169, 5e-9, 5e-9},
		{8, 1, 10, 0.00027657, 0.40918015, 1.63672060, 9.63672060, 0.20459008, 1.20459008, 5e-9, 5e-9},
		{0.2, 8, 2, 0.11111111, 0.71111111, 2.84444444, 4.44444444, 14.22222222, 22.22222222, 5e-9, 5e-9},
	} {
		s, err := MMC(row.rate, row.mean, row.c)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "P0", s.Empty, row.p0, row.tolerance)
		near(t, "P(wait)", s.Wait, row.wait, row.waitTolerance)
		near(t, "Lq", s.Lq, row.lq, row.tolerance)
		near(t, "L", s.L, row.l, row.tolerance)
		near(t, "Wq", s.Wq, row.wq, row.tolerance)
		near(t, "W", s.W, row.w, row.tolerance)
	}
}

// Closed form of Pollaczek and Khinchine; computed with the GNU Octave queueing
// package 1.2.7 (qsmg1).
func TestAnyLaw(t *testing.T) {
	for _, row := range []struct {
		scv   float64
		wq, l [3]float64
	}{
		{0, [3]float64{.5, 2, 4.5}, [3]float64{.75, 2.4, 4.95}},
		{1. / 24, [3]float64{.52083333, 2.08333333, 4.6875}, [3]float64{.76041667, 2.46666667, 5.11875}},
		{.25, [3]float64{.625, 2.5, 5.625}, [3]float64{.8125, 2.8, 5.9625}},
		{1. / 3, [3]float64{.66666667, 2.66666667, 6}, [3]float64{.83333333, 2.93333333, 6.3}},
		{.5, [3]float64{.75, 3, 6.75}, [3]float64{.875, 3.2, 6.975}},
		{1, [3]float64{1, 4, 9}, [3]float64{1, 4, 9}},
		{4, [3]float64{2.5, 10, 22.5}, [3]float64{1.75, 8.8, 21.15}},
	} {
		for i, rate := range []float64{.5, .8, .9} {
			s, err := MG1(rate, WorkOf(1, row.scv))
			if err != nil {
				t.Fatal(err)
			}
			near(t, "Wq", s.Wq, row.wq[i], 5e-9)
			near(t, "L", s.L, row.l[i], 5e-9)
		}
	}
}

func TestOverloadIsAnError(t *testing.T) {
	if _, err := MMC(3, 1, 3); err == nil {
		t.Error("three servers, three arrivals an hour of an hour each: no steady state, no error")
	}
	if _, err := MG1(1.2, WorkOf(1, 0)); err == nil {
		t.Error("load 1.2 and no error")
	}
	if _, err := MMC(1, -1, 1); err == nil {
		t.Error("work of negative length and no error")
	}
	if _, err := MMC(1, 1, 0); err == nil {
		t.Error("no server and no error")
	}
}
