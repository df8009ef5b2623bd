package cells_test

import (
	"strings"
	"testing"

	"moldturn/reports/cells"
)

func TestCheck(t *testing.T) {
	columns := []cells.Column{{Head: "model"}, {Head: "boats a week", Align: cells.Right}}
	good := cells.Table{Columns: columns, Rows: []cells.Row{
		cells.Texts("Sedge 20", "2.1"),
		{Cells: []cells.Cell{{Text: "Rush 23"}, {Text: "1.4", Notes: []int{0}}}},
	}, Notes: []string{"only 4 replications"}}
	if err := good.Check(); err != nil {
		t.Error(err)
	}
	short, stray, bare := good, good, good
	short.Rows = []cells.Row{cells.Texts("Sedge 20")}
	stray.Notes = nil
	bare.Columns = nil
	for want, table := range map[string]cells.Table{
		"row 1: 1 cells for 2 columns":            short,
		"row 2, column 2: there is no footnote 1": stray,
		"has no columns":                          bare,
	} {
		if err := table.Check(); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}

func TestOneLine(t *testing.T) {
	for in, want := range map[string]string{
		"Sedge 20":              "Sedge 20",
		" a\tb\r\nc  d ":        "a b c d",
		"red \x1b[31mtext\x07":  "red \uFFFD[31mtext\uFFFD",
		"\u202Eevil\u202C":      "\uFFFDevil\uFFFD",
		"bad \xff byte":         "bad \uFFFD byte",
		"Überzug – 1 µm \u00A0": "Überzug – 1 µm",
	} {
		if got := cells.OneLine(in); got != want {
			t.Errorf("OneLine(%q) = %q, want %q", in, got, want)
		}
	}
}
