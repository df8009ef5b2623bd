package floor

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"moldturn/sim/param/guess"
)

// reader reads one folder.
type reader struct {
	molds     []entry[Mold]
	work      []entry[Work]
	orders    []entry[Order]
	out       []entry[Absent]
	down      []entry[Downtime]
	calendar  []entry[Change]
	aliasRows []aliasRow
	history   []stamp // moments of older rows of the mold log

	names   *names
	tables  []*table
	floor   *Floor
	sheets  []*Sheet
	notices []Notice

	first, last Moment // of the dated entries of molds and work
	early       bool   // most of them are after the morning

	currency string // sign of the scenario's amounts, or of the first price that has one; "" where not known
}

// entry is a row that was read, with its line.
type entry[T any] struct {
	l   *line
	it  T
	key string // idKey of its id or serial
}

// kept are the entries whose rows are still used.
func kept[T any](all []entry[T]) []entry[T] {
	return slices.DeleteFunc(all, func(e entry[T]) bool { return e.l.bad })
}

// things are the entries without their lines.
func things[T any](all []entry[T]) []T {
	var out []T
	for _, e := range all {
		out = append(out, e.it)
	}
	return out
}

// say adds a notice.
func (r *reader) say(n Notice) { r.notices = append(r.notices, n) }

// table is a sheet that is being read as a File.
type table struct {
	r      *reader
	file   *File
	grid   *grid
	sheet  *Sheet
	head   head
	header []string
	orders []dayOrder // of the columns of file
	above  []string   // the last cells, for "the same"
	same   [][]int    // rows where a column of file says "the same"
	blanks [][]int    // rows where a column of file says nothing
	rows   int        // that are things

	prices int // rows with a price
}

// line is a row of a table that is a thing.
type line struct {
	t     *table
	row   int
	cells []string // by column of file; "" for none
	where []int    // columns of the sheet, from 1
	fate  int      // index into the sheet's Rows
	bad   bool
}

// open makes the table of a grid as a file of a kind, or tells why not.
func (r *reader) open(f *File, g *grid) *table {
	t := &table{r: r, file: f, grid: g, sheet: &Sheet{Place: g.place, Kind: f.Name}, blanks: make([][]int, len(f.Columns))}
	r.sheets = append(r.sheets, t.sheet)
	r.notices = append(r.notices, g.told...)
	if len(g.rows) == 0 {
		r.say(Notice{Place: g.place, Level: Fault, Rule: "empty file", Message: "holds nothing", Allowed: "a row of heads, then " + f.Doc, Effect: f.Missing})
		return nil
	}
	h, ok := f.find(g)
	if !ok {
		t.noHeader(h)
		return nil
	}
	t.head, t.header = h, g.rows[h.at].cells
	t.sheet.Header = g.rows[h.at].row
	for _, row := range g.rows[:h.at] {
		t.skip(row.row, Skipped, "above the heads")
	}
	t.tellHeads()
	t.orders = t.dayOrders()
	r.tables = append(r.tables, t)
	t.above, t.same = make([]string, len(f.Columns)), make([][]int, len(f.Columns))
	return t
}

// noHeader tells that needed columns are missing.
func (t *table) noHeader(best head) {
	var missing, heads []string
	place := t.grid.place
	if best.at >= 0 {
		place.Row = t.grid.rows[best.at].row
		for i, c := range best.where {
			if c < 0 && t.file.Columns[i].Needed {
				missing = append(missing, fmt.Sprintf("%q", t.file.Columns[i].Name))
			}
		}
		for _, i := range best.spare {
			heads = append(heads, t.grid.rows[best.at].cells[i])
		}
	}
	n := Notice{Place: place, Level: Fault, Rule: "columns missing", Found: strings.Join(heads, ", "), Effect: t.file.Missing}
	n.Message = "no row of heads is found, so none of it is read"
	if len(missing) > 0 {
		n.Message = "no column " + strings.Join(missing, ", ") + ", so none of it is read"
	}
	var all []string
	for _, c := range t.file.Columns {
		all = append(all, c.Name)
		if near := guess.Near(c.Name, heads); near != "" && slices.Contains(missing, fmt.Sprintf("%q", c.Name)) && n.Hint == "" {
			n.Hint = fmt.Sprintf("is %q the column %q? call it so", near, c.Name)
		}
	}
	n.Allowed = strings.Join(all, ", ")
	t.r.say(n)
	for _, row := range t.grid.rows {
		t.skip(row.row, Dropped, "the columns are not known")
	}
}

