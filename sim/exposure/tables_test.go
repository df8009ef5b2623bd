package exposure

import "testing"

// Every velocity of OSHA 29 CFR 1910.94(c)(6)(i), Table G-10, as printed in WAC
// 296-62-11019, Table 14: design velocity and range, large booths and small.
func TestEveryRowOfTheBoothTable(t *testing.T) {
	want := []struct {
		cross        float64
		large, small Range
	}{
		{0, Range{50, 50, 75}, Range{75, 100, 125}}, // crossdraft negligible
		{50, Range{75, 100, 125}, Range{125, 150, 175}},
		{100, Range{125, 150, 175}, Range{150, 200, 250}},
	}
	got := Drafts()
	if len(got) != len(want) {
		t.Fatalf("%d rows, want %d", len(got), len(want))
	}
	for i, w := range want {
		if g := got[i]; g.MaxCross != w.cross || g.Large != w.large || g.Small != w.small {
			t.Errorf("row %d: %+v, want %+v", i, g, w)
		}
	}
}

// Limits for styrene, eight hours and short term: 29 CFR 1910.1000, Table Z-2, as
// shown at osha.gov (CH_268200); NIOSH Pocket Guide 2005-151; Title 8 CCR section
// 5155; ACGIH 1996. Those of ACGIH from 2020 are from memory.
func TestPublishedLimits(t *testing.T) {
	want := map[string][2]float64{
		"OSHA PEL": {100, 200}, "NIOSH REL": {50, 100}, "Cal/OSHA PEL": {50, 100}, "ACGIH TLV, former": {20, 40}, "ACGIH TLV": {10, 20},
	}
	for _, l := range Limits() {
		if w, known := want[l.Name]; !known || l.PPM != w[0] || l.Short != w[1] {
			t.Errorf("%s: %v and %v ppm, want %v", l.Name, l.PPM, l.Short, w)
		}
		if l.Memory != (l.Name == "ACGIH TLV") {
			t.Errorf("%s: from memory is %v", l.Name, l.Memory)
		}
		delete(want, l.Name)
	}
	if len(want) > 0 {
		t.Errorf("missing: %v", want)
	}
}

// Properties of styrene: NIOSH Pocket Guide 2005-151 and osha.gov, styrene (lower
// explosive limit 0.9 %, immediately dangerous at 700 ppm), molar mass 104.15 to
// 104.2. A tenth of the explosive limit is 900 ppm.
func TestPropertiesOfStyrene(t *testing.T) {
	near(t, "a tenth of the explosive limit", QuarterLEL(LEL)*4/10, 900, 1e-12)
	if Danger != 700 || Gravity != 0.91 || Mole < 104.15 || Mole > 104.2 {
		t.Errorf("danger at %v ppm, %v to water, %v g/mol", Danger, Gravity, Mole)
	}
}
