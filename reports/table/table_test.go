package table_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/jedib0t/go-pretty/v6/text"

	"moldturn/reports/cells"
	"moldturn/reports/table"
)

func render(t *testing.T, in cells.Table, s table.Style) string {
	t.Helper()
	var b bytes.Buffer
	if err := table.Write(&b, in, s); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func widthOf(s string) int {
	w := 0
	for line := range strings.SplitSeq(s, "\n") {
		w = max(w, text.StringWidthWithoutEscSequences(line))
	}
	return w
}

// weeks is a table like those of a comparison, with a long name.
func weeks(name string) cells.Table {
	return cells.Table{
		Title: "Boats a week and luster",
		Columns: []cells.Column{{Head: "alternative"}, {Head: "boats a week", Align: cells.Right},
			{Head: "luster at the pull, mean", Align: cells.Right}, {Head: "what binds"}},
		Rows: []cells.Row{
			{Cells: []cells.Cell{{Text: name}, {Text: "4.10", Notes: []int{0}}, {Text: "86.2"}, {Text: "molds"}}},
			{Cells: []cells.Cell{{Text: "as today"}, {Text: "12.9"}, {Text: "9.5", Notes: []int{0, 1}}, {Text: "lay-up crew"}}, Strong: true},
		},
		Notes: []string{"only 4 replications", strings.Repeat("a long remark about the interval ", 5)},
	}
}

func TestPlainTable(t *testing.T) {
	in := weeks("third mold")
	in.Notes[1] = "wide interval"
	want := `Boats a week and luster

alternative  boats a week  luster at the pull, mean  what binds
----------------------------------------------------------------
third mold          4.10¹                    86.2    molds
as today            12.9                      9.5¹²  lay-up crew
¹ only 4 replications
² wide interval
`
	if got := render(t, in, table.Style{}); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestWidths(t *testing.T) {
	for _, name := range []string{"x", strings.Repeat("a third mold for the Rush 23 and ", 6), strings.Repeat("w", 200), strings.Repeat("模具 ", 60)} {
		for _, width := range []int{0, 40, 60, 80, 120} {
			got := render(t, weeks(name), table.Style{Width: width})
			limit := width
			if limit == 0 {
				limit = 80
			}
			if widthOf(got) > limit {
				t.Fatalf("width %d, got %d:\n%s", limit, widthOf(got), got)
			}
			if !strings.Contains(got, "12.9") || !strings.Contains(got, "86.2") {
				t.Errorf("a number was cut at width %d:\n%s", width, got)
			}
		}
	}
}

func TestManyColumnsBecomeAList(t *testing.T) {
	in := cells.Table{}
	row := cells.Row{}
	for range 20 {
		in.Columns = append(in.Columns, cells.Column{Head: "week", Align: cells.Right})
		row.Cells = append(row.Cells, cells.Cell{Text: "1,234.5"})
	}
	in.Rows = []cells.Row{row}
	got := render(t, in, table.Style{})
	if widthOf(got) > 80 || strings.Count(got, "week: 1,234.5\n") != 20 {
		t.Errorf("got\n%s", got)
	}
}

func TestColorAndEscapes(t *testing.T) {
	in := weeks("\x1b[2J\x1b[31mevil\r\nname")
	plain, colored := render(t, in, table.Style{}), render(t, in, table.Style{Color: true})
	if strings.Contains(plain, "\x1b") {
		t.Errorf("escape in plain text: %q", plain)
	}
	if strings.Contains(colored, "\x1b[31m") || strings.Contains(colored, "\x1b[2J") {
		t.Errorf("a name reached the terminal as a command: %q", colored)
	}
	if !strings.Contains(colored, "\x1b[1m") {
		t.Errorf("no bold text: %q", colored)
	}
	if got := strings.NewReplacer("\x1b[1m", "", "\x1b[0m", "").Replace(colored); trim(got) != trim(plain) {
		t.Errorf("color changes more than weight:\n%q\n%q", got, plain)
	}
}

// trim removes spaces at line ends, which follow an escape in colored text.
func trim(s string) string {
	lines := strings.Split(s, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return strings.Join(lines, "\n")
}

func TestRefusal(t *testing.T) {
	if err := table.Write(&bytes.Buffer{}, cells.Table{}, table.Style{}); err == nil {
		t.Error("a table without columns was written")
	}
}
