package assume

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// mostMeasured is how many inputs the command of a report varies.
const mostMeasured = 4

// measure is the command that tells what the first of the inputs are worth in boats
// and luster, each changed alone; empty where none of them is a number that can
// be moved.
func measure(items []Item) string {
	var over []string
	for _, x := range items {
		if low, high, ok := around(x.Value, x.Range); ok && len(over) < mostMeasured {
			over = append(over, fmt.Sprintf("--over '%s=%s, %s'", x.Path, low, high))
		}
	}
	if len(over) == 0 {
		return ""
	}
	return "moldturn sweep SCENARIO --each " + strings.Join(over, " ")
}

// amount matches a number and its unit.
var amount = regexp.MustCompile(`^(-?[0-9]+(?:\.[0-9]+)?)((?:[ \x{00A0}][^0-9\s]\S*|/\S+)?)$`)

// apart is how far the two ends of a check lie from a value, as a share of it.
// Judgment of this report, no source.
const apart = 0.3

// around is a value less and more by that share, within what is allowed: whole
// where the value is, with its unit. false for texts, zero, and values that
// cannot be moved to both sides.
func around(value, allowed string) (low, high string, ok bool) {
	m := amount.FindStringSubmatch(value)
	if m == nil {
		return "", "", false
	}
	v, err := strconv.ParseFloat(m[1], 64)
	if err != nil || v == 0 {
		return "", "", false
	}
	digits := 0
	if _, rest, dot := strings.Cut(m[1], "."); dot {
		digits = len(rest)
	}
	scale := math.Pow(10, float64(digits))
	step := max(math.Round(math.Abs(v)*apart*scale), 1) / scale
	if least, most, known := bounds(allowed); !known || v-step < least || v+step > most {
		return "", "", false
	}
	text := func(x float64) string { return strconv.FormatFloat(x, 'f', digits, 64) + m[2] }
	return text(v - step), text(v + step), true
}

// bounds reads "0 h to 72 h".
func bounds(allowed string) (least, most float64, ok bool) {
	a, b, found := strings.Cut(allowed, " to ")
	low, high := amount.FindStringSubmatch(a), amount.FindStringSubmatch(b)
	if !found || low == nil || high == nil || low[2] != high[2] {
		return 0, 0, false
	}
	least, err := strconv.ParseFloat(low[1], 64)
	if err != nil {
		return 0, 0, false
	}
	most, err = strconv.ParseFloat(high[1], 64)
	return least, most, err == nil
}
