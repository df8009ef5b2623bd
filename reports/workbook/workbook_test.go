package workbook_test

import (
	"archive/zip"
	"bytes"
	"context"
	stdcsv "encoding/csv"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"

	"moldturn/reports"
	"moldturn/reports/view"
	"moldturn/reports/workbook"
	"moldturn/scenarios"
	"moldturn/sim/param/unit"
	"moldturn/sim/study"
)

// evil are names as somebody could write them who wants a spreadsheet to do
// more than show them.
var evil = [...]string{"=cmd|' /C calc'!A0", "+1+1", "-2", "@SUM(1+1)", `</t></is></c><c><f>1+1</f></c> & "quoted"`}

// compared is a finished comparison of the small shop and of alternatives with
// those names.
var compared = sync.OnceValue(func() *view.Study {
	text, _ := scenarios.BundledFile("small-shop")
	lines := strings.Split(string(text), "\n")
	if at := slices.Index(lines, "alternatives:"); at >= 0 {
		end := at + 1
		for end < len(lines) && (lines[end] == "" || strings.HasPrefix(lines[end], " ")) {
			end++
		}
		lines = slices.Delete(lines, at, end)
	}
	if !slices.ContainsFunc(lines, func(l string) bool { return strings.HasPrefix(l, "money:") }) {
		lines = append(lines, "money: {}", "")
	}
	s, faults := scenarios.Load("small-shop.yaml", []byte(strings.Join(lines, "\n")), scenarios.Options{Years: 1})
	if len(faults) > 0 {
		panic(faults)
	}
	for _, name := range evil[1:] {
		change, _ := scenarios.ParseChange("test", "hold.clock=20h")
		a, faults := s.With(name, change)
		if len(faults) > 0 {
			panic(faults)
		}
		s.Alternatives = append(s.Alternatives, a)
	}
	setup := &study.Setup{Alternatives: s.Study(), Replications: 2, Seed: 1, Workers: 2}
	setup.Alternatives[0].Name = evil[0]
	runs, err := study.Compare(context.Background(), setup)
	if err != nil {
		panic(err)
	}
	v := &view.Study{Scenario: "=1+1", Note: "=2+2", Seed: 1, Replications: 2, Years: s.Base.Years, Warm: s.Base.Warm,
		Money: view.Money{Currency: "€", Units: s.Base.Units()}}
	for _, in := range s.Base.Value.Assumptions(unit.Metric) {
		v.Inputs = append(v.Inputs, view.Input{Path: in.Path, Value: in.Value, Range: in.Range, Doc: in.Doc, Mark: string(in.Mark), Source: in.Source, Changed: in.Changed, Place: in.Place})
	}
	for i := range runs {
		v.Alternatives = append(v.Alternatives, view.Alternative{Runs: runs[i], Plan: s.Alternatives[i].Plant.Plan()})
	}
	return v
})

// unpriced is the same comparison of a plant without prices.
func unpriced() *view.Study {
	s := *compared()
	s.Alternatives = slices.Clone(s.Alternatives)
	for i := range s.Alternatives {
		a := &s.Alternatives[i]
		a.Outcomes = slices.Clone(a.Outcomes)
		for r := range a.Outcomes {
			a.Outcomes[r].CapacityLedger, a.Outcomes[r].DatedLedger = nil, nil
		}
	}
	return &s
}

func written(t *testing.T, s *view.Study) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := workbook.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func opened(t *testing.T, data []byte) *excelize.File {
	t.Helper()
	f, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { f.Close() })
	return f
}

