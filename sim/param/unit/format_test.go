package unit

import (
	"math"
	"regexp"
	"testing"

	"moldturn/sim/param"

	"pgregory.net/rapid"
)

func TestFormat(t *testing.T) {
	for _, c := range []struct {
		kind param.Kind
		text string
		si   string
		us   string
	}{
		{param.Duration, "24 h", "24 h", "24 h"},
		{param.Duration, "2 min", "2 min", "2 min"},
		{param.Duration, "3 wk", "504 h", "504 h"},
		{param.Temperature, "75 F", "23.88888888888889 C", "75 F"},
		{param.Difference, "5 F", "2.7777777777777777 C", "5 F"},
		{param.Area, "365 ft2", "33.9096096 m2", "365 ft2"},
		{param.Length, "24 ft", "7315.2 mm", "24 ft"},
		{param.Length, "20 mil", "0.508 mm", "20 mil"},
		{param.Length, "2 m", "2 m", "6.561679790026247 ft"},
		{param.Mass, "59 lb", "26.76194983 kg", "59 lb"},
		{param.Volume, "1 gal", "3.785411784 L", "1 gal"},
		{param.Money, "$40,000", "$40k", "$40k"},
		{param.Money, "$19.5", "$19.50", "$19.50"},
		{param.Money, "-$1,200,000", "-$1.2M", "-$1.2M"},
		{param.Rate, "3.9/week", "3.9/week", "3.9/week"},
		{param.Rate, "200/year", "200/year", "200/year"},
		{param.Share, "0.06", "6 %", "6 %"},
		{param.Number, "1e-9", "1e-09", "1e-09"},
		{param.Count, "1200", "1200", "1200"},
		{param.Flag, "yes", "true", "true"},
		{param.Date, "2027-01-04", "2027-01-04", "2027-01-04"},
		{param.DayMonth, "Jul 4", "07-04", "07-04"},
		{param.ClockTime, "6:05", "06:05", "06:05"},
		{param.Weekdays, "Sat, Sun, Mon, Wed", "Wed, Sat-Mon", "Wed, Sat-Mon"},
		{param.Months, "Nov, Dec, Jan", "Nov-Jan", "Nov-Jan"},
	} {
		x, err := Parse(c.kind, c.text)
		if err != nil {
			t.Errorf("%v %q: %v", c.kind, c.text, err)
		}
		if si, us := Format(c.kind, x, Metric), Format(c.kind, x, US); si != c.si || us != c.us {
			t.Errorf("%v %q: %q and %q, want %q and %q", c.kind, c.text, si, us, c.si, c.us)
		}
	}
	if got := FormatLike(param.Temperature, 48.9, "300 F"); got != "120.02 F" {
		t.Errorf("bound beside 300 F: %q", got)
	}
	if got := Format(param.Duration, math.Inf(1), Metric); got != "?" {
		t.Errorf("infinite: %q", got)
	}
}

// Whatever is written can be read again without the loss of a bit, in either
// system, and matches the form that editors check.
func TestWrittenIsReadAgain(t *testing.T) {
	kinds := []param.Kind{param.Number, param.Share, param.Duration, param.Temperature, param.Difference,
		param.Area, param.Length, param.Mass, param.Volume, param.Money, param.Rate}
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom(kinds).Draw(t, "kind")
		sys := rapid.SampledFrom([]System{Metric, US}).Draw(t, "system")
		x := rapid.Float64Range(-1e9, 1e9).Draw(t, "x")
		if math.Abs(x) < 1e-30 {
			x = 0
		}
		text := Format(kind, x, sys)
		if got, err := Parse(kind, text); err != nil || got != x {
			t.Fatalf("%v: %v written as %q read as %v, %v", kind, x, text, got, err)
		}
		if !regexp.MustCompile(Pattern(kind)).MatchString(text) {
			t.Fatalf("%q does not match %s", text, Pattern(kind))
		}
	})
}

func TestSetsAreReadAgain(t *testing.T) {
	for set := range 1 << 12 {
		if got, err := Parse(param.Months, Format(param.Months, float64(set), Metric)); err != nil || got != float64(set) {
			t.Fatalf("months %012b: %q: %v %v", set, Format(param.Months, float64(set), Metric), got, err)
		}
		if got, err := Parse(param.Weekdays, Format(param.Weekdays, float64(set&127), Metric)); err != nil || got != float64(set&127) {
			t.Fatalf("weekdays %07b: %v %v", set&127, got, err)
		}
	}
}

// FuzzParse looks for texts that make the readers panic or return a value that
// is not finite.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{"24 h", "1 h 30 min", "$1.2M", "6 %", "Mon-Fri", "2027-01-04", "−1,200.5e-3 ft2", "3:30 pm", "4 per day"} {
		f.Add(uint8(6), seed)
	}
	f.Fuzz(func(t *testing.T, kind uint8, text string) {
		x, err := Parse(param.Kind(kind), text)
		if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
			t.Errorf("%v %q gives %v", param.Kind(kind), text, x)
		}
	})
}
