package main

import (
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"

	"moldturn/scenarios"
	"moldturn/sim/study"
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

// The list of outputs is what compare writes: its files, the columns of the CSV
// file in their order, and every key of the JSON file.
func TestOutputsAreThoseOfCompare(t *testing.T) {
	folder := t.TempDir()
	code, _, stderr := try(t.Context(), commands(), "compare", "small-shop", "--replications", "2", "--years", "1", "--quiet", "--facts", "--out", folder)
	if code != exitDone {
		t.Fatalf("code %d, %s", code, stderr)
	}
	listed := map[string][]string{}
	for _, row := range allOutputs() {
		listed[row.File] = append(listed[row.File], row.Name)
	}
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	if diff := cmp.Diff(names, slices.Sorted(maps.Keys(listed))); diff != "" {
		t.Error("files: ", diff)
	}
	for _, file := range []string{"results.csv", "facts.csv"} {
		head, _, _ := strings.Cut(readFile(t, folder, file), "\n")
		if diff := cmp.Diff(strings.Split(strings.TrimSpace(head), ","), listed[file]); diff != "" {
			t.Errorf("columns of %s: %s", file, diff)
		}
	}
	var document any
	if err := json.Unmarshal([]byte(readFile(t, folder, "results.json")), &document); err != nil {
		t.Fatal(err)
	}
	keys := map[string]bool{}
	collectKeys(document, "", keys)
	if diff := cmp.Diff(slices.Sorted(maps.Keys(keys)), slices.Sorted(slices.Values(listed["results.json"]))); diff != "" {
		t.Error("keys: ", diff)
	}
}

func readFile(t *testing.T, folder, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(folder, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// collectKeys gathers the paths of all keys, with * for the name of a figure.
func collectKeys(x any, path string, keys map[string]bool) {
	switch x := x.(type) {
	case []any:
		for _, item := range x {
			collectKeys(item, path+"[]", keys)
		}
	case map[string]any:
		for name, value := range x {
			at := strings.TrimPrefix(path+"."+name, ".")
			if _, figure := study.MetricNamed(name); figure {
				at = path + ".*"
			} else {
				keys[at] = true
			}
			collectKeys(value, at, keys)
		}
	}
}
