// Package csv writes result rows as comma-separated values.
//
// Numbers are written in full, so that a spreadsheet can compute with them, and
// texts are written so that a spreadsheet cannot mistake them for formulas.
// Quoting, and the line ending CRLF, follow RFC 4180. A line break inside a text
// stays a line break; carriage returns without a line feed are dropped.
package csv

import (
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"strconv"
)

// Cell is one value of a row. The zero value is an empty cell.
type Cell struct {
	text string
	bad  bool // a number that is not finite
}

// Text is a cell of text. A text that starts with one of = + - @, a tab, a
// carriage return or a line feed gets a leading ', because spreadsheets run
// such a cell as a formula. The list is that of "CSV Injection" (OWASP
// Foundation, community pages).
func Text(s string) Cell { return Cell{text: guard(s)} }

// Number is a cell with the shortest decimal text that reads back as v. A v
// that is not finite makes Row fail: "no value" is written as Empty.
func Number(v float64) Cell {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return Cell{text: strconv.FormatFloat(v, 'g', -1, 64), bad: true}
	}
	if v == 0 {
		v = 0 // negative zero reads as an error of sign
	}
	return Cell{text: strconv.FormatFloat(v, 'f', -1, 64)}
}

// Int is a cell with a whole number.
func Int(v int64) Cell { return Cell{text: strconv.FormatInt(v, 10)} }

// Empty is a cell without a value.
func Empty() Cell { return Cell{} }

// Writer writes rows that all have the width of the header. Create it with New.
type Writer struct {
	out   *csv.Writer
	width int
	rows  int
}

// New writes the header row and returns a Writer for the rows below it. Headers
// are texts and are guarded as Text guards.
func New(w io.Writer, header ...string) (*Writer, error) {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	row := make([]string, len(header))
	for i, h := range header {
		row[i] = guard(h)
	}
	return &Writer{out: out, width: len(header)}, out.Write(row)
}

// Row writes one row. It fails, and writes nothing, when the number of cells is
// not that of the header or when a number is not finite.
func (w *Writer) Row(cells ...Cell) error {
	if len(cells) != w.width {
		return fmt.Errorf("row %d has %d cells, the header has %d", w.rows+1, len(cells), w.width)
	}
	row := make([]string, len(cells))
	for i, c := range cells {
		if c.bad {
			return fmt.Errorf("row %d, column %d: %s is not a number that can be written", w.rows+1, i+1, c.text)
		}
		row[i] = c.text
	}
	w.rows++
	return w.out.Write(row)
}

// Flush hands buffered rows to the underlying writer and returns the first
// error of any write so far. Call it after the last row.
func (w *Writer) Flush() error {
	w.out.Flush()
	return w.out.Error()
}

func guard(s string) string {
	if s == "" {
		return s
	}
	switch s[0] {
	case '=', '+', '-', '@', '\t', '\r', '\n':
		return "'" + s
	}
	return s
}
