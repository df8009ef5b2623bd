package main

import (
	"strings"
	"testing"

	"moldturn/scenarios/floor"
)

// What is said of more than three rows of a column stands once with the rows, up
// to three one by one; other hints, columns and files stand apart.
func TestNoticesThatAreAlikeAreGathered(t *testing.T) {
	r := &floor.Reading{Sheets: []floor.Sheet{{Place: floor.Place{File: "a.csv"}, Rows: make([]floor.Row, 12)}}}
	r.Sheets[0].Rows[11].Fate = floor.Skipped
	var all []floor.Notice
	say := func(n, column int, rule, hint string) {
		for row := range n {
			all = append(all, floor.Notice{Place: floor.Place{File: "a.csv", Row: row + 2, Column: column}, Rule: rule, Hint: hint, Message: rule})
		}
	}
	say(10, 1, "many", "")
	say(3, 2, "few", "")
	say(2, 3, "model", "Rush?")
	say(2, 3, "model", "Reed?")
	all = append(all, floor.Notice{Rule: "no place"}, floor.Notice{Rule: "no place"})
	out := gathered(all, r)
	if len(out) != 1+3+4+2 {
		t.Fatalf("%d notices of %d: %v", len(out), len(all), out)
	}
	if want := "many; likewise in 10 of 11 rows (rows 2, 3, 4, 5, 6, 7, 8, 9 and 2 more)"; out[0].Message != want {
		t.Errorf("%q, want %q", out[0].Message, want)
	}
	for _, n := range out[1:] {
		if strings.Contains(n.Message, "likewise") {
			t.Errorf("%q", n.Message)
		}
	}
}
