package view

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	units "moldturn/sim/param/unit"
	"moldturn/sim/stats"
)

// Money is how amounts and quantities are written: the sign of the currency and
// the family of units. Both change texts only.
type Money struct {
	Currency string
	Units    units.System
}

// Style is how values of inputs are written.
func (m Money) Style() units.Style { return units.Style{System: m.Units, Currency: m.Currency} }

// grain is the power of ten to which an amount known to ± half is rounded: one
// digit of the half width is kept, two where it begins low (see decimals).
// Without a half width it is 1.
func grain(half float64) float64 {
	if !(half > 0) || math.IsInf(half, 0) {
		return 1
	}
	power := math.Floor(math.Log10(half))
	if half/math.Pow(10, power) < 3.545 {
		power--
	}
	return math.Pow(10, max(power, 0))
}

// whole prints an amount rounded to a grain, with commas: "$61,200". A sign of
// several letters is set apart.
func (m Money) whole(v, grain float64) string {
	return m.sign(commas(math.Abs(v), grain), v < 0)
}

func (m Money) sign(number string, negative bool) string {
	currency := m.Currency
	if utf8.RuneCountInString(currency) > 1 {
		currency += " "
	}
	if negative && strings.Trim(number, "0,.") != "" {
		return "−" + currency + number
	}
	return currency + number
}

// cents prints a price in full: "$27.30".
func (m Money) cents(v float64) string {
	digits := 2
	if math.Abs(v) < 1 && v != 0 {
		digits = 4
	}
	return m.sign(grouped(strconv.FormatFloat(math.Abs(v), 'f', digits, 64)), v < 0)
}

// amount prints a summary: "$61,200 ± 1,300"; a dash for none.
func (m Money) amount(x stats.Summary) string {
	if x.N == 0 {
		return "–"
	}
	g := grain(x.Half)
	s := m.whole(x.Mean, g)
	switch half := commas(x.Half, g); {
	case x.Half > 0 && half == "0":
		s += " ± <1"
	case x.Half > 0:
		s += " ± " + half
	}
	return s
}

// mean prints a summary without its interval, to the digits it supports.
func (m Money) mean(x stats.Summary) string { return m.whole(x.Mean, grain(x.Half)) }

// change prints a difference; "not clear" where its interval includes zero.
func (m Money) change(d stats.Difference) string {
	switch {
	case d.N == 0 || !d.Known():
		return "–"
	case !d.Clear:
		return notClear
	}
	s := m.amount(d.Summary)
	if d.Mean > 0 {
		s = "+" + s
	}
	return s
}

func commas(v, grain float64) string {
	return grouped(strconv.FormatFloat(math.Round(v/grain)*grain, 'f', 0, 64))
}

// grouped sets commas between the thousands of a number without sign.
func grouped(s string) string {
	whole, rest, dot := strings.Cut(s, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if dot {
		return whole + "." + rest
	}
	return whole
}

// measure is a unit of the ledger in the chosen family: so many of it make one
// of the ledger's.
func (m Money) measure(u string) (string, float64) {
	if m.Units != units.US {
		return u, 1
	}
	// NIST Special Publication 811 (2008), appendix B.8
	switch u {
	case "kg":
		return "lb", 1 / 0.45359237
	case "L":
		return "gal", 1 / 3.785411784
	case "m²":
		return "ft²", 1 / 0.09290304
	case "1,000 m³":
		return "1,000 ft³", 1 / math.Pow(0.3048, 3)
	}
	return u, 1
}

// Measure is a unit of the ledger in the chosen family of units, and how many
// of it one of the ledger's is.
func (m Money) Measure(unit string) (name string, factor float64) { return m.measure(unit) }
