package board

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/sim/ahead"
)

// Page is the board for the wall, a sheet for each day.
func (v *View) Page() page.Page {
	p := page.Page{Title: v.Plant + ": the coming days", Lead: v.lead(), Foot: append(v.Basis(), Caution)}
	if v.If != nil {
		p.Sections = append(p.Sections, v.ifSheet())
	}
	for _, day := range v.Works() {
		p.Sections = append(p.Sections, v.sheet(day))
	}
	if len(p.Sections) == 0 {
		p.Sections = []page.Section{{Heading: "Nothing is planned", Blocks: []page.Block{page.Text("Nobody works in these days.")}}}
	}
	return p
}

// ifSheet is the page of what the changes do.
func (v *View) ifSheet() page.Section {
	s := page.Section{Heading: "What if this week", Blocks: []page.Block{page.Remark(v.Answer())}}
	blocks, lines := blocks([][]cells.Table{{v.Recover()}, {v.Moved()}}, 14)
	s.Blocks = append(s.Blocks, blocks...)
	if text := v.OtherWays(); text != "" {
		s.Blocks, lines = append(s.Blocks, page.Text(text)), lines+3
	}
	s.Blocks = append(s.Blocks, page.Small("The pages that follow are drawn up with it. Chances are those of the model, not proven on a real shop."))
	s.Wall = size(lines + 8)
	return s
}

// layout is rows of tables that stand side by side on a sheet, where they are
// narrow enough: the booths, then the boats that leave beside who is short.
func (v *View) layout(d *ahead.Day) [][]cells.Table {
	out := [][]cells.Table{{v.pulls(d)}, {v.strips(d)}}
	out = append(out, pairs(v.booths(d))...)
	out = append(out, []cells.Table{v.risks(d)})
	return append(out, pairs([]cells.Table{v.leaves(d), v.crafts(d)})...)
}

// Characters of a row that half a sheet, and a whole one in the largest type,
// take in one line.
const (
	halfSheet  = 46
	wholeSheet = 66
)

// pairs puts neighbors side by side that both fit half a sheet.
func pairs(tables []cells.Table) [][]cells.Table {
	var out [][]cells.Table
	for _, t := range tables {
		if n := len(out); n > 0 && len(out[n-1]) == 1 && width(out[n-1][0]) <= halfSheet && width(t) <= halfSheet {
			out[n-1] = append(out[n-1], t)
			continue
		}
		out = append(out, []cells.Table{t})
	}
	return out
}

// width is the characters of the longest texts of all columns.
func width(t cells.Table) int {
	sum := 0
	for c := range t.Columns {
		most := len([]rune(t.Columns[c].Head)) * 4 / 5
		for _, r := range t.Rows {
			most = max(most, len([]rune(r.Cells[c].Text)))
		}
		sum += most
	}
	return sum
}

// mostLines is about how many lines a sheet takes in the smallest type.
const mostLines = 44

// sheet is the page of a day. Where it is too full the longest tables lose rows.
func (v *View) sheet(day int) page.Section {
	d := &v.Days[day]
	s := page.Section{Heading: v.LongDay(d.From)}
	lines := 0.0
	warned := v.warned()
	for rows := 12; rows > 2; rows-- {
		if s.Blocks, lines = blocks(v.layout(d), rows); lines+3*float64(len(warned)) <= mostLines {
			break
		}
	}
	if len(s.Blocks) == 0 {
		s.Blocks = append(s.Blocks, page.Text("Nothing stands on this day."))
	}
	s.Blocks, lines = append(warned, s.Blocks...), lines+3*float64(len(warned))
	s.Blocks = append(s.Blocks, page.Small(fmt.Sprintf("%s, from the floor of %s. Chances are those of the model, not proven on a real shop; things under 1 in 10 are left out. %s", v.Plant, v.Day(v.Setup.Start.At), Caution)))
	s.Wall = size(lines)
	return s
}

// lead is the headline, with what a reader must know of the floor.
func (v *View) lead() string {
	if len(v.Warned) == 0 {
		return v.Headline()
	}
	return v.Headline() + " Mind: " + strings.Join(v.Warned, " ")
}

// warned is what a reader of a sheet must know of the floor.
func (v *View) warned() []page.Block {
	var out []page.Block
	for _, line := range v.Warned {
		out = append(out, page.Remark("Mind: "+line))
	}
	return out
}

// blocks are the tables of a sheet, of some rows at most, and about how many
// lines they take.
func blocks(layout [][]cells.Table, rows int) (out []page.Block, lines float64) {
	for _, tables := range layout {
		var row page.Beside
		most := 0.0
		for _, t := range tables {
			if len(t.Rows) > 0 {
				t = cut(t, rows)
				row = append(row, page.Table{Table: t})
				most = max(most, tableLines(t))
			}
		}
		if lines += most; len(row) > 0 {
			out = append(out, row)
		}
	}
	return out, lines
}

// tableLines is about how many lines of type a table takes; rows that are too
// long for the largest type take two.
func tableLines(t cells.Table) float64 {
	rows := float64(len(t.Rows))
	if width(t) > wholeSheet {
		rows *= 2
	}
	return rows + 2.5 + 1.5*float64(len(t.Notes))
}

// cut leaves rows off a table that is too long for a sheet, and says so.
func cut(t cells.Table, most int) cells.Table {
	if n := len(t.Rows) - most; n > 0 {
		t.Rows = t.Rows[:most]
		t.Title += fmt.Sprintf(" (%d more in the files)", n)
	}
	return t
}

// size is the type for so many lines on a sheet.
func size(lines float64) int {
	for i, most := range []float64{25, 29, 36} {
		if lines <= most {
			return i + 1
		}
	}
	return page.WallSizes
}