// tellHeads tells which heads were guessed and which columns are not used.
func (t *table) tellHeads() {
	for _, c := range t.head.near {
		place := t.place(t.sheet.Header, t.head.where[c]+1)
		t.r.say(Notice{Place: place, Level: Told, Rule: "near head", Found: t.header[t.head.where[c]], Message: fmt.Sprintf("head %q is read as %q", t.header[t.head.where[c]], t.file.Columns[c].Name)})
	}
	var spare []string
	for _, i := range t.head.spare {
		spare = append(spare, fmt.Sprintf("%q", t.header[i]))
	}
	if len(spare) > 0 {
		t.r.say(Notice{Place: t.place(t.sheet.Header, 0), Level: Told, Rule: "columns not used", Found: strings.Join(spare, ", "), Message: "columns that are not used: " + strings.Join(spare, ", ")})
	}
}

func (t *table) place(row, column int) Place {
	p := t.grid.place
	p.Row, p.Column = row, column
	return p
}

func (t *table) skip(row int, fate Fate, why string) {
	t.sheet.Rows = append(t.sheet.Rows, Row{Row: row, Fate: fate, Why: why})
}

// each calls read with every row that is a thing, and tells of the others.
func (t *table) each(read func(l *line)) {
	for _, row := range t.grid.rows[t.head.at+1:] {
		if why := t.noThing(row); why != "" {
			t.skip(row.row, Skipped, why)
			t.above = make([]string, len(t.file.Columns))
			continue
		}
		l := &line{t: t, row: row.row, fate: len(t.sheet.Rows)}
		t.sheet.Rows = append(t.sheet.Rows, Row{Row: row.row, Fate: Used})
		t.rows++
		if row.broken != "" {
			l.drop(-1, "broken row", row.broken, "", "close the quote, or take it out")
			continue
		}
		l.fill(row.cells)
		if t.needs(l); !l.bad {
			read(l)
		}
	}
}

// noThing says why a row is no thing of the shop, "" if it is one.
func (t *table) noThing(row gridRow) string {
	if row.broken != "" {
		return ""
	}
	if i := slices.IndexFunc(row.cells, func(s string) bool { return s != "" }); i >= 0 && isTotal(row.cells[i]) {
		return "a row of totals: " + row.cells[i]
	}
	if t.file.isHeader(t.head, row.cells, t.header) {
		return "the heads once more"
	}
	if strings.HasPrefix(row.cells[0], "#") && !isError(row.cells[0]) {
		return "a remark"
	}
	if !slices.ContainsFunc(t.head.where, func(i int) bool { return i >= 0 && i < len(row.cells) && row.cells[i] != "" }) {
		return "only columns that are not used"
	}
	if filled := slices.DeleteFunc(slices.Clone(row.cells), func(s string) bool { return s == "" }); len(filled) == 1 && strings.Count(filled[0], " ") >= 3 {
		return "a remark: " + filled[0]
	}
	return ""
}

// fill takes the cells that the file knows, with those that mean "the same"
// filled in.
func (l *line) fill(cells []string) {
	t := l.t
	l.cells, l.where = make([]string, len(t.file.Columns)), make([]int, len(t.file.Columns))
	for c, i := range t.head.where {
		if i < 0 {
			continue
		}
		l.where[c] = i + 1
		s := ""
		if i < len(cells) {
			s = cells[i]
		}
		blank := s == "" && t.file.Columns[c].Same
		if (blank || isDitto(s)) && t.above[c] != "" {
			t.same[c] = append(t.same[c], l.row)
			l.cells[c] = t.above[c]
			continue
		}
		if isDitto(s) {
			l.doubt(c, "nothing above", s, "stands for the row above, and there is nothing", "", "write it out")
			s = ""
		}
		l.cells[c] = s
		t.above[c] = s
	}
}

