package sim

import (
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/policy"
)

// checks holds what Check says against one expected sentence, by a part of it.
func checks(t *testing.T, p *Plan, want string) {
	t.Helper()
	faults := p.Check()
	if want == "" && len(faults) > 0 || want != "" && (len(faults) != 1 || !strings.Contains(faults[0], want)) {
		t.Errorf("Check: %q, want %q", faults, want)
	}
}

// shipsNone runs a plan and fails if a boat leaves.
func shipsNone(t *testing.T, p *Plan) {
	t.Helper()
	if w, _ := watch(p, steadyAir(), 1); w.shipped > 0 {
		t.Errorf("%d boats shipped", w.shipped)
	}
}

func TestFinishLongerThanAnyDayIsTold(t *testing.T) {
	s := newShop(7)
	c := s.craft(crewOf(2, s.daily(6, 14)))
	s.p.Crafts[c].Late = clock.Hour / 2
	a := s.task(1, 0, labor(c, 2, 8.5, Finish))
	checks(t, s.p, "")
	if s.run(t).shipped(a) == clock.Never {
		t.Error("8.5 h were not done in a shift of 8 h and half an hour")
	}
	s = newShop(7)
	c = s.craft(crewOf(2, s.daily(6, 14)))
	s.p.Crafts[c].Late = clock.Hour / 2
	s.task(1, 0, labor(c, 2, 8.6, Finish))
	checks(t, s.p, "must be finished with the day")
	shipsNone(t, s.p)
}

// Breaks do not end a shift: a step that fits round one is done.
func TestFitMayLastAsLongAsTheShiftByTheClock(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14, breakAt(10, 0.5))), crewOf(1, s.daily(14, 16)))
	a := s.task(1, 0, labor(c, 1, 9.9, Fit)) // one crew hands it to the next
	checks(t, s.p, "")
	if s.run(t).shipped(a) == clock.Never {
		t.Error("not done")
	}
}

func TestPeopleNeverTogetherAreTold(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(2, s.daily(6, 14)), crewOf(2, s.daily(14, 22)))
	s.task(1, 0, labor(c, 3, 1, Pause))
	checks(t, s.p, "there are 2 at work together")
	shipsNone(t, s.p)

	s = newShop(3) // helpers make it possible
	c = s.craft(crewOf(2, s.daily(6, 14)))
	h := s.craft(crewOf(1, s.daily(6, 14)))
	s.p.Crafts[h].Helps = []int16{c}
	a := s.task(1, 0, labor(c, 3, 1, Pause))
	checks(t, s.p, "")
	s.run(t).want(t, a, "off shift 1:00-6:00, works 3 6:00-7:00")
}

func TestStoreTooSmallForOneBoatIsTold(t *testing.T) {
	s := newShop(60)
	twoParts(s, s.place("store", 1))
	s.order(0)
	checks(t, s.p, `in 2 of "store" and there are 1`)
	if _, err := watch(s.p, steadyAir(), 1); err == nil {
		t.Error("no circle")
	}
}

func TestMoldsThatCanNeverWorkAreTold(t *testing.T) {
	s := moldShop(5, 6, Mold{Reserve: true})
	s.p.Demand.Full = true
	checks(t, s.p, "has no mold in rotation")
	shipsNone(t, s.p)

	s = moldShop(5, 6, Mold{New: true})
	s.p.Demand.Full = true
	s.p.BreakIn = policy.BreakIn{Coats: []int{1}}
	s.p.Models[0].Bands, s.p.Parts[0].Band = []Share{{1, 1}}, 1
	checks(t, s.p, "always carries a band")
	shipsNone(t, s.p)
}

func TestColorsWithoutGunAreTold(t *testing.T) {
	s := moldShop(5, 6, Mold{})
	s.p.Demand.Full = true
	booth := s.place("booth", 1)
	s.p.Places[booth].Kind = Booth
	s.p.Places[booth].Guns = [][]Gun{{{Name: "red", Color: 1}, {Name: "pot", Pot: true, Color: None}}}
	s.p.Routes[0].Steps[0].Take, s.p.Routes[0].Steps[0].Spray = []int16{booth}, SprayBase
	checks(t, s.p, `no gun set of "booth" sprays "white"`)
	shipsNone(t, s.p)
}

func TestEndlessLoopsAreTold(t *testing.T) {
	s := newShop(2)
	step := labor(None, 1, 1, Pause)
	step.Loop = true
	s.task(1, 0, step)
	checks(t, s.p, "without end")
	shipsNone(t, s.p)
}

// Words about a mold, or a part, where there is none: told before the run,
// which could not make sense of them.
func TestStepsOutOfPlaceAreTold(t *testing.T) {
	for _, c := range []struct {
		want string
		step func(*Step)
	}{
		{"care of molds", func(s *Step) { s.Verb = Waxed }},
		{"about a mold", func(s *Step) { s.When = DueWax }},
		{"about a mold", func(s *Step) { s.Add = RepairHours }},
		{"about a mold", func(s *Step) { s.Scale = PerCoat }},
		{"way of a part", func(s *Step) { s.Verb = Inspected }},
		{"way of a part", func(s *Step) { s.Add = BuffHours }},
	} {
		s := moldShop(5, 6, Mold{})
		s.p.Demand.Full = true
		step := passing("odd", 1)
		c.step(&step)
		s.p.Routes[2].Steps = []Step{step}
		checks(t, s.p, c.want)
	}
	s := moldShop(5, 6, Mold{})
	s.p.Demand.Full = true
	after := passing("odd", 1)
	after.When = Damaged
	s.p.Routes[0].Steps = append(s.p.Routes[0].Steps, after)
	checks(t, s.p, "about a mold")
}
