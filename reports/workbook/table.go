package workbook

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"

	"moldturn/reports/cells"
)

// table is a sheet with a table on it. A sheet is one line that says what is
// there, an empty line, the heads of the columns, and the rows.
type table struct {
	sheet string
	lead  string
	block
	beside *block // a second block to the right of the first; may be nil
}

// block is columns with their rows.
type block struct {
	columns []column
	rows    [][]any   // string, loose, aside, number, int, or nil for an empty cell
	width   []float64 // of the columns, once they are known
}

// column is the head of a column, with the unit: "boats a week". wide is the
// largest width in characters; 0 is that of most.
type column struct {
	head string
	wide int
}

// loose is a text that runs on to the right in one line; aside is one that stands
// behind a number.
type (
	loose string
	aside string
)

// number is a cell with a number and its format.
type number struct {
	value  float64
	format string
}

const (
	headRow  = 3 // of every table
	mostRows = 1_000_000
	wide     = 34
	narrow   = 9

	// looseness is how many letters fit where a column is as wide as one digit.
	looseness = 1.15

	// widthLooked is how many rows are looked at for the width of a column.
	widthLooked = 2_000
)

// put writes a table onto its sheet.
func (b *book) put(t *table) error {
	if err := b.paper(t.sheet); err != nil {
		return err
	}
	w, err := b.file.NewStreamWriter(t.sheet)
	if err != nil {
		return err
	}
	if err := t.prepare(w); err != nil {
		return err
	}
	lead, err := b.styled(t.lead, title)
	if err != nil {
		return err
	}
	if err := w.SetRow("A1", []any{lead}); err != nil {
		return err
	}
	if len(t.columns) > 0 {
		if err := b.body(w, t); err != nil {
			return err
		}
	}
	return w.Flush()
}

// prepare sets widths and frozen heads, which must come before the rows.
func (t *table) prepare(w *excelize.StreamWriter) error {
	at := 1
	for _, k := range t.blocks() {
		k.width = k.widths()
		for i, width := range k.width {
			if err := w.SetColWidth(at+i, at+i, width); err != nil {
				return err
			}
		}
		at += len(k.columns) + 1
	}
	if len(t.columns) == 0 {
		return nil
	}
	return w.SetPanes(frozen(headRow))
}

// frozen keeps the first rows in sight while the rest is scrolled.
func frozen(rows int) *excelize.Panes {
	below := "A" + strconv.Itoa(rows+1)
	return &excelize.Panes{Freeze: true, YSplit: rows, TopLeftCell: below, ActivePane: "bottomLeft",
		Selection: []excelize.Selection{{SQRef: below, ActiveCell: below, Pane: "bottomLeft"}}}
}

func (t *table) blocks() []*block {
	if t.beside == nil {
		return []*block{&t.block}
	}
	return []*block{&t.block, t.beside}
}

// body writes heads and rows; the first block becomes a table with filters.
func (b *book) body(w *excelize.StreamWriter, t *table) error {
	var heads []any
	rows := 0
	for i, k := range t.blocks() {
		if i > 0 {
			heads = append(heads, nil)
		}
		for _, c := range k.columns {
			cell, err := b.styled(c.head, header)
			if err != nil {
				return err
			}
			heads = append(heads, cell)
		}
		rows = max(rows, len(k.rows))
	}
	if err := w.SetRow("A"+strconv.Itoa(headRow), heads, excelize.RowOpts{Height: 2 * usual}); err != nil {
		return err
	}
	for r := range rows {
		row, err := b.line(t, r)
		if err != nil {
			return err
		}
		if err := w.SetRow("A"+strconv.Itoa(headRow+1+r), row, excelize.RowOpts{Height: usual * float64(t.linesIn(r))}); err != nil {
			return err
		}
	}
	last, err := excelize.CoordinatesToCellName(len(t.columns), headRow+max(1, len(t.rows)))
	if err != nil {
		return err
	}
	stripes := true
	return w.AddTable(&excelize.Table{Range: "A" + strconv.Itoa(headRow) + ":" + last, Name: t.sheet + "Table", StyleName: "TableStyleLight1", ShowRowStripes: &stripes})
}

