package permit

import (
	"math"
	"testing"
)

// Equation 1 of §63.5698(b) with 46, 159, 291, 54 and 214, worked by hand:
// 46·100 + 159·20 + 291·2 + 54·3 + 214·1 = 8738 kg.
func TestLimitOfEquation1(t *testing.T) {
	a := AverageOf([]Applied{{ProductionResin, 100, 40}, {PigmentedGel, 20, 150}, {ClearGel, 2, 300}, {ToolingResin, 3, 50}, {ToolingGel, 1, 200}, {Solvent, 7, 0}})
	if a.Limit != 8738 {
		t.Errorf("limit %v, want 8738", a.Limit)
	}
	if want := 40*100 + 150*20 + 300*2 + 50*3 + 200.0; a.Emissions != want {
		t.Errorf("emissions %v, want %v", a.Emissions, want)
	}
	if !a.Complies() {
		t.Error("7950 is less than 8738")
	}
}

// Compliant when emissions are less than the limit, §63.5710(e): equal is not.
func TestLimitIsStrict(t *testing.T) {
	for _, c := range []struct {
		point float64
		want  bool
	}{{45.999999, true}, {46, false}, {46.000001, false}} {
		a := AverageOf([]Applied{{ProductionResin, 8, c.point}})
		if a.Complies() != c.want {
			t.Errorf("point value %v: complies is %v", c.point, a.Complies())
		}
	}
	if a := AverageOf(nil); !a.Complies() || a.Limit != 0 || a.Emissions != 0 {
		t.Errorf("nothing used: %+v", a)
	}
}

// §63.5710 Equation 2: two resins, 30 Mg at 20 and 10 Mg at 60, average 30. The
// fraction form is from memory.
func TestWeightedPointValue(t *testing.T) {
	a := AverageOf([]Applied{{ProductionResin, 30, 20}, {ProductionResin, 10, 60}})
	if a.Points[ProductionResin] != 30 || a.Points[ClearGel] != 0 {
		t.Errorf("weighted averages %v, want 30 and 0", a.Points)
	}
	if got := a.Points[ProductionResin] * a.Mg[ProductionResin]; got != a.Emissions {
		t.Errorf("PV·M is %v, the sum %v", got, a.Emissions)
	}
}

// §63.5713 Equation 1: 10 Mg of 30 % and 30 Mg of 34 % average 33 %, which Table
// 2 allows for pigmented gel coat; one Mg more of the second does not.
func TestWeightedContent(t *testing.T) {
	for _, c := range []struct {
		mg, want float64
		ok       bool
	}{{30, 33, true}, {31, (10*30 + 31*34) / 41.0, false}} {
		got := ContentOf([]Portion{{PigmentedGel, Atomized, 10, 30}, {PigmentedGel, Atomized, c.mg, 34}})
		if len(got) != 1 || math.Abs(got[0].Percent-c.want) > 1e-12 || got[0].Complies() != c.ok {
			t.Errorf("%v Mg: %+v, want %v %%, %v", c.mg, got, c.want, c.ok)
		}
	}
	got := ContentOf([]Portion{{ProductionResin, Atomized, 1, 28}, {ProductionResin, Manual, 1, 36}})
	if len(got) != 2 || got[0].Limit != 28 || got[1].Limit != 35 || !got[0].Complies() || got[1].Complies() {
		t.Errorf("atomized and nonatomized resin are two groups of Table 2: %+v", got)
	}
}

// Subpart VVVV, Table 1, note 1: 9.1 Mg (10 tons) of one HAP, 22.7 Mg (25 tons)
// of a combination; the Mg are printed to a tenth.
func TestMajorSource(t *testing.T) {
	if math.Abs(MajorOne/kgPerMg-9.1) > 0.05 || math.Abs(MajorAll/kgPerMg-22.7) > 0.05 {
		t.Errorf("%v and %v kg", MajorOne, MajorAll)
	}
	if !Major(MajorOne, MajorOne) || Major(MajorOne-1, MajorAll-1) || !Major(0, MajorAll) {
		t.Error("a plant at a threshold is a major source")
	}
}
