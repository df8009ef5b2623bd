package floor

import (
	"slices"
	"strings"
	"unicode"

	"moldturn/sim/param/guess"
)

// clean is a cell without what people do not see: spaces of all kinds around
// and doubled inside, marks of width zero, the apostrophe or formula with which
// spreadsheets keep a number a text.
func clean(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case r == '\u200b', r == '\u200c', r == '\u200d', r == '\u2060', r == '\ufeff', r == '\u00ad':
			return -1
		case unicode.IsSpace(r), unicode.IsControl(r):
			return ' '
		}
		return r
	}, strings.ToValidUTF8(s, "\ufffd"))
	s = strings.Join(strings.Fields(s), " ")
	if len(s) > 3 && strings.HasPrefix(s, `="`) && strings.HasSuffix(s, `"`) {
		s = s[2 : len(s)-1]
	}
	if rest, ok := strings.CutPrefix(s, "'"); ok && rest != "" && rest != "'" {
		s = rest
	}
	return strings.TrimSpace(s)
}

// key is what a name is compared by: letters and digits in lower case.
func key(s string) string {
	s = strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return unicode.ToLower(r)
		}
		return -1
	}, guess.Fold(s))
	return s
}

// idKey is what serials and mold ids are compared by: key, without the ".0"
// that a spreadsheet gives a number.
func idKey(s string) string {
	return key(strings.TrimSuffix(s, ".0"))
}

// says tells whether a cell holds anything: words for "not known" do not count.
func says(s string) bool {
	switch strings.ToLower(s) {
	case "", "-", "--", "—", "–", "?", "??", "n/a", "na", "n.a.", "tbd", "tba", "unknown", "none", "null", "nil", "nan", "(blank)", "x", ".":
		return false
	}
	return true
}

// isDitto tells whether a cell is a mark for "as above".
func isDitto(s string) bool {
	return slices.Contains([]string{`"`, `""`, "''", "“", "”", "„", "〃", "″", "do", "do.", "ditto", "same", "as above", `-"-`, `- " -`}, strings.ToLower(s))
}

// isError tells whether a cell is the error of a formula.
func isError(s string) bool {
	return slices.Contains([]string{"#REF!", "#N/A", "#VALUE!", "#DIV/0!", "#NAME?", "#NULL!", "#NUM!", "#SPILL!", "#CALC!"}, strings.ToUpper(s)) ||
		s != "" && strings.Trim(s, "#") == "" && len(s) > 3
}

// isTotal tells whether a cell heads a row of sums.
func isTotal(s string) bool {
	words := strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) })
	if len(words) == 0 || len(words) > 4 {
		return false
	}
	switch words[0] {
	case "total", "totals", "sum", "subtotal", "subtotals", "average", "avg", "mean":
		return true
	case "grand", "sub":
		return len(words) > 1 && (words[1] == "total" || words[1] == "totals")
	}
	return words[len(words)-1] == "total" || words[len(words)-1] == "totals" || words[len(words)-1] == "subtotal"
}
