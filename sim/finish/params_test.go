package finish

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

// base reads a default as written into the base unit of its kind.
func base(t *testing.T, path, s string) float64 {
	number, unit, _ := strings.Cut(s, " ")
	v, err := strconv.ParseFloat(number, 64)
	if err != nil {
		t.Fatalf("%s: default %q", path, s)
	}
	switch unit {
	case "%":
		return v / 100
	case "wk":
		return v * 168
	case "F":
		if strings.HasSuffix(path, "span") {
			return v / 1.8
		}
		return (v - 32) / 1.8
	}
	return v
}

// Every row must be complete, its default inside its limits, and writing the
// defaults back through Set must change nothing.
func TestInputs(t *testing.T) {
	d, p := Default(), Params{Grades: builtinGrades(), Colors: builtinColors()}
	seen := map[string]bool{}
	for _, r := range Inputs() {
		if seen[r.Path] || r.Doc == "" || r.Mark == "" || r.Source == "" {
			t.Errorf("%s: twice, or without doc, mark or source", r.Path)
		}
		seen[r.Path] = true
		if strings.ContainsAny(r.Path, "*[") || r.Kind.Container() {
			if p.Set(r.Path, 1) {
				t.Errorf("%s: a table was set as a number", r.Path)
			}
			continue
		}
		v := base(t, r.Path, r.Default)
		if low, high := r.Limits(); v < low || v > high {
			t.Errorf("%s: default %q outside %v … %v", r.Path, r.Default, low, high)
		}
		if !p.Set(r.Path, v) {
			t.Errorf("%s: not set", r.Path)
		}
	}
	for _, in := range fixed() {
		if got, want := *in.field(&p), *in.field(&d); math.Abs(got-want) > 1e-12 {
			t.Errorf("%s: the row's default gives %v, Default has %v", in.row.Path, got, want)
		}
	}
}

// A scenario's own grade must not leak into the plan it was copied from.
func TestAddGrade(t *testing.T) {
	d := Default()
	p := d
	if i := p.AddGrade(Grade{"medium", 2, 1.1}); i != 1 || p.Grades[1].Loss != 2 || d.Grades[1].Loss != 3 {
		t.Errorf("medium replaced at %d: %+v, original %+v", i, p.Grades, d.Grades)
	}
	if i := p.AddGrade(Grade{"tooling", 1, 0.9}); i != 3 || len(d.Grades) != 3 {
		t.Errorf("new grade at %d, original %+v", i, d.Grades)
	}
	if i := p.AddColor(Color{"metallic", 1, 2, false}); i != 3 || len(d.Colors) != 3 {
		t.Errorf("new color at %d, original %+v", i, d.Colors)
	}
	if _, ok := p.Color("plaid"); ok {
		t.Error("found a color that is not there")
	}
}
