package view

import (
	"strconv"
	"strings"

	"moldturn/reports/cells"
)

// noteHead adds a footnote to a table, with its mark at the head of a column.
func noteHead(t *cells.Table, column int, text string) {
	t.Notes = append(t.Notes, text)
	markHead(t, column, len(t.Notes)-1)
}

// markHead sets the mark of note n, counted from 0, at the head of a column; at
// the title where the column has no head.
func markHead(t *cells.Table, column, n int) {
	at := &t.Columns[column].Head
	if *at == "" {
		at = &t.Title
	}
	*at += raised(n)
}

// raised is the mark of footnote n, counted from 0: ¹, ², … ¹⁰.
func raised(n int) string {
	digits := []rune("⁰¹²³⁴⁵⁶⁷⁸⁹")
	var b strings.Builder
	for _, d := range strconv.Itoa(n + 1) {
		b.WriteRune(digits[d-'0'])
	}
	return b.String()
}