// values are the rows of a sheet as they are stored, without formats.
func values(t *testing.T, f *excelize.File, sheet string) [][]string {
	t.Helper()
	rows, err := f.GetRows(sheet, excelize.Options{RawCellValue: true})
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

func TestSameStudySameBytes(t *testing.T) {
	s := compared()
	a := written(t, s)
	for range 3 {
		if b := written(t, s); !bytes.Equal(a, b) {
			t.Fatalf("%d bytes, then %d, or they differ", len(a), len(b))
		}
	}
}

// Whatever a name starts with, it is stored as a text, and no cell is a formula.
func TestTextsStayTexts(t *testing.T) {
	f := opened(t, written(t, compared()))
	seen := map[string]int{}
	for _, sheet := range f.GetSheetList() {
		for r, row := range values(t, f, sheet) {
			for c, text := range row {
				at, _ := excelize.CoordinatesToCellName(c+1, r+1)
				if formula, err := f.GetCellFormula(sheet, at); err != nil || formula != "" {
					t.Fatalf("%s!%s holds the formula %q (%v)", sheet, at, formula, err)
				}
				if !slices.Contains(evil[:], text) && text != "=1+1" && text != "=2+2" {
					continue
				}
				seen[text]++
				if kind, err := f.GetCellType(sheet, at); err != nil || kind != excelize.CellTypeInlineString && kind != excelize.CellTypeSharedString {
					t.Errorf("%s!%s, %q, is stored as kind %v (%v)", sheet, at, text, kind, err)
				}
			}
		}
	}
	for _, name := range append(evil[:], "=1+1", "=2+2") {
		if seen[name] == 0 {
			t.Errorf("%q is nowhere", name)
		}
	}
}

// The package holds the sheets in their order, two drawings with the intervals
// of the first, and nothing that runs or leads elsewhere; every part is XML.
func TestParts(t *testing.T) {
	data := written(t, compared())
	var want []string
	for _, s := range workbook.Sheets() {
		want = append(want, s.Name)
	}
	if diff := cmp.Diff(want, opened(t, data).GetSheetList()); diff != "" {
		t.Error(diff)
	}
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	parts := map[string]string{}
	for i, p := range z.File {
		r, err := p.Open()
		if err != nil {
			t.Fatal(err)
		}
		content, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		parts[p.Name] = string(content)
		wellFormed(t, p.Name, content)
		for _, word := range []string{"vba", "external", "calcChain", "hyperlink"} {
			if strings.Contains(strings.ToLower(p.Name), strings.ToLower(word)) {
				t.Errorf("part %s", p.Name)
			}
		}
		if strings.Contains(string(content), `TargetMode="External"`) {
			t.Errorf("%s leads outside", p.Name)
		}
		if i == 0 && p.Name != "[Content_Types].xml" {
			t.Errorf("the first part is %s", p.Name)
		}
		if y := p.Modified.UTC().Year(); y != 1980 {
			t.Errorf("%s was made in %d", p.Name, y)
		}
	}
	if n := strings.Count(parts["xl/charts/chart1.xml"], "<errBars>"); n != 1 {
		t.Errorf("boats by alternative have %d error bars", n)
	}
	if parts["xl/charts/chart2.xml"] == "" || strings.Contains(parts["xl/charts/chart2.xml"], "<errBars>") {
		t.Error("boats by month are not drawn, or with intervals")
	}
}

func wellFormed(t *testing.T, name string, content []byte) {
	t.Helper()
	for d := xml.NewDecoder(bytes.NewReader(content)); ; {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return
		} else if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
	}
}

// The sheet Data is results.csv, row by row, with numbers as numbers.
func TestDataIsTheCSV(t *testing.T) {
	s := compared()
	var b bytes.Buffer
	if err := reports.CSV(&b, s); err != nil {
		t.Fatal(err)
	}
	want, err := stdcsv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	f := opened(t, written(t, s))
	got := values(t, f, "Data")[2:]
	if len(got) != len(want) || len(got) < 100 {
		t.Fatalf("%d rows, the file has %d", len(got), len(want))
	}
	for i := range want {
		want[i][0] = strings.TrimPrefix(want[i][0], "'") // the guard of CSV
		if i > 0 {
			a, errA := strconv.ParseFloat(want[i][3], 64)
			b, errB := strconv.ParseFloat(got[i][3], 64)
			if errA != nil || errB != nil || math.Abs(a-b) > 1e-14*math.Abs(a) {
				t.Fatalf("row %d: %s in the file, %s on the sheet", i+1, want[i][3], got[i][3])
			}
			got[i][3] = want[i][3]
			at := "D" + strconv.Itoa(i+3)
			if kind, _ := f.GetCellType("Data", at); kind != excelize.CellTypeNumber && kind != excelize.CellTypeUnset {
				t.Fatalf("%s is stored as kind %v", at, kind)
			}
		}
		if diff := cmp.Diff(want[i], got[i]); diff != "" {
			t.Fatalf("row %d: %s", i+1, diff)
		}
	}
}

