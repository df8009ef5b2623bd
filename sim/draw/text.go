package draw

import (
	"strconv"
	"strings"
)

// digits writes v with as many digits as it needs to be read back unchanged.
func digits(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

// short writes v to four digits, for warnings.
func short(v float64) string { return strconv.FormatFloat(v, 'g', 4, 64) }

// call writes a law with its parameters: "pert(8, 10, 16)".
func call(name string, values ...float64) string {
	words := make([]string, len(values))
	for i, v := range values {
		words[i] = digits(v)
	}
	return name + "(" + strings.Join(words, ", ") + ")"
}
