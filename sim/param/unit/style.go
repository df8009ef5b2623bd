package unit

import (
	"math"
	"math/big"
	"strconv"
	"strings"

	"moldturn/sim/param"
)

// Style is how a scenario wants values written in all outputs: the family of
// units, and the sign before amounts of money. Its zero value is metric with
// amounts in $.
type Style struct {
	System   System
	Currency string // "" for "$"; a sign of several letters is set apart: "EUR 40k"
}

// Digits that are shown of values that the style's units cannot write in few.
const (
	shownExactly = 6
	shownDigits  = 5
)

// Format writes a value in the units and the currency of the style, for people:
// exactly where six digits do, else to five.
func (s Style) Format(k param.Kind, x float64) string {
	y := new(big.Rat)
	if y.SetFloat64(x) == nil || measures(k) == nil {
		return Format(k, x, s.System)
	}
	best, length, handicap := "", 0, 0
	for _, m := range measures(k) {
		if m.write&s.System.flag() == 0 {
			continue
		}
		number, ok := fewestDigits(m, x, y)
		if !ok || len(strings.Trim(strings.Replace(number, ".", "", 1), "-0")) > shownExactly {
			number = decimal(nearest(m.fromBase(y)), shownDigits)
		}
		n := len(number) + handicap
		if strings.HasPrefix(strings.TrimPrefix(number, "-"), "0.0") {
			n += 2
		}
		if best == "" || n < length {
			best, length = join(money(k, m, number), m), n
		}
		handicap = 1
	}
	return s.money(k, best)
}

// Like is FormatLike, for bounds beside a value in the units of the style; it is
// Format without such a value.
func (s Style) Like(k param.Kind, x float64, like string) string {
	if k == param.Money || like == "" {
		return s.Format(k, x)
	}
	return FormatLike(k, x, like)
}

// Text writes again what is written in any unit; a text that is no value of the
// kind stays as it is.
func (s Style) Text(k param.Kind, text string) string {
	x, err := Parse(k, text)
	if err != nil {
		return text
	}
	return s.Format(k, x)
}

// money puts the sign of the currency into an amount that Format has written.
func (s Style) money(k param.Kind, text string) string {
	if k != param.Money || s.Currency == "" || s.Currency == "$" {
		return text
	}
	sign := s.Currency
	if len([]rune(sign)) > 1 {
		sign += " "
	}
	return strings.Replace(text, "$", sign, 1)
}

// Temperature writes °C in the unit of the style, rounded to whole degrees: "25
// °C", "77 °F".
func (s Style) Temperature(celsius float64) string {
	x, sign := s.Degrees(celsius)
	return strconv.FormatFloat(math.Round(x)+0, 'f', 0, 64) + "\u00a0" + sign
}

// Degrees is °C in the unit of the style, with its sign.
func (s Style) Degrees(celsius float64) (x float64, sign string) {
	if s.System == US {
		return celsius*1.8 + 32, "°F"
	}
	return celsius, "°C"
}

// SquareMeters is m² in the unit of the style, with its sign.
func (s Style) SquareMeters(m2 float64) (x float64, sign string) {
	if s.System == US {
		return m2 / 0.09290304, "ft²"
	}
	return m2, "m²"
}
