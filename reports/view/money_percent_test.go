package view

import "testing"

// Rates have three digits and a minus; one that tells nothing any more is not
// written out.
func TestRatesOfReturn(t *testing.T) {
	for share, want := range map[float64]string{0.1: "10 %", 2.77: "277 %", -0.688: "−68.8 %", 9.99: "999 %", 9.995: "1,000 % or more", 20: "1,000 % or more", 0: "0 %"} {
		if got := percent(share); got != want {
			t.Errorf("%v: %q, want %q", share, got, want)
		}
	}
}
