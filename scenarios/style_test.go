package scenarios

import (
	"regexp"
	"testing"
)

// Values, defaults and limits of all inputs are in the units and the currency
// that the scenario asks for. Texts about an input and its source are quotations
// and stay.
func TestAssumptionsInTheStyleOfThePlant(t *testing.T) {
	data, _ := BundledFile("fenwater")
	for _, c := range []struct{ units, currency, not string }{
		{"SI", "€", `\$|[0-9] (F|lb|oz|mil|in|ft|ft2|gal)\b`},
		{"US", "£", `\$|[0-9] (C|kg|g|mm|m|m2|L|ml)\b`},
	} {
		var opt Options
		for _, text := range []string{"units=" + c.units, "currency=" + c.currency} {
			ch, faults := ParseChange("--set", text)
			if len(faults) > 0 {
				t.Fatal(faults)
			}
			opt.Sets = append(opt.Sets, ch)
		}
		s, complaints := Load("fenwater.yaml", data, opt)
		if len(complaints) > 0 {
			t.Fatal(complaints)
		}
		wrong := regexp.MustCompile(c.not)
		n := 0
		for _, in := range s.Base.Assumptions() {
			for _, text := range []string{in.Value, in.Range, in.Default} {
				if in.Path != "currency" && in.Path != "note" && wrong.MatchString(text) {
					t.Errorf("%s, %s: %q", c.units, in.Path, text)
				}
			}
			if in.Value != "" {
				n++
			}
		}
		if n < 500 {
			t.Errorf("only %d values", n)
		}
	}
}
