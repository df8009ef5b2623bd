package param

import (
	"math"
	"strings"
	"testing"
)

func TestKindsHaveNames(t *testing.T) {
	for k := Text; k <= Changes; k++ {
		if k.String() == "" || strings.Contains(k.String(), "unknown") {
			t.Errorf("kind %d has no name", k)
		}
	}
	if k := Changes + 1; k.String() != "an unknown kind" || k.Unit() != "" {
		t.Errorf("a kind past the last: %q %q", k, k.Unit())
	}
}

func TestLimits(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		row       Row
		low, high float64
	}{
		{Row{Kind: Number}, -inf, inf},
		{Row{Kind: Temperature}, -inf, inf},
		{Row{Kind: Difference}, -inf, inf},
		{Row{Kind: Duration}, 0, inf},
		{Row{Kind: Money}, 0, inf},
		{Row{Kind: Money, Low: -5, High: 5}, -5, 5},
		{Row{Kind: Share}, 0, 1},
		{Row{Kind: Share, High: 2}, 0, 2},
		{Row{Kind: Count, Low: 1, High: inf}, 1, inf},
	} {
		if low, high := c.row.Limits(); low != c.low || high != c.high {
			t.Errorf("%v %v, %v: limits %v, %v", c.row.Kind, c.row.Low, c.row.High, low, high)
		}
	}
}
