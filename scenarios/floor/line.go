package floor

import (
	"errors"
	"fmt"
	"slices"

	"moldturn/sim/param/guess"
)

// place of a cell by column of the file; -1 is the whole row.
func (l *line) place(c int) Place {
	if c < 0 || l.where == nil {
		return l.t.place(l.row, 0)
	}
	return l.t.place(l.row, l.where[c])
}

// drop tells why the row cannot be used. The first reason is kept as its fate.
func (l *line) drop(c int, rule, message, allowed, hint string) {
	n := Notice{Place: l.place(c), Level: Fault, Rule: rule, Message: message, Allowed: allowed, Hint: hint, Effect: l.t.file.Lost}
	if c >= 0 && l.cells != nil {
		n.Found = l.cells[c]
	}
	l.t.r.say(n)
	if !l.bad {
		l.t.sheet.Rows[l.fate].Fate, l.t.sheet.Rows[l.fate].Why = Dropped, message
	}
	l.bad = true
}

// retire takes a row out without a fault.
func (l *line) retire(fate Fate, why string) {
	if !l.bad {
		l.t.sheet.Rows[l.fate].Fate, l.t.sheet.Rows[l.fate].Why = fate, why
	}
	l.bad = true
}

// at is the column of a name, and what its cell says.
func (l *line) at(name string) (c int, found string) {
	c = l.t.column(name)
	return c, l.cells[c]
}

// doubtful is doubt about the cell of a named column, with its own effect.
func (l *line) doubtful(name, rule, message, hint, effect string) {
	c, found := l.at(name)
	l.t.r.say(Notice{Place: l.place(c), Level: Doubt, Rule: rule, Found: found, Message: message, Hint: hint, Effect: effect})
}

// note tells something about the cell of a named column.
func (l *line) note(level Level, name, rule, message, effect string) {
	c, found := l.at(name)
	l.t.r.say(Notice{Place: l.place(c), Level: level, Rule: rule, Found: found, Message: message, Effect: effect})
}

// doubt tells why a cell is not used while its row is.
func (l *line) doubt(c int, rule, found, message, allowed, hint string) {
	col := &l.t.file.Columns[c]
	effect := "the cell is not used"
	if col.Gap != "" {
		effect = col.Gap
	}
	l.t.r.say(Notice{Place: l.place(c), Level: Doubt, Rule: rule, Found: found, Message: fmt.Sprintf("%s %q: %s", col.Name, found, message), Allowed: allowed, Hint: hint, Effect: effect})
}

// wrong is drop for a needed column and doubt for others.
func (l *line) wrong(c int, rule, message, allowed, hint string) {
	if l.t.file.Columns[c].Needed {
		l.drop(c, rule, fmt.Sprintf("%s %q: %s", l.t.file.Columns[c].Name, l.cells[c], message), allowed, hint)
		return
	}
	l.doubt(c, rule, l.cells[c], message, allowed, hint)
}

// text is the cell of a column, "" where it says nothing or an error of a
// formula; that it is blank is kept for the gaps.
func (l *line) text(name string) (s string, c int) {
	c = l.t.column(name)
	s = l.cells[c]
	switch {
	case isError(s):
		l.wrong(c, "error of a formula", "is the error of a formula", "", "mend the formula, or write the value")
		return "", c
	case !says(s):
		l.t.blanks[c] = append(l.t.blanks[c], l.row)
		return "", c
	}
	return s, c
}

// moment is the date of a column; zero where none can be read.
func (l *line) moment(name string) Moment {
	s, c := l.text(name)
	if s == "" {
		return Moment{}
	}
	m, err := parseMoment(s, l.t.orders[c], l.t.grid.since)
	switch {
	case errors.Is(err, errAmbiguous) && l.t.orders[c] == orderMixed:
		l.wrong(c, "ambiguous date", "could be two days: other rows of the column show day first, and others month first", dateStyles, "write 2026-11-25 all through the column")
	case errors.Is(err, errAmbiguous):
		l.wrong(c, "ambiguous date", "could be two days, and no row of the column shows which", dateStyles, "write 2026-11-25 all through the column")
	case err != nil:
		l.wrong(c, "not a date", err.Error(), dateStyles, "")
	}
	return m
}

