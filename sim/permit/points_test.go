package permit

import (
	"math"
	"testing"
)

// Point values at 28, 30, 35, 40 and 48 % by the formulas of 40 CFR 63 Subpart
// VVVV, Table 3 (66 FR 44232, 66 FR 50504), computed with 30 digits. Columns:
// atomized, bagged with and without roll-out, nonatomized, bagged with and
// without roll-out, gel coat.
func TestPointValuesOfTable3(t *testing.T) {
	for _, row := range []struct {
		hap  float64
		want [7]float64
	}{
		{28, [7]float64{45.2362152243, 38.2892250291, 30.5344452764, 27.44179761, 21.5614124079, 14.8969758454, 118.127146577}},
		{30, [7]float64{53.4745425873, 45.2623806899, 36.0953162464, 32.1054595115, 25.2257181876, 17.4286780205, 132.598347777}},
		{35, [7]float64{77.7128870208, 65.7784079426, 52.4561987391, 45.5913903473, 35.8218067015, 24.7496119028, 171.661927734}},
		{40, [7]float64{6: 214.689347696}},
		{48, [7]float64{6: 291.366142072}},
	} {
		for k, want := range row.want {
			if want == 0 {
				continue
			}
			got := PointValue(PigmentedGel, Atomized, row.hap)
			if k < 6 {
				got = PointValue(ProductionResin, Method(k), row.hap)
				if tool := PointValue(ToolingResin, Method(k), row.hap); tool != got {
					t.Errorf("at %v %% tooling resin, %v: %v, production %v; Table 3 has one formula", row.hap, Method(k), tool, got)
				}
			}
			if math.Abs(got/want-1) > 1e-9 {
				t.Errorf("at %v %%, column %d: %.10g, want %.10g", row.hap, k, got, want)
			}
		}
	}
}

// A material at its content of Table 2 is under its coefficient of Equation 1 in
// four groups and over it in three, so the two options can disagree. Computed
// from Tables 2 and 3 and from §63.5698(b).
func TestContentAtItsLimitAgainstTheCoefficient(t *testing.T) {
	for _, c := range []struct {
		o     Operation
		m     Method
		point float64
		under bool
	}{
		{ProductionResin, Atomized, 45.24, true},
		{ProductionResin, Nonatomized, 45.59, true},
		{PigmentedGel, Atomized, 155.55, true},
		{ToolingResin, Atomized, 53.47, true},
		{ToolingResin, Nonatomized, 58.32, false},
		{ToolingGel, Atomized, 214.69, false},
		{ClearGel, Atomized, 291.37, false},
	} {
		hap, ok := c.o.Content(c.m)
		if !ok {
			t.Fatalf("%v has no content in Table 2", c.o)
		}
		point := PointValue(c.o, c.m, hap)
		if math.Abs(point-c.point) > 0.005 {
			t.Errorf("%v, %v at %v %%: %.4f, want %.2f", c.o, c.m, hap, point, c.point)
		}
		if under := point < c.o.Coefficient(); under != c.under {
			t.Errorf("%v, %v: point value %.2f against %v, under is %v", c.o, c.m, point, c.o.Coefficient(), under)
		}
		a := AverageOf([]Applied{{c.o, 10, point}})
		content := ContentOf([]Portion{{c.o, c.m, 10, hap}})
		if a.Complies() != c.under || !content[0].Complies() {
			t.Errorf("%v, %v: averaging says %v, content says %v", c.o, c.m, a.Complies(), content[0].Complies())
		}
	}
}

// Manual work counts as nonatomized in Table 3 (from memory of §63.5779).
func TestManualIsNonatomized(t *testing.T) {
	for bag := range Method(bagging) {
		if a, b := PointValue(ProductionResin, Manual+bag, 35), PointValue(ProductionResin, Nonatomized+bag, 35); a != b {
			t.Errorf("%v %v, %v %v", Manual+bag, a, Nonatomized+bag, b)
		}
	}
}

// Filled resins, §63.5714: thresholds 46 and 54 are printed there, the form of
// Equation 1 is from memory. Atomized resin of 35 % has 77.71 kg/Mg; 41 % filler
// brings it to 45.85, 40 % to 46.63.
func TestFilledResin(t *testing.T) {
	point := PointValue(ProductionResin, Atomized, 35)
	for _, c := range []struct {
		filler, want float64
		ok           bool
	}{{0, 77.7128870208, false}, {40, 46.6277322125, false}, {41, 45.8506033423, true}, {100, 0, true}} {
		got := Filled(point, c.filler)
		if math.Abs(got-c.want) > 1e-8 || FilledComplies(ProductionResin, got) != c.ok {
			t.Errorf("%v %% filler: %.10f, complies %v; want %.10f, %v", c.filler, got, FilledComplies(ProductionResin, got), c.want, c.ok)
		}
	}
	if !FilledComplies(ProductionResin, 46) || !FilledComplies(ToolingResin, 54) || FilledComplies(ToolingResin, 54.01) || FilledComplies(PigmentedGel, 1) {
		t.Error("the thresholds are at most 46 and at most 54, for resin only")
	}
}

// More HAP never lowers a point value or a factor, except where the two pieces
// of a factor meet: those of UEF-1 differ there by less than half a lb/ton.
func TestMoreHAPIsNeverLess(t *testing.T) {
	for o := range Operations {
		for m := range Methods {
			before, factor := 0.0, 0.0
			for h := 0.0; h <= 100; h += 0.25 {
				p, f := PointValue(o, m, h), Factor(o, m, h, 0)
				slack := 0.0
				if h == 33 {
					slack = 0.5
				}
				if p < before || f < factor-slack {
					t.Fatalf("%v, %v: falls at %v %%: point %v after %v, factor %v after %v", o, m, h, p, before, f, factor)
				}
				before, factor = p, f
			}
		}
	}
}
