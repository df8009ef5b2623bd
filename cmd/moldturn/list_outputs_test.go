package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"
)

// listedFile is what the list says of a file of a command; nil for one that is
// not listed.
func listedFile(command, name string) *outputFile {
	for _, f := range outputs() {
		if f.name == name && slices.Contains(f.commands, command) {
			return &f
		}
	}
	return nil
}

func (f *outputFile) names() []string {
	var out []string
	for _, r := range f.rows {
		out = append(out, r.name)
	}
	return out
}

// sample is a small plant with all that commands need: prices and margins, a
// permit with a cap, molds that come, two ways to run it.
const sample = tinyPlant + `base_name: "@as it is"
money: {}
quality: {target: 95}
permit: {cap: 9 t}
alternatives:
  "=third mold": {models."Teal 22".parts.hull.molds: 3}
`

// commandLines writes every file there is to write, with few runs.
func commandLines() [][]string {
	few := []string{"--replications", "2", "--years", "1", "--quiet"}
	margin := []string{"--set", `models."Teal 22".margin=$9k`}
	line := func(words ...[]string) []string { return slices.Concat(words...) }
	return [][]string{
		line([]string{"compare", "sample.yaml", "--facts"}, few),
		line([]string{"run", "sample.yaml", "--facts"}, few),
		line([]string{"worth", "sample.yaml"}, few),
		{"best", "sample.yaml", "--over", "crafts.finish.people.day=1..2", "--quiet"},
		line([]string{"sweep", "sample.yaml", "--over", "hold.clock=12h,16h", "--of", "boats_per_week,luster_mean"}, few),
		line([]string{"permit", "sample.yaml", "--set", "units=SI"}, few),
		line([]string{"exposure", "sample.yaml"}, few),
		line([]string{"launch", "sample.yaml", "--set", `models."Teal 22".parts.hull.mold_dates=[2027-03-01]`}, few),
		line([]string{"quality", "sample.yaml", "--intervals", "3,10", "--set", "money.warranty.chance=20%"}, few, margin),
		line([]string{"invest", "sample.yaml"}, few, margin),
		{"board", "fenwater", "--floor", "fenwater", "--weeks", "3", "--futures", "40", "--quiet", "--if", "mold R23-H1 stuck"},
		{"promise", "fenwater", "--floor", "fenwater", "--boat", "model=Rush 23,color=navy", "--count", "6", "--futures", "10", "--urgent", "90", "--by", "2027-06-30", "--quiet"},
	}
}

