package defect

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"moldturn/sim/draw"
	"moldturn/sim/param"
)

// read gives a default as written in the base unit of its kind.
func read(s string) (float64, error) {
	word, unit, _ := strings.Cut(s, " ")
	v, err := strconv.ParseFloat(word, 64)
	if unit == "%" {
		v /= 100
	}
	return v, err
}

// Every row must be complete, its default inside its limits, and writing the
// defaults back must change nothing.
func TestInputs(t *testing.T) {
	d, p := Default(), Params{}
	for i := range d.Each { // which driver acts how is no input
		for k, e := range d.Each[i].Effects {
			p.Each[i].Effects[k] = Effect{Driver: e.Driver, Shape: e.Shape}
		}
	}
	seen := map[string]bool{}
	for _, r := range Inputs() {
		if seen[r.Path] || r.Doc == "" || r.Mark == "" || r.Source == "" {
			t.Errorf("%s: twice, or without doc, mark or source", r.Path)
		}
		seen[r.Path] = true
		if r.Kind == param.Dist {
			law, err := draw.Parse(r.Default, read)
			if err != nil || !p.SetDist(r.Path, law) || p.Set(r.Path, 1) {
				t.Errorf("%s: default %q not taken as a law, or taken as a number (%v)", r.Path, r.Default, err)
			}
			continue
		}
		v, err := read(r.Default)
		if low, high := r.Limits(); err != nil || v < low || v > high || !p.Set(r.Path, v) {
			t.Errorf("%s: default %q not within %v … %v or not taken (%v)", r.Path, r.Default, low, high, err)
		}
	}
	for i, in := range inputs() {
		if in.number != nil {
			near(t, Inputs()[i].Path, *in.number(&p), *in.number(&d), 1e-15)
		} else if got, want := (*in.dist(&p)).String(), (*in.dist(&d)).String(); got != want {
			t.Errorf("%s: %s, want %s", in.row.Path, got, want)
		}
	}
	for i := range p.Each {
		for k, e := range p.Each[i].Effects {
			if w := d.Each[i].Effects[k]; e.Driver != w.Driver || math.Abs(e.Gain-w.Gain) > 1e-12 {
				t.Errorf("%s: effect %+v, want %+v", all[i].Key, e, w)
			}
		}
	}
	if p.Set("defects.nothing", 1) || p.SetDist("defects.nothing", nil) {
		t.Error("an unknown path was taken")
	}
}
