package scenarios

import (
	"fmt"
	"strings"
	"unicode"
)

// width is how many characters of a long line an excerpt shows.
const width = 100

// excerpt is the part of a line around a column, fit for a terminal, and the
// number of terminal cells in front of that column.
func excerpt(line string, column int) (text string, indent int) {
	runes := []rune(strings.TrimRight(line, " \t"))
	at := min(max(column-1, 0), len(runes))
	from, to := 0, len(runes)
	if len(runes) > width {
		from = max(0, min(at-width/2, len(runes)-width))
		to = min(len(runes), from+width)
	}
	before, after := printable(string(runes[from:at])), printable(string(runes[at:max(at, to)]))
	if from > 0 {
		before = "…" + before
	}
	if to < len(runes) {
		after += "…"
	}
	return before + after, cells(before)
}

// printable replaces what would move the cursor, change colors or turn the
// direction of a text by its escape, "\x1b"; a tab becomes a space.
func printable(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '\t':
			b.WriteByte(' ')
		case unicode.IsPrint(r):
			b.WriteRune(r)
		case r < 0x100:
			fmt.Fprintf(&b, `\x%02x`, r)
		default:
			fmt.Fprintf(&b, `\u%04x`, r)
		}
	}
	return b.String()
}

// cells is the number of terminal cells of a printable text: two for the wide
// letters of East Asia and for pictographs, none for combining marks.
func cells(s string) int {
	n := 0
	for _, r := range s {
		switch {
		case unicode.In(r, unicode.Mn, unicode.Me):
		case isWide(r):
			n += 2
		default:
			n++
		}
	}
	return n
}

// isWide follows the classes W and F of Unicode Standard Annex 11, East Asian
// Width, by blocks.
func isWide(r rune) bool {
	return r >= 0x1100 && r <= 0x115f || r >= 0x2e80 && r <= 0xa4cf && r != 0x303f ||
		r >= 0xac00 && r <= 0xd7a3 || r >= 0xf900 && r <= 0xfaff || r >= 0xfe30 && r <= 0xfe6f ||
		r >= 0xff00 && r <= 0xff60 || r >= 0xffe0 && r <= 0xffe6 || r >= 0x1f300 && r <= 0x1faff ||
		r >= 0x20000 && r <= 0x3fffd
}

// hidden reports whether a name holds a control character or one that turns the
// direction of text, which could show it as another name.
func hidden(s string) bool {
	return strings.ContainsFunc(s, func(r rune) bool {
		return unicode.IsControl(r) || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069 || r == 0x2028 || r == 0x2029
	})
}
