package permit

import (
	"math"
	"testing"
)

// Table 3 to 40 CFR 63 Subpart WWWW lists limits in lb/ton that were made from
// these formulas at round contents, some of them listed in its Table 7 (46.4 %
// nonatomized). The formulas (from memory) must give them back within 1 lb/ton.
func TestFactorsGiveTheLimitsOfWWWWBack(t *testing.T) {
	for _, c := range []struct {
		row   string
		o     Operation
		m     Method
		hap   float64
		limit float64
	}{
		{"CR/HS mechanical", ProductionResin, Nonatomized, 46.4, 113},
		{"CR/HS manual", ProductionResin, Manual, 40.0, 123},
		{"non-CR/HS mechanical", ProductionResin, Nonatomized, 38.4, 88},
		{"non-CR/HS manual", ProductionResin, Manual, 33.6, 87},
		{"tooling mechanical", ToolingResin, Atomized, 43.0, 254},
		{"tooling manual", ToolingResin, Manual, 45.9, 157},
		{"low-flame mechanical", ProductionResin, Atomized, 60.0, 497},
		{"low-flame manual", ProductionResin, Manual, 60.0, 238},
		{"shrinkage-controlled mechanical", ProductionResin, Atomized, 50.0, 354},
		{"shrinkage-controlled manual", ProductionResin, Manual, 50.0, 180},
		{"gel coat, tooling", ToolingGel, Atomized, 40, 440},
		{"gel coat, white", PigmentedGel, Atomized, 30, 267},
		{"gel coat, other pigmented", PigmentedGel, Atomized, 37, 377},
		{"gel coat, CR/HS", PigmentedGel, Atomized, 48, 605},
		{"gel coat, fire retardant", PigmentedGel, Atomized, 60, 854},
		{"gel coat, clear", ClearGel, Atomized, 44, 522},
	} {
		if got := Factor(c.o, c.m, c.hap, 0); math.Abs(got-c.limit) > 1 {
			t.Errorf("%s at %v %%: %.3f lb/ton, limit %v", c.row, c.hap, got, c.limit)
		}
	}
}

// Values at 30, 35 and 40 %, computed from the formulas of UEF-1 with 30 digits;
// both sides of the break at a weight fraction of 0.33. From memory, as the
// formulas are.
func TestFactorsAtSeveralContents(t *testing.T) {
	for _, c := range []struct{ hap, manual, atomized, nonatomized, gel, gelNon float64 }{
		{30, 75.60, 101.40, 64.20, 267.00, 111.00},
		{35, 94.40, 139.80, 76.90, 335.522, 214.42},
		{40, 123.00, 211.20, 92.60, 439.168, 259.48},
	} {
		for _, x := range []struct {
			got, want float64
		}{
			{Factor(ProductionResin, Manual, c.hap, 0), c.manual},
			{Factor(ProductionResin, Atomized, c.hap, 0), c.atomized},
			{Factor(ProductionResin, Nonatomized, c.hap, 0), c.nonatomized},
			{Factor(PigmentedGel, Atomized, c.hap, 0), c.gel},
			{Factor(PigmentedGel, Nonatomized, c.hap, 0), c.gelNon},
		} {
			if math.Abs(x.got-x.want) > 1e-9 {
				t.Errorf("at %v %%: %.6f, want %.6f", c.hap, x.got, x.want)
			}
		}
	}
}

// Modifiers of UEF-1, from memory: a bag after roll-out 0.85 mechanical and 0.8
// manual, without roll-out 0.55 and 0.5; a suppressant of 40 % effectiveness
// 1 − 0.45·0.4 mechanical and 1 − 0.5·0.4 manual. None acts on gel coat.
func TestModifiers(t *testing.T) {
	base, hand := Factor(ProductionResin, Atomized, 35, 0), Factor(ProductionResin, Manual, 35, 0)
	for _, c := range []struct {
		got, want float64
	}{
		{Factor(ProductionResin, AtomizedRolled, 35, 0), 0.85 * base},
		{Factor(ProductionResin, AtomizedBagged, 35, 0), 0.55 * base},
		{Factor(ProductionResin, ManualRolled, 35, 0), 0.8 * hand},
		{Factor(ProductionResin, ManualBagged, 35, 0), 0.5 * hand},
		{Factor(ProductionResin, Atomized, 35, 0.4), 0.82 * base},
		{Factor(ProductionResin, Manual, 35, 0.4), 0.8 * hand},
		{Factor(PigmentedGel, Atomized, 35, 0.4), Factor(PigmentedGel, Atomized, 35, 0)},
	} {
		if math.Abs(c.got-c.want) > 1e-9 {
			t.Errorf("%.6f, want %.6f", c.got, c.want)
		}
	}
}
