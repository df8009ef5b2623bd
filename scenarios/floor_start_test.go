package scenarios

import (
	"fmt"
	"os"
	"strings"
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

// A sheet with thirty kinds of dirt starts too, or is complained about row by
// row; every option lays out a plan that runs, and nothing of the scenario
// changes.
func TestDirtyFloorStarts(t *testing.T) {
	s, _ := demoFloor(t)
	before := s.Base.Plan().Length
	r := floor.Read(os.DirFS("floor/testdata/thirty"), s.Base.Plan(), floor.Options{Name: "thirty"})
	if r.Floor == nil {
		t.Fatal("no floor can be made of it")
	}
	for _, o := range []FloorOptions{{Weeks: 1}, {Weeks: 3, BookOnly: true}, {Weeks: 60}} {
		st, complaints := s.StartFrom(r.Floor, o)
		if len(complaints) > 0 {
			t.Fatal(complaints)
		}
		for _, plan := range []*sim.Plan{st.Plant.Capacity, st.Plant.Dated} {
			if plan == nil {
				continue
			}
			air, err := st.Plant.Air(1, 0)
			if err != nil {
				t.Fatal(err)
			}
			seen := &flow{}
			if err := sim.SimulateFrom(plan, air, st.Start, 1, 0, seen); err != nil {
				t.Fatal(err)
			}
			if want := st.Start.At + clock.Time(o.Weeks)*clock.Week; plan.Length > want || plan.Length < want-clock.Day {
				t.Errorf("%+v: the run ends at %v, begun at %v", o, plan.Length, st.Start.At)
			}
			if o.BookOnly && seen.arrived != len(st.Start.Orders) {
				t.Errorf("%d orders, %d are in the book", seen.arrived, len(st.Start.Orders))
			}
		}
	}
	if s.Base.Plan().Length != before {
		t.Error("the scenario has changed")
	}
}

// What cannot be begun from is told with the place of its row.
func TestStartComplainsByPlace(t *testing.T) {
	s, f := demoFloor(t)
	bad := *f
	bad.Out = append([]floor.Absent{}, f.Out...)
	bad.Out[0].Craft = 99
	_, complaints := s.StartFrom(&bad, FloorOptions{Weeks: 1})
	want := fmt.Sprintf("%s:%d:", bad.Out[0].Place.File, bad.Out[0].Place.Row)
	if len(complaints) != 1 || !strings.HasPrefix(complaints[0].Place(), want) || !strings.Contains(complaints[0].Message, "no craft 99") {
		t.Errorf("%v, want a complaint at %s", complaints, want)
	}
}
