package floor

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

var (
	numberPart = regexp.MustCompile(`^([-+−]?)[$€£]? ?([0-9][0-9.,' ]*|[.,][0-9]+) ?([A-Za-z%$€£./#³²° ]*)$`)
	grouped    = regexp.MustCompile(`^\d{1,3}([.,' ]\d{3})+$`)
)

// amount is a kind of number: what may stand behind it, and whether it is whole.
type amount struct {
	units     []string // in lower case
	whole     bool
	low, high float64
	scale     map[string]float64 // factor of a unit, 1 where it has none
}

// allowed says what would be accepted.
func (a *amount) allowed() string {
	kind := "a number"
	if a.whole {
		kind = "a whole number"
	}
	return fmt.Sprintf("%s from %s to %s", kind, plainNumber(a.low), plainNumber(a.high))
}

func plainNumber(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// parse reads "3 turns", "97,2 pts", "$128,400", "1 204".
func (a *amount) parse(s string) (float64, error) {
	m := numberPart.FindStringSubmatch(s)
	if m == nil {
		return 0, errors.New("not a number")
	}
	x, err := a.digits(strings.TrimSpace(m[2]))
	if err != nil {
		return 0, err
	}
	unit := strings.TrimSuffix(strings.ToLower(strings.TrimSpace(m[3])), ".")
	if unit != "" {
		known := false
		for _, u := range a.units {
			known = known || u == unit
		}
		if !known {
			return 0, fmt.Errorf("%q is no unit of it", unit)
		}
		if f, ok := a.scale[unit]; ok {
			x *= f
		}
	}
	if m[1] == "-" || m[1] == "−" {
		x = -x
	}
	switch {
	case a.whole && x != math.Trunc(x):
		return 0, errors.New("not a whole number")
	case x < a.low || x > a.high:
		return 0, errors.New("out of range")
	}
	return x, nil
}

// digits reads a number whose thousands or decimals may be set off by points or
// commas. One mark before exactly three digits is a thousand for whole numbers
// and, before a comma, for others; a mark before other digits is a decimal one.
func (a *amount) digits(s string) (float64, error) {
	points, commas := strings.Count(s, "."), strings.Count(s, ",")
	switch {
	case grouped.MatchString(s) && (a.whole || points+commas != 1 || commas == 1 && a.high > 1000):
		if points > 0 && commas > 0 {
			return 0, errors.New("not a number")
		}
		s = strings.NewReplacer(".", "", ",", "", "'", "", " ", "").Replace(s)
	case points > 0 && commas > 0 && strings.LastIndex(s, ",") > strings.LastIndex(s, "."):
		s = strings.Replace(strings.ReplaceAll(s, ".", ""), ",", ".", 1) // 1.204,50
	case points > 0 && commas > 0:
		s = strings.ReplaceAll(s, ",", "") // 1,204.50
	case commas == 1:
		s = strings.Replace(s, ",", ".", 1) // 97,2
	}
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return 0, errors.New("not a number")
	}
	return x, nil
}
