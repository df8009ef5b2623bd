package chart

import "testing"

func TestDifferencesHaveTheirSign(t *testing.T) {
	for v, want := range map[float64]string{0.52: "+0.5", -0.52: "−0.5", 0.04: "0.0", -0.04: "0.0", 1234: "+1,234.0", 0: "0.0"} {
		c := Intervals{X: Axis{Digits: 1}, Plus: true}
		if got := c.signed(v); got != want {
			t.Errorf("%v is %q, want %q", v, got, want)
		}
	}
	if got := (Intervals{X: Axis{Digits: 1}}).signed(0.5); got != "0.5" {
		t.Errorf("a value that is no difference is %q", got)
	}
}
