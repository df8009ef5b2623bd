package floor

import (
	"fmt"

	"moldturn/sim"
)

// readAliases reads which names mean others. It comes before all other files.
func (t *table) readAliases() {
	t.each(func(l *line) {
		old, c := l.text("old")
		name, _ := l.text("new")
		if l.bad {
			return
		}
		if before, again := t.r.names.aliases[idKey(old)]; again && idKey(before) != idKey(name) {
			l.drop(c, "two meanings", fmt.Sprintf("%q already means %q", old, before), "", "keep one of the two rows")
			return
		}
		t.r.names.aliases[idKey(old)] = name
		t.r.aliasRows = append(t.r.aliasRows, aliasRow{l, old, c})
	})
}

// aliasRow is a row of the aliases, to tell which were never needed.
type aliasRow struct {
	l   *line
	old string
	c   int
}

// days reads a range of days: a first one that is needed, and a last one.
func (l *line) days(first, last string) (from, to Moment, ok bool) {
	from, to = l.moment(first), l.moment(last)
	if l.bad {
		return from, to, false
	}
	from.Timed, from.Clock = false, 0
	to.Timed, to.Clock = false, 0
	if to.IsZero() {
		to = from
	}
	if from.After(to) {
		c := l.t.column(last)
		l.drop(c, "ends before it begins", fmt.Sprintf("ends on %s and begins on %s", to, from), "", "are the two the wrong way round?")
		return from, to, false
	}
	return from, to, true
}

// readOut reads who is out.
func (t *table) readOut() {
	t.each(func(l *line) {
		from, to, ok := l.days("date", "until")
		craft := l.craft()
		if !ok || l.bad {
			return
		}
		a := &amount{units: []string{"people", "person", "persons", "p", "out", "x"}, whole: true, low: 0, high: 1000}
		n := 1
		if s, c := l.text("number"); s != "" {
			x, err := a.parse(s)
			if err != nil {
				l.drop(c, "not a number", fmt.Sprintf("number %q: %v", s, err), a.allowed(), "")
				return
			}
			n = int(x)
		}
		if n > 0 {
			t.r.out = append(t.r.out, entry[Absent]{l, Absent{Place: l.place(-1), From: from, To: to, Craft: craft, Number: n}, ""})
		} else {
			l.retire(Skipped, "nobody is out")
		}
	})
}

// readDown reads what is down.
func (t *table) readDown() {
	t.each(func(l *line) {
		s, c := l.text("place")
		from, to := l.moment("from"), l.moment("to")
		note, _ := l.text("note")
		if l.bad {
			return
		}
		at, unit := t.r.names.place(s)
		if at < 0 {
			l.drop(c, "unknown place", fmt.Sprintf("place %q: the scenario has no such place", s), listed(t.r.names.placeNames()), "")
			return
		}
		if from.After(to) && !to.IsZero() || from.Timed && to.Timed && from == to {
			l.drop(t.column("to"), "ends before it begins", fmt.Sprintf("ends at %s and begins at %s", to, from), "", "are the two the wrong way round?")
			return
		}
		t.r.down = append(t.r.down, entry[Downtime]{l, Downtime{Place: l.place(-1), At: int16(at), Unit: unit, From: from, To: to, Note: note}, ""})
	})
}

// changeWords are words for days off and for extra days.
var changeWords = [][]string{
	{"off", "dayoff", "closed", "holiday", "shut", "shutdown", "noproduction", "notworked", "no", "n", "free", "vacation", "down"},
	{"extra", "extraday", "work", "worked", "working", "open", "overtime", "ot", "saturday", "yes", "y", "extrasaturday", "workday"},
}

// readCalendar reads which days are different.
func (t *table) readCalendar() {
	t.each(func(l *line) {
		from, to, ok := l.days("date", "until")
		s, c := l.text("change")
		craft := l.craft()
		note, _ := l.text("note")
		if !ok || l.bad {
			return
		}
		if cell := l.cells[t.column("craft")]; craft < 0 && says(cell) {
			if k := key(cell); k != "all" && k != "everybody" && k != "plant" {
				l.drop(t.column("craft"), "unknown craft", "for whom is not known, so the day is not changed", "", "leave it blank for all")
				return
			}
			craft = sim.None
		}
		kind := word(s, changeWords)
		if kind < 0 {
			l.wrong(c, "unknown change", "is neither off nor extra", "off, extra", nearWord(s, []string{"off", "extra", "holiday", "overtime"}))
			return
		}
		t.r.calendar = append(t.r.calendar, entry[Change]{l, Change{Place: l.place(-1), From: from, To: to, Extra: kind == 1, Craft: craft, Note: note}, ""})
	})
}
