package workbook

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"moldturn/reports/view"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// A sheet holds so many rows and no more: the first are kept, and it is said.
func TestMoreDataThanRows(t *testing.T) {
	r := &record.Result{Lusters: []float64{90, 95}}
	o := study.Outcome{Capacity: r}
	b := &book{study: &view.Study{Alternatives: []view.Alternative{{Runs: study.Runs{Name: "a", Outcomes: []study.Outcome{o, o}}}}}}
	all := b.data(mostRows)
	if len(all.rows) < 4 || strings.Contains(all.lead, "first") {
		t.Fatalf("%d rows, %q", len(all.rows), all.lead)
	}
	if cut := b.data(3); len(cut.rows) != 3 || !strings.HasPrefix(cut.lead, "The first 3 of ") {
		t.Errorf("%d rows, %q", len(cut.rows), cut.lead)
	}
}

func TestNoNumberIsAnEmptyCell(t *testing.T) {
	b := &book{file: excelize.NewFile(), formats: map[look]int{}}
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if x, err := b.cell(number{v, "0"}); x != nil || err != nil {
			t.Errorf("%v: %v, %v", v, x, err)
		}
	}
	if _, err := b.cell(struct{}{}); err == nil {
		t.Error("a struct is a cell")
	}
}

func TestValuesOfAssumptions(t *testing.T) {
	for text, isNumber := range map[string]bool{"3": true, "-2.5": true, "16 h": false, "85 %": false, "": false, "=1": false, "1e5": false, "2026-01-02": false} {
		if _, ok := valueOf(text).(number); ok != isNumber {
			t.Errorf("%q: a number is %v", text, ok)
		}
	}
}

func TestUnitsOfAssumptionsStandApart(t *testing.T) {
	for text, want := range map[string]struct {
		value any
		unit  string
	}{
		"16 h": {number{16, "General"}, "h"}, "-2.5 °C": {number{-2.5, "General"}, "°C"}, "85 %": {number{85, "General"}, "%"}, "3": {number{3, "General"}, ""},
		"$8": {number{8, "General"}, "$"}, "€1,200.50/h": {number{1200.5, "General"}, "€/h"}, "-$3000": {number{-3000, "General"}, "$"},
		"$1,20": {"$1,20", ""}, "$8 and more": {"$8 and more", ""}, "4 x 14 h": {"4 x 14 h", ""}, "10 100": {"10 100", ""}, "May-Sep": {"May-Sep", ""}, "": {"", ""}, "6:00 to 14:30": {"6:00 to 14:30", ""},
	} {
		if v, unit := measured(text); v != want.value || unit != want.unit {
			t.Errorf("%q: %v and %q", text, v, unit)
		}
	}
}

func TestMergedKeepsBothOrders(t *testing.T) {
	got := merged([]string{"work", "hold", "wait"}, []string{"work", "set", "hold", "idle"})
	if want := []string{"work", "set", "hold", "idle", "wait"}; !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
}

func TestErrorBarsNeedCategories(t *testing.T) {
	e := errorBars{chart: 1, half: "Decision!$D$1:$D$2"}
	if _, err := e.draw([]byte("<ser></ser>")); err == nil {
		t.Error("no error")
	}
	got, err := e.draw([]byte("<ser><cat></cat></ser>"))
	if err != nil || !strings.HasPrefix(string(got), "<ser><errBars>") || !strings.HasSuffix(string(got), "</errBars><cat></cat></ser>") {
		t.Errorf("%s, %v", got, err)
	}
}

func TestLines(t *testing.T) {
	for _, test := range []struct {
		text  string
		width int
		want  int
	}{{"one two", 10, 1}, {"one two three", 8, 2}, {"one two", 3, 2}, {"", 5, 1}} {
		if got := lines(test.text, test.width); got != test.want {
			t.Errorf("%q in %d: %d lines, want %d", test.text, test.width, got, test.want)
		}
	}
}
