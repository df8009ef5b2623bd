package scenarios

import (
	"testing"

	"moldturn/scenarios/floor"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// demoFloor reads the bundled floor for the bundled scenario.
func demoFloor(t *testing.T) (*Scenario, *floor.Floor) {
	t.Helper()
	data, ok := BundledFile("fenwater")
	if !ok {
		t.Fatal("no scenario fenwater")
	}
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	dir, ok := BundledFloor("fenwater-floor")
	if !ok {
		if dir, ok = BundledFloor("fenwater"); !ok {
			t.Fatal("no floor fenwater")
		}
	}
	r := floor.Read(dir, s.Base.Plan(), floor.Options{Name: "fenwater"})
	if r.Floor == nil {
		t.Fatal("no floor can be made")
	}
	return s, r.Floor
}

// flow counts boats from facts.
type flow struct {
	record.Nothing
	first             clock.Time
	begun, shipped    int
	arrived, scrapped int
}

func (f *flow) see(t clock.Time) {
	if f.first == 0 || t < f.first {
		f.first = t
	}
}
func (f *flow) Use(u *record.Use)   { f.see(u.From) }
func (f *flow) Ship(s *record.Ship) { f.shipped++ }
func (f *flow) Note(n *record.Note) {
	f.see(n.At)
	switch n.Kind {
	case record.BoatBegun:
		f.begun++
	case record.OrderArrived:
		f.arrived++
	case record.Scrapped:
		f.scrapped++
	}
}

// The bundled floor starts: everything on it is in the run from the first
// instant, facts begin with the morning, and boats are shipped in the weeks that
// follow.
func TestDemoFloorStarts(t *testing.T) {
	s, f := demoFloor(t)
	st, complaints := s.StartFrom(f, FloorOptions{Weeks: 3})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	for _, n := range st.Notices {
		t.Logf("%s: %s [%s]: %s", n.Place, n.Message, n.Rule, n.Effect)
	}
	plan := st.Plant.Plan()
	onFloor := 0
	for _, o := range st.Orders {
		if o.Begun {
			onFloor++
		}
	}
	t.Logf("morning %v; %d molds, %d orders of which %d begun, %d pieces of work, %d out, %d down, %d days", f.Morning, len(st.Start.Molds), len(st.Start.Orders), onFloor, len(st.Start.Work), len(st.Start.Out), len(st.Start.Down), len(st.Start.Days))
	if len(st.Start.Work) < len(f.Work)-2 || len(st.Start.Orders) < len(f.Orders) {
		t.Errorf("%d of %d pieces of work, %d of %d orders", len(st.Start.Work), len(f.Work), len(st.Start.Orders), len(f.Orders))
	}
	air, err := st.Plant.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	seen := &flow{}
	r, err := sim.BeginFrom(plan, air, st.Start, 1, 0, seen)
	if err != nil {
		t.Fatal(err)
	}
	if seen.begun != onFloor {
		t.Errorf("%d boats on the floor at once, %d are listed as begun", seen.begun, onFloor)
	}
	if err := r.Finish(); err != nil {
		t.Fatal(err)
	}
	if seen.first != st.Start.At || st.Start.At != f.Morning.Instant(plan.Start) {
		t.Errorf("facts begin at %v, the morning is %v", seen.first, st.Start.At)
	}
	t.Logf("%d boats begun, %d shipped, %d parts thrown away, %d orders", seen.begun, seen.shipped, seen.scrapped, seen.arrived)
	if seen.shipped < 9 || seen.shipped > 45 { // three weeks of a plant that ships about nine a week
		t.Errorf("%d boats shipped in three weeks", seen.shipped)
	}
}
