package scenarios

import (
	"strings"
	"testing"

	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// loaded reads a bundled scenario with settings, "hold.clock=90 h".
func loaded(t *testing.T, name string, sets ...string) (*Scenario, Complaints) {
	t.Helper()
	data, ok := BundledFile(name)
	if !ok {
		t.Fatalf("no scenario %s", name)
	}
	o := Options{Years: -1}
	for _, set := range sets {
		ch, faults := ParseChange("--set", set)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		o.Sets = append(o.Sets, ch)
	}
	return Load(name, data, o)
}

// What only a setting makes wrong is not blamed on the file alone.
func TestSettingsAreNamedWhereTheFileIsRight(t *testing.T) {
	for set, want := range map[string]string{
		"hold.clock=1000 h":              "with --set hold.clock = 1000 h: hold.most is shorter than hold.clock",
		"places.booth.count=0":           "with --set places.booth.count = 0: ",
		"crafts.lamination.people.day=0": "with --set crafts.lamination.people.day = 0: ",
		"hold.degree=97 %":               "no part ever gets as hard as hold.degree asks",
		"hold.most=1 h":                  "hold.most is shorter than hold.clock",
	} {
		_, faults := loaded(t, "small-shop", set)
		if len(faults) == 0 {
			t.Errorf("%s: no complaint", set)
		}
		for _, c := range faults {
			if !strings.HasPrefix(c.Message, want) || strings.HasPrefix(c.File, "--set") == strings.HasPrefix(want, "with") {
				t.Errorf("%s: %s: %s, want %s", set, c.File, c.Message, want)
			}
		}
	}
}

func TestAlternativeMayNotHaveTheNameOfThePlant(t *testing.T) {
	s, _ := loaded(t, "small-shop")
	base, name := s.Alternatives[0].Name, s.Alternatives[1].Name
	for _, set := range []string{"base_name=" + name, `alternatives."` + base + `"={hold.clock: 20 h}`} {
		_, faults := loaded(t, "small-shop", set)
		if len(faults) != 1 || !strings.Contains(faults[0].Message, "another name") {
			t.Errorf("%s: %v", set, faults)
		}
	}
}

// Every input of the demo takes its own value back as it is shown, and every law
// of chance another one, and all can be listed then.
func TestEveryInputCanBeGivenAndListed(t *testing.T) {
	s, faults := loaded(t, "fenwater")
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	var own []Change
	laws := 0
	for _, in := range s.Base.Value.Assumptions(unit.Metric) {
		if in.Value == "" || in.Path == "version" {
			continue
		}
		own = append(own, change(t, in.Path, in.Value))
		if other := map[string]string{param.Dist.String(): "2 h", param.NumberDist.String(): "2"}[in.Kind]; other != "" {
			laws++
			canBeListed(t, s, change(t, in.Path, other))
		}
	}
	canBeListed(t, s, own...)
	if laws < 10 || len(own) < 500 {
		t.Errorf("only %d inputs, %d of them laws of chance", len(own), laws)
	}
}

func change(t *testing.T, path, value string) Change {
	t.Helper()
	ch, faults := ParseChange("--set", path+"="+value)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return ch
}

// canBeListed changes a scenario and lists its inputs.
func canBeListed(t *testing.T, s *Scenario, changes ...Change) {
	t.Helper()
	doc, faults := s.tree.Apply(s.doc, changes...)
	v, more := s.tree.Bind(doc)
	if all := append(faults, more...); len(all) > 0 {
		t.Errorf("%s: %v", changes[0], all)
	} else if len(v.Assumptions(unit.Metric)) < 500 {
		t.Errorf("%s: hardly anything is listed", changes[0])
	}
}

func TestAlternativesShareCalendarAndCounts(t *testing.T) {
	for _, change := range []string{"version: 1", "start: 2028-01-03", "run.replications: 3", "name: other"} {
		_, faults := loaded(t, "small-shop", "alternatives.other={hold.clock: 20 h, "+change+"}")
		if len(faults) != 1 || !strings.Contains(faults[0].Message, "an alternative cannot change") {
			t.Errorf("%s: %v", change, faults)
		}
	}
}
