package unit

import (
	"math"
	"math/big"
	"strconv"
	"strings"
)

// Numbers longer than this or beyond 10^±maxExponent are refused: no input of a
// plant needs them, and exact arithmetic on them would cost time.
const (
	maxDigits   = 40
	maxExponent = 40
)

// scanNumber reads a decimal number from the start of s and returns it exactly,
// with the text behind it. Thousands may be grouped by commas ("1,200"); "−"
// counts as "-". ok is false if s does not start with a number.
func scanNumber(s string) (value *big.Rat, rest string, ok bool) {
	s = strings.Replace(s, "−", "-", 1)
	i := 0
	if i < len(s) && (s[i] == '+' || s[i] == '-') {
		i++
	}
	whole := i + lenWhole(s[i:])
	end := whole
	if end < len(s) && s[end] == '.' {
		end += 1 + lenDigits(s[end+1:])
	}
	if end == i || s[i:end] == "." || end > maxDigits {
		return nil, s, false
	}
	exponent := lenExponent(s[end:])
	if e := s[end : end+exponent]; e != "" {
		if n, err := strconv.Atoi(e[1:]); err != nil || n > maxExponent || n < -maxExponent {
			return nil, s, false
		}
	}
	value, ok = new(big.Rat).SetString(strings.ReplaceAll(s[:end+exponent], ",", ""))
	return value, s[end+exponent:], ok
}

// lenDigits is the length of the digits at the start of s.
func lenDigits(s string) int {
	n := 0
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	return n
}

// lenWhole is the length of a whole number at the start of s, with or without
// commas at every third digit.
func lenWhole(s string) int {
	n := lenDigits(s)
	if n == 0 || n > 3 {
		return n
	}
	for n < len(s) && s[n] == ',' && lenDigits(s[n+1:]) == 3 {
		n += 4
	}
	return n
}

// lenExponent is the length of an exponent "e3", "E-3" at the start of s, or 0.
func lenExponent(s string) int {
	if len(s) < 2 || s[0] != 'e' && s[0] != 'E' {
		return 0
	}
	n := 1
	if s[n] == '+' || s[n] == '-' {
		n++
	}
	digits := lenDigits(s[n:])
	if digits == 0 {
		return 0
	}
	return n + digits
}

// nearest is the float64 nearest to r.
func nearest(r *big.Rat) float64 {
	f, _ := r.Float64()
	return f
}

// decimal writes f with at most digits significant digits, in plain notation
// except for very large and very small values.
func decimal(f float64, digits int) string {
	f, _ = strconv.ParseFloat(strconv.FormatFloat(f, 'e', digits-1, 64), 64)
	if a := math.Abs(f); a != 0 && (a < 1e-6 || a >= 1e15) {
		return strconv.FormatFloat(f, 'g', -1, 64)
	}
	return strconv.FormatFloat(f, 'f', -1, 64)
}
