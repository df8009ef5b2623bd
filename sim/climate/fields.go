package climate

import (
	"strings"
	"time"
)

// monthOf is a month number 1 … 12 as the library's type.
func monthOf(m int) time.Month { return time.Month(m) }

// before reports whether f is an earlier hour than g.
func (f fileHour) before(g fileHour) bool {
	if f.year != g.year || f.month != g.month || f.day != g.day {
		return f.date().Before(g.date())
	}
	return f.hour < g.hour
}

// fieldColumn is the column, from 1, at which the text of a field of a split
// line begins, counted in bytes.
func fieldColumn(fields []string, index int) int {
	column := 1
	for _, f := range fields[:index] {
		column += len(f) + 1
	}
	f := fields[index]
	if strings.TrimSpace(f) == "" {
		return column
	}
	return column + len(f) - len(strings.TrimLeft(f, " \t"))
}

// shorten cuts a found text to what fits a message.
func shorten(s string) string {
	const most = 40
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
