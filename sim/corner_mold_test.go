package sim

import (
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

func passing(name string, hours float64) Step {
	s := Step{Name: name, Craft: None, Pace: ByClock, Want: 1, Least: 1, Slow: 1}
	s.SetTime(constant(hours))
	return s
}

// molds makes a plant of one model whose one part takes lay hours in its mold
// and comes out at once; a coat of wax takes an hour, a full strip 20 h.
func moldShop(days int, lay float64, molds ...Mold) *shop {
	s := newShop(days)
	p := s.p
	laid, pull := passing("lay", lay), passing("pull", 0)
	laid.Verb, pull.Verb = LaborEnded, Pulled
	check, strip, renew, wax := passing("check", 0), passing("strip", 20), passing("renew", 30), passing("wax", 1)
	check.Verb, strip.Verb, renew.Verb, wax.Verb = MoldChecked, FullStripped, Renewed, Waxed
	strip.When, renew.When, wax.When = DueFull, WornOut, DueWax
	again := passing("again", 0)
	again.When, again.Loop, again.Back = CoatsLeft, true, 3
	p.Routes = []Route{{"part", []Step{laid, pull}}, {"care", []Step{check, strip, renew, wax, again}}, {"boat", nil}}
	p.Parts = []Part{{Name: "hull", Area: 20, Color: None, Zone: 1, Route: 0, Care: 1, Visible: true}}
	for _, m := range molds {
		if !m.Reserve {
			p.Parts[0].InUse++
		}
	}
	p.Colors = []Color{{Name: "white"}, {Name: "red"}}
	p.Models = []Model{{Name: "boat", Parts: []int16{0}, Boat: 2, Colors: []Share{{0, 1}}}}
	p.Molds = molds
	p.Wax = policy.Wax{Every: 1, Coats: 1}
	return s
}

// pullsAt compares the hours of pulls.
func (d *diary) pullsAt(t *testing.T, want ...float64) {
	t.Helper()
	for i, h := range want {
		if i >= len(d.pulls) {
			t.Errorf("%d pulls, want %d", len(d.pulls), len(want))
			return
		}
		if d.pulls[i].At != clock.FromHours(h) {
			t.Errorf("pull %d at %v h, want %v", i, d.pulls[i].At.Hours(), h)
		}
	}
}

// The rotation mold is out for its strip at 13 – 33 h; the reserve mold is
// waxed, works, and goes back at its first pull after the other is ready.
func TestReserveMoldIsCalledAndReturned(t *testing.T) {
	s := moldShop(4, 6, Mold{Since: 1}, Mold{Reserve: true})
	s.p.Demand.Full = true
	s.p.Strip = policy.Strip{Kind: policy.StripEvery, Every: 3, FullEvery: 1, FullCoats: 2}
	d := s.run(t)
	d.pullsAt(t, 6, 13, 20, 27, 34, 40, 47)
	for i, mold := range []int32{0, 0, 1, 1, 1, 0, 0} {
		if d.pulls[i].Mold != mold {
			t.Errorf("pull %d from mold %d, want %d", i, d.pulls[i].Mold, mold)
		}
	}
	if d.notes[record.ReserveIn] < 1 || d.notes[record.ReserveIn] != d.notes[record.ReserveOut] && d.notes[record.ReserveIn] != d.notes[record.ReserveOut]+1 {
		t.Errorf("%d calls, %d returns", d.notes[record.ReserveIn], d.notes[record.ReserveOut])
	}
}

// Many molds, strips and renewals: the rotation is looked at after every
// instant by the watcher.
func TestRotationNeverExceedsItsPlan(t *testing.T) {
	s := moldShop(200, 6, Mold{Since: -1, Turns: -1}, Mold{Since: -1, Turns: -1}, Mold{Since: -1, Turns: -1}, Mold{Reserve: true}, Mold{Reserve: true})
	s.p.Demand.Full = true
	s.p.Strip = policy.Strip{Kind: policy.StripEvery, Every: 3, FullEvery: 2, LightCoats: 2, FullCoats: 2}
	s.p.Life = policy.Life{Limit: 7, Resurfaces: 1}
	s.p.BreakIn = policy.BreakIn{Coats: []int{2, 1}, Hold: 12}
	d := s.run(t)
	if d.notes[record.ReserveIn] < 20 || d.notes[record.Retired] < 5 {
		t.Errorf("too little happened: %v", d.notes)
	}
}

// More molds in rotation than planned are told before the run.
func TestMoreMoldsThanTheRotationIsTold(t *testing.T) {
	s := moldShop(4, 6, Mold{}, Mold{})
	s.p.Demand.Full = true
	s.p.Parts[0].InUse = 1
	if faults := s.p.Check(); len(faults) != 1 || !strings.Contains(faults[0], "in rotation") {
		t.Errorf("Check: %q", faults)
	}
}

func (s *shop) banded(at float64, band int16) int32 {
	n := s.order(at)
	o := &s.p.Demand.Dated[n]
	o.Color, o.Band = 0, band
	return n
}

// A new mold waits for plain orders on its two turns of break-in, and takes
// the older order with a band after them.
func TestBreakInWaitsForAPlainOrder(t *testing.T) {
	s := moldShop(5, 6, Mold{New: true})
	s.p.BreakIn = policy.BreakIn{Coats: []int{2, 1}}
	s.p.Models[0].Bands = []Share{{1, 1}}
	s.p.Parts[0].Band = 1
	with := s.banded(0, 1)
	first, second := s.banded(10, None), s.banded(12, None)
	d := s.run(t)
	d.pullsAt(t, 16, 23, 30)
	for i, n := range []int32{first, second, with} {
		if d.pulls[i].Order != n {
			t.Errorf("pull %d of order %d, want %d", i, d.pulls[i].Order, n)
		}
	}
}

// With the limit of boats on the floor reached by boats with bands, a mold in
// break-in takes a plain order beyond it: else nothing would ever leave.
func TestBreakInGoesOnAtTheLimitOfTheFloor(t *testing.T) {
	s := moldShop(60, 6, Mold{New: true}, Mold{Part: 1})
	p := s.p
	p.Demand.Full, p.Demand.FloorLimit = true, 1
	p.BreakIn = policy.BreakIn{Coats: []int{2, 1}}
	p.Parts = append(p.Parts, p.Parts[0])
	p.Parts[0].InUse, p.Parts[1].InUse = 1, 1
	p.Parts[1].Index, p.Parts[1].Name = 1, "deck"
	p.Parts[0].Band = 0.8
	p.Models[0].Parts = []int16{0, 1}
	p.Models[0].Bands = []Share{{1, 1}}
	for seed := range uint64(20) {
		w, err := watch(p, steadyAir(), seed)
		if err != nil || len(w.faults) > 0 {
			t.Fatalf("seed %d: %v %q", seed, err, w.faults)
		}
		if w.shipped < 50 {
			t.Errorf("seed %d: %d boats in 60 days", seed, w.shipped)
		}
	}
}

// Nine of ten boats have bands: the plain one is further down the list than
// usual.
func TestBreakInLooksFarForAPlainOrder(t *testing.T) {
	s := moldShop(60, 6, Mold{New: true})
	p := s.p
	p.Demand.Full = true
	p.BreakIn = policy.BreakIn{Coats: []int{2, 1}}
	p.Models[0].Bands, p.Parts[0].Band = []Share{{1, 1}}, 0.9
	for seed := range uint64(40) {
		if w, err := watch(p, steadyAir(), seed); err != nil || w.shipped < 100 || len(w.faults) > 0 {
			t.Errorf("seed %d: %d boats, %v %q", seed, w.shipped, err, w.faults)
		}
	}
}

// An order whose only part was thrown away is on the floor and not given up.
func TestBegunOrderIsNotCancelledAfterScrap(t *testing.T) {
	s := moldShop(2, 6, Mold{})
	p := s.p
	p.Demand.CancelLate = 2 * clock.Hour
	d := defect.Default()
	d.Each = [defect.Count]defect.Law{defect.Sticking: {Chance: 1, Most: 1, Scrap: 1, Found: 1, Hours: constant(5)}}
	d.MoldHours = constant(5)
	p.Defects = &d
	p.Wax.Every = 1
	n := s.order(0)
	p.Demand.Dated[n].Color, p.Demand.Dated[n].Due = 0, clock.FromHours(4.5)
	out := s.run(t) // pulled and thrown away at 6:00, waxed until 7:00; given up at 6:30 it would be
	if out.notes[record.OrderCancelled] != 0 || out.notes[record.Scrapped] < 2 {
		t.Errorf("%d cancelled, %d thrown away", out.notes[record.OrderCancelled], out.notes[record.Scrapped])
	}
}

// Orders always waiting, no limits: hulls run ahead of decks until the book is
// full, and go on when decks catch up.
func TestFastHullsGoOnWhenDecksCatchUp(t *testing.T) {
	s := moldShop(60, 2, Mold{}, Mold{}, Mold{}, Mold{Part: 1})
	p := s.p
	p.Demand.Full = true
	slow := passing("lay", 5)
	slow.Verb = LaborEnded
	p.Routes = append(p.Routes, Route{"deck", []Step{slow, p.Routes[0].Steps[1]}})
	p.Parts = append(p.Parts, p.Parts[0])
	p.Parts[0].InUse, p.Parts[1].InUse = 3, 1
	p.Parts[1].Index, p.Parts[1].Name, p.Parts[1].Route = 1, "deck", 3
	p.Models[0].Parts = []int16{0, 1}
	d := s.run(t)
	if len(d.ships) != 60*24/6 { // a deck every six hours, wax included
		t.Errorf("%d boats in 60 days", len(d.ships))
	}
}
