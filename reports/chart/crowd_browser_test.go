package chart_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"moldturn/reports/browser"
	"moldturn/reports/chart"
	"moldturn/reports/page"
)

// Points that lie on one another are numbered together, so that on a phone too
// every number of the list under the drawing stands in the drawing.
func TestCrowdedPointsKeepTheirNumbers(t *testing.T) {
	c := chart.Scatter{Figure: chart.Figure{ID: "crowd", Finding: "Many settings come to the same", Alt: "Points."}, Groups: []chart.Group{{Label: "all"}},
		X: chart.Axis{Name: "boats", Digits: 2}, Y: chart.Axis{Name: "luster", Digits: 2}}
	var want []string
	for i := range 19 {
		x, y := []float64{1.54, 1.763, 1.764}[i%3], []float64{97.33, 97.135, 97.142}[i%3]
		c.Points = append(c.Points, chart.Point{Name: fmt.Sprintf("a setting with a long name, number %d", i+1),
			X: chart.Estimate{Value: x, Low: x - 0.02, High: x + 0.02}, Y: chart.Estimate{Value: y, Low: y - 0.03, High: y + 0.03}})
		want = append(want, fmt.Sprint(i+1))
	}
	built, err := c.Build()
	if err != nil {
		t.Fatal(err)
	}
	b := browser.Start(t)
	path := written(t, page.Page{Title: "Crowd", Lead: "Many points.", Sections: []page.Section{{Heading: "Crowd", Blocks: []page.Block{built}}}})
	for _, look := range []browser.Look{desktop, phone} {
		tab := b.Open(t, path, look)
		browser.Eval[bool](t, tab, browser.Probe)
		seen := regexp.MustCompile(`\d+`).FindAllString(browser.Eval[string](t, tab, `Array.from(document.querySelectorAll('#crowd .plot text')).map(function (n) { return n.textContent; }).filter(function (s) { return /^[\d, ]+$/.test(s); }).join(' ')`), -1)
		for _, n := range want {
			if !slices.Contains(seen, n) {
				t.Errorf("%d wide: number %s is not in the drawing, which has %s", look.Width, n, strings.Join(seen, " "))
			}
		}
		for _, bad := range browser.Eval[[]string](t, tab, `probe.overlaps()`) {
			t.Errorf("texts overlap or are cut: %s", bad)
		}
		for _, bad := range tab.Complaints() {
			t.Error(bad)
		}
	}
}
