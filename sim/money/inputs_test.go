package money

import (
	"testing"

	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// The default wage is the published mean of fiberglass laminators and fabricators
// (SOC 51-2051), which lies between the 10th and the 90th percentile of the same
// page: Minnesota OEWS, apps.deed.state.mn.us, undated, with projections 2022–32.
func TestDefaultWageIsThePublishedOne(t *testing.T) {
	const mean, p10, p90 = 20.76, 17.83, 24.73
	for _, r := range Inputs() {
		if r.Path != "money.wage" {
			continue
		}
		wage, err := unit.Parse(r.Kind, r.Default)
		if err != nil || wage != mean || wage < p10 || wage > p90 || r.Mark != param.Published || r.Source == "" {
			t.Errorf("%q, %v, marked %q", r.Default, err, r.Mark)
		}
		return
	}
	t.Error("no money.wage")
}
