package main

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/reports"
	"moldturn/reports/cells"
	"moldturn/reports/workbook"
	"moldturn/scenarios"
)

// outputFile is a file that commands write with --out, or what one prints with
// --json; a test holds it against what they write.
type outputFile struct {
	commands []string // that write it
	name     string   // printed for what goes to stdout
	doc      string   // what it is
	rows     []outputRow
}

// printed stands for the name of a file where --json prints.
const printed = "--json"

// outputRow is a column of a CSV file, a sheet of a workbook, or a key of a JSON
// text. In keys [] stands for every item of a list, * for every name of a map.
type outputRow struct{ name, unit, doc string }

// outputs describes all files, command by command.
func outputs() []outputFile {
	return slices.Concat(comparisonOutputs(), plantOutputs(), moneyOutputs(), aheadOutputs())
}

// page is a report as a page.
func pageOutput(name string, commands ...string) outputFile {
	return outputFile{commands, name, "tables and charts of the same figures, one page that needs no network", nil}
}

// comparisonOutputs are those of commands that compare.
func comparisonOutputs() []outputFile {
	var facts, sheets []outputRow
	for _, c := range reports.FactColumns {
		facts = append(facts, outputRow{c[0], unitOfName(c[0]), c[1]})
	}
	for _, s := range workbook.Sheets() {
		sheets = append(sheets, outputRow{s.Name, "", s.Doc})
	}
	whole := []string{"compare", "run", "worth"}
	return []outputFile{
		{append(whole, "quality", "invest"), "results.csv", "every figure of every run, one a row", figureColumns("alternative", "name of the way to run the plant; the base has its base_name")},
		{whole, "results.json", "every figure of every alternative with its interval; compare and run print it with --json", resultKeys()},
		{whole, "results.xlsx", "the same as a spreadsheet, without macros and formulas; sheets are", sheets},
		pageOutput("report.html", append(whole, "sweep")...),
		{[]string{"compare", "run"}, "facts.csv", "with --facts: every visit of one replication", facts},
		{[]string{"compare"}, "results.jsonl.gz", `all outcomes in full with the scenario they came from, for "moldturn report" and "compare --add"`, nil},
		{[]string{"sweep"}, "results.csv", "every figure of every run, one a row", figureColumns("setting", "name of the setting; the base has its base_name")},
		{[]string{"sweep"}, "results.json", "every figure of every setting with its interval; printed with --json", sweepKeys()},
		{[]string{"sweep"}, "results.jsonl", `figures of every run, kept as they come, for "moldturn report" and to go on after a stop`, nil},
		{[]string{"worth"}, printed, "a list, what adds most first", worthKeys()},
		{[]string{"best"}, "best.txt", "what best prints", nil},
		{[]string{"best"}, "best.json", "which way is best, and how sure that is", bestKeys()},
		{[]string{"size"}, "size.txt", "what size prints", nil},
		{[]string{"size"}, "size.json", "the size found, what its neighbors reach, and how it was found; printed with --json", nil},
		{[]string{"best"}, printed, "which way is best, and how sure that is", bestKeys()},
		{[]string{"why"}, printed, "the life of an order or a mold", whyKeys()},
		{[]string{"hold"}, printed, "the hold card", holdKeys()},
	}
}

func listOutputs(*scenarios.Scenario) (*sheet, error) {
	type row struct {
		Commands []string `json:"commands"`
		File     string   `json:"file"`
		Name     string   `json:"name"`
		Unit     string   `json:"unit"`
		Doc      string   `json:"doc"`
	}
	out := &sheet{lines: []string{`With --out a command writes its files together, all or none. CSV is as RFC 4180 has it; a text that starts with = + - or @ has ' before it, so that no spreadsheet takes it for a formula. In keys of JSON, [] stands for every item of a list and * for every name.`}}
	var rows []row
	for _, f := range outputs() {
		t := cells.Table{Title: fmt.Sprintf("%s of %s: %s", f.name, strings.Join(f.commands, ", "), f.doc), Columns: columns("column, key or sheet", "unit", "what it is")}
		if len(f.rows) == 0 {
			rows = append(rows, row{f.commands, f.name, "", "", f.doc})
		}
		for _, r := range f.rows {
			t.Rows = append(t.Rows, cells.Texts(r.name, r.unit, r.doc))
			rows = append(rows, row{f.commands, f.name, r.name, r.unit, r.doc})
		}
		if len(f.rows) == 0 {
			t.Rows = append(t.Rows, cells.Texts("–", "", f.doc))
		}
		out.tables = append(out.tables, t)
	}
	out.rows = rows
	return out, nil
}