// needs drops rows that lack a needed cell, with all that are missing.
func (t *table) needs(l *line) {
	var missing []string
	column := -1
	for c := range t.file.Columns {
		if t.file.Columns[c].Needed && !says(l.cells[c]) && !isError(l.cells[c]) {
			missing = append(missing, t.file.Columns[c].Name)
			if column < 0 {
				column = c
			}
		}
	}
	if len(missing) > 0 {
		l.drop(column, "cell missing", "no "+strings.Join(missing, ", no "), "", "")
	}
}

// tellGaps tells once a column where it says nothing in rows that are used. It
// is for the end, when the fates of all rows are known.
func (t *table) tellGaps() {
	used := t.sheet.Count(Used)
	for c := range t.file.Columns {
		col := &t.file.Columns[c]
		if rows := t.same[c]; len(rows) > 0 {
			t.r.say(Notice{Place: t.place(rows[0], t.head.where[c]+1), Level: Told, Rule: "blank means the same",
				Message: fmt.Sprintf("%s is blank, or a mark for the same, in %d of %d rows (%s): read as in the row above", col.Name, len(rows), t.rows, rowList(rows))})
		}
		blank := t.inUse(t.blanks[c])
		switch {
		case col.Gap == "" || used == 0:
		case t.head.where[c] < 0:
			t.r.say(Notice{Place: t.place(t.sheet.Header, 0), Level: Gap, Rule: "no column", Message: fmt.Sprintf("no column %q", col.Name), Effect: col.Gap})
		case len(blank) > 0:
			t.r.say(Notice{Place: t.place(blank[0], t.head.where[c]+1), Level: Gap, Rule: "blank cells",
				Message: fmt.Sprintf("%s says nothing in %d of %d rows (%s)", col.Name, len(blank), used, rowList(blank)), Effect: col.Gap})
		}
	}
}

// inUse are the rows of a list that are used.
func (t *table) inUse(rows []int) []int {
	var out []int
	for _, row := range t.sheet.Rows {
		if row.Fate == Used && sortedHas(rows, row.Row) {
			out = append(out, row.Row)
		}
	}
	return out
}

// rowList is "rows 4, 9 and 2 more".
func rowList(rows []int) string {
	var b strings.Builder
	b.WriteString("row")
	if len(rows) > 1 {
		b.WriteString("s")
	}
	for i, r := range rows {
		switch {
		case i == 8 && len(rows) > 9:
			fmt.Fprintf(&b, " and %d more", len(rows)-i)
			return b.String()
		case i > 0:
			b.WriteString(",")
		}
		fmt.Fprintf(&b, " %d", r)
	}
	return b.String()
}

// columns finds the column of file by its name; names are those of Files.
func (t *table) column(name string) int {
	return slices.IndexFunc(t.file.Columns, func(c Column) bool { return c.Name == name })
}

// sortNotices orders by place, then by weight, and drops what was said twice.
func sortNotices(all []Notice) []Notice {
	slices.SortStableFunc(all, func(a, b Notice) int {
		return cmp.Or(cmp.Compare(a.Place.File, b.Place.File), cmp.Compare(a.Place.Sheet, b.Place.Sheet), cmp.Compare(a.Place.Row, b.Place.Row),
			cmp.Compare(a.Place.Column, b.Place.Column), cmp.Compare(b.Level, a.Level), cmp.Compare(a.Message, b.Message))
	})
	return slices.Compact(all)
}

// sortedHas tells whether a list in rising order holds n.
func sortedHas(list []int, n int) bool {
	_, ok := slices.BinarySearch(list, n)
	return ok
}
