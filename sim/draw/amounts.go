package draw

import (
	"fmt"
	"strconv"
	"strings"
)

// readAmounts reads values that carry units, after sharing a unit written once.
func readAmounts(words []string, number func(string) (float64, error)) ([]float64, error) {
	values := make([]float64, len(words))
	for i, w := range shareUnit(words) {
		v, err := number(w)
		if err != nil {
			return nil, fmt.Errorf("value %d, %q: %w", i+1, w, err)
		}
		values[i] = v
	}
	return values, nil
}

// shareUnit gives the unit of the last word to the words before it if all of
// them are bare numbers: "8", "10", "16 h" become "8 h", "10 h", "16 h".
func shareUnit(words []string) []string {
	last := words[len(words)-1]
	unit := last[bareLength(last):]
	if unit == "" || unit == last {
		return words
	}
	shared := make([]string, len(words))
	for i, w := range words[:len(words)-1] {
		if !isBare(w) {
			return words
		}
		shared[i] = w + unit
	}
	shared[len(words)-1] = last
	return shared
}

// bareLength is the length of the number that s begins with; "1e3 h" has 3.
func bareLength(s string) int {
	for n := len(s); n > 0; n-- {
		if isBare(s[:n]) {
			return n
		}
	}
	return 0
}

// isBare reports whether s is a number without a unit.
func isBare(s string) bool {
	_, err := strconv.ParseFloat(s, 64)
	return err == nil
}

// readRatio reads "0.3" or "30 %".
func readRatio(s string) (float64, error) {
	digits, percent := strings.CutSuffix(s, "%")
	v, err := strconv.ParseFloat(strings.TrimSpace(digits), 64)
	if err != nil {
		return 0, fmt.Errorf("cv %q is not a number; allowed: a ratio such as 0.3, or 30 %%", s)
	}
	if percent {
		v /= 100
	}
	return v, nil
}
