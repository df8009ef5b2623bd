package floor_test

import (
	"slices"
	"sync"
	"testing"

	"moldturn/scenarios"
	"moldturn/scenarios/floor"
	"moldturn/sim"
)

// plan is that of the bundled scenario, made once.
var plan = sync.OnceValues(func() (*sim.Plan, error) {
	data, _ := scenarios.BundledFile("fenwater")
	s, complaints := scenarios.Load("fenwater.yaml", data, scenarios.Options{Years: 1})
	if len(complaints) > 0 {
		return nil, complaints
	}
	return s.Base.Plan(), nil
})

func fenwater(t testing.TB) *sim.Plan {
	t.Helper()
	p, err := plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// demo reads the floor that comes with the program.
func demo(t testing.TB) *floor.Reading {
	t.Helper()
	dir, ok := scenarios.BundledFloor("fenwater")
	if !ok {
		t.Fatal("no floor fenwater")
	}
	r := floor.Read(dir, fenwater(t), floor.Options{Name: "fenwater"})
	if r.Floor == nil {
		t.Fatalf("no floor: %v", r.Notices)
	}
	return r
}

// The demo's floor fits the demo's plant: each of its molds is there once, each
// part in a mold is in one of its kind, and orders know what is begun.
func TestDemoFits(t *testing.T) {
	r, p := demo(t), fenwater(t)
	if len(r.Floor.Molds) != len(p.Molds) {
		t.Errorf("%d molds, the plant has %d", len(r.Floor.Molds), len(p.Molds))
	}
	var stands []int16
	for i, m := range r.Floor.Molds {
		if m.Plan == sim.None || slices.Contains(stands, m.Plan) || p.Molds[m.Plan].Part != m.Part {
			t.Errorf("mold %s stands for mold %d of the plan", m.ID, m.Plan)
		}
		stands = append(stands, m.Plan)
		if (m.State == floor.Occupied) != (m.Work != floor.Unknown) || m.Work != floor.Unknown && r.Floor.Work[m.Work].Mold != i {
			t.Errorf("mold %s and its part: %+v", m.ID, m)
		}
	}
	begun := 0
	for _, w := range r.Floor.Work {
		if w.Mold != floor.Unknown && r.Floor.Molds[w.Mold].Part != w.Part {
			t.Errorf("%s is in a mold of another part", w.Serial)
		}
		if w.Order == floor.Unknown || !r.Floor.Orders[w.Order].Begun || r.Floor.Orders[w.Order].Model != w.Model {
			t.Errorf("%s and its order: %+v", w.Serial, w)
		}
		if w.Started.After(r.Floor.Morning) {
			t.Errorf("%s began in the future", w.Serial)
		}
	}
	for _, o := range r.Floor.Orders {
		if o.Begun {
			begun++
		}
	}
	if begun != 16 || len(r.Floor.Work) > p.Demand.FloorLimit*2 {
		t.Errorf("%d orders begun, %d pieces of work", begun, len(r.Floor.Work))
	}
	if got := r.Floor.Morning.String(); got != "2027-05-11" {
		t.Errorf("the morning is %s", got)
	}
}

// The dirt that is in the demo on purpose is found.
func TestDemoDirt(t *testing.T) {
	r := demo(t)
	for _, rule := range []string{"weeks missing", "since strip over total", "unknown model", "order listed twice", "part of a boat in assembly", "impossible sequence",
		"unknown color", "unknown place", "not a date", "blank means the same", "gel window over", "late already", "the morning", "no change"} {
		if !slices.ContainsFunc(r.Notices, func(n floor.Notice) bool { return n.Rule == rule }) {
			t.Errorf("no notice of %q", rule)
		}
	}
	for _, n := range r.Notices {
		if n.Level > floor.Told && (n.Effect == "" || n.Place.File == "") {
			t.Errorf("no effect or place: %+v", n)
		}
	}
}