// amount is the number of a column; ok is false where none can be read.
func (l *line) amount(name string, a *amount) (x float64, ok bool) {
	s, c := l.text(name)
	if s == "" {
		return 0, false
	}
	x, err := a.parse(s)
	if err != nil {
		l.wrong(c, "not a number", err.Error(), a.allowed(), "")
		return 0, false
	}
	return x, true
}

// whole is the amount of a column as an integer, Unknown where none can be read.
func (l *line) whole(name string, a *amount) int {
	if x, ok := l.amount(name, a); ok {
		return int(x)
	}
	return Unknown
}

// unknown complains about a name that means nothing in the plan.
func (l *line) unknown(c int, noun string, list []string) {
	l.wrong(c, "unknown "+noun, "unknown "+noun, listed(list), hintFor(l.cells[c], list))
}

// model and part of a row; ok is false if the row was dropped for them. Without
// a part, part is "".
func (l *line) model() (model int, part string, ok bool) {
	s, c := l.text("model")
	if l.bad {
		return -1, "", false
	}
	model, part = l.t.r.names.model(s)
	if model < 0 {
		l.unknown(c, "model", namesIn(l.t.r.names.plan.Models, modelName))
		return -1, "", false
	}
	return model, part, true
}

// color of a column: an index, or -1.
func (l *line) color(name string) int16 {
	s, c := l.text(name)
	if s == "" {
		return -1
	}
	i := l.t.r.names.color(s)
	if i < 0 {
		l.unknown(c, "color", namesIn(l.t.r.names.plan.Colors, colorName))
	}
	return int16(i)
}

// craft of a column: an index, or -1.
func (l *line) craft() int16 {
	s, c := l.text("craft")
	if s == "" {
		return -1
	}
	i := l.t.r.names.craft(s)
	if i < 0 {
		l.unknown(c, "craft", namesIn(l.t.r.names.plan.Crafts, craftName))
	}
	return int16(i)
}

// word is the place of a cell in lists of words, -1 for none.
func word(s string, lists [][]string) int {
	return slices.IndexFunc(lists, func(words []string) bool { return slices.Contains(words, key(s)) })
}

// nearWord is the hint for a word that is in none of the lists.
func nearWord(s string, words []string) string {
	if near := guess.Near(s, words); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return ""
}

// dayOrders finds how each column of dates writes them: as its own rows show,
// else as the other columns of the sheet do, else, with dots, day first.
func (t *table) dayOrders() []dayOrder {
	orders, doubtful, dotted := make([]dayOrder, len(t.file.Columns)), make([]int, len(t.file.Columns)), make([]bool, len(t.file.Columns))
	sheet := orderUnknown
	for c, i := range t.head.where {
		if i < 0 || !t.file.Columns[c].date {
			continue
		}
		for _, row := range t.grid.rows[t.head.at+1:] {
			if i >= len(row.cells) || t.noThing(row) != "" {
				continue
			}
			order, ambiguous, dots := orderOf(row.cells[i])
			orders[c] = orders[c].and(order)
			if ambiguous && doubtful[c] == 0 {
				doubtful[c], dotted[c] = row.row, dots
			}
		}
		sheet = sheet.and(orders[c])
	}
	for c := range orders {
		if orders[c] != orderUnknown || doubtful[c] == 0 {
			continue
		}
		n := Notice{Place: t.place(doubtful[c], t.head.where[c]+1), Level: Told, Rule: "order of dates"}
		switch {
		case sheet == dayFirst || sheet == monthFirst:
			orders[c] = sheet
			n.Message = fmt.Sprintf("%s: dates are read %s, as other columns of the sheet show", t.file.Columns[c].Name, sheet)
		case dotted[c]:
			orders[c] = dayFirst
			n.Message = fmt.Sprintf("%s: dates with dots are read day first (common practice, no source)", t.file.Columns[c].Name)
		default:
			continue
		}
		t.r.say(n)
	}
	return orders
}

// and joins what two rows show.
func (o dayOrder) and(other dayOrder) dayOrder {
	switch {
	case o == orderUnknown:
		return other
	case other == orderUnknown || o == other:
		return o
	}
	return orderMixed
}

func (o dayOrder) String() string {
	return [...]string{"in no known order", "day first", "month first", "in two orders"}[o]
}
