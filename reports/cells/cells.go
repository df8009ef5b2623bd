// Package cells is the table as the writers share it: texts, already rounded
// and labeled, with their alignment and footnotes. The terminal writer and the
// page writer only place what a Table holds.
package cells

import (
	"fmt"
	"strings"
	"unicode"
)

// Align is the side to which a column is set.
type Align int

// Texts are set left, numbers right. The zero value is Left.
const (
	Left Align = iota
	Right
)

// Column is the head of one column. Put the unit in Head: "boats a week".
type Column struct {
	Head  string
	Align Align
}

// Cell is one text. Notes are indexes into Table.Notes, from 0.
type Cell struct {
	Text  string
	Notes []int
}

// Row is one line of the table. Strong sets it off, for totals.
type Row struct {
	Cells  []Cell
	Strong bool
}

// Table is a table of finished texts. The zero value has no columns and fails
// Check.
type Table struct {
	Title   string // one line above the table, may be empty
	Columns []Column
	Rows    []Row
	Notes   []string // footnotes, numbered from 1 in print
}

// Texts makes a row of cells without footnotes.
func Texts(texts ...string) Row {
	row := Row{Cells: make([]Cell, len(texts))}
	for i, s := range texts {
		row.Cells[i].Text = s
	}
	return row
}

// Check reports the first row that does not fit the columns, and the first
// footnote that does not exist. A table without rows is fine.
func (t Table) Check() error {
	if len(t.Columns) == 0 {
		return fmt.Errorf("table %q has no columns", t.Title)
	}
	for i, r := range t.Rows {
		if len(r.Cells) != len(t.Columns) {
			return fmt.Errorf("table %q, row %d: %d cells for %d columns", t.Title, i+1, len(r.Cells), len(t.Columns))
		}
		for j, c := range r.Cells {
			for _, n := range c.Notes {
				if n < 0 || n >= len(t.Notes) {
					return fmt.Errorf("table %q, row %d, column %d: there is no footnote %d", t.Title, i+1, j+1, n+1)
				}
			}
		}
	}
	return nil
}

// OneLine makes a text safe to place in a line: line breaks, tabs and runs of
// spaces become one space, and other control characters, among them the escape
// that starts a terminal command, become the replacement character U+FFFD.
// Marks that turn the direction of writing (U+202A to U+202E, U+2066 to U+2069)
// are replaced too, because they reorder what stands beside them. Bytes that
// are not UTF-8 become U+FFFD.
func OneLine(s string) string {
	s = strings.ToValidUTF8(s, "\uFFFD")
	clean := strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r), r >= 0x202A && r <= 0x202E, r >= 0x2066 && r <= 0x2069:
			return '\uFFFD'
		}
		return r
	}, s)
	return strings.Join(strings.Fields(clean), " ")
}
