package unit

import (
	"math/big"
	"strings"
	"unicode"
	"unicode/utf8"

	"moldturn/sim/param"
	"moldturn/sim/param/guess"
)

// parseQuantity reads a number with its unit; lengths of time and lengths may
// be sums, "1 h 30 min", "24 ft 6 in".
func parseQuantity(k param.Kind, s string) (float64, *Problem) {
	rest := s
	if k == param.Money {
		var problem *Problem
		if rest, problem = cutSign(s); problem != nil {
			return 0, problem
		}
	}
	total, rest, problem := parseTerm(k, rest, s)
	for problem == nil && rest != "" {
		if !sums(k) || lenDigits(rest) == 0 {
			return 0, &Problem{Message: shown(s) + " has more than one value", Hint: example(k)}
		}
		var next *big.Rat
		if next, rest, problem = parseTerm(k, rest, s); problem == nil {
			total = addAway(total, next)
		}
	}
	if problem != nil {
		return 0, problem
	}
	return nearest(total), nil
}

// sums reports whether values of the kind may be written in several terms.
func sums(k param.Kind) bool { return k == param.Duration || k == param.Length }

// addAway adds a later term to a sum; in "-1 h 30 min" the sign counts for both.
func addAway(total, next *big.Rat) *big.Rat {
	if total.Sign() < 0 {
		return total.Sub(total, next)
	}
	return total.Add(total, next)
}

// parseTerm reads one number and its unit from the start of s and returns the
// base value and the text behind them. whole is the text for complaints.
func parseTerm(k param.Kind, s, whole string) (*big.Rat, string, *Problem) {
	number, rest, ok := scanNumber(s)
	if !ok {
		return nil, "", &Problem{Message: shown(whole) + " is not " + k.String(), Hint: example(k)}
	}
	if strings.HasPrefix(rest, ",") {
		return nil, "", &Problem{Message: shown(whole) + " has a comma in a number",
			Hint: "write a decimal point; commas only group thousands: 1,200"}
	}
	written := strings.TrimSpace(s[:len(s)-len(rest)])
	rest = strings.TrimSpace(rest)
	if k == param.Rate {
		rest = slash(rest)
	}
	m, length := longestSign(k, rest)
	if k == param.Mass && length < len(rest) {
		if p := massProblem(rest, written); p != nil {
			return nil, "", p
		}
	}
	switch {
	case length >= 0:
		return m.toBase(number), strings.TrimSpace(rest[length:]), nil
	case rest != "":
		return nil, "", unknownUnit(k, rest, written)
	case number.Sign() == 0 && k != param.Temperature:
		return number, "", nil
	}
	return nil, "", &Problem{Message: written + " has no unit", Allowed: allowed(k), Hint: "write " + withUnits(k, written)}
}

// longestSign finds the longest unit of k that s starts with, in any case; the
// length is -1 if there is none. A unit ends where no letter follows, and no
// digit, except between the terms of a sum.
func longestSign(k param.Kind, s string) (found measure, length int) {
	length = -1
	for _, m := range measures(k) {
		for _, sign := range m.signs {
			if n := len(sign); n > length && len(s) >= n && same(s[:n], sign) && ends(k, s[n:]) {
				found, length = m, n
			}
		}
	}
	return found, length
}

// slash turns "per week" and "/ week" into "/week".
func slash(s string) string {
	if tail, ok := strings.CutPrefix(s, "per "); ok {
		return "/" + strings.TrimSpace(tail)
	}
	if tail, ok := strings.CutPrefix(s, "/"); ok {
		return "/" + strings.TrimSpace(tail)
	}
	return s
}

// ends reports whether a unit may end before rest.
func ends(k param.Kind, rest string) bool {
	r, _ := utf8.DecodeRuneInString(rest)
	if rest == "" || r == ' ' {
		return true
	}
	return sums(k) && unicode.IsDigit(r)
}

// same compares a written unit with a sign: in any case but for the megagram,
// since "mg" would be taken for it.
func same(written, sign string) bool {
	return strings.EqualFold(written, sign) && (sign != megagram || written == sign)
}

// unknownUnit complains about the text behind a number.
func unknownUnit(k param.Kind, rest, number string) *Problem {
	if len(measures(k)) == 1 {
		return &Problem{Message: shown(number+" "+rest) + " must be a plain number", Hint: "write " + number}
	}
	p := &Problem{Message: "unknown unit " + shown(rest), Allowed: allowed(k)}
	var signs []string
	for _, m := range measures(k) {
		signs = append(signs, m.signs...)
	}
	near := guess.Near(rest, signs)
	for i := 0; near == "" && i < len(signs); i++ {
		if strings.HasPrefix(signs[i], rest) {
			near = signs[i]
		}
	}
	if near != "" {
		p.Hint = "did you mean " + strings.TrimSpace(number+" "+near) + "?"
	}
	return p
}

// allowed lists the units of a kind, one spelling each.
func allowed(k param.Kind) string {
	var signs []string
	for _, m := range measures(k) {
		if m.signs[0] != "" {
			signs = append(signs, m.signs[0])
		}
	}
	return strings.Join(signs, ", ")
}

// cutSign takes the sign of a currency out of an amount and leaves a number with
// its own sign. Only 0 may be written without one.
func cutSign(s string) (string, *Problem) {
	minus, amount := cutMinus(s)
	if sign := currency(amount); sign != "" {
		return minus + strings.TrimSpace(amount[len(sign):]), nil
	}
	number, rest, ok := scanNumber(s)
	switch {
	case ok && number.Sign() == 0 && rest == "":
		return s, nil
	case ok:
		return "", &Problem{Message: shown(s) + " has no currency sign", Hint: "write " + minus + "$" + amount + ", or " + minus + "€" + amount + " where that is the currency"}
	}
	return "", &Problem{Message: shown(s) + " is not " + param.Money.String(), Hint: example(param.Money)}
}

// cutMinus takes a leading sign off a number.
func cutMinus(s string) (sign, rest string) {
	for _, minus := range []string{"-", "−", "+"} {
		if tail, found := strings.CutPrefix(s, minus); found {
			return minus, strings.TrimSpace(tail)
		}
	}
	return "", s
}

// Currency is the sign that an amount of money is written with: "$", "€" or
// three capital letters, "EUR". Empty for a text without one.
func Currency(text string) string {
	_, amount := cutMinus(strings.TrimSpace(text))
	return currency(amount)
}

// currency is the sign at the start of s: one of $ £ ¥ or of the block Currency
// Symbols of Unicode (U+20A0 to U+20CF), or three capital letters, as the codes
// of ISO 4217 are.
func currency(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	if r == '$' || r == '£' || r == '¥' || r >= 0x20A0 && r <= 0x20CF {
		return s[:n]
	}
	const code = 3
	if len(s) <= code {
		return ""
	}
	for i := range code {
		if s[i] < 'A' || s[i] > 'Z' {
			return ""
		}
	}
	if next, _ := utf8.DecodeRuneInString(s[code:]); unicode.IsLetter(next) {
		return ""
	}
	return s[:code]
}
