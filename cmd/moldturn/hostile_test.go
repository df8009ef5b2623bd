package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"moldturn/reports/browser"
	"moldturn/scenarios"
)

// hostile are names as somebody could write them who wants a report to do more
// than show them.
var hostile = map[string]string{
	"name: Fenwater\n":          "name: </script><script>alert(1)</script>\n",
	"note: An invented":         "note: <img src=x onerror=alert(2)> An invented",
	"base_name: seasonal 3 / 5": `base_name: "=cmd|' /C calc'!A0"`,
	"  hold 16 h:":              `  "__f__alert(1)__f__":`,
	"  strip every 3:":          `  "\"><svg onload=alert(3)>":`,
	"  strip every 10:":         `  "@SUM(1+1)*2":`,
	"  Sedge 20:":               `  "{{.}} ${alert(4)} 'quoted' \"twice\"":`,
}

// hostileScenario is the bundled scenario under those names.
func hostileScenario(t *testing.T) string {
	t.Helper()
	data, ok := scenarios.BundledFile("fenwater")
	if !ok {
		t.Fatal("no bundled fenwater")
	}
	text := string(data)
	for old, evil := range hostile {
		if strings.Count(text, old) != 1 {
			t.Fatalf("%q stands %d times in the scenario", old, strings.Count(text, old))
		}
		text = strings.Replace(text, old, evil, 1)
	}
	path := filepath.Join(t.TempDir(), "evil.yaml")
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// Names of a scenario stay texts all the way: on the terminal, in the table
// for a spreadsheet, in JSON and in the report.
func TestHostileNamesStayTexts(t *testing.T) {
	dir := t.TempDir()
	code, stdout, stderr := try(t.Context(), commands(), "compare", hostileScenario(t), "-q", "--years", "1", "--replications", "2", "-o", dir)
	if code != exitDone {
		t.Fatalf("code %d, stderr %s", code, stderr)
	}
	if strings.ContainsAny(stdout, "\x1b\a\t") {
		t.Errorf("a name reaches the terminal as a command:\n%q", stdout)
	}
	checkCells(t, filepath.Join(dir, "results.csv"))
	checkNames(t, filepath.Join(dir, "results.json"))
	tab := browser.Start(t).Open(t, filepath.Join(dir, "report.html"), browser.Look{})
	if got := browser.Eval[string](t, tab, "document.title"); !strings.HasPrefix(got, "</script><script>alert(1)</script>: which of 6 ways to run the plant") {
		t.Errorf("title %q", got)
	}
	if n := browser.Eval[int](t, tab, "document.querySelectorAll('svg[onload], img, iframe, object').length"); n != 0 {
		t.Errorf("%d elements came out of names", n)
	}
	for _, name := range []string{"=cmd|' /C calc'!A0", "__f__alert(1)__f__", `"><svg onload=alert(3)>`} {
		if !browser.Eval[bool](t, tab, "document.body.textContent.includes("+quoteJS(name)+")") {
			t.Errorf("%q is not shown", name)
		}
	}
	for _, c := range tab.Complaints() {
		t.Error(c)
	}
}

// checkCells looks for cells that a spreadsheet would take as formulas.
func checkCells(t *testing.T, path string) {
	t.Helper()
	guarded := 0
	for i, row := range tableOf(t, path) {
		if strings.HasPrefix(row[0], "'") {
			guarded++
		}
		for k, cell := range row {
			if k != 3 && cell != "" && strings.ContainsAny(cell[:1], "=+-@\t\r\n") {
				t.Fatalf("row %d: cell %q is a formula", i+1, cell)
			}
		}
	}
	if guarded == 0 {
		t.Error("no cell was guarded: the names did not arrive")
	}
}

// checkNames reads names back from JSON as they were written.
func checkNames(t *testing.T, path string) {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var got struct {
		Scenario     string
		Alternatives []struct{ Name string }
	}
	if err := json.Unmarshal(data, &got); err != nil {
		t.Fatal(err)
	}
	if got.Scenario != "</script><script>alert(1)</script>" || got.Alternatives[0].Name != "=cmd|' /C calc'!A0" {
		t.Errorf("names %q", got)
	}
}

func quoteJS(s string) string {
	b, _ := json.Marshal(s)
	return string(b)
}

// tableOf reads a file of results as CSV.
func tableOf(t *testing.T, path string) [][]string {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	return rows
}