// unitOfName is the unit that a column's name ends with.
func unitOfName(name string) string {
	if strings.HasSuffix(name, "_h") {
		return "h"
	}
	return ""
}

func figureColumns(first, doc string) []outputRow {
	return []outputRow{
		{first, "", doc},
		{"replication", "", "number of the run, from 1; the same number is the same luck everywhere"},
		{"metric", "", `name of a figure, see "moldturn list metrics"`},
		{"value", "see unit", "the figure of that run, in full; a share is 0 to 1"},
		{"unit", "", "its unit"},
	}
}

// allRows joins lists of rows.
func allRows(lists ...[]outputRow) []outputRow {
	var out []outputRow
	for _, l := range lists {
		out = append(out, l...)
	}
	return out
}

// interval is a figure with the ends of its interval; more names further keys.
func interval(key, unit, doc string, more ...outputRow) []outputRow {
	out := []outputRow{{key, unit, doc}, {key + ".mean", unit, "mean over replications"},
		{key + ".low", unit, "lower end of the interval; null without one"}, {key + ".high", unit, "upper end of the interval; null without one"}}
	for _, m := range more {
		m.name = key + "." + m.name
		out = append(out, m)
	}
	return out
}

// level is an interval with its number of replications and its unit.
func level(key, unit, doc string) []outputRow {
	return interval(key, unit, doc, outputRow{"n", "", "replications that have it"}, outputRow{"unit", "", "its unit"})
}

var (
	clearRow    = outputRow{"clear", "", "whether the interval leaves out zero"}
	bothRow     = outputRow{"n", "", "replications that both have"}
	narrowerRow = outputRow{"narrower", "times", "how many times as wide the interval would be with separate luck; null if not known"}
)

// named are the figures and differences that keys hold by name.
func named(key string) []outputRow {
	return allRows(
		[]outputRow{{key + ".metrics", "", "figures by name; null for one that is not there"}},
		level(key+".metrics.*", "see unit", "a figure")[1:],
		[]outputRow{{key + ".difference", "", "paired differences from the base by name of the figure; empty for the base"}},
		interval(key+".difference.*", "as the figure", "a difference", bothRow, clearRow, narrowerRow)[1:])
}

func headRows() []outputRow {
	return []outputRow{
		{"scenario", "", "name of the plant"},
		{"seed", "", "number all luck is drawn from"},
		{"replications", "", "runs of each way to run the plant"},
		{"years", "years", "counted in each run"},
		{"confidence", "share", "of all intervals, 0 to 1"},
	}
}

func resultKeys() []outputRow {
	return allRows(headRows(), []outputRow{
		{"alternatives", "", "list, the base first"},
		{"alternatives[].name", "", "name of the way to run the plant"},
		{"alternatives[].changes", "", "what differs from the base, as written"},
	}, named("alternatives[]"))
}

func sweepKeys() []outputRow {
	return allRows(headRows(), []outputRow{
		{"form", "", "how the settings were chosen"},
		{"over", "", "paths of the inputs that were varied"},
		{"findings", "", "what was found, in sentences"},
		{"settings", "", "list, the base first"},
		{"settings[].name", "", "name of the setting"},
		{"settings[].values", "", "values of the varied inputs by path, as written; empty for the base"},
		{"settings[].values.*", "as the input", "a value"},
	}, named("settings[]"), []outputRow{
		{"frontier", "", "how the settings stand in two figures; null with fewer"},
		{"frontier.figures", "", "names of the two figures"},
		{"frontier.undominated", "", "by setting, the base first: no other is better in both"},
		{"frontier.confidence", "share", "by setting: how sure that is, 0 to 1"},
	})
}

func worthKeys() []outputRow {
	return allRows([]outputRow{
		{"[].lever", "", "craft, place or mold set"},
		{"[].now", "", "how many there are"},
		{"[].steps", "", "how many more were tried, below zero fewer"},
	}, interval("[].boats_per_week", "boats/week", "what they add over the year", clearRow),
		[]outputRow{{"[].boats_per_week_by_month", "", "list of months, January first"}, {"[].dollars_per_week", "dollars/week", "what they earn or save, as an interval; null without prices"}},
		interval("[].boats_per_week_by_month[]", "boats/week", "what they add in the month", clearRow)[1:],
	)
}
