package main

import (
	"fmt"
	"strings"

	"moldturn/scenarios/floor"
)

// fewAlike is how many rows of a column may be told one by one that have the same
// said of them; more are gathered in one line.
const fewAlike = 3

// alike is what notices share that are told in one line: one thing is said of
// many rows of a column, with one hint.
type alike struct {
	file, sheet string
	column      int
	rule, hint  string
}

func alikeOf(n *floor.Notice) alike {
	return alike{n.Place.File, n.Place.Sheet, n.Place.Column, n.Rule, n.Hint}
}

// gathered are the notices with those that are alike in one, which stands where
// the first of them does and counts the rows.
func gathered(all []floor.Notice, r *floor.Reading) []floor.Notice {
	rows := map[alike][]int{}
	for i := range all {
		if n := &all[i]; n.Place.Row > 0 {
			rows[alikeOf(n)] = append(rows[alikeOf(n)], n.Place.Row)
		}
	}
	var out []floor.Notice
	told := map[alike]bool{}
	for _, n := range all {
		key := alikeOf(&n)
		if list := rows[key]; len(list) > fewAlike {
			if told[key] {
				continue
			}
			told[key] = true
			n.Message += fmt.Sprintf("; likewise in %d of %d rows (%s)", len(list), rowsOf(r, n.Place), rowNumbers(list))
		}
		out = append(out, n)
	}
	return out
}

// rowsOf is how many rows of the sheet of a place are things.
func rowsOf(r *floor.Reading, p floor.Place) int {
	for i := range r.Sheets {
		if s := &r.Sheets[i]; s.Place.File == p.File && s.Place.Sheet == p.Sheet {
			return len(s.Rows) - s.Count(floor.Skipped)
		}
	}
	return 0
}

// mostNumbers is how many rows are named.
const mostNumbers = 8

// rowNumbers is "rows 4, 5, 6 and 90 more".
func rowNumbers(rows []int) string {
	var names []string
	for _, row := range rows[:min(len(rows), mostNumbers)] {
		names = append(names, fmt.Sprint(row))
	}
	text := "rows " + strings.Join(names, ", ")
	if more := len(rows) - mostNumbers; more > 0 {
		text += fmt.Sprintf(" and %d more", more)
	}
	return text
}
