package scenarios

import (
	"bytes"
	"context"
	"testing"

	"moldturn/sim/study"
)

// bundledScenario loads one of them for one counted year.
func bundledScenario(t *testing.T, name string) *Scenario {
	t.Helper()
	data, ok := BundledFile(name)
	if !ok {
		t.Fatalf("no scenario %q", name)
	}
	s, complaints := Load(name+".yaml", data, Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatalf("%s:\n%v", name, complaints)
	}
	return s
}

// Every scenario that comes with the program is without a mistake and says in a
// note what it is; the small one stays small.
func TestBundledScenarios(t *testing.T) {
	names := Bundled()
	if len(names) < 3 {
		t.Errorf("bundled are %q", names)
	}
	for _, name := range names {
		if s := bundledScenario(t, name); !s.Base.Value.At("note").Given() {
			t.Errorf("%s has no note", name)
		}
	}
	data, _ := BundledFile("small-shop")
	if n := bytes.Count(data, []byte("\n")); n > 75 {
		t.Errorf("small-shop has %d lines, more than 75", n)
	}
}

// The sizes that their notes promise. The plants are invented; a change of the
// model may ask for other crews, not for wider ranges.
func TestBundledPlantsAreOfTheirSize(t *testing.T) {
	for _, x := range []struct {
		name        string
		low, high   float64 // boats a week
		least, most float64 // load of the crafts over the year
	}{
		{"small-shop", 1.2, 2.2, 0, 1},
		{"ten-models", 30, 40, 0.5, 0.95},
	} {
		s := bundledScenario(t, x.name)
		runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: s.Study()[:1], Replications: 1, Seed: 1, Workers: 1})
		if err != nil {
			t.Fatal(err)
		}
		m, _ := study.MetricNamed("boats_per_week")
		if boats, ok := m.Of(&runs[0].Outcomes[0]); !ok || boats < x.low || boats > x.high {
			t.Errorf("%s ships %.2f boats a week, want %v to %v", x.name, boats, x.low, x.high)
		}
		for _, l := range runs[0].Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11) {
			if crafts := s.Base.Plan().Crafts; l.Pool < len(crafts) && (l.Load < x.least || l.Load > x.most) {
				t.Errorf("%s: %s is busy %.2f of its hours, want %v to %v", x.name, crafts[l.Pool].Name, l.Load, x.least, x.most)
			}
		}
	}
}
