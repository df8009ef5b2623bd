package chart

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestNiceScale(t *testing.T) {
	for _, c := range []struct {
		low, high float64
		zero      bool
		n         int
		want      scale
	}{
		{3.32, 4.42, false, 6, scale{3.2, 4.6, 0.2, 1}},
		{1.8, 5.3, true, 5, scale{0, 6, 1, 0}},
		{0, 100, false, 5, scale{0, 100, 20, 0}},
		{0, 1234, true, 5, scale{0, 1400, 200, 0}},
		{-0.12, 0.69, false, 5, scale{-0.2, 0.8, 0.2, 1}},
		{7, 7, false, 5, scale{6, 8, 0.5, 1}},
		{0, 0, true, 5, scale{-0.6, 0.6, 0.2, 1}},
	} {
		if got := niceScale(c.low, c.high, c.zero, c.n); got != c.want {
			t.Errorf("niceScale(%v, %v, %v, %d) = %+v, want %+v", c.low, c.high, c.zero, c.n, got, c.want)
		}
	}
}

func TestAxisEndsWhereValuesDo(t *testing.T) {
	for _, c := range []struct {
		axis Axis
		high float64
		want scale
	}{
		{Axis{}, 168, scale{0, 200, 50, 0}},
		{Axis{Most: 168, Step: 24}, 168, scale{0, 168, 24, 0}},
		{Axis{Most: 168, Step: 24}, 60, scale{0, 72, 24, 0}}, // whole steps
		{Axis{Most: 168}, 170, scale{0, 200, 50, 0}},
	} {
		if got := c.axis.fit(niceScale(0, c.high, true, 5), c.high); got != c.want {
			t.Errorf("%+v up to %v: %+v, want %+v", c.axis, c.high, got, c.want)
		}
	}
}

// Every scale covers its numbers with a handful of round steps.
func TestNiceScaleCovers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-1e6, 1e6).Draw(t, "a")
		b := a + rapid.Float64Range(1e-3, 1e6).Draw(t, "width")
		s := niceScale(a, b, false, 6)
		steps := (s.max - s.min) / s.step
		if s.min > a+s.step*1e-6 || s.max < b-s.step*1e-6 || steps > 9.51 || steps < 1.99 {
			t.Fatalf("niceScale(%v, %v) = %+v: %v steps", a, b, s, steps)
		}
		if math.Abs(steps-math.Round(steps)) > 1e-6 {
			t.Fatalf("%+v does not end on a step", s)
		}
	})
}

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		digits int
		v      float64
		want   string
	}{
		{0, 1234567, "1,234,567"}, {2, -1234.565, "−1,234.57"}, {1, -0.04, "0.0"}, {0, 999.6, "1,000"},
		{0, -999, "−999"}, {3, 0.0005, "0.001"}, {1, math.NaN(), "–"},
	} {
		if got := (Axis{Digits: c.digits}).number(c.v); got != c.want {
			t.Errorf("%v with %d digits = %q, want %q", c.v, c.digits, got, c.want)
		}
	}
	for share, want := range map[float64]string{0: "0 %", 0.001: "<1 %", 0.006: "1 %", 1: "100 %"} {
		if got := percent(share); got != want {
			t.Errorf("percent(%v) = %q, want %q", share, got, want)
		}
	}
}
