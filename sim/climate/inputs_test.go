package climate

import (
	"strings"
	"testing"

	"moldturn/sim/param"
)

func TestInputsAreComplete(t *testing.T) {
	seen := map[string]param.Row{}
	for _, r := range Inputs() {
		if _, twice := seen[r.Path]; twice || r.Doc == "" || r.Mark == "" || r.Source == "" {
			t.Errorf("%s: twice, or without doc, mark or source", r.Path)
		}
		if low, high := r.Limits(); low > high {
			t.Errorf("%s: %v … %v", r.Path, low, high)
		}
		seen[r.Path] = r
	}
	for path, r := range seen {
		if r.Kind == param.List {
			if _, ok := seen[path+"[]"]; !ok {
				t.Errorf("%s: a list without items", path)
			}
			if n := strings.Count(r.Default, ",") + 1; n != 12 {
				t.Errorf("%s: %d months", path, n)
			}
		}
	}
	want := "[10 C, 11.5 C, 15 C, 19.3 C, 24 C, 26.9 C, 27.9 C, 27.8 C, 25.9 C, 20.6 C, 15 C, 11.2 C]"
	if got := seen["climate.normals.mean"].Default; got != want {
		t.Errorf("means of the coast: %s", got)
	}
}
