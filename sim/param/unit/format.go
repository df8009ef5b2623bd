package unit

import (
	"fmt"
	"math/big"
	"strings"

	"moldturn/sim/param"
)

// System is the family of units in which values are written.
type System uint8

// Systems.
const (
	Metric System = iota // C, m2, mm, kg, L
	US                   // F, ft2, in, lb, gal
)

// Format writes a value in the units of sys with the fewest digits from which
// Parse gets back exactly x. Where no decimal of 17 digits in a unit of sys
// does, the base unit of the kind is used. Values that are not finite or not of
// a kind that Parse reads give "?".
func Format(k param.Kind, x float64, sys System) string {
	switch k {
	case param.Flag:
		return fmt.Sprint(x != 0)
	case param.Date:
		return Day(x).Format("2006-01-02")
	case param.DayMonth:
		month, day := MonthDay(x)
		return fmt.Sprintf("%02d-%02d", int(month), day)
	case param.ClockTime:
		return fmt.Sprintf("%02d:%02d", int(x)/60, int(x)%60)
	case param.Weekdays:
		return formatSet(x, weekdays[:])
	case param.Months:
		return formatSet(x, months[:])
	}
	return formatQuantity(k, x, sys)
}

// formatQuantity chooses among the units of the system the one with the
// shortest number; every unit but the first has a handicap of one character,
// so that 40 h stays hours and 20 mil does not become 0.02 in.
func formatQuantity(k param.Kind, x float64, sys System) string {
	y := new(big.Rat)
	if y.SetFloat64(x) == nil || measures(k) == nil {
		return "?"
	}
	best, length, handicap := "", 0, 0
	for _, m := range measures(k) {
		if m.write&sys.flag() == 0 {
			continue
		}
		number, ok := fewestDigits(m, x, y)
		if n := len(number) + handicap; ok && (best == "" || n < length) {
			best, length = join(money(k, m, number), m), n
		}
		handicap = 1
	}
	if best == "" {
		base := base(k)
		return join(money(k, base, decimal(x, 17)), base)
	}
	return best
}

// fewestDigits writes x in m with the fewest digits that read back as x.
func fewestDigits(m measure, x float64, y *big.Rat) (string, bool) {
	written := nearest(m.fromBase(y))
	for digits := 1; digits <= 17; digits++ {
		number := decimal(written, digits)
		r, rest, ok := scanNumber(number)
		if ok && rest == "" && nearest(m.toBase(r)) == x {
			return number, true
		}
	}
	return "", false
}

// FormatLike writes a value in the unit that like is written in, rounded to six
// digits: for the bounds of a range beside a value that misses them. Without a
// unit in like it is Format in the metric system.
func FormatLike(k param.Kind, x float64, like string) string {
	y := new(big.Rat)
	if _, rest, ok := scanNumber(strings.TrimLeft(like, "-+$ ")); ok && y.SetFloat64(x) != nil {
		rest = strings.TrimSpace(rest)
		if k == param.Rate {
			rest = slash(rest)
		}
		if m, n := longestSign(k, rest); n > 0 {
			return join(money(k, m, decimal(nearest(m.fromBase(y)), 6)), m)
		}
	}
	return Format(k, x, Metric)
}

// flag is the mark of the units that a system writes.
func (s System) flag() use {
	if s == US {
		return us
	}
	return metric
}

// preferred is the first unit of a system.
func preferred(k param.Kind, s System) measure {
	for _, m := range measures(k) {
		if m.write&s.flag() != 0 {
			return m
		}
	}
	return measure{signs: []string{""}}
}

// base is the unit in which the values of a kind are kept.
func base(k param.Kind) measure {
	for _, m := range measures(k) {
		if m.factor == "1" && m.shift == "" {
			return m
		}
	}
	return measure{signs: []string{""}}
}

// money adds the dollar sign, and the second digit of the cents.
func money(k param.Kind, m measure, number string) string {
	if k != param.Money {
		return number
	}
	if point := strings.IndexByte(number, '.'); m.signs[0] == "" && point >= 0 && point == len(number)-2 {
		number += "0"
	}
	if tail, negative := strings.CutPrefix(number, "-"); negative {
		return "-$" + tail
	}
	return "$" + number
}

// join sets a number and a unit together: "24 h", "6 %", "3.9/week", "$40k".
func join(number string, m measure) string {
	sign := m.signs[0]
	if sign == "" || strings.HasPrefix(sign, "/") || strings.HasPrefix(number, "$") || strings.HasPrefix(number, "-$") {
		return number + sign
	}
	return number + " " + sign
}
