package chart_test

import (
	"bytes"
	"encoding/json"
	"math"
	"strings"
	"testing"
	"time"

	"moldturn/reports/chart"
	"moldturn/reports/page"
)

type figure interface{ Build() (page.Chart, error) }

func all(n namer) []figure {
	return []figure{demoScatter(n), demoBand(n), demoStack(n), demoLines(n), demoHeat(n), demoIntervals(n), demoPareto(n), demoGantt(n), demoLoads(n)}
}

func build(t *testing.T, f figure) page.Chart {
	t.Helper()
	c, err := f.Build()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// Names may stand in an option only as the names of an axis; everywhere else
// they are data that the boot script places as text.
func TestNamesAreNotInOptions(t *testing.T) {
	for _, f := range all(func(string) string { return "NAME" }) {
		c := build(t, f)
		if err := c.Check(); err != nil {
			t.Error(err)
		}
		for _, axis := range []string{"xAxis", "yAxis"} {
			delete(c.Options[axis].(map[string]any), "data")
		}
		b, err := json.Marshal(c.Options)
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(string(b), "NAME") {
			t.Errorf("%s: a name is in the option: %s", c.ID, b)
		}
	}
}

func TestSameFigureSameBytes(t *testing.T) {
	write := func() string {
		var b bytes.Buffer
		if err := page.Write(&b, demo(t, plain)); err != nil {
			t.Fatal(err)
		}
		return b.String()
	}
	first := write()
	if first != write() {
		t.Error("two pages from the same numbers differ")
	}
	if len(first) > 2_000_000 {
		t.Errorf("the page has %d bytes, more than 2 MB", len(first))
	}
}

// The table behind a figure has the numbers that were given, rounded.
func TestTables(t *testing.T) {
	text := func(f figure) string {
		var b strings.Builder
		for _, r := range build(t, f).Table.Rows {
			for _, c := range r.Cells {
				b.WriteString(c.Text + "|")
			}
			b.WriteString("\n")
		}
		return b.String()
	}
	for _, c := range []struct {
		f    figure
		want string
	}{
		{demoScatter(plain), "2|third Rush 23 mold|4.10|4.00 to 4.20|86.2|85.6 to 86.8|nothing better on both|\n"},
		{demoStack(plain), "Rush 23|36.0 (21 %)|40.0 (24 %)|22.0 (13 %)|6.0 (4 %)|3.0 (2 %)|0.0 (0 %)|61.0 (36 %)|168.0|\n"},
		{demoIntervals(plain), "wax every 6 pulls|−0.08|−0.12 to −0.04|\n"},
		{demoPareto(plain), "print-through|14.2|40 %|40 %|\nporosity|9.5|27 %|67 %|\n"},
		{demoGantt(plain), "Rush 23 mold 1|lay-up|worked on|Sun Mar 2 21:00|Mon Mar 3 06:00|\n"},
		{demoLoads(plain), "week 29|90|110|70|55|50|22|\n"},
		{demoLoads(plain), "week 52|–|–|–|–|–|–|\n"},
		{demoLines(plain), "week 1|18|18|18|\n"},
		{demoLines(plain), "week 21|15|5|–|\n"},
	} {
		if got := text(c.f); !strings.Contains(got, c.want) {
			t.Errorf("%q is not in\n%s", c.want, got)
		}
	}
}

// A band is drawn as an unseen low line and a width stacked on it: together
// they are the high end, also below zero.
func TestBandStacks(t *testing.T) {
	f := demoBand(plain)
	f.Series[0].Low[0], f.Series[0].Middle[0], f.Series[0].High[0] = -1.5, 0, 2
	series := build(t, f).Options["series"].([]any)
	value := func(i int) float64 {
		s := series[i].(map[string]any)
		return s["data"].([]any)[0].(map[string]any)["value"].(float64)
	}
	low, width := series[1].(map[string]any), series[2].(map[string]any)
	if low["stack"] != width["stack"] || low["stackStrategy"] != "all" || width["stackStrategy"] != "all" {
		t.Errorf("not stacked on each other: %v, %v", low["stack"], width["stack"])
	}
	if value(1) != -1.5 || value(1)+value(2) != 2 {
		t.Errorf("low %v, width %v", value(1), value(2))
	}
}

func TestRefusals(t *testing.T) {
	nan := math.NaN()
	scatter, band, stack, gantt := demoScatter(plain), demoBand(plain), demoStack(plain), demoGantt(plain)
	scatter.Points[3].X.Low = 9
	band.Series[0].Low[7] = 99
	stack.Rows[1].Values = []float64{1, 2}
	gantt.Bars[2].End = gantt.Bars[2].Start.Add(-time.Hour)
	shaded := demoGantt(plain)
	shaded.Shades[0].To = shaded.Shades[0].From.Add(-time.Hour)
	grouped := demoScatter(plain)
	grouped.Points[0].Group = 2
	for want, f := range map[string]figure{
		"point 4: 3.66 is not within":   scatter,
		"there is no group 2":           grouped,
		"no points":                     chart.Scatter{},
		"place 8: low end":              band,
		"row 2: 2 values for 7 parts":   stack,
		"bar 3 ends before":             gantt,
		"at least 2":                    chart.Lines{Series: []chart.Series{{Values: []float64{1}}}, X: []string{"a"}},
		"no value at all":               chart.Lines{Series: []chart.Series{{Values: []float64{nan, nan}}}, X: []string{"a", "b"}},
		"5 series; 1 to 4":              chart.Lines{Series: make([]chart.Series, 5)},
		"row 1: NaN is not a number":    chart.Intervals{Rows: []chart.IntervalRow{{Estimate: chart.Exact(nan)}}},
		"total is zero":                 chart.Pareto{Causes: []chart.Cause{{Name: "a"}}},
		"cause 1: -1":                   chart.Pareto{Causes: []chart.Cause{{Amount: -1}}},
		"row 1: 1 values for 2 columns": chart.Heat{Columns: []string{"a", "b"}, Rows: []string{"c"}, Values: [][]float64{{1}}},
		"9 parts; 1 to 8":               chart.Stack{Parts: make([]string, 9)},
		"the shown time ends before":    chart.Gantt{Rows: []string{"a"}, Kinds: []string{"b"}},
		"1 ticks of 2 weeks":            chart.Loads{Rows: []string{"a"}, Weeks: []string{"1", "2"}, Ticks: []string{""}},
		"-1 h of waits cannot":          chart.Loads{Rows: []string{"a"}, Weeks: []string{"1"}, Ticks: []string{""}, Use: [][]float64{{1}}, Wait: [][]float64{{-1}}},
		"by-week: no values":            chart.Loads{Figure: chart.Figure{ID: "by-week"}, Rows: []string{"a"}, Weeks: []string{"1"}, Ticks: []string{""}, Use: [][]float64{{nan}}, Wait: [][]float64{{nan}}},
		"shade 1 ends before":           shaded,
		"+Inf is not a number":          chart.Heat{Columns: []string{"a"}, Rows: []string{"c"}, Values: [][]float64{{math.Inf(1)}}},
	} {
		if _, err := f.Build(); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}
