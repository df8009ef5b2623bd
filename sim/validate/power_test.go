package validate

import (
	"math"
	"slices"
	"strings"
	"testing"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/record"
)

func find(t *testing.T, name string) Case {
	t.Helper()
	all := Cases()
	i := slices.IndexFunc(all, func(c Case) bool { return strings.Contains(c.Name, name) })
	if i < 0 {
		t.Fatalf("no case %q", name)
	}
	return all[i]
}

// A check that cannot fail shows nothing: numbers that are off by a few percent
// must not pass, and neither may instants that are off by a second.
func TestWrongNumbersAreFound(t *testing.T) {
	for name, factor := range map[string]float64{"loop C, 8 molds": 1.03, "8 h on, 16 h off, work pauses": 1.2, "load 0.8, number": 1.1, "3 molds, wax 2 h, pull 4 h, in order": 1.02} {
		c := find(t, name)
		c.Values = slices.Clone(c.Values)
		for i := range c.Values {
			c.Values[i].Exact *= factor
		}
		results, err := c.Check(Options{Seed: 1, Short: true})
		if err != nil {
			t.Fatal(err)
		}
		if results[0].Pass {
			t.Errorf("%s: %s of %.6g passes for %.6g", name, results[0].Name, results[0].Got, results[0].Exact)
		}
	}
	c := find(t, "8 molds")
	for _, times := range [][]float64{{41, 44.001}, {41, 44, 51, 54, 61, 64, 71, 74, 82, 85, 1e6}, nil} {
		c.Times = times
		if results, err := c.Check(Options{}); err != nil || results[0].Pass {
			t.Errorf("instants %v pass", times)
		}
	}
	c = find(t, "8 molds")
	c.Cycle.Hours += .001
	if results, err := c.Check(Options{}); err != nil || !results[0].Pass || results[1].Pass {
		t.Error("a cycle that is off by 3.6 s passes")
	}
}

// Names tell cases apart, and their luck.
func TestNamesDiffer(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range Cases() {
		name := c.Group + "/" + c.Name
		if seen[name] || c.Source == "" || !c.Exact && len(c.Values) == 0 {
			t.Errorf("%s: twice, without a source, or without numbers", name)
		}
		seen[name] = true
	}
}

// stays keeps the spans of a run.
type stays struct {
	record.Nothing
	spans []record.Span
}

func (s *stays) Span(f *record.Span) { s.spans = append(s.spans, *f) }

func simulate(t *testing.T, p *sim.Plan, o record.Observer) {
	t.Helper()
	if err := sim.Simulate(p, sim.NewAir(climate.Steady(25, .5), cure.Default()), 1, 0, o); err != nil {
		t.Fatal(err)
	}
}

// Who stands where, and when, in the loop of three molds with constant times:
// Baccelli, Cohen, Olsder and Quadrat 1992, by enumeration.
func TestTraceOfThreeMolds(t *testing.T) {
	l := moldLoop(3, 1, 1, 2, false, constant, constant)
	p := l.plan(clock.FromHours(44.5), 1)
	var s stays
	simulate(t, p, &s)
	for _, want := range []struct {
		mold     int32
		step     string
		from, to float64
	}{
		{0, "wax", 0, 2}, {1, "wax", 2, 4}, {2, "wax", 4, 6}, {0, "gel", 2, 5}, {1, "gel", 5, 8}, {2, "gel", 8, 11},
		{0, "laminate", 5, 15}, {1, "laminate", 8, 18}, {2, "laminate", 15, 25}, {0, "cure", 15, 39}, {1, "cure", 18, 42},
		{0, "pull", 39, 41}, {0, "wax", 41, 43}, {1, "pull", 42, 44},
	} {
		if !slices.ContainsFunc(s.spans, func(f record.Span) bool {
			return f.Working && f.Mold == want.mold && f.Step >= 0 && p.Routes[f.Route].Steps[f.Step].Name == want.step &&
				f.From == clock.FromHours(want.from) && f.To == clock.FromHours(want.to)
		}) {
			t.Errorf("mold %d is not at %s from %g h to %g h", want.mold, want.step, want.from, want.to)
		}
	}
}

// A job that fits into no shift waits, and the reason says so.
func TestJobThatNeverFits(t *testing.T) {
	c := find(t, "never")
	p := c.Plant(clock.FromHours(400), 1)
	var s stays
	simulate(t, p, &s)
	waited := clock.Time(0)
	for _, f := range s.spans {
		if f.Working {
			t.Errorf("it works from %v", f.From)
		}
		if f.Cause.Reason == record.ShiftEnds {
			waited += f.To - f.From
		}
	}
	if waited == 0 {
		t.Error("no wait says that the shift is too short")
	}
	if len(p.Check()) == 0 {
		t.Error("the plan passes its check")
	}
}

// Molds are neither lost nor made: the numbers at all stops add up to the molds
// in every batch, to rounding. And longer times by a factor give as many pulls
// in hours longer by the factor.
func TestMoldsAreKept(t *testing.T) {
	l := moldLoop(8, 2, 2, 3, true, exponential, exponential)
	c := Case{Name: "molds", Plant: l.plan, WarmUp: 100, Hours: 20_000}
	sums, err := c.run(Options{Seed: 5})
	if err != nil {
		t.Fatal(err)
	}
	for i := range sums {
		q, hours := number("wax", "gel", "laminate", "cure", "pull", "strip")(&sums[i])
		if math.Abs(q/hours-8) > 1e-9 {
			t.Fatalf("batch %d: %.12f molds", i, q/hours)
		}
	}
	var once, twice times
	simulate(t, l.plan(5000*clock.Hour, 1), &once)
	for i := range l.stops {
		l.stops[i].mean *= 2
	}
	simulate(t, l.plan(10_000*clock.Hour, 1), &twice)
	for i := range once.pulls {
		if i >= len(twice.pulls) || math.Abs((twice.pulls[i]-2*once.pulls[i]).Hours()) > 1e-3 {
			t.Fatalf("pull %d does not come at twice the hour", i)
		}
	}
}

// The time of a mold alone from pull to pull is a sum of independent times: its
// variance is theirs together, 4 + 9 + 100 + 576 + 4 = 693 h² when all are
// exponential and 117 h² with a constant cure. The error of a variance by the
// fourth moment: the excess kurtosis of such a sum is 6·Σsd⁴/(Σsd²)².
func TestVarianceOfOneMoldsCycle(t *testing.T) {
	for _, row := range []struct {
		cure       law
		variance   float64
		fourth     float64 // Σsd⁴
		exactCycle float64
	}{{exponential, 693, 16 + 81 + 1e4 + 576*576 + 16, 41}, {constant, 117, 16 + 81 + 1e4 + 16, 41}} {
		l := moldLoop(1, 1, 1, 2, false, exponential, row.cure)
		var o times
		simulate(t, l.plan(1_000_000*clock.Hour, 1), &o)
		n, sum, squares := 0.0, 0.0, 0.0
		for i := 1; i < len(o.pulls); i++ {
			d := (o.pulls[i] - o.pulls[i-1]).Hours() - row.exactCycle
			n, sum, squares = n+1, sum+d, squares+d*d
		}
		got := squares/n - sum*sum/n/n
		se := row.variance * math.Sqrt((6*row.fourth/row.variance/row.variance+2)/n)
		if math.Abs(got-row.variance) > 4*se || math.Abs(sum/n) > 4*math.Sqrt(row.variance/n) || n < 20_000 {
			t.Errorf("%.0f cycles: mean %.3f h over, variance %.2f h², exact %g, SE %.2f", n, sum/n, got, row.variance, se)
		}
	}
}