// line is row r of all blocks.
func (b *book) line(t *table, r int) ([]any, error) {
	var out []any
	for i, k := range t.blocks() {
		if i > 0 {
			out = append(out, nil)
		}
		if r >= len(k.rows) {
			out = append(out, make([]any, len(k.columns))...)
			continue
		}
		if len(k.rows[r]) != len(k.columns) {
			return nil, fmt.Errorf("sheet %s, row %d: %d cells for %d columns", t.sheet, r+1, len(k.rows[r]), len(k.columns))
		}
		for _, x := range k.rows[r] {
			cell, err := b.cell(x)
			if err != nil {
				return nil, err
			}
			out = append(out, cell)
		}
	}
	return out, nil
}

// cell is a value with its style. A number that is not finite is an empty cell:
// what is not known is not shown as a number.
func (b *book) cell(x any) (any, error) {
	switch x := x.(type) {
	case nil:
		return nil, nil
	case string:
		return b.styled(x, plain)
	case loose:
		return b.styled(string(x), running)
	case aside:
		return b.styled(string(x), apart)
	case int:
		id, err := b.style(look{format: "0"})
		return excelize.Cell{StyleID: id, Value: x}, err
	case number:
		if math.IsNaN(x.value) || math.IsInf(x.value, 0) {
			return nil, nil
		}
		id, err := b.style(look{format: x.format})
		return excelize.Cell{StyleID: id, Value: x.value}, err
	}
	return nil, fmt.Errorf("no cell can hold a %T", x)
}

// styled is a text in one line.
func (b *book) styled(text string, k kind) (excelize.Cell, error) {
	id, err := b.style(look{kind: k})
	return excelize.Cell{StyleID: id, Value: clip(cells.OneLine(text))}, err
}

// clip cuts a text at the most that a cell can hold.
func clip(s string) string {
	if utf8.RuneCountInString(s) <= excelize.TotalCellChars {
		return s
	}
	return string([]rune(s)[:excelize.TotalCellChars-1]) + "…"
}

// widths fit what is in the columns, within the limits of each.
func (k *block) widths() []float64 {
	out := make([]float64, len(k.columns))
	for i, c := range k.columns {
		most := c.wide
		if most == 0 {
			most = wide
		}
		n := narrow
		for _, row := range k.rows[:min(len(k.rows), widthLooked)] {
			n = max(n, runes(row[i])+2)
		}
		// a head takes two lines, and the button of its filter some room
		n = max(n, min(utf8.RuneCountInString(c.head), 2*narrow)/2+5, longestWord(c.head)+4)
		out[i] = float64(min(n, most))
	}
	return out
}

// linesIn is how many lines the texts of row r take in columns of their widths.
func (t *table) linesIn(r int) int {
	n := 1
	for _, k := range t.blocks() {
		if r >= len(k.rows) {
			continue
		}
		for i, x := range k.rows[r] {
			if text, ok := x.(string); ok && runes(text) > narrow {
				n = max(n, lines(text, int(k.width[i]*looseness)))
			}
		}
	}
	return n
}

// lines is how many lines a text takes between words.
func lines(text string, width int) int {
	n, at := 1, 0
	for _, word := range strings.Fields(text) {
		length := utf8.RuneCountInString(word)
		if at > 0 && at+1+length > width {
			n, at = n+1, 0
		}
		n += length / (width + 1) // a word that is cut
		at += 1 + length%(width+1)
	}
	return n
}

func runes(x any) int {
	switch x := x.(type) {
	case string:
		return utf8.RuneCountInString(x)
	case aside:
		return utf8.RuneCountInString(string(x)) + 1
	case number:
		return utf8.RuneCountInString(strconv.FormatFloat(x.value, 'f', 2, 64))
	}
	return 0
}

func longestWord(s string) int {
	most, n := 0, 0
	for _, r := range s {
		if n++; r == ' ' {
			n = 0
		}
		most = max(most, n)
	}
	return most
}

// paper prints a sheet across, as wide as one page, with its heads on each; the
// first sheet on one page.
func (b *book) paper(sheet string) error {
	yes, across, one, any := true, "landscape", 1, 0
	if err := b.file.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &yes}); err != nil {
		return err
	}
	if sheet == decisionSheet {
		any = 1
	}
	if err := b.file.SetPageLayout(sheet, &excelize.PageLayoutOptions{Orientation: &across, FitToWidth: &one, FitToHeight: &any}); err != nil {
		return err
	}
	if sheet == decisionSheet {
		return nil
	}
	return b.file.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", Scope: sheet,
		RefersTo: fmt.Sprintf("'%s'!$%d:$%d", sheet, headRow, headRow)})
}
