package view

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"moldturn/sim/param"
	measures "moldturn/sim/param/unit"
)

// Every mass of a permit ledger's sentences, read back as an input, is the mass
// to the digits that are printed, in both systems of units.
func TestPrintedMassesReadBack(t *testing.T) {
	written := regexp.MustCompile(`[0-9][0-9,.]*` + nb + `(short` + nb + `tons|Mg|lb|kg)`)
	for _, units := range []measures.System{measures.US, measures.Metric} {
		p := samplePermit(12 * 907.18474)
		p.Units = units
		text := p.Headline() + " " + p.Thresholds().Notes[0]
		found := written.FindAllString(text, -1)
		if len(found) < 5 {
			t.Fatalf("masses %q in %s", found, text)
		}
		for _, mass := range found {
			if _, err := measures.Parse(param.Mass, strings.TrimSuffix(mass, ".")); err != nil {
				t.Errorf("%q: %v", mass, err)
			}
		}
		for _, kg := range []float64{12 * 907.18474, 12000, 0.25, 345.678} {
			back, err := measures.Parse(param.Mass, p.ton().with(kg))
			if err != nil || math.Abs(back-kg) > 0.005*kg { // three digits are printed
				t.Errorf("%v kg is printed %q and read back %v, %v", kg, p.ton().with(kg), back, err)
			}
		}
	}
	us := samplePermit(0)
	if back, _ := measures.Parse(param.Mass, us.ton().with(12*907.18474)); back != 12*907.18474 {
		t.Errorf("12 short tons come back as %v kg", back)
	}
}
