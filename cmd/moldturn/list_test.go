package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"moldturn/scenarios"
)

// Every list, plain and of every bundled scenario, fits a terminal of 80
// columns, and its rows are a JSON list.
func TestListsFitAndAreJSON(t *testing.T) {
	plants := []*scenarios.Scenario{nil}
	for _, name := range scenarios.Bundled() {
		s, err := loadScenario(name, &common{})
		if err != nil {
			t.Fatal(err)
		}
		plants = append(plants, s)
	}
	for _, l := range listings() {
		for i, s := range plants {
			if s == nil && l.plant == needsPlant || s != nil && l.plant == noPlant {
				continue
			}
			out, err := l.make(s)
			if err != nil {
				t.Fatal(err)
			}
			var text strings.Builder
			if err := out.write(&Context{Stdout: &text}); err != nil {
				t.Fatal(err)
			}
			what := fmt.Sprintf("list %s, plant %d", l.name, i)
			fits(t, what, text.String())
			data, err := json.Marshal(out.rows)
			var rows []map[string]any
			if err != nil || json.Unmarshal(data, &rows) != nil || len(rows) == 0 || text.Len() == 0 {
				t.Errorf("%s: %d rows, %d bytes of text, %v", what, len(rows), text.Len(), err)
			}
		}
	}
}

// fitsTerminal runs a command line that must succeed and looks at its lines.
func fitsTerminal(t *testing.T, args ...string) {
	t.Helper()
	code, stdout, stderr := try(t.Context(), commands(), args...)
	if code != exitDone || stdout == "" {
		t.Errorf("%q: code %d, stderr %q", args, code, stderr)
	}
	fits(t, strings.Join(args, " "), stdout+stderr)
}

// fits looks for lines of more than 80 columns.
func fits(t *testing.T, what, text string) {
	t.Helper()
	for line := range strings.Lines(text) {
		if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > 80 {
			t.Errorf("%s: a line of %d columns: %s", what, n, line)
		}
	}
}
