package floor_test

import (
	"testing"

	"moldturn/scenarios"
	"moldturn/scenarios/floor"
	"moldturn/sim"
)

// fenwater is the plan of the bundled scenario.
func fenwater(t testing.TB) *sim.Plan {
	t.Helper()
	data, ok := scenarios.BundledFile("fenwater")
	if !ok {
		t.Fatal("no scenario fenwater")
	}
	s, complaints := scenarios.Load("fenwater.yaml", data, scenarios.Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	return s.Base.Plan()
}

func TestDemo(t *testing.T) {
	dir, ok := scenarios.BundledFloor("fenwater")
	if !ok {
		t.Fatal("no floor fenwater")
	}
	r := floor.Read(dir, fenwater(t), floor.Options{Name: "fenwater"})
	for _, n := range r.Notices {
		t.Logf("%s: %s: %s [%s]\n   allowed: %s\n   hint: %s\n   effect: %s", n.Place, n.Level, n.Message, n.Rule, n.Allowed, n.Hint, n.Effect)
	}
	for _, s := range r.Sheets {
		t.Logf("%s %s: %d rows, %d used %d older %d dropped %d skipped", s.Place, s.Kind, len(s.Rows), s.Count(floor.Used), s.Count(floor.Older), s.Count(floor.Dropped), s.Count(floor.Skipped))
	}
	if r.Floor == nil {
		t.Fatal("no floor")
	}
	t.Logf("%+v", r.Floor.Morning)
}
