// Package unit reads and writes the values of inputs as people write them:
// "24 h", "75 F", "365 ft2", "$40k", "Mon-Fri". Every kind of package param
// except texts, names, distributions and containers is one float64 in the base
// unit of its kind. Conversions are exact: the decimal that was written times
// the exact factor, rounded once to the nearest float64.
package unit

import (
	"math"
	"strconv"
	"strings"

	"moldturn/sim/param"
)

// Problem tells what is wrong with a written value. Allowed and Hint may be
// empty.
type Problem struct {
	Message string // what was found and why it does not do
	Allowed string // what would do
	Hint    string // what was probably meant
}

// Error is the message without allowed values and hint.
func (p *Problem) Error() string { return p.Message }

// Parse reads text as a value of kind k and returns it in the base unit of k.
// Spaces around the text, the case of units (but for Mg) and the space before them do not
// matter. The result is finite. Every error is a *Problem. Kinds that are no
// number (Text, Choice, Ref, Dist, NumberDist and containers) are errors;
// for the lengths inside a distribution use Duration, for its plain numbers
// Number.
func Parse(k param.Kind, text string) (float64, error) {
	s := strings.TrimSpace(strings.Map(plainSpace, text))
	if s == "" {
		return 0, &Problem{Message: "an empty text is not " + k.String(), Hint: example(k)}
	}
	x, problem := parse(k, s)
	if problem != nil {
		return 0, problem
	}
	return x, nil
}

// plainSpace turns the spaces that outputs set between a number and its unit into
// the one that is typed.
func plainSpace(r rune) rune {
	if r == '\u00a0' || r == '\u202f' {
		return ' '
	}
	return r
}

// parse chooses the reader of the kind.
func parse(k param.Kind, s string) (float64, *Problem) {
	switch k {
	case param.Flag:
		return parseFlag(s)
	case param.Date:
		return parseDate(s)
	case param.DayMonth:
		return parseDayMonth(s)
	case param.ClockTime:
		return parseClock(s)
	case param.Weekdays:
		return parseSet(k, s, weekdays[:])
	case param.Months:
		return parseSet(k, s, months[:])
	case param.Count:
		x, problem := parseQuantity(k, s)
		if problem != nil || x == math.Trunc(x) && math.Abs(x) <= 1<<53 {
			return x, problem
		}
		if math.Abs(x) > 1<<53 {
			return 0, &Problem{Message: shown(s) + " is too large a number"}
		}
		return 0, &Problem{Message: shown(s) + " is not a whole number"}
	}
	if measures(k) == nil || k == param.Dist || k == param.NumberDist {
		return 0, &Problem{Message: k.String() + " has no number to read"}
	}
	return parseQuantity(k, s)
}

// parseFlag reads true and false and their everyday words.
func parseFlag(s string) (float64, *Problem) {
	switch strings.ToLower(s) {
	case "true", "yes", "on":
		return 1, nil
	case "false", "no", "off":
		return 0, nil
	}
	return 0, &Problem{Message: shown(s) + " is neither true nor false", Allowed: "true, false"}
}

// example shows how a value of the kind is written, as a hint.
func example(k param.Kind) string {
	switch k {
	case param.Flag:
		return "write true or false"
	case param.Share:
		return "write for example 6 %"
	case param.Money:
		return "write for example $1,200 or $40k"
	case param.Date:
		return "write year-month-day, 2027-01-04"
	case param.DayMonth:
		return "write month-day, 07-04, or Jul 4"
	case param.ClockTime:
		return "write for example 06:00 or 3:30 pm"
	case param.Weekdays:
		return "write for example Mon-Fri or Mon, Wed"
	case param.Months:
		return "write for example May-Sep or Jan, Jul"
	case param.Number, param.Count:
		return "write for example 3"
	}
	return "write for example " + withUnits(k, "24")
}

// withUnits writes a bare number with the unit of each system: "24 h", "34 m2
// or 34 ft2".
func withUnits(k param.Kind, number string) string {
	if k == param.Money {
		return "$" + number
	}
	si, customary := preferred(k, Metric), preferred(k, US)
	if si.signs[0] == customary.signs[0] {
		return join(number, si)
	}
	return join(number, si) + " or " + join(number, customary)
}

// shown quotes what the user wrote, shortened and with control characters
// escaped.
func shown(s string) string {
	if r := []rune(s); len(r) > 60 {
		s = string(r[:60]) + "…"
	}
	return strconv.Quote(s)
}
