package chart_test

import (
	"slices"
	"testing"

	"moldturn/reports/chart"
	"moldturn/reports/page"
)

// Stretches shade their places, have one key a label, and are told in the table.
func TestStretches(t *testing.T) {
	c := demoLines(plain)
	c.Stretches = []chart.Stretch{{"hot", 3, 7}, {"hot", 20, 24}, {"today", 30, 30}}
	out, err := c.Build()
	if err != nil {
		t.Fatal(err)
	}
	if err := out.Check(); err != nil {
		t.Error(err)
	}
	series := out.Options["series"].([]any)[0].(map[string]any)
	if areas := series["markArea"].(map[string]any)["data"].([]any); len(areas) != 3 {
		t.Errorf("%d areas", len(areas))
	}
	var keys []page.Key
	for _, k := range out.Legend {
		if k.Label == "hot" || k.Label == "today" {
			keys = append(keys, k)
		}
	}
	if len(keys) != 2 || keys[0].Form != page.Cloud || keys[1].Form != page.Line {
		t.Errorf("keys %+v", keys)
	}
	var marked []int
	for i, row := range out.Table.Rows {
		if row.Cells[len(row.Cells)-1].Text != "" {
			marked = append(marked, i)
		}
	}
	if want := []int{3, 4, 5, 6, 7, 20, 21, 22, 23, 24, 30}; !slices.Equal(marked, want) {
		t.Errorf("marked rows %v, want %v", marked, want)
	}
	for _, wrong := range []chart.Stretch{{"x", -1, 3}, {"x", 5, 4}, {"x", 3, len(c.X)}} {
		c.Stretches = []chart.Stretch{wrong}
		if _, err := c.Build(); err == nil {
			t.Errorf("%+v is accepted", wrong)
		}
	}
}
