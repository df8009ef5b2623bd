package view

import (
	"testing"

	"moldturn/reports/view/saying"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// The first two are the examples that the Particle Data Group gives (Review of
// Particle Physics, Introduction, section Rounding; from memory); the rest
// follow its rule.
func TestDecimalsFollowTheRule(t *testing.T) {
	for _, test := range []struct {
		half float64
		most int
		want string // 0.827 or a number like it, rounded
	}{
		{0.119, 9, "0.83"}, {0.367, 9, "0.8"},
		{0.354, 9, "0.83"}, {0.355, 9, "0.8"}, {0.0949, 9, "0.83"}, {0.095, 9, "0.83"}, {0.0097, 9, "0.827"},
		{0.0097, 2, "0.83"}, {4, 9, "1"}, {250, 9, "1"}, {0, 2, "0.83"}, {-1, 1, "0.8"},
	} {
		if got := fixed(0.827, decimals(test.half, test.most)); got != test.want {
			t.Errorf("0.827 ± %v, at most %d decimals: %s, want %s", test.half, test.most, got, test.want)
		}
	}
}

func TestTogetherTakesTheMiddleInterval(t *testing.T) {
	for _, test := range []struct {
		halves []float64
		want   int
	}{{[]float64{0.05, 0.06, 2}, 2}, {[]float64{0.05, 2, 3}, 1}, {[]float64{0, 0, 0.5}, 1}, {nil, 3}, {[]float64{0}, 3}} {
		if got := together(test.halves, 3); got != test.want {
			t.Errorf("%v: %d decimals, want %d", test.halves, got, test.want)
		}
	}
}

func TestNumbersInWords(t *testing.T) {
	boats := &study.Metric{Digits: 2}
	share := &study.Metric{Digits: 3, Share: true}
	for _, test := range []struct{ got, want string }{
		{fixed(-0.004, 2), "0.00"}, {fixed(-1.5, 1), "−1.5"}, {signed(0.004, 2), "0.00"}, {signed(0.5, 1), "+0.5"},
		{amount(boats, stats.Summary{N: 3, Mean: 8.734, Half: 0.081}, 2), "8.73 ± 0.08"},
		{amount(boats, stats.Summary{N: 1, Mean: 8.734}, 2), "8.73"},
		{amount(boats, stats.Summary{}, 2), "–"},
		{amount(share, stats.Summary{N: 3, Mean: 0.997, Half: 0.003}, 0), "99.7 ± 0.3"},
		{amount(boats, stats.Summary{N: 3, Mean: 1, Half: 0.0001}, 2), "1.00 ± <0.01"},
		{amount(share, stats.Summary{N: 3, Mean: 0.95, Half: 0.05, Low: 0.90, High: 1}, 0), "95 ± 5"},
		{amount(share, stats.Summary{N: 3, Mean: 0.95, Half: 0.07, Low: 0.88, High: 1.02}, 0), "95 (88–100)"},
		{amount(share, stats.Summary{N: 3, Mean: 0.02, Half: 0.03, Low: -0.01, High: 0.05}, 0), "2 (0–5)"},
		{amount(boats, stats.Summary{N: 3, Mean: 0.02, Half: 0.03, Low: -0.01, High: 0.05}, 2), "0.02 ± 0.03"},
		{change(boats, stats.Difference{}, 2), "–"},
		{change(boats, saying.Judged(0.3, 0.4), 1), "not clear"},
		{change(boats, saying.Judged(0.5, 0.4), 1), "+0.5 ± 0.4"},
		{change(boats, saying.Judged(-0.5, 0.4), 1), "−0.5 ± 0.4"},
		{change(boats, saying.Judged(0.004, 0.003), 2), "0.00"},
		{change(share, saying.Judged(0.11, 0.08), 0), "+11 ± 8"},
	} {
		if got := saying.Plain(test.got); got != test.want {
			t.Errorf("%q, want %q", got, test.want)
		}
	}
}
