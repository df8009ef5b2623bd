package ahead

import (
	"slices"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/finish"
	"moldturn/sim/record"
)

// booths is two booths with a white gun, a gun for other colors and a pot each.
func booths() *Setup {
	unit := []sim.Gun{{Name: "white", Color: 0, Flush: 15 * clock.Minute}, {Name: "color", Color: sim.None, Flush: 15 * clock.Minute}, {Name: "pot", Pot: true, Color: sim.None, Flush: 5 * clock.Minute}}
	p := &sim.Plan{Places: []sim.Place{{Name: "booth", Count: 2, Guns: [][]sim.Gun{unit, unit}}}, Colors: []sim.Color{{Name: "white", Look: 2}, {Name: "sand", Look: 1}, {Name: "navy", Look: 0}, {Name: "red", Look: 0}},
		Finish: finish.Params{Colors: []finish.Color{{Haze: 1}, {Haze: 0.6}, {Haze: 0.02}}}}
	return &Setup{Plan: p, Start: &sim.Start{}}
}

func spray(mold int32, color, accent int16) Spray {
	work := &Task{Doing: record.Spraying, Worked: clock.Hour, Over: true, Began: clock.Time(mold) * clock.Hour, Mold: mold}
	return Spray{Thing: &Thing{Mold: mold, In: []*Task{work}}, Color: color, Accent: accent}
}

// By hand: navy, sand, navy, sand through one booth whose gun holds what nobody
// knows flush four times as they come, twice in the order of colors, sand first.
// White has its own gun and never flushes.
func TestColorOrder(t *testing.T) {
	g := newGuns(booths())
	d := &BoothDay{Units: []int16{0}}
	list := []Spray{spray(1, 2, sim.None), spray(2, 1, sim.None), spray(3, 0, sim.None), spray(4, 2, sim.None), spray(5, 1, sim.None)}
	if _, n, time := g.copy().all(d, list, false); n != 4 || time != clock.Hour {
		t.Errorf("as they come: %d flushes, %v, want 4 in an hour", n, time)
	}
	g.sort(d, list)
	var molds []int32
	for _, s := range list {
		molds = append(molds, s.Mold)
	}
	for i, want := range []int32{3, 2, 5, 1, 4} {
		if molds[i] != want {
			t.Fatalf("order of molds %v, want 3 2 5 1 4", molds)
		}
	}
	if _, n, time := g.all(d, list, false); n != 2 || time != 30*clock.Minute {
		t.Errorf("in the order of colors: %d flushes, %v, want 2 in 30 minutes", n, time)
	}
	again := []Spray{spray(1, 1, sim.None), spray(2, 2, sim.None)}
	if g.sort(d, again); again[0].Color != 2 {
		t.Error("navy is in the gun and does not come first")
	}
}

// Two booths share four parts of an hour; a band goes through the pot.
func TestBoothsShare(t *testing.T) {
	g := newGuns(booths())
	d := &BoothDay{Units: []int16{0, 1}}
	list := []Spray{spray(1, 0, sim.None), spray(2, 0, sim.None), spray(3, 0, 3), spray(4, 0, sim.None)}
	lists, n, time := g.all(d, list, false)
	if len(lists[0]) != 2 || len(lists[1]) != 2 || n != 1 || time != 5*clock.Minute {
		t.Errorf("%d and %d parts, %d flushes, %v; want 2, 2, and the pot once", len(lists[0]), len(lists[1]), n, time)
	}
	if lists, n, _ = g.all(d, []Spray{spray(1, 1, sim.None), spray(2, 1, sim.None), spray(3, 1, sim.None)}, true); n != 1 || len(lists[0])+len(lists[1]) != 3 {
		t.Errorf("%d flushes where they are avoided, want 1", n)
	}
}

// A day belongs to what most futures do on it: three of five on day 1, so chance
// 0.6; the middle of those is 30 h.
func TestLikely(t *testing.T) {
	x := &Thing{In: make([]*Task, 5)}
	for i, h := range []clock.Time{26, 30, 40, 50} {
		x.In[i] = &Task{Began: h * clock.Hour, Order: int32(i % 2)}
	}
	x.likely(0)
	if x.Day != 1 || x.Chance < 0.599 || x.Chance > 0.601 || x.OnDay(0) != 30*clock.Hour {
		t.Errorf("day %d, chance %v, at %v", x.Day, x.Chance, x.OnDay(0))
	}
	if v, share := x.Most(func(t *Task) int { return int(t.Order) }); v != 0 || share != 0.5 {
		t.Errorf("order %d in %v", v, share)
	}
	if v, share := most(nil); v != 0 || share != 0 {
		t.Errorf("most of nothing: %d in %v", v, share)
	}
}

// Stretches of one unit that meet are one; others stay apart.
func TestDowns(t *testing.T) {
	p := booths().Plan
	got := downs(p, []sim.StartDown{{Unit: 1, From: 10, To: 20}, {Unit: 0, From: 50, To: 60}}, []sim.StartDown{{Unit: sim.None, From: 15, To: 30}})
	want := map[sim.StartDown]bool{{Unit: 1, From: 10, To: 30}: true, {Unit: 0, From: 50, To: 60}: true, {Unit: 0, From: 15, To: 30}: true}
	for _, d := range got {
		if !want[d] {
			t.Errorf("unexpected %+v", d)
		}
		delete(want, d)
	}
	if len(want) > 0 {
		t.Errorf("missing %v of %v", want, got)
	}
}

// A day that a craft works as an extra one is listed once when all work it.
func TestDays(t *testing.T) {
	got := days([]sim.StartDay{{From: 4, To: 6, Extra: true, Craft: 2}, {From: 9, To: 9, Craft: sim.None}},
		[]sim.StartDay{{From: 5, To: 5, Extra: true, Craft: sim.None}, {From: 6, To: 6, Extra: true, Craft: 2}})
	want := []sim.StartDay{{From: 4, To: 4, Extra: true, Craft: 2}, {From: 6, To: 6, Extra: true, Craft: 2}, {From: 9, To: 9, Craft: sim.None}, {From: 5, To: 5, Extra: true, Craft: sim.None}}
	if !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}
