package draw

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"testing"
)

// hours is a small reader of lengths of time, as a caller would pass it.
func hours(s string) (float64, error) {
	for _, u := range []struct {
		suffix string
		factor float64
	}{{"min", 1. / 60}, {"h", 1}, {"d", 24}} {
		if digits, ok := strings.CutSuffix(s, u.suffix); ok {
			v, err := strconv.ParseFloat(strings.TrimSpace(digits), 64)
			if err != nil {
				return 0, fmt.Errorf("not a number before %s", u.suffix)
			}
			return v * u.factor, nil
		}
	}
	return 0, errors.New("needs a unit: min, h or d")
}

func plain(s string) (float64, error) { return strconv.ParseFloat(s, 64) }

func TestParse(t *testing.T) {
	for text, want := range map[string]string{
		"24 h":                            "24",
		"90 min":                          "1.5",
		" 2 d ":                           "48",
		"8 h - 10 h - 16 h":               "pert(8, 10, 16)",
		"8 - 10 - 16 h":                   "pert(8, 10, 16)",
		"8 – 10 – 16 h":                   "pert(8, 10, 16)",
		"8–10–16h":                        "pert(8, 10, 16)",
		"500 - 800 - 1e3 h":               "pert(500, 800, 1000)",
		"0.5 - 0.75 - 1.5 d":              "pert(12, 18, 36)",
		"30 min - 1 h - 1 d":              "pert(0.5, 1, 24)",
		"7 h - 7 h - 7 h":                 "7",
		"uniform(8 h, 1 d)":               "uniform(8, 24)",
		"uniform(8, 16 h)":                "uniform(8, 16)",
		"Triangular(1 h,2 h,4 h)":         "triangular(1, 2, 4)",
		"pert( 8, 10, 16 h )":             "pert(8, 10, 16)",
		"lognormal(24 h, 0.3)":            "lognormal(24, 0.3)",
		"lognormal(24 h, 30 %)":           "lognormal(24, 0.3)",
		"gamma(1 d, 50%)":                 "gamma(24, 0.5)",
		"weibull(100 h, 1.3)":             "weibull(100, 1.3)",
		"exponential (30 min)":            "exponential(0.5)",
		"normal(10 h, 2 h)":               "normal(10, 2)",
		"empirical(1, 3, 2 h)":            "empirical(1, 2, 3)",
		"empirical(1 h, 90 min, 4 h, 1h)": "empirical(1, 1, 1.5, 4)",
	} {
		d, err := Parse(text, hours)
		if err != nil || d.String() != want {
			t.Errorf("%q: %v, %v; want %s", text, d, err, want)
		}
	}
}

func TestParseErrors(t *testing.T) {
	forms := "; allowed: " + strings.Join(Forms(), ", ")
	for text, want := range map[string]string{
		"":                       `unknown distribution ""` + forms,
		"soon":                   `unknown distribution "soon"` + forms,
		"beta(1, 2)":             `unknown distribution "beta"` + forms,
		"pert(1 h, 2 h, 3 h":     `unknown distribution "pert(1 h, 2 h, 3 h"` + forms,
		"(8 h)":                  `unknown distribution ""` + forms,
		"24":                     `"24": needs a unit: min, h or d`,
		"24 weeks":               `"24 weeks": needs a unit: min, h or d`,
		"-3 h":                   `"-3 h": the value is -3; allowed: 0 to 1e+12`,
		"8-10-16 h":              `"8-10-16 h": put a space on both sides of each dash: "8 - 10 - 16 h"`,
		"8 h - 16 h":             `"8 h - 16 h": number of values is 2; allowed: 1, or 3 as low - typical - high; limits alone are written uniform(low, high)`,
		"8 - 10 h - 16 h":        `"8 - 10 h - 16 h": value 1, "8": needs a unit: min, h or d`,
		"8 - 10 - 16":            `"8 - 10 - 16": value 1, "8": needs a unit: min, h or d`,
		"8 - ten - 16 h":         `"8 - ten - 16 h": value 1, "8": needs a unit: min, h or d`,
		"16 - 10 - 8 h":          `"16 - 10 - 8 h": pert: typical is 10; allowed: low (16) or more`,
		"lognormal(24 h)":        `"lognormal(24 h)": number of values is 1; allowed: lognormal(mean, cv)`,
		"lognormal(24 h, 2 h)":   `"lognormal(24 h, 2 h)": cv "2 h" is not a number; allowed: a ratio such as 0.3, or 30 %`,
		"lognormal(24 h, -0.1)":  `"lognormal(24 h, -0.1)": lognormal: cv is -0.1; allowed: 0, or 0.001 to 5`,
		"lognormal(24, 0.3)":     `"lognormal(24, 0.3)": value 1, "24": needs a unit: min, h or d`,
		"pert(1 h, , 3 h)":       `"pert(1 h, , 3 h)": value 2 is empty; allowed: pert(low, typical, high)`,
		"empirical()":            `"empirical()": value 1 is empty; allowed: empirical(value, …)`,
		"uniform(1 h, 2 h, 3 h)": `"uniform(1 h, 2 h, 3 h)": number of values is 3; allowed: uniform(low, high)`,
	} {
		d, err := Parse(text, hours)
		if err == nil || d != nil || err.Error() != want {
			t.Errorf("%q: %v, %v\nwant %s", text, d, err, want)
		}
	}
}

func TestUnknownNameCanBeGuessedAt(t *testing.T) {
	_, err := Parse("lognormel(24 h, 0.3)", hours)
	var u *UnknownError
	if !errors.As(err, &u) || u.Found != "lognormel" || len(u.Allowed) != len(Names())+2 {
		t.Errorf("%v", err)
	}
}

// What String writes reads back as the same law, but for laws without a form.
func TestStringsReadBack(t *testing.T) {
	for _, d := range allLaws() {
		text := d.String()
		if strings.Contains(text, "×") || strings.HasPrefix(text, "discrete") || strings.HasPrefix(text, "hyper") {
			continue
		}
		back, err := Parse(text, plain)
		if err != nil {
			t.Errorf("%s: %v", text, err)
			continue
		}
		for _, u := range []float64{.001, .3, .5, .9, .9999} {
			// Shapes and stages are written as a cv, which rounds.
			if a, b := back.Quantile(u), d.Quantile(u); a != b && relative(a, b) > 1e-9 {
				t.Errorf("%s: %.17g, read back %.17g at %g", text, b, a, u)
			}
		}
	}
}

// No text makes Parse panic, and what it accepts can be drawn from.
func FuzzParse(f *testing.F) {
	for _, s := range []string{"24 h", "8 - 10 - 16 h", "lognormal(24 h, 30 %)", "empirical(1,2 h)", "–", "()", "pert(,,)", "1e-3 h"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		d, err := Parse(text, hours)
		if (d == nil) == (err == nil) {
			t.Fatalf("%q: %v, %v", text, d, err)
		}
		if err == nil {
			if low, high := d.Bounds(); !(d.Quantile(0.5) >= low && d.Quantile(0.5) <= high) {
				t.Errorf("%q: median %g", text, d.Quantile(0.5))
			}
		}
	})
}
