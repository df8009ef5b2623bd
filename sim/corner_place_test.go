package sim

import (
	"errors"
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// fails adds a failure of unit 0 of a place, always after up hours and for
// repair hours.
func (s *shop) fails(place int16, up, repair float64, working bool) {
	s.p.Failures = append(s.p.Failures, Failure{Place: place, Gun: None, Up: draw.Compile(constant(up)), Repair: draw.Compile(constant(repair)), WhileWorking: working})
}

func (s *shop) inPlace(c, place int16, hours float64) Step {
	step := labor(c, 1, hours, Pause)
	step.Take, step.Free = []int16{place}, []int16{place}
	return step
}

func TestFailedUnitPausesAndResumesWithTheWorkLeft(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	stall := s.place("stall", 1)
	s.fails(stall, 2, 1, false)
	a := s.task(0, 0, s.inPlace(c, stall, 5))
	s.run(t).want(t, a, "works 1 0:00-2:00, place down 2:00-3:00, works 1 3:00-5:00, place down 5:00-6:00, works 1 6:00-7:00")
}

// A hoist is used while work runs and given back when it ends, or stops with
// the shift.
func TestHoistIsGivenBack(t *testing.T) {
	s := newShop(3)
	day, all := s.craft(crewOf(1, s.daily(6, 14))), s.craft(crewOf(2, s.daily(0, 24)))
	hoist := s.place("hoist", 1)
	s.p.Places[hoist].Kind = Hoist
	lift := func(craft int16, hours float64) Step {
		step := labor(craft, 1, hours, Pause)
		step.Use = []int16{hoist}
		return step
	}
	a := s.task(12, 0, lift(day, 4)) // 2 h are left at 14:00
	b := s.task(13, 0, lift(all, 3))
	e := s.task(13, 0, lift(all, 1))
	d := s.run(t)
	d.want(t, a, "works 1 12:00-14:00, off shift 14:00-30:00, works 1 30:00-32:00")
	d.want(t, b, "no hoist 13:00-14:00, works 1 14:00-17:00")
	d.want(t, e, "no hoist 13:00-17:00, works 1 17:00-18:00")
}

func TestFailureCountsWorkingTimeOnly(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	stall := s.place("stall", 1)
	s.fails(stall, 2, 1, true)
	a := s.task(1, 0, s.inPlace(c, stall, 1))
	b := s.task(5, 0, s.inPlace(c, stall, 2))
	d := s.run(t)
	d.want(t, a, "works 1 1:00-2:00")
	d.want(t, b, "works 1 5:00-6:00, place down 6:00-7:00, works 1 7:00-8:00")
}

// Two causes of failure of one unit overlap: it is down until both are
// repaired, and counts once.
func TestTwoFailuresOfOneUnitOverlap(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	stall := s.place("stall", 1)
	s.fails(stall, 2, 3, false) // down 2 – 5, 7 – 10
	s.fails(stall, 4, 7, false) // down 4 – 11
	a := s.task(1, 0, s.inPlace(c, stall, 2))
	d := s.run(t)
	d.want(t, a, "works 1 1:00-2:00, place down 2:00-11:00, works 1 11:00-12:00")
	for _, u := range d.uses {
		if u.Pool == 1 && (u.Used < 0 || u.Used > u.Capacity || u.Capacity < 0 || u.Capacity > 1) {
			t.Errorf("stall: %+v", u)
		}
	}
}

func TestTwoFailuresOfOneFreeUnitOverlap(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	stall := s.place("stall", 1)
	s.fails(stall, 2, 3, false)
	s.fails(stall, 4, 7, false)
	a := s.task(4.5, 0, s.inPlace(c, stall, 1))
	s.run(t).want(t, a, "no free place 4:30-11:00, works 1 11:00-12:00")
}

// A place alone that works pauses and goes on, too, and a hoist is given back.
func TestFailedUnitWithoutPeople(t *testing.T) {
	s := newShop(1)
	stall, hoist := s.place("stall", 1), s.place("hoist", 1)
	s.p.Places[hoist].Kind = Hoist
	s.fails(stall, 2, 1, false)
	step := s.inPlace(None, stall, 3)
	step.Use = []int16{hoist}
	other := labor(None, 1, 2, Pause)
	other.Use = []int16{hoist}
	a := s.task(0, 0, step)
	b := s.task(1, 0, other)
	d := s.run(t)
	d.want(t, a, "works 0 0:00-2:00, place down 2:00-3:00, no hoist 3:00-4:00, works 0 4:00-5:00")
	d.want(t, b, "no hoist 1:00-2:00, works 0 2:00-4:00")
}

// twoParts is a boat of two parts without molds that are stored at the end.
func twoParts(s *shop, store int16, boat ...Step) {
	p := s.p
	keep := Step{Name: "store", Craft: None, Pace: ByClock, Take: []int16{store}}
	keep.SetTime(constant(0))
	first := labor(None, 1, 1, Pause)
	second := labor(None, 1, 3, Pause)
	p.Routes = []Route{{"first", []Step{first, keep}}, {"second", []Step{second, keep}}, {"boat", boat}}
	p.Parts = []Part{{Name: "hull", Color: None, Route: 0, Care: None}, {Name: "deck", Index: 1, Color: None, Route: 1, Care: None}}
	p.Models = []Model{{Name: "boat", Parts: []int16{0, 1}, Boat: 2}}
}

func (s *shop) order(at float64) int32 {
	s.p.Demand.Dated = append(s.p.Demand.Dated, DatedOrder{Color: None, Band: None, Arrives: clock.FromHours(at), Due: clock.Never})
	return int32(len(s.p.Demand.Dated) - 1)
}

// Both parts of a boat leave the store when its assembly begins.
func TestBoatLeavesTheStoreWithAllItsParts(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(2, s.daily(0, 24)))
	store := s.place("store", 2)
	join := labor(c, 1, 5, Pause)
	join.Swap = []int16{store}
	twoParts(s, store, join)
	a, b := s.order(0), s.order(4)
	d := s.run(t)
	if d.shipped(a) != 8*clock.Hour || d.shipped(b) != 12*clock.Hour {
		t.Errorf("shipped at %v and %v, want 8 h and 12 h", d.shipped(a), d.shipped(b))
	}
}

