package sim

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// windowShop sprays (1 h), gels (1 h), lays the skin (1 h) and pulls.
func windowShop(days int, gel, lay Crew, molds ...Mold) (*shop, int16, int16) {
	s := moldShop(days, 0, molds...)
	g, l := s.craft(gel), s.craft(lay)
	spray := labor(g, 1, 1, Fit)
	spray.Name, spray.Opens, spray.Verb, spray.Doing = "base", true, Sprayed, record.Spraying
	wash := labor(g, 1, 2, Pause)
	wash.Name, wash.When, wash.Verb, wash.Loop, wash.Back = "wash out", TooLate, WashedOut, true, 0
	skin := labor(l, 1, 1, Pause)
	skin.Name, skin.Verb = "skin", SkinBegun
	pull := passing("pull", 0)
	pull.Verb = Pulled
	s.p.Routes[0].Steps = []Step{spray, passing("gel wait", 1), wash, skin, pull}
	s.p.Window = Window{Limit: 4, Wash: 8, Scuff: 0.1, Craft: l}
	return s, g, l
}

// Sprayers work from 6, laminators from 14: nothing is sprayed before the skin
// could follow within four hours.
func TestSprayWaitsForTheGelWindow(t *testing.T) {
	s, _, _ := windowShop(1, Crew{}, Crew{}, Mold{})
	s.p.Crafts[0].Crews = []Crew{crewOf(1, s.daily(6, 16))}
	s.p.Crafts[1].Crews = []Crew{crewOf(1, s.daily(14, 22))}
	a := s.order(6)
	d := s.run(t)
	d.want(t, a, "gel window 6:00-9:00, works 1 9:00-10:00, works 0 10:00-11:00, off shift 11:00-14:00, works 1 14:00-15:00")
	if d.notes[record.WindowMiss] != 0 {
		t.Error("missed")
	}
}

// Without looking ahead the skin comes late: within the time to wash out the
// gel coat is scuffed, later it is washed out and sprayed again.
func TestMissedWindowIsScuffedOrWashedOut(t *testing.T) {
	s, _, _ := windowShop(2, Crew{}, Crew{}, Mold{})
	s.p.Window.Craft = None
	s.p.Crafts[0].Crews = []Crew{crewOf(1, s.daily(0, 24))}
	s.p.Crafts[1].Crews = []Crew{crewOf(1, s.daily(14, 22))}
	steps := s.p.Routes[0].Steps
	steps[3].Add = Scuffing // 0.1 h/m² × 20 m²
	late := s.order(8)      // sprayed at 9:00, skin at 14:00
	d := s.run(t)
	d.want(t, late, "works 1 8:00-9:00, works 0 9:00-10:00, off shift 10:00-14:00, works 1 14:00-17:00")
	if d.notes[record.WindowMiss] != 1 || d.notes[record.Resprayed] != 0 {
		t.Errorf("%d missed, %d sprayed again", d.notes[record.WindowMiss], d.notes[record.Resprayed])
	}

	s.p.Demand.Dated = nil
	old := s.order(2) // sprayed at 3:00, washed out at 14:00, sprayed again at 16:00
	d = s.run(t)
	d.want(t, old, "works 1 2:00-3:00, works 0 3:00-4:00, off shift 4:00-14:00, works 1 14:00-17:00, works 0 17:00-18:00, works 1 18:00-19:00")
	if d.notes[record.WindowMiss] != 0 || d.notes[record.Resprayed] != 1 {
		t.Errorf("%d missed, %d sprayed again", d.notes[record.WindowMiss], d.notes[record.Resprayed])
	}
}

// Two booths spray at once, but only one sprayed part may wait for its skin.
func TestSprayedPartsDoNotExceedTheirSlots(t *testing.T) {
	s, _, _ := windowShop(2, Crew{}, Crew{}, Mold{}, Mold{})
	s.p.Window.Slots = 1
	s.p.Crafts[0].Crews = []Crew{crewOf(2, s.daily(0, 24))}
	s.p.Crafts[1].Crews = []Crew{crewOf(2, s.daily(0, 24))}
	a, b := s.order(1), s.order(1)
	d := s.run(t)
	d.want(t, a, "works 1 1:00-2:00, works 0 2:00-3:00, works 1 3:00-4:00")
	d.want(t, b, "gel window 1:00-4:00, works 1 4:00-5:00, works 0 5:00-6:00, works 1 6:00-7:00")
}

// A slot is given back also at instant 0 and by a route without a skin coat.
func TestSlotsAreGivenBack(t *testing.T) {
	s, _, l := windowShop(3, Crew{}, Crew{}, Mold{})
	s.p.Window.Slots = 1
	s.p.Crafts[0].Crews = []Crew{crewOf(1, s.daily(0, 24))}
	s.p.Crafts[1].Crews = []Crew{crewOf(1, s.daily(0, 24))}
	steps := s.p.Routes[0].Steps
	steps[0].SetTime(constant(0))
	steps[3] = labor(l, 1, 1, Pause)
	a, b := s.order(0), s.order(0)
	d := s.run(t)
	if x, y := d.shipped(a), d.shipped(b); x != 2*clock.Hour || y != 5*clock.Hour {
		t.Errorf("shipped at %v and %v", x, y) // an hour of wax between
	}
}
