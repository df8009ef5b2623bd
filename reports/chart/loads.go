package chart

import (
	"math"

	"github.com/go-echarts/go-echarts/v2/charts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Loads shows two measures of each row, week by week: the share of it in use as
// a cell from pale to strong, and under it, as a column, the hours that work
// waits for it. Columns are on one scale for all rows, so that what limits
// stands out. The longest wait of a row stands beside it as a number.
type Loads struct {
	Figure
	Weeks []string // how each week is called in tips and in the table
	Ticks []string // what stands under each week, mostly nothing; as many as Weeks
	Rows  []string
	Use   [][]float64 // by row, then week: percent; NaN where nothing was there to be used
	Wait  [][]float64 // the same: hours, not negative; NaN for a week without anything
}

// Build makes the figure. It fails when lists do not fit each other, or no week
// has a value.
func (c Loads) Build() (page.Chart, error) {
	if err := c.check(); err != nil {
		return page.Chart{}, err
	}
	low, high := extent(c.Use...)
	_, most := extent(c.Wait...)
	var data [][4]float64
	labels, last := make([]string, len(c.Rows)), 0
	for i := range c.Rows {
		peak := 0.0
		for w, wait := range c.Wait[i] {
			if math.IsNaN(wait) {
				continue
			}
			use := round(c.Use[i][w], 1)
			if math.IsNaN(use) {
				use = -1
			}
			data = append(data, [4]float64{float64(w), float64(i), use, round(wait, 1)})
			peak, last = max(peak, wait), max(last, w)
		}
		labels[i] = Axis{}.number(peak) + " h"
	}
	option, err := c.option(data)
	if err != nil {
		return page.Chart{}, err
	}
	out := c.chart(page.Loads, rowsHeight(len(c.Rows), 46), c.table())
	out.Options = option
	out.Data = map[string]any{"labels": labels, "weeks": clean(c.Weeks), "low": low, "high": high, "most": most, "last": last}
	out.Legend = []page.Key{{Label: "in use, " + Axis{}.between(low, high) + " %", Form: page.Ramp},
		{Label: "work waits for it, h a week; the longest in figures", Form: page.Fill, Color: 3}}
	out.AxisX = "week of the year →"
	return out, nil
}

func (c Loads) check() error {
	switch {
	case len(c.Rows) == 0 || len(c.Weeks) == 0:
		return c.fault("no rows or no weeks")
	case len(c.Ticks) != len(c.Weeks) || len(c.Use) != len(c.Rows) || len(c.Wait) != len(c.Rows):
		return c.fault("%d ticks of %d weeks, %d and %d rows of values for %d rows", len(c.Ticks), len(c.Weeks), len(c.Use), len(c.Wait), len(c.Rows))
	}
	seen := false
	for i := range c.Rows {
		if len(c.Use[i]) != len(c.Weeks) || len(c.Wait[i]) != len(c.Weeks) {
			return c.fault("row %d: %d and %d values for %d weeks", i+1, len(c.Use[i]), len(c.Wait[i]), len(c.Weeks))
		}
		for w := range c.Weeks {
			use, wait := c.Use[i][w], c.Wait[i][w]
			if math.IsInf(use, 0) || math.IsInf(wait, 0) || use < 0 || wait < 0 {
				return c.fault("row %d, week %d: %v %% in use and %v h of waits cannot be drawn", i+1, w+1, use, wait)
			}
			seen = seen || !math.IsNaN(use)
		}
	}
	if !seen {
		return c.fault("no values")
	}
	return nil
}

func (c Loads) option(data [][4]float64) (map[string]any, error) {
	b := charts.NewCustom()
	b.SetGlobalOptions(common(c.ID, "item")...)
	b.AddSeries("", nil, charts.WithSeriesId("loads"))
	ticks := nameAxis("weeks", clean(c.Ticks), true)
	ticks["axisLabel"].(map[string]any)["interval"] = 0
	option, err := optionOf(b, ticks, nameAxis("rows", clean(c.Rows), true))
	if err != nil {
		return nil, err
	}
	adjust(option, 0, map[string]any{"clip": false, "data": data})
	return option, nil
}

// table has a row for each week and two columns for each row of the drawing.
func (c Loads) table() cells.Table {
	t := cells.Table{Title: "In use (%) and hours that work waits, by week", Columns: []cells.Column{{Head: "week"}}}
	for _, r := range clean(c.Rows) {
		t.Columns = append(t.Columns, cells.Column{Head: r + ", %", Align: cells.Right}, cells.Column{Head: "waits, h", Align: cells.Right})
	}
	for w, name := range clean(c.Weeks) {
		row := cells.Texts(name)
		for i := range c.Rows {
			row.Cells = append(row.Cells, cells.Cell{Text: Axis{}.number(c.Use[i][w])}, cells.Cell{Text: Axis{}.number(c.Wait[i][w])})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
