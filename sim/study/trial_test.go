package study

import (
	"math"
	"testing"
	"time"

	"moldturn/sim/record"
)

// shipping is a run of a year of open weeks with so many boats in each, and
// shares of two models in them.
func shipping(boats func(week int) int, first, second int) Outcome {
	f := *frame(0, 1)
	r := &record.Result{Frame: f, Models: []record.Model{{Shipped: first}, {Shipped: second}}}
	for w := range 52 {
		r.WeekShips, r.WeekOpen = append(r.WeekShips, boats(w)), append(r.WeekOpen, true)
	}
	return Outcome{Capacity: r}
}

// Nine weeks of ten by hand: 46 or 47 weeks of 52, the worst month, and boats
// that are out of the mix.
func TestTrialByHand(t *testing.T) {
	poor := func(n int) func(int) int {
		return func(w int) int {
			if w >= 26 && w < 26+n {
				return 9
			}
			return 11
		}
	}
	runs := func(n int, first, second int) *Runs {
		return &Runs{Outcomes: []Outcome{shipping(poor(n), first, second), shipping(poor(n), first, second)}}
	}
	g := Target{Boats: 10, Share: 0.9}
	if x := g.TrialOf(runs(5, 1, 1)); !x.Meets() || x.Year != 47.0/52 || time.Month(x.Month+1) != time.July {
		t.Errorf("47 of 52 weeks: %+v", x)
	}
	if x := g.TrialOf(runs(6, 1, 1)); x.Meets() || x.Year != 46.0/52 {
		t.Errorf("46 of 52 weeks: %+v", x)
	}
	g.Worst = true
	if x := g.TrialOf(runs(5, 1, 1)); x.Meets() || x.Worst > 0.5 {
		t.Errorf("one month short: %+v", x)
	}
	mean := Target{Boats: 10.5}
	if x := mean.TrialOf(runs(5, 1, 1)); !x.Meets() || x.Boats != float64(47*11+5*9)/52 {
		t.Errorf("the mean week: %+v", x)
	}
	g = Target{Boats: 10, Share: 0.9, Mix: []float64{0.5, 0.5}}
	if x := g.TrialOf(runs(0, 55, 45)); !x.Meets() {
		t.Errorf("a mix within the slack: %+v", x)
	}
	if x := g.TrialOf(runs(0, 60, 40)); x.Meets() || x.Year != 1 || math.Abs(x.Mix-0.8/0.9) > 1e-12 {
		t.Errorf("a model a fifth short is out of the mix, whatever the weeks: %+v", x)
	}
}