// Every command writes the files that are listed for it and no others; every
// CSV file has the listed columns, every workbook the listed sheets, every JSON
// text the listed keys, in a file and when printed; no text could be taken for a
// formula.
func TestOutputsAreAsListed(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	if err := os.WriteFile("sample.yaml", []byte(sample), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, line := range commandLines() {
		t.Run(line[0], func(t *testing.T) {
			folder := line[0]
			code, _, stderr := try(t.Context(), commands(), append(line, "--out", folder)...)
			if code != exitDone {
				t.Fatalf("code %d, %s", code, stderr)
			}
			var want, got []string
			for _, f := range outputs() {
				if slices.Contains(f.commands, line[0]) && f.name != printed {
					want = append(want, f.name)
				}
			}
			entries, err := os.ReadDir(folder)
			if err != nil {
				t.Fatal(err)
			}
			for _, e := range entries {
				got = append(got, e.Name())
			}
			slices.Sort(want)
			if diff := cmp.Diff(want, got); diff != "" {
				t.Error("files: ", diff)
			}
			for _, name := range got {
				asListed(t, line[0], name, filepath.Join(folder, name))
			}
		})
	}
}

func asListed(t *testing.T, command, name, path string) {
	t.Helper()
	f := listedFile(command, name)
	if f == nil {
		return
	}
	switch filepath.Ext(name) {
	case ".csv":
		rows := tableOf(t, path)
		if len(rows) < 2 {
			t.Fatalf("%s: %d rows", name, len(rows))
		}
		if diff := cmp.Diff(f.names(), rows[0]); diff != "" {
			t.Errorf("columns of %s: %s", name, diff)
		}
		noFormulas(t, name, rows)
	case ".xlsx":
		book, err := excelize.OpenFile(path)
		if err != nil {
			t.Fatal(err)
		}
		defer book.Close()
		if diff := cmp.Diff(f.names(), book.GetSheetList()); diff != "" {
			t.Errorf("sheets of %s: %s", name, diff)
		}
	case ".json":
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		keysAsListed(t, command+" "+name, f, data)
	}
}

// noFormulas looks for cells that a spreadsheet would take as formulas.
func noFormulas(t *testing.T, name string, rows [][]string) {
	t.Helper()
	for i, row := range rows {
		for _, cell := range row {
			if _, err := strconv.ParseFloat(cell, 64); err != nil && cell != "" && strings.ContainsAny(cell[:1], "=+-@\t\r\n") {
				t.Fatalf("%s, row %d: %q is a formula", name, i+1, cell)
			}
		}
	}
}

// keysAsListed holds the keys of a JSON text against the list.
func keysAsListed(t *testing.T, what string, f *outputFile, texts ...[]byte) {
	t.Helper()
	k := keys{listed: f.names(), seen: map[string]bool{}}
	for _, text := range texts {
		var document any
		if err := json.Unmarshal(text, &document); err != nil {
			t.Fatalf("%s: %v", what, err)
		}
		k.collect(document, "")
	}
	for name := range k.seen {
		if !slices.Contains(k.listed, name) {
			t.Errorf("%s has the key %q, which is not listed", what, name)
		}
	}
	for _, name := range k.listed {
		// the base alone differs from nothing
		if alone := strings.HasPrefix(what, "run ") && strings.Contains(name, ".difference.*"); !k.seen[name] && !alone && !strings.HasSuffix(name, ".*") {
			t.Errorf("%s lacks the key %q, which is listed", what, name)
		}
	}
}

// keys gathers the keys of a JSON text. Where the list has a key that ends with
// *, the names in its place are those of a map.
type keys struct {
	listed []string
	seen   map[string]bool
}

func (k *keys) collect(x any, path string) {
	switch x := x.(type) {
	case []any:
		for _, item := range x {
			k.collect(item, path+"[]")
		}
	case map[string]any:
		for name, value := range x {
			at := strings.TrimPrefix(path+"."+name, ".")
			if any := path + ".*"; slices.ContainsFunc(k.listed, func(s string) bool { return s == any || strings.HasPrefix(s, any+".") }) {
				at = any
			} else {
				k.seen[at] = true
			}
			if at == path+".*" && slices.Contains(k.listed, at) {
				k.seen[at] = true
			}
			k.collect(value, at)
		}
	}
}

// What --json prints without a file has the listed keys too.
func TestPrintedJSONIsAsListed(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	if err := os.WriteFile("sample.yaml", []byte(sample), 0o600); err != nil {
		t.Fatal(err)
	}
	for command, lines := range map[string][][]string{
		"worth": {{"sample.yaml", "--replications", "2", "--years", "1", "--quiet"}},
		"best":  {{"sample.yaml", "--over", "crafts.finish.people.day=1..3", "--quiet"}},
		"why":   {{"small-shop", "--order", "3", "--years", "1"}, {"small-shop", "--order", "9", "--years", "1"}, {"small-shop", "--mold", "1", "--years", "1"}},
		"hold":  {{"sample.yaml"}},
	} {
		var texts [][]byte
		for _, line := range lines {
			code, stdout, stderr := try(t.Context(), commands(), slices.Concat([]string{command, "--json"}, line)...)
			if code != exitDone {
				t.Fatalf("%s: code %d, %s", command, code, stderr)
			}
			texts = append(texts, []byte(stdout))
		}
		keysAsListed(t, command, listedFile(command, printed), texts...)
	}
}
