package floor

// grid is a table as a file holds it.
type grid struct {
	place Place
	rows  []gridRow
	since bool // dates of a spreadsheet count from 1904
	told  []Notice
}

// gridRow is a row with anything in it: cells by column, cleaned.
type gridRow struct {
	row    int // as a spreadsheet or an editor counts
	cells  []string
	broken string // why it cannot be read; "" for most
}

// Bounds on what is read, against files that are no floor files at all.
const (
	mostBytes   = 32 << 20
	mostRows    = 20_000
	mostColumns = 200
	mostCell    = 400 // characters of a cell
)

// add appends a row unless it is blank.
func (g *grid) add(row int, cells []string, broken string) {
	if len(cells) > mostColumns {
		cells = cells[:mostColumns]
	}
	out := gridRow{row: row, broken: broken, cells: make([]string, len(cells))}
	blank := true
	for i, c := range cells {
		if len(c) > 4*mostCell {
			c = c[:4*mostCell]
		}
		if r := []rune(clean(c)); len(r) > mostCell {
			out.cells[i] = string(r[:mostCell])
		} else {
			out.cells[i] = string(r)
		}
		blank = blank && out.cells[i] == ""
	}
	if !blank || broken != "" {
		g.rows = append(g.rows, out)
	}
}

// tell adds a notice about the whole table.
func (g *grid) tell(level Level, rule, message, hint, effect string) {
	g.told = append(g.told, Notice{Place: g.place, Level: level, Rule: rule, Message: message, Hint: hint, Effect: effect})
}