// A store of two, taken by the hulls of two orders, can take no deck.
func TestCircleIsReportedWithItsHolders(t *testing.T) {
	s := newShop(60)
	store := s.place("store", 2)
	twoParts(s, store)
	s.order(0)
	s.order(0)
	_, err := watch(s.p, steadyAir(), 1)
	var d *Deadlock
	if !errors.As(err, &d) {
		t.Fatalf("got %v", err)
	}
	for _, part := range []string{"hull of order 0", "deck of order 1", `holds "store"`, `waits for "store"`, "waits for its mates"} {
		if !strings.Contains(err.Error(), part) {
			t.Errorf("%q is not in %v", part, err)
		}
	}
	if d.At != 28*clock.Day || len(d.Waits) != 4 {
		t.Errorf("at %v: %+v", d.At, d.Waits)
	}
	if err := Simulate(s.p, steadyAir(), 1, 0, record.Nothing{}); !errors.As(err, &d) {
		t.Errorf("Simulate gives %v", err)
	}
}

// Two jobs that hold one place each and want the other's.
func TestCircleOfTwoPlaces(t *testing.T) {
	s := newShop(30)
	a, b := s.place("bay", 1), s.place("oven", 1)
	move := func(from, to int16) []Step {
		first, second := labor(None, 1, 2, Pause), labor(None, 1, 2, Pause)
		first.Take, second.Take, second.Swap = []int16{from}, []int16{to}, []int16{from}
		return []Step{first, second}
	}
	s.task(0, 0, move(a, b)...)
	s.task(1, 0, move(b, a)...)
	_, err := watch(s.p, steadyAir(), 1)
	if err == nil || !strings.Contains(err.Error(), `holds "bay" and waits for "oven"`) || !strings.Contains(err.Error(), `holds "oven" and waits for "bay"`) {
		t.Errorf("got %v", err)
	}
	s.p.Places[a].Count = 2 // room to step aside
	if w, err := watch(s.p, steadyAir(), 1); err != nil || w.shipped != 2 {
		t.Errorf("with two bays: %v, %d shipped", err, w.shipped)
	}
}

