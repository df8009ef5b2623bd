package table

import (
	"strings"

	"github.com/jedib0t/go-pretty/v6/text"

	"moldturn/reports/cells"
)

// narrowest is the least width of a wrapped column of text; below it wrapping
// cuts ordinary words.
const narrowest = 10

// longestWord is the longest word of a head that is kept whole.
const longestWord = 16

// fit gives every column a width so that the table is at most width wide. The
// widest column of text gives way first, one cell at a time. It returns false
// when numbers and shortest texts are already too wide.
func fit(body []column, width int) ([]int, bool) {
	widths, floors, total := make([]int, len(body)), make([]int, len(body)), 0
	for j, c := range body {
		widths[j], floors[j] = span(c)
		total += widths[j] + gap
	}
	for total > width+gap { // the last gap is trimmed
		j := widest(widths, floors)
		if j < 0 {
			return nil, false
		}
		widths[j]--
		total--
	}
	return widths, true
}

// span is the natural width of a column and the least it can be wrapped to:
// for numbers the longest number, for texts narrowest; a head wraps between
// words in both.
func span(c column) (natural, floor int) {
	for _, s := range c.cells {
		natural = max(natural, text.StringWidth(s))
	}
	floor = natural
	if c.align == cells.Left {
		floor = min(natural, narrowest)
	}
	for word := range strings.FieldsSeq(c.head) {
		floor = max(floor, min(text.StringWidth(word), longestWord))
	}
	return max(natural, text.StringWidth(c.head)), floor
}

// widest is the index of the widest column that can still shrink, or -1. Of
// equal columns the last gives way.
func widest(widths, floors []int) int {
	at := -1
	for j := range widths {
		if widths[j] > floors[j] && (at < 0 || widths[j] >= widths[at]) {
			at = j
		}
	}
	return at
}
