package sim

import (
	"math"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// Factors and running sums of Wright's unit curve, computed with 30 digits from
// T_N = N^b, b = ln(rate)/ln 2.
func TestUnitCurve(t *testing.T) {
	for _, row := range []struct {
		rate    float64
		factors map[int]float64
		sums    map[int]float64
	}{
		{0.80, map[int]float64{2: .8, 3: .7021037, 4: .64, 5: .5956373, 10: .4765099, 20: .3812079, 50: .2838271, 100: .2270617},
			map[int]float64{5: 3.73774105, 10: 6.31537302, 20: 10.4849428, 50: 20.1217138, 100: 32.6508108}},
		{0.85, map[int]float64{2: .85, 3: .7729148, 4: .7225, 5: .6856711, 10: .5828204, 20: .4953973, 50: .3996231, 100: .3396796},
			map[int]float64{5: 4.0310859, 10: 7.11606273, 20: 12.4022774, 50: 25.5131115, 100: 43.7538671}},
		{0.90, map[int]float64{2: .9, 3: .846206, 4: .81, 5: .7829867, 10: .704688, 20: .6342192, 50: .5517614, 100: .4965852},
			map[int]float64{5: 4.33919271, 10: 7.99447855, 20: 14.6077595, 50: 32.141956, 100: 58.1410203}},
	} {
		sum := 0.0
		for n := 1; n <= 100; n++ {
			f := UnitFactor(row.rate, float64(n))
			sum += f
			if want, known := row.factors[n]; known && math.Abs(f-want) > 6e-8 {
				t.Errorf("%v, unit %d: %.8f, want %v", row.rate, n, f, want)
			}
			if want, known := row.sums[n]; known && math.Abs(sum/want-1) > 1e-8 {
				t.Errorf("%v, first %d units: %.9f, want %v", row.rate, n, sum, want)
			}
		}
	}
}

// Worked examples: 50 min at 80 % is 40 for the 2nd and 32 for the 4th (vcalc,
// "Wright's learning curve"); 30 then 25 min is a rate of 0.8333; 812 h at 75 %:
// the 250th takes 82.0958 h, computed (gristprojectmanagement, which has 120 h
// for the 100th from a first of 811.4397); 85 %, 250 h, 15 units: 2465.26403334 h,
// computed (problem of solutioninn).
func TestLearningExamples(t *testing.T) {
	sum := 0.0
	for n := range 15 {
		sum += 250 * UnitFactor(0.85, float64(n+1))
	}
	for _, c := range []struct {
		what           string
		got, want, tol float64
	}{
		{"2nd of 50 min", 50 * UnitFactor(0.8, 2), 40, 1e-12}, {"4th of 50 min", 50 * UnitFactor(0.8, 4), 32, 1e-12},
		{"rate of 30 to 25", 30 * UnitFactor(25.0/30, 2), 25, 1e-12}, {"250th of 812 h", 812 * UnitFactor(0.75, 250), 82.0958, 5e-5},
		{"100th of 811.4397 h", 811.4397 * UnitFactor(0.75, 100), 120, 5e-5}, {"15 of 250 h", sum, 2465.26403334, 1e-7},
	} {
		if math.Abs(c.got-c.want) > c.tol {
			t.Errorf("%s: %.9f, want %v", c.what, c.got, c.want)
		}
	}
}

// Hours hold from the standard boat on; before it they follow the curve, at most
// so many times; boats built before the run count.
func TestLearnedHours(t *testing.T) {
	p := &Plan{Learning: Learning{Standard: 100, Most: 2.5}, Models: []Model{{Curve: Curve{Assembly: 0.85}}, {Curve: Curve{Assembly: 0.85, Built: 49}}, {}}}
	for _, c := range []struct {
		model int16
		doing record.Doing
		n     int
		want  float64
	}{
		{0, record.Assembling, 100, 1}, {0, record.Assembling, 1000, 1}, {0, record.Assembling, 50, 1 / 0.85}, {0, record.Assembling, 25, 1 / 0.7225},
		{0, record.Assembling, 1, 2.5}, {0, record.Laminating, 1, 1}, {0, record.Curing, 1, 1}, {1, record.Assembling, 1, 1 / 0.85}, {2, record.Assembling, 1, 1},
	} {
		if got := p.Learned(c.model, c.doing, c.n); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("model %d, %v, boat %d: %.6f, want %.6f", c.model, c.doing, c.n, got, c.want)
		}
	}
	if !p.learns() || (&Plan{Learning: p.Learning, Models: p.Models[2:]}).learns() {
		t.Error("which plans learn")
	}
}

// greenRun has one craft of many people who leave.
func greenRun(h Hires, people int) *Run {
	p := &Plan{Crafts: []Craft{{Crews: []Crew{{People: people}}, Hires: h}, {Crews: []Crew{{People: 3}}}}}
	r := &Run{plan: p, clk: clock.New(), root: draw.Root(7, 0)}
	r.startHires()
	return r
}

// In a craft that everybody leaves at the same rate h a day, the time since the
// last change is geometric, so a ramp of R days is left by
// Σ (1 − d/R)·h·(1−h)^d over d below R of the people on average. Exact sum.
func TestShareOfNewPeople(t *testing.T) {
	h := Hires{Turnover: 0.8, Ramp: 84, Start: 0.5, Flaws: 3}
	leaves := 1 - math.Exp(-0.8/365.25)
	green := 0.0
	for d := range 84 {
		green += (1 - float64(d)/84) * leaves * math.Pow(1-leaves, float64(d))
	}
	const people = 20000
	r := greenRun(h, people)
	// the standard error of the mean of 20000 shares, each at most 1 with a
	// variance below their mean
	within := 4 * math.Sqrt(green/people)
	for _, day := range []int{0, 50, 400} {
		r.hireUntil(0, day)
		if got := (1 - r.hires[0].speed) / 0.5; math.Abs(got-green) > within {
			t.Errorf("day %d: %.4f of the craft is new, want %.4f ± %.4f", day, got, green, within)
		}
		if got := (r.hires[0].flaws - 1) / 2; math.Abs(got-green) > within {
			t.Errorf("day %d: flaws by %.4f, want %.4f", day, got, green)
		}
	}
	if r.hires[1].speed != 1 || r.crewSpeed(None) != 1 {
		t.Error("a craft that nobody leaves is slower")
	}
}

// Without turnover nothing is kept and no luck is drawn.
func TestNoTurnover(t *testing.T) {
	if r := greenRun(Hires{Ramp: 84, Start: 0.1, Flaws: 9}, 5); r.hires != nil || r.crewSpeed(0) != 1 {
		t.Error("a craft that nobody leaves has state")
	}
}
