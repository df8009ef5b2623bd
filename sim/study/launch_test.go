package study

import (
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// twoModels has a model with a mold from the start and one whose mold comes on
// the Monday after ten weeks.
func twoModels() *sim.Plan {
	start := shift.DateOf(2027, 1, 4)
	return &sim.Plan{
		Start: start, Length: 52 * clock.Week,
		Models: []sim.Model{{Name: "a"}, {Name: "b"}}, Parts: []sim.Part{{Model: 0}, {Model: 1}},
		Molds:  []sim.Mold{{Part: 0}, {Part: 1, New: true, Arrives: 10 * clock.Week}},
		Demand: sim.Demand{Models: []sim.ModelDemand{{PerWeek: 1}, {PerWeek: 2}}},
	}
}

func TestWithoutLaunch(t *testing.T) {
	p := twoModels()
	out := WithoutLaunch(p)
	if out.Molds[1].Arrives <= p.Length || len(out.Molds) != 2 || out.Demand.Models[1].PerWeek != 0 || out.Demand.Models[0].PerWeek != 1 {
		t.Errorf("%+v, %+v", out.Molds, out.Demand.Models)
	}
	if p.Molds[1].Arrives != 10*clock.Week || p.Demand.Models[1].PerWeek != 2 {
		t.Error("the plan itself has changed")
	}
	if at, ok := FirstArrival(p); !ok || at != 10*clock.Week {
		t.Errorf("%v %v", at, ok)
	}
	if _, ok := FirstArrival(out); ok {
		t.Error("a mold that never comes is found")
	}
}

// Boats of each span by hand: with the launch a ships 1 a week and b 2 from week
// 12 of the run on; without it a ships 2. The third week after is shut.
func TestLaunchSpans(t *testing.T) {
	p := twoModels()
	with, without := NewWeekBook(p), NewWeekBook(p)
	for w := range 52 {
		at := clock.Time(w)*clock.Week + clock.Day
		with.Ship(&record.Ship{At: at, Model: 0})
		without.Ship(&record.Ship{At: at, Model: 0})
		without.Ship(&record.Ship{At: at, Model: 0})
		if w >= 12 {
			with.Ship(&record.Ship{At: at, Model: 1})
			with.Ship(&record.Ship{At: at, Model: 1})
		}
	}
	f := &record.Frame{Start: p.Start, To: p.Length, Shut: make([]bool, 52)}
	f.Shut[12] = true
	l := NewLaunch(p, f, []*WeekBook{with, with}, []*WeekBook{without, without})
	if l.First != 10 || l.Arrivals(0) != 1 || l.Arrivals(1) != 0 || !l.Closed(2) || l.Closed(-20) {
		t.Errorf("first week %d", l.First)
	}
	a, d, ok := l.Rate(Span{0, 4}, 0)
	if !ok || a.Mean != 1 || d.Mean != -1 {
		t.Errorf("a: %v, change %v", a.Mean, d.Mean)
	}
	if b, _, _ := l.Rate(Span{0, 4}, 1); b.Mean != 2.0/3 {
		t.Errorf("b: %v boats a week, want 2 in one of three open weeks", b.Mean)
	}
	if both, _, _ := l.Rate(Span{4, 8}, 0, 1); both.Mean != 3 {
		t.Errorf("both: %v", both.Mean)
	}
	if _, _, ok := l.Rate(Span{2, 3}, 0); ok {
		t.Error("a span without an open week has a rate")
	}
	for _, s := range l.Spans() {
		if s.From < -10 || s.To > 42 {
			t.Errorf("span %v is outside of the run", s)
		}
	}
	if o := l.Others(); len(o) != 1 || o[0] != 0 {
		t.Errorf("others %v", o)
	}
}

// Only turns of molds that came are a break-in wave, and only the first ones.
func TestBreakInWave(t *testing.T) {
	p := twoModels()
	p.BreakIn.Coats = []int{5, 2, 1}
	b := NewWeekBook(p)
	for i := range 5 {
		b.Pull(&record.Pull{At: clock.Time(10+i) * clock.Week, Mold: 1})
		b.Pull(&record.Pull{At: clock.Time(10+i) * clock.Week, Mold: 0})
	}
	sum := 0
	for _, n := range b.BreakIn {
		sum += n
	}
	if sum != p.BreakIn.Turns() || b.BreakIn[13] != 0 {
		t.Errorf("%d break-in turns, want %d", sum, p.BreakIn.Turns())
	}
}