// What is reported stays so: nothing of the circle moves again, however long
// the run goes on.
func TestReportedCirclesNeverOpen(t *testing.T) {
	airs := randomAirs()
	circles := 0
	for n := range 120 {
		m := randomPlan(n)
		w, err := watch(m.p, airs[m.air], uint64(n))
		var d *Deadlock
		if !errors.As(err, &d) {
			continue
		}
		circles++
		r := w.r
		before := r.deadlock()
		if err := r.clk.Run(r.clk.Now()+60*clock.Day, w); err != nil {
			t.Fatal(err)
		}
		after := r.deadlock()
		if after == nil || len(after.Waits) < len(before.Waits) {
			t.Errorf("plant %d: %d in the circle, later %v", n, len(before.Waits), after)
			continue
		}
		for _, x := range before.Waits {
			found := false
			for _, y := range after.Waits {
				found = found || x.Job == y.Job && x.For == y.For
			}
			if !found {
				t.Errorf("plant %d: %+v has moved on", n, x)
			}
		}
	}
	if circles == 0 {
		t.Error("no plant blocked itself")
	}
}

// booth adds a booth with one pumped gun set and a pot gun.
func (s *shop) booth() int16 {
	booth := s.place("booth", 1)
	s.p.Colors = []Color{{Name: "white"}, {Name: "red"}}
	s.p.Places[booth].Kind = Booth
	s.p.Places[booth].Guns = [][]Gun{{{Name: "pumped", Color: None, Flush: clock.Hour / 4}, {Name: "pot", Pot: true, Color: None, Flush: clock.Hour / 12}}}
	return booth
}

// A gun set that fails stops the spraying it does, and no other work in the
// booth; a step that needs it waits.
func TestFailedGunSetStopsItsSpraying(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	booth := s.booth()
	s.p.Failures = []Failure{{Place: booth, Gun: 0, Up: draw.Compile(constant(2)), Repair: draw.Compile(constant(1))}}
	spray := s.inPlace(c, booth, 3)
	spray.Spray = SprayBase
	a := s.task(1, 0, spray)
	masking := s.inPlace(c, booth, 2)
	b := s.task(7, 0, masking) // the gun is down 8:00 – 9:00
	e := s.task(10.9, 0, spray)
	d := s.run(t)
	d.want(t, a, "works 1 1:00-2:00, no gun set 2:00-3:00, works 1 3:00-5:00")
	d.want(t, b, "works 1 7:00-9:00")
	d.want(t, e, "works 1 10:54-11:00, no gun set 11:00-12:00, works 1 12:00-14:00, no gun set 14:00-15:00, works 1 15:00-15:54")
}

// The gun is flushed when its color changes, and only then.
func TestFlushes(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	spray := s.inPlace(c, s.booth(), 1)
	spray.Spray = SprayBase
	var tasks []int32
	for i, color := range []int16{0, 0, 1, 0} {
		n := s.task(float64(2*i), 0, spray)
		s.p.Demand.Dated[n].Color = color
		tasks = append(tasks, n)
	}
	d := s.run(t)
	d.want(t, tasks[0], "works 1 0:00-1:00")
	d.want(t, tasks[1], "works 1 2:00-3:00")
	d.want(t, tasks[2], "works 1 4:00-5:15")
	d.want(t, tasks[3], "works 1 6:00-7:15")
	if d.notes[record.Flushed] != 2 {
		t.Errorf("%d flushes", d.notes[record.Flushed])
	}
}
