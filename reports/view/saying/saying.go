// Package saying helps the tests of findings: differences judged as a comparison
// judges them, and texts held to what they should say. Nothing that ships imports
// it.
package saying

import (
	"strings"
	"testing"

	"moldturn/sim/stats"
)

// Judged is the difference mean ± half of ten pairs at 95 % confidence: clear
// where its interval leaves out zero.
func Judged(mean, half float64) stats.Difference {
	d := stats.Difference{Summary: stats.Summary{N: 10, Mean: mean, Half: half, Low: mean - half, High: mean + half, Confidence: 0.95}}
	d.Clear = d.Low > 0 || d.High < 0
	return d
}

// Plain is a text with plain spaces in place of those that do not break.
func Plain(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }

// Check holds a text to what it should say, whatever its spaces.
func Check(t *testing.T, got, want string) {
	t.Helper()
	if got = Plain(got); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}
