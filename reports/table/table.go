// Package table writes tables for a terminal.
//
// A table fits the width it is given: columns of text are wrapped, columns of
// numbers are not. When even that is too wide, each row is written as a small
// list of "head: value" lines. Escape sequences in texts are made harmless.
package table

import (
	"fmt"
	"io"
	"strings"

	"github.com/jedib0t/go-pretty/v6/table"
	"github.com/jedib0t/go-pretty/v6/text"

	"moldturn/reports/cells"
)

// DefaultWidth is used when Style.Width is 0: the classic terminal.
const DefaultWidth = 80

// Style is how to write. The zero value writes plain text of 80 columns.
type Style struct {
	Width int  // columns of the terminal; 0 means DefaultWidth
	Color bool // bold heads and totals; give false for files, pipes and NO_COLOR
}

// gap is what go-pretty puts around a column: nothing at the left, two spaces
// at the right.
const gap = 2

// Write writes t. It fails when t.Check does, or the writer does.
func Write(w io.Writer, t cells.Table, s Style) error {
	if err := t.Check(); err != nil {
		return err
	}
	width := s.Width
	if width <= 0 {
		width = DefaultWidth
	}
	body := placed(t)
	var b strings.Builder
	if title := cells.OneLine(t.Title); title != "" {
		b.WriteString(text.WrapSoft(title, width) + "\n\n")
	}
	if widths, ok := fit(body, width); ok {
		b.WriteString(grid(t, body, widths, s.Color))
	} else {
		b.WriteString(list(t, body, width))
	}
	for i, n := range t.Notes {
		b.WriteString(hang(superscript(i)+" ", cells.OneLine(n), width))
	}
	_, err := io.WriteString(w, trimLines(b.String()))
	return err
}

// column is one column ready to place: head first, then the rows, with
// footnote marks. All texts are single lines.
type column struct {
	head  string
	cells []string
	align cells.Align
}

// placed cleans texts and adds marks. Where one number of a right-aligned
// column has marks, the others get as much space, so that digits line up.
func placed(t cells.Table) []column {
	out := make([]column, len(t.Columns))
	for j, c := range t.Columns {
		marks := make([]string, len(t.Rows))
		room := 0
		for i, r := range t.Rows {
			for _, n := range r.Cells[j].Notes {
				marks[i] += superscript(n)
			}
			room = max(room, text.StringWidth(marks[i]))
		}
		col := column{head: cells.OneLine(c.Head), align: c.Align, cells: make([]string, len(t.Rows))}
		for i, r := range t.Rows {
			col.cells[i] = cells.OneLine(r.Cells[j].Text) + marks[i]
			if c.Align == cells.Right && col.cells[i] != "" {
				// U+00A0, since plain spaces at the end are trimmed away.
				col.cells[i] += strings.Repeat("\u00A0", room-text.StringWidth(marks[i]))
			}
		}
		out[j] = col
	}
	return out
}

func grid(t cells.Table, body []column, widths []int, color bool) string {
	w := table.NewWriter()
	w.SetStyle(style())
	configs := make([]table.ColumnConfig, len(body))
	head := make(table.Row, len(body))
	for j, c := range body {
		align := text.AlignLeft
		if c.align == cells.Right {
			align = text.AlignRight
		}
		configs[j] = table.ColumnConfig{
			Number: j + 1, Align: align, AlignHeader: align, VAlignHeader: text.VAlignBottom,
			WidthMax: widths[j], WidthMaxEnforcer: text.WrapSoft,
		}
		head[j] = bold(c.head, color)
	}
	w.SetColumnConfigs(configs)
	w.AppendHeader(head)
	for i, r := range t.Rows {
		row := make(table.Row, len(body))
		for j, c := range body {
			row[j] = bold(c.cells[i], color && r.Strong)
		}
		w.AppendRow(row)
	}
	lines := strings.Split(strings.ReplaceAll(w.Render(), "\u00A0", " "), "\n")
	for i, line := range lines {
		if line != "" && strings.Trim(line, "-") == "" {
			lines[i] = line[gap:] // the rule runs below the last gap
			break
		}
	}
	return strings.Join(lines, "\n") + "\n"
}

// bold marks a text; an empty one stays empty.
func bold(s string, on bool) string {
	if !on || s == "" {
		return s
	}
	return "\x1b[1m" + s + "\x1b[0m"
}

// style is two spaces between columns and one rule under the head.
func style() table.Style {
	s := table.StyleDefault
	s.Box = table.StyleBoxDefault
	s.Box.MiddleHorizontal, s.Box.MiddleVertical, s.Box.MiddleSeparator = "-", "", ""
	s.Box.PaddingLeft, s.Box.PaddingRight = "", strings.Repeat(" ", gap)
	s.Options = table.Options{SeparateHeader: true}
	s.Format = table.FormatOptions{Direction: text.Default, Header: text.FormatDefault, Row: text.FormatDefault, Footer: text.FormatDefault}
	return s
}

// list writes every row as lines of "head: value".
func list(t cells.Table, body []column, width int) string {
	var b strings.Builder
	for i := range t.Rows {
		for j, c := range body {
			indent := "  "
			if j == 0 {
				indent = ""
			}
			value := strings.TrimRight(c.cells[i], "\u00A0")
			b.WriteString(hang(indent+c.head+": ", value, width))
		}
	}
	return b.String()
}

// hang writes s after lead, wrapped, with later lines indented by four.
func hang(lead, s string, width int) string {
	lines := strings.Split(text.WrapSoft(lead+s, max(width-4, 20)), "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return strings.Join(lines, "\n    ") + "\n"
}

// superscript is the mark of footnote n, counted from 0: ¹, ², … ¹⁰.
func superscript(n int) string {
	digits := []rune("⁰¹²³⁴⁵⁶⁷⁸⁹")
	var b strings.Builder
	for _, d := range fmt.Sprint(n + 1) {
		b.WriteRune(digits[d-'0'])
	}
	return b.String()
}

func trimLines(s string) string {
	lines := strings.Split(s, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return strings.Join(lines, "\n")
}
