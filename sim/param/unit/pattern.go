package unit

import (
	"regexp"
	"strings"
	"unicode"

	"moldturn/sim/param"
)

const numberPattern = `[-+−]?(\d+(,\d{3})*(\.\d*)?|\.\d+)([eE][-+]?\d+)?`

// Pattern is a regular expression, common to Go and ECMA-262, that the texts of
// a kind match; for editors, which check the form only. Everything Parse reads
// matches it, not everything that matches is read. Empty for kinds without a
// form.
func Pattern(k param.Kind) string {
	switch k {
	case param.Date:
		return `^\d{4}-\d{2}-\d{2}$`
	case param.DayMonth:
		return `^(\d{2}-\d{2}|[A-Za-z]+ \d{1,2}|\d{1,2} [A-Za-z]+)$`
	case param.ClockTime:
		return `^\d{1,2}(:\d{2})?( *[AaPp] *[Mm])?$`
	case param.Weekdays, param.Months:
		return `^ *[A-Za-z]{3,}( *[-–,] *[A-Za-z]{3,})* *$`
	case param.Flag:
		return `^(` + anyCase("true") + "|" + anyCase("false") + "|" + anyCase("yes") + "|" +
			anyCase("no") + "|" + anyCase("on") + "|" + anyCase("off") + `)$`
	case param.Money:
		return `^([-+−]? *([$£¥₠-⃏]|[A-Z]{3}) *` + numberPattern + ` *(` + signPattern(k) + `)|[-+−]?0+(\.0*)?)$`
	case param.Rate:
		return `^` + numberPattern + ` *((/|per ) *(` + strings.ReplaceAll(signPattern(k), "/", "") + `))?$`
	}
	if measures(k) == nil || k == param.Dist || k == param.NumberDist {
		return ""
	}
	term := numberPattern + ` *(` + signPattern(k) + `)`
	if sums(k) {
		return `^` + term + `( *` + term + `)*$|^[-+−]?0+(\.0*)?$`
	}
	return `^` + term + `$|^[-+−]?0+(\.0*)?$`
}

// signPattern is the alternatives of the units of a kind in any case.
func signPattern(k param.Kind) string {
	var signs []string
	for _, m := range measures(k) {
		for _, sign := range m.signs {
			signs = append(signs, anyCase(sign))
		}
	}
	return strings.Join(signs, "|")
}

// anyCase writes each letter as a class of its two cases, since ECMA-262 has no
// switch for case inside a pattern.
func anyCase(s string) string {
	var b strings.Builder
	for _, r := range s {
		if upper, lower := unicode.ToUpper(r), unicode.ToLower(r); upper != lower && r < 128 {
			b.WriteString("[" + string(upper) + string(lower) + "]")
		} else {
			b.WriteString(regexp.QuoteMeta(string(r)))
		}
	}
	return b.String()
}
