package scenarios

import (
	"encoding/json"
	"strings"
	"testing"

	"moldturn/sim/param/unit"

	"github.com/google/jsonschema-go/jsonschema"
	"go.yaml.in/yaml/v4"
)

func TestHash(t *testing.T) {
	_, _, root := sample(t, sampleFile)
	for _, same := range []struct{ old, new string }{
		{"clock: 90 min", "clock: 1.5 h"},
		{"hold: {clock: 90 min}", "hold:\n  rule: clock   # as the default says\n  clock: 5400 s"},
		{"8 - 10 - 16 h", "pert(8 h, 600 min, 16 h)"},
		{"start: 2027-01-04\n", ""}, // moved to the end below
	} {
		text := strings.Replace(sampleFile, same.old, same.new, 1)
		if same.new == "" {
			text += same.old
		}
		if _, _, other := sample(t, text); other.Hash() != root.Hash() {
			t.Errorf("%q instead of %q changes the hash", same.new, same.old)
		}
	}
	for _, differs := range []struct{ old, new string }{
		{"Rush 23", "Rush 24"}, {"people: 4", "people: 5"}, {"short hold", "shorter hold"},
		{"hold.clock: 16 h", "hold.clock: 960 min"}, {"name: Small plant", "name: small plant"},
	} {
		text := strings.Replace(sampleFile, differs.old, differs.new, 1)
		text = strings.Replace(text, "models.rush23.parts", "models."+strings.ReplaceAll(strings.ToLower(differs.new), " ", "")+".parts", 1)
		if differs.old != "Rush 23" {
			text = strings.Replace(sampleFile, differs.old, differs.new, 1)
		}
		if _, _, other := sample(t, text); other.Hash() == root.Hash() {
			t.Errorf("%q instead of %q keeps the hash", differs.new, differs.old)
		}
	}
}

// What is written out in full says the same, in either system of units.
func TestWrittenOutIsReadAgain(t *testing.T) {
	_, _, root := sample(t, sampleFile)
	for _, sys := range []unit.System{unit.Metric, unit.US} {
		text, err := root.YAML(sys)
		if err != nil {
			t.Fatal(err)
		}
		if _, _, again := sample(t, text); again.Hash() != root.Hash() {
			t.Errorf("says something else:\n%s", text)
		}
		if !strings.HasPrefix(text, "version: 1\nname: Small plant\nstart: 2027-01-04\n") {
			t.Errorf("quotes where none are needed:\n%s", text)
		}
		if !strings.Contains(text, "limit: "+map[unit.System]string{unit.US: "60 F", unit.Metric: "15.555555555555555 C"}[sys]+" # default, A") {
			t.Errorf("no marked default in\n%s", text)
		}
	}
}

func TestInputs(t *testing.T) {
	tree, _, root := sample(t, sampleFile)
	list := tree.Inputs()
	for i := 1; i < len(list); i++ {
		if list[i-1].Path >= list[i].Path {
			t.Errorf("%s before %s", list[i-1].Path, list[i].Path)
		}
	}
	found := map[string]Input{}
	for _, in := range append(list, root.Assumptions(unit.US)...) {
		found[in.Path] = in
	}
	for path, want := range map[string]string{
		"hold.limit":                     "60 F|C|-4 F to 140 F|60 F|unchanged|",
		"hold.rule":                      "clock||clock, equivalent, degree|clock|unchanged|",
		"hold.clock":                     "1.5 h|h|0.5 h to 120 h|24 h|changed|plant.yaml:5:15",
		"crafts.*.people":                "||0 or more|must be given|unchanged|",
		"crafts.gel.people":              "4||0 or more|must be given|unchanged|plant.yaml:8:13",
		"models.*.parts.*.steps[].craft": "||a name from crafts|must be given|unchanged|",
		`models."Rush 23".price`:         "$1.2M|$|$0 or more|optional|unchanged|plant.yaml:17:12",
		"colors[2]":                      "navy|||must be given|unchanged|",
		"crafts.lamination.days":         "Mon-Thu|||Mon-Fri|changed|plant.yaml:12:11",
	} {
		in := found[path]
		changed := map[bool]string{true: "changed", false: "unchanged"}[in.Changed]
		if got := strings.Join([]string{in.Value, in.Unit, in.Range, in.Default, changed, in.Place}, "|"); got != want {
			t.Errorf("%s\n got %s\nwant %s", path, got, want)
		}
	}
}

// The schema is judged by the validator of its own library.
func TestSchema(t *testing.T) {
	tree := sampleTree(t)
	text, err := tree.Schema()
	if err != nil {
		t.Fatal(err)
	}
	var s jsonschema.Schema
	if err := json.Unmarshal(text, &s); err != nil {
		t.Fatal(err)
	}
	resolved, err := s.Resolve(&jsonschema.ResolveOptions{ValidateDefaults: true})
	if err != nil {
		t.Fatal(err)
	}
	valid := func(text string) error {
		var n any
		if err := yaml.Unmarshal([]byte(strings.Replace(text, "2027-01-04", `"2027-01-04"`, 1)), &n); err != nil {
			t.Fatal(err)
		}
		return resolved.Validate(n)
	}
	if err := valid(sampleFile); err != nil {
		t.Errorf("the sample: %v", err)
	}
	for _, c := range []struct{ old, new string }{
		{"clock: 90 min", "clock: 90"}, {"clock: 90 min", "clok: 90 min"}, {"clock: 90 min", "rule: clocks"},
		{"people: 4", "people: 4.5"}, {"absence: 0.05", "absence: 6"}, {"version: 1", "version: 2"},
		{"name: Small plant\n", ""}, {"colors:", "color:"}, {"365 ft2", "365 ft"}, {"$1.2M", "1200000"},
		{"steps: []", "steps: none"}, {"hold: {clock: 90 min}", "hold: 90 min"},
	} {
		if text := strings.Replace(sampleFile, c.old, c.new, 1); text != sampleFile && valid(text) == nil {
			t.Errorf("%q instead of %q is valid", c.new, c.old)
		}
	}
	again, _ := tree.Schema()
	if string(again) != string(text) {
		t.Error("the schema differs from one time to the next")
	}
}
