package hand

import (
	"math"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/policy"
	"moldturn/sim/shift"
)

// loopShop is eight molds of one part that go round wax, gel coat, lay-up, cure
// and pull, with a strip every fifth turn, and people who never leave.
func loopShop(t *testing.T) *sim.Plan {
	t.Helper()
	p := shop(dayShift(t), 1, 24)
	p.Crafts, p.Places = nil, nil
	work := func(name string, people int, hours float64) sim.Step {
		s := sim.Step{Name: name, Craft: int16(len(p.Crafts)), Want: 1, Least: 1, Slow: 1}
		d, err := draw.Constant(hours)
		if err != nil {
			t.Fatal(err)
		}
		s.SetTime(d)
		p.Crafts = append(p.Crafts, sim.Craft{Name: name, Crews: []sim.Crew{{Hours: shift.Always(), People: people}}, Late: clock.Never, Overtime: clock.Never})
		return s
	}
	hold := sim.Step{Name: "hold", Pace: sim.ByPolicy, Craft: sim.None}
	wax, gel, lay := work("wax", 2, 2), work("gel", 2, 3), work("lay-up", 3, 10)
	pull, strip := work("pull", 1, 2), work("strip", 1, 6)
	pull.Verb, strip.When, strip.Verb = sim.Pulled, sim.DueLight, sim.LightStripped
	p.Routes = []sim.Route{{Name: "hull", Steps: []sim.Step{wax, gel, lay, hold, pull}}, {Name: "care", Steps: []sim.Step{strip}}, {Name: "boat"}}
	p.Strip = policy.Strip{Kind: policy.StripEvery, Every: 5, LightCoats: 2}
	p.Parts[0].InUse, p.Molds = 8, make([]sim.Mold, 8)
	return p
}

// Where the theory is exact, so is the figure: configuration C of the mold loop
// with eight molds makes 0.179138377064127 boats an hour (mean value analysis,
// Reiser and Lavenberg 1980, J. ACM 27:313–322; computed with the GNU Octave
// queueing package 1.2.7, qncsmva).
func TestQueueingIsExactForTheMoldLoop(t *testing.T) {
	p := loopShop(t)
	f := frame(p)
	f.Crafts = len(p.Crafts)
	table := Work(p, steady(25, 0.5), f)
	got := table.Queueing / 168
	if exact := 0.179138377064127; math.Abs(got-exact) > 1e-4*exact {
		t.Errorf("%.9f boats an hour, exact %.9f", got, exact)
	}
	// The bare turn is 2 + 3 + 10 + 24 + 2 + 6/5 = 42.2 h and three crews of 10 h
	// lay up 0.3 turns an hour: from 12.66 molds on they are the limit.
	if n := table.Narrow; n.Craft != "lay-up" || math.Abs(n.Molds-12.66) > 1e-3*12.66 {
		t.Errorf("narrowest is %+v, by hand lay-up from 12.66 molds on", n)
	}
}

// Queueing only takes away, more where the floor may hold fewer boats, and less
// where there are more molds.
func TestQueueingTakesAway(t *testing.T) {
	p := loopShop(t)
	f := frame(p)
	f.Crafts = len(p.Crafts)
	at := func(molds, floor int) float64 {
		q := *p
		q.Parts = []sim.Part{p.Parts[0]}
		q.Parts[0].InUse, q.Demand.FloorLimit = molds, floor
		table := Work(&q, steady(25, 0.5), f)
		if table.Queueing <= 0 || table.Queueing > table.Limits[0].Boats {
			t.Errorf("%d molds, floor %d: %.3f with queueing, %.3f by hand", molds, floor, table.Queueing, table.Limits[0].Boats)
		}
		return table.Queueing
	}
	if a, b := at(4, 0), at(8, 0); a >= b {
		t.Errorf("4 molds give %.3f, 8 give %.3f", a, b)
	}
	if a, b := at(8, 3), at(8, 0); a >= b {
		t.Errorf("a floor of 3 gives %.3f, no limit %.3f", a, b)
	}
}
