package cure

import (
	"strconv"
	"strings"
	"testing"

	"moldturn/sim/param"
)

// Every row must be complete, its default inside its limits, and writing the
// defaults back through Set must change nothing.
func TestInputs(t *testing.T) {
	d, p := Default(), Params{}
	seen := map[string]bool{}
	for _, r := range Inputs() {
		if seen[r.Path] || r.Doc == "" || r.Mark == "" || r.Source == "" {
			t.Errorf("%s: twice, or without doc, mark or source", r.Path)
		}
		seen[r.Path] = true
		if strings.HasPrefix(r.Path, "cure.barcol") {
			if p.Set(r.Path, 1) {
				t.Errorf("%s: part of a list was set as a number", r.Path)
			}
			continue
		}
		v, err := strconv.ParseFloat(strings.TrimSuffix(strings.TrimSuffix(r.Default, " h"), " C"), 64)
		if low, high := r.Limits(); err != nil || v < low || v > high {
			t.Errorf("%s: default %q outside %v … %v (%v)", r.Path, r.Default, low, high, err)
		}
		if r.Kind == param.Duration != strings.HasSuffix(r.Default, " h") || r.Kind == param.Temperature != strings.HasSuffix(r.Default, " C") {
			t.Errorf("%s: default %q without its unit", r.Path, r.Default)
		}
		if !p.Set(r.Path, v) {
			t.Errorf("%s: not set", r.Path)
		}
	}
	if p != d {
		t.Errorf("defaults of the rows give %+v, want %+v", p, d)
	}
	if p.Set("cure.nothing", 1) || p != d {
		t.Error("an unknown path was taken")
	}
}
