package unit

import (
	"errors"
	"math/big"
	"regexp"
	"strings"
	"testing"

	"moldturn/sim/param"
)

// NIST Handbook 44 (2024), appendix C, "Units of Mass Not Less Than Avoirdupois
// Pounds": 1 short ton is 2,000 pounds and 907.18474 kg exactly; 1 metric ton is
// 1,000 kg and 1.102311 short tons. 1 Mg is 1,000 kg by its prefix: NIST Special
// Publication 811 (2008), table 5.
func TestTons(t *testing.T) {
	for _, c := range []struct {
		text string
		want float64
	}{
		{"1 short ton", 907.18474}, {"1 short tons", 907.18474}, {"1 Short Ton", 907.18474}, {"1 US ton", 907.18474}, {"1 us tons", 907.18474},
		{"12 short tons", 10886.21688}, {"12\u00a0short\u00a0tons", 10886.21688}, {"2,000 lb", 907.18474},
		{"1 t", 1000}, {"1 tonne", 1000}, {"12 tonnes", 12000}, {"2 metric tons", 2000}, {"1 Mg", 1000}, {"12\u00a0Mg", 12000}, {"1.5 T", 1500},
	} {
		got, err := Parse(param.Mass, c.text)
		if err != nil || got != c.want {
			t.Errorf("%q = %v, %v; want exactly %v", c.text, got, err, c.want)
		}
		if !regexp.MustCompile(Pattern(param.Mass)).MatchString(strings.ReplaceAll(c.text, "\u00a0", " ")) {
			t.Errorf("%q does not match the pattern", c.text)
		}
	}
	metric, _ := Parse(param.Mass, "1 metric ton")
	short, _ := Parse(param.Mass, "1.102311 short tons")
	if d := metric - short; d > 5e-4 || d < -5e-4 { // seven digits are published
		t.Errorf("a metric ton is off 1.102311 short tons by %v kg", d)
	}
	if exact("907.18474").Cmp(new(big.Rat).Mul(exact("2000"), exact("0.45359237"))) != 0 {
		t.Error("2,000 lb are no short ton")
	}
}

// A ton that may be short or metric is asked about, a mass in a time is told to
// be one, and a milligram is no megagram.
func TestTonsOfNoKind(t *testing.T) {
	for _, c := range []struct{ text, message, hint string }{
		{"12 tons", `"12 tons" does not say which ton`, "12 short tons (2,000 lb each) or 12 tonnes"},
		{"1 ton", `does not say which ton`, "1 short tons"},
		{"12 Tons", `does not say which ton`, "tonnes"},
		{"12 tons/year", `does not say which ton`, "without a time: a permit's cap is the mass in any twelve months"},
		{"12 tons per year", `does not say which ton`, "without a time"},
		{"12 short tons/year", "is a mass in a time", "write 12 short tons, without a time"},
		{"12 short tons per year", "is a mass in a time", "write 12 short tons, without a time"},
		{"12 t a year", "is a mass in a time", "write 12 t, without a time"},
		{"5000 kg/yr", "is a mass in a time", "write 5000 kg, without a time"},
		{"12 mg", `unknown unit "mg"`, ""},
		{"12 long tons", `unknown unit "long tons"`, ""},
		{"12 stones", `unknown unit "stones"`, ""},
	} {
		_, err := Parse(param.Mass, c.text)
		var p *Problem
		if !errors.As(err, &p) {
			t.Errorf("%q is read", c.text)
			continue
		}
		if !strings.Contains(p.Message, c.message) || !strings.Contains(p.Hint, c.hint) || !strings.Contains(p.Allowed, Short) {
			t.Errorf("%q: %+v", c.text, p)
		}
	}
}

// The bound of a range beside a value in short tons is in short tons.
func TestBoundsInShortTons(t *testing.T) {
	if got := FormatLike(param.Mass, 907.18474*3, "12 short tons"); got != "3 short tons" {
		t.Error(got)
	}
}