// Every sheet with a table keeps its heads in sight, heads are filled and
// columns wide enough for a word.
func TestHeads(t *testing.T) {
	f := opened(t, written(t, compared()))
	if panes, err := f.GetPanes("Decision"); err != nil || !panes.Freeze || panes.YSplit != 1 {
		t.Errorf("Decision: panes %+v, %v; the title should stay", panes, err)
	}
	for _, sheet := range f.GetSheetList()[1:] {
		panes, err := f.GetPanes(sheet)
		if err != nil || !panes.Freeze || panes.YSplit != 3 {
			t.Errorf("%s: panes %+v, %v", sheet, panes, err)
		}
		rows := values(t, f, sheet)
		if len(rows) < 4 {
			t.Fatalf("%s has %d rows", sheet, len(rows))
		}
		tables, err := f.GetTables(sheet)
		if err != nil || len(tables) != 1 || !strings.HasPrefix(tables[0].Range, "A3:") {
			t.Errorf("%s: tables %+v, %v", sheet, tables, err)
		}
		for c, head := range rows[2] {
			name, _ := excelize.ColumnNumberToName(c + 1)
			if width, err := f.GetColWidth(sheet, name); err != nil || head != "" && (width < 9 || width > 90) {
				t.Errorf("%s, %q: width %v, %v", sheet, head, width, err)
			}
		}
	}
}

// What the first chart draws are the boats per week of the alternatives, with
// half of their intervals beside them.
func TestDecisionNumbers(t *testing.T) {
	s := compared()
	f := opened(t, written(t, s))
	m, _ := study.MetricNamed("boats_per_week")
	at := 0
	for r, row := range values(t, f, "Decision") {
		if len(row) < 4 || row[0] != m.Label {
			continue
		}
		x, _ := s.Alternatives[at].Summary(&m)
		mean, _ := strconv.ParseFloat(row[2], 64)
		half, _ := strconv.ParseFloat(row[3], 64)
		if row[1] != s.Alternatives[at].Name || math.Abs(mean-x.Mean) > 1e-9 || math.Abs(half-x.Half) > 1e-9 {
			t.Errorf("row %d: %q, want %q %v %v", r+1, row, s.Alternatives[at].Name, x.Mean, x.Half)
		}
		at++
	}
	if at != len(s.Alternatives) {
		t.Errorf("%d alternatives have boats per week", at)
	}
}

// The hours of a mold week add up, and so do the lines of costs.
func TestSums(t *testing.T) {
	s := compared()
	f := opened(t, written(t, s))
	rows := values(t, f, "Molds")[2:]
	for _, row := range rows[1:] {
		sum := 0.0
		for c, head := range rows[0] {
			if strings.HasSuffix(head, ", h a week") {
				h, err := strconv.ParseFloat(row[c], 64)
				if err != nil {
					t.Fatal(err)
				}
				sum += h
			}
		}
		if math.Abs(sum-168) > 1e-6 {
			t.Errorf("%q has %v hours in a week", row[1], sum)
		}
	}
	costs := values(t, f, "Costs")[2:]
	if !slices.Contains(costs[0], "a year, €") {
		t.Errorf("heads %q", costs[0])
	}
	for _, row := range costs[1:] {
		var n [3]float64
		for k, c := range []int{4, 6, 7} {
			n[k], _ = strconv.ParseFloat(row[c], 64)
		}
		// every amount is a quantity times a price, rounded to cents in each run
		if math.Abs(n[0]*n[1]-n[2]) > 0.01 {
			t.Errorf("%q: %v × %v is not %v", row[2], n[0], n[1], n[2])
		}
	}
}

func TestWithoutPrices(t *testing.T) {
	rows := values(t, opened(t, written(t, unpriced())), "Costs")
	if len(rows) != 1 || !strings.Contains(rows[0][0], "no group “money”") {
		t.Errorf("rows %q", rows)
	}
}
