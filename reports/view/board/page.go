package board

import (
	"fmt"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Page is the board for the wall, a sheet for each day.
func (v *View) Page() page.Page {
	p := page.Page{Title: v.Plant + ": the coming days", Lead: v.Headline(), Foot: append(v.Basis(), Caution)}
	for _, day := range v.Works() {
		p.Sections = append(p.Sections, v.sheet(day))
	}
	if len(p.Sections) == 0 {
		p.Sections = []page.Section{{Heading: "Nothing is planned", Blocks: []page.Block{page.Text("Nobody works in these days.")}}}
	}
	return p
}

// sheet is the page of a day. The booths stand side by side, as do the boats
// that leave and who is short.
func (v *View) sheet(day int) page.Section {
	d := &v.Days[day]
	s := page.Section{Heading: v.LongDay(d.From) + " · " + v.Plant}
	lines := 0.0
	add := func(tables ...cells.Table) {
		var row page.Beside
		most := 0.0
		for _, t := range tables {
			if len(t.Rows) > 0 {
				t = cut(t)
				row = append(row, page.Table{Table: t})
				most = max(most, tableLines(t))
			}
		}
		if lines += most; len(row) > 0 {
			s.Blocks = append(s.Blocks, row)
		}
	}
	add(v.pulls(d))
	add(v.strips(d))
	booths := v.booths(d)
	for i := 0; i < len(booths); i += 2 {
		add(booths[i:min(i+2, len(booths))]...)
	}
	add(v.risks(d))
	add(v.leaves(d), v.crafts(d))
	if len(s.Blocks) == 0 {
		s.Blocks = append(s.Blocks, page.Text("Nothing stands on this day."))
	}
	s.Blocks = append(s.Blocks, page.Small(fmt.Sprintf("From the floor of %s. Chances are those of the model, not proven on a real shop; things under 1 in 10 are left out. %s", v.Day(v.Setup.Start.At), Caution)))
	s.Wall = size(lines)
	return s
}

// tableLines is about how many lines of type a table takes.
func tableLines(t cells.Table) float64 {
	return float64(len(t.Rows)) + 2.5 + 1.5*float64(len(t.Notes))
}

// mostRows is how many rows of a table a sheet has room for.
const mostRows = 12

// cut leaves rows off a table that is too long for a sheet, and says so.
func cut(t cells.Table) cells.Table {
	if n := len(t.Rows) - mostRows; n > 0 {
		t.Rows = t.Rows[:mostRows]
		t.Title += fmt.Sprintf(" (%d more: board.csv)", n)
	}
	return t
}

// size is the type for so many lines on a sheet.
func size(lines float64) int {
	for i, most := range []float64{30, 35, 43} {
		if lines <= most {
			return i + 1
		}
	}
	return page.WallSizes
}
