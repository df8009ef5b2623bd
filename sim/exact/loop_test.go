package exact

import (
	"math/big"
	"testing"
)

// The stops of a small mold loop: wax, gel, laminate, cure, pull, strip.
func moldLoop(wax, gel, laminate int, strip bool) []Stop {
	s := []Stop{{"wax", 2, 1, wax, nil}, {"gel", 3, 1, gel, nil}, {"laminate", 10, 1, laminate, nil}, {"cure", 24, 1, Delay, nil}, {"pull", 2, 1, 1, nil}}
	if strip {
		s = append(s, Stop{"strip", 6, .2, 1, nil})
	}
	return s
}

func solve(t *testing.T, n int, stops []Stop) []Loop {
	t.Helper()
	l, err := Solve(n, stops)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// X as exact fractions, by rational arithmetic on Buzen's convolution.
func TestLoopFractions(t *testing.T) {
	a := solve(t, 4, moldLoop(1, 1, 2, false))
	for i, want := range []float64{1. / 41, 41. / 849, 849. / 11933, 11933. / 128953} {
		near(t, "X of A", a[i].X, want, 1e-15)
	}
	b := solve(t, 3, moldLoop(1, 1, 2, true))
	for i, want := range []float64{5. / 211, 1055. / 22491, 112455. / 1626571} {
		near(t, "X of B", b[i].X, want, 1e-15)
	}
	c := solve(t, 8, moldLoop(2, 2, 3, true))
	exact, ok := new(big.Rat).SetString("13460290052308358970/75139064408794327639")
	if !ok {
		t.Fatal("not a fraction")
	}
	want, _ := exact.Float64()
	near(t, "X of C with 8", c[7].X, want, 1e-15)
}

// Queues, busy shares and chances, computed with the GNU Octave queueing
// package 1.2.7 (qncsmva, qncsmvald, qncsconvld).
func TestLoopTables(t *testing.T) {
	for _, row := range []struct {
		name  string
		stops []Stop
		n     int
		x     float64
		u     []float64 // wax gel laminate pull strip
		q     []float64 // wax gel laminate cure pull strip
	}{
		{"A", moldLoop(1, 1, 2, false), 4, .092538, []float64{.185075, .277613, .462688, .185075}, []float64{.214078, .346080, 1.004862, 2.220902, .214078}},
		{"A", moldLoop(1, 1, 2, false), 8, .158063, []float64{.316126, .474189, .790316, .316126}, []float64{.438078, .797113, 2.533216, 3.793516, .438078}},
		{"B", moldLoop(1, 1, 2, true), 4, .090010, []float64{.180020, .270030, .450050, .180020, .108012}, []float64{.207358, .334478, .973076, 2.160239, .207358, .117492}},
		{"B", moldLoop(1, 1, 2, true), 8, .155053, []float64{.310106, .465159, .775265, .310106, .186064}, []float64{.426259, .771226, 2.431723, 3.721272, .426259, .223260}},
		{"C", moldLoop(2, 2, 3, true), 5, .116284, []float64{.116284, .174427, .387615, .232569, .139541}, []float64{.234110, .354061, 1.181448, 2.790828, .282916, .156638}},
		{"C", moldLoop(2, 2, 3, true), 8, .179138, []float64{.179138, .268708, .597128, .358277, .214966}, []float64{.366246, .564676, 1.993031, 4.299321, .512812, .263914}},
	} {
		l := solve(t, row.n, row.stops)[row.n-1]
		near(t, row.name+" X", l.X, row.x, 5.1e-7)
		k := 0
		for i, q := range row.q {
			near(t, row.name+" Q "+row.stops[i].Name, l.Stops[i].Q, q, 5.1e-7)
			if row.stops[i].Servers != Delay {
				near(t, row.name+" U "+row.stops[i].Name, l.Stops[i].U, row.u[k], 5.1e-7)
				k++
			}
		}
	}
	b := solve(t, 4, moldLoop(1, 1, 2, true))[3].Stops[2].Here
	for i, want := range []float64{.34671831, .40646372, .18248841, .05568311, .00864645} {
		near(t, "chance at laminate, B", b[i], want, 5e-9)
	}
	c := solve(t, 8, moldLoop(2, 2, 3, true))[7].Stops[2].Here
	for i, want := range []float64{.11951868, .27991455, .29023111, .17379677, .08755231, .03558017, .01092369, .00224983, .00023290} {
		near(t, "chance at laminate, C", c[i], want, 5.1e-9)
	}
}

// Lazowska, Zahorjan, Graham and Sevcik 1984, p. 117; Bolch, Greiner, de Meer
// and Trivedi, Queueing Networks and Markov Chains, example 8.4, p. 333, which
// has several servers and a delay.
func TestWorkedExamples(t *testing.T) {
	l := solve(t, 3, []Stop{{"cpu", .605, 1, 1, nil}, {"disk", 2.1, 1, 1, nil}, {"disk", 1.35, 1, 1, nil}, {"think", 15, 1, Delay, nil}})
	for i, want := range []float64{0.052479664, 0.103085937, 0.151516492} {
		near(t, "X", l[i].X, want, 5e-10)
	}
	for i, want := range []float64{.097566, .394657, .235030} {
		near(t, "Q", l[2].Stops[i].Q, want, 5.1e-7)
	}
	b := solve(t, 3, []Stop{{"1", .5, 1, 2, nil}, {"2", .6, .5, 1, nil}, {"3", .8, .5, 1, nil}, {"4", 1, 1, Delay, nil}})[2]
	near(t, "X", b.X, 1.217461, 5.1e-7)
	for i, want := range []float64{.623679, .472872, .685988, 1.217461} {
		near(t, "Q", b.Stops[i].Q, want, 5.1e-7)
	}
}

// A repair shop with a limited number of machines: exact fractions; and the
// printed cells of Peck and Hazelwood, Finite Queuing Tables, 1958: chance to
// wait D and efficiency F for 5 machines and service factor T/(T+U).
func TestFiniteSource(t *testing.T) {
	shop := func(n, crews int) Loop {
		return solve(t, n, []Stop{{"cure", 24, 1, Delay, nil}, {"crew", 6, 1, crews, nil}})[n-1]
	}
	near(t, "X", shop(3, 1).X, 13./142, 1e-15)
	near(t, "Q", shop(3, 1).Stops[1].Q, .802816901, 5e-10)
	near(t, "X", shop(6, 2).X, 929./4835, 1e-15)
	for _, row := range []struct {
		factor float64
		crews  int
		f      float64
	}{{.05, 1, .989}, {.1, 1, .950}, {.1, 2, .997}} {
		l := solve(t, 5, []Stop{{"runs", 1 - row.factor, 1, Delay, nil}, {"service", row.factor, 1, row.crews, nil}})[4]
		near(t, "F", l.X/5, row.f, 5.1e-4)
	}
}

// Four single stations of 2 h with exponential times, Penny Fab One of Hopp and
// Spearman: X(w) = w/(2(w+3)), which is their practical worst case.
func TestPennyFab(t *testing.T) {
	one := []Stop{{"1", 2, 1, 1, nil}, {"2", 2, 1, 1, nil}, {"3", 2, 1, 1, nil}, {"4", 2, 1, 1, nil}}
	line := LineOf(one)
	for i, l := range solve(t, 60, one) {
		w := float64(i + 1)
		near(t, "X", l.X, w/(2*(w+3)), 1e-14)
		rate, through := line.Practical(i + 1)
		near(t, "practical worst case", rate, l.X, 1e-14)
		near(t, "Little's law", rate*through, w, 1e-12)
	}
	two := LineOf([]Stop{{"1", 2, 1, 1, nil}, {"2", 5, 1, 2, nil}, {"3", 10, 1, 6, nil}, {"4", 3, 1, 2, nil}})
	near(t, "rate", two.Rate, .4, 1e-15)
	near(t, "bare time", two.Through, 20, 1e-12)
	for _, row := range []struct {
		w                      int
		best, ct, worst, pr, c float64
	}{{1, .05, 20, 20, .05, 20}, {5, .25, 20, 100, .166667, 30}, {8, .4, 20, 160, .213333, 37.5}, {10, .4, 25, 200, .235294, 42.5}, {20, .4, 50, 400, .296296, 67.5}} {
		rate, ct := two.Best(row.w)
		near(t, "best", rate, row.best, 1e-12)
		near(t, "best time", ct, row.ct, 1e-12)
		rate, ct = two.Worst(row.w)
		near(t, "worst", rate, .05, 1e-12)
		near(t, "worst time", ct, row.worst, 1e-9)
		rate, ct = two.Practical(row.w)
		near(t, "practical", rate, row.pr, 5.1e-7)
		near(t, "practical time", ct, row.c, 1e-12)
	}
}

// Bounds hold X between them at any number of molds; the upper one is the rate
// of the loop with constant times: 1/41, 2/41, … up to 1/5.
func TestBounds(t *testing.T) {
	stops := moldLoop(1, 1, 2, false)
	for i, l := range solve(t, 12, stops) {
		b := Bounds(i+1, stops)
		if !(b.Least <= l.X+1e-12 && l.X <= b.Most+1e-12) {
			t.Errorf("%d molds: X %.6f is not in %.6f … %.6f", i+1, l.X, b.Least, b.Most)
		}
		near(t, "most", b.Most, min(float64(i+1)/41, .2), 1e-15)
		near(t, "critical", b.Critical, 8.2, 1e-12)
		if b.Narrow != 2 {
			t.Errorf("narrowest is stop %d", b.Narrow)
		}
	}
}

// With 200 molds the narrow stop is full and its chance of being empty has no
// digits left as a difference; the loop must still add up.
func TestLoopUnderLoad(t *testing.T) {
	stops := moldLoop(2, 2, 3, true)
	l := solve(t, 200, stops)[199]
	near(t, "X", l.X, .3, 1e-9)
	molds, chances := 0.0, 0.0
	for i := range l.Stops {
		molds += l.Stops[i].Q
	}
	for _, p := range l.Stops[2].Here {
		chances += p
	}
	near(t, "molds", molds, 200, 1e-9)
	near(t, "chances", chances, 1, 1e-9)
}

// Speeds 1, 2 are two servers, written another way.
func TestSpeeds(t *testing.T) {
	servers := solve(t, 6, moldLoop(1, 1, 2, false))
	stops := moldLoop(1, 1, 2, false)
	stops[2].Speeds = []float64{1, 2}
	for i, l := range solve(t, 6, stops) {
		near(t, "X", l.X, servers[i].X, 1e-15)
	}
}

func TestLoopComplaints(t *testing.T) {
	for _, stops := range [][]Stop{nil, {{"wax", 0, 1, 1, nil}}, {{"wax", 1, 1, -1, nil}}, {{"wax", 1, 1, 1, []float64{1, 0}}}} {
		if _, err := Solve(3, stops); err == nil {
			t.Errorf("no complaint about %v", stops)
		}
	}
	if _, err := Solve(0, moldLoop(1, 1, 1, false)); err == nil {
		t.Error("no complaint about no molds")
	}
}
