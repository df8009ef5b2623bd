package chart

import (
	"math"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Stack shows what a total is made of, one bar a row: where a mold hour goes,
// by model or by alternative. Parts differ in color and pattern, and each says
// its share of the row where the text fits.
type Stack struct {
	Figure
	X     Axis
	Parts []string // 1 to page.Colors; sum small ones beforehand
	Rows  []StackRow
	// Share scales every row to 100 %; the table keeps the given numbers.
	Share bool
}

// StackRow is one bar. Values are as many as parts, none negative, and not all
// zero.
type StackRow struct {
	Name   string
	Values []float64
}

// Build makes the figure.
func (c Stack) Build() (page.Chart, error) {
	if err := c.check(); err != nil {
		return page.Chart{}, err
	}
	var data []opts.CustomData
	var labels []string
	var tips []tip
	longest := 0.0
	for i, r := range c.Rows {
		total, at := sum(r.Values), 0.0
		unit := 1.0
		if c.Share {
			unit = 100 / total
		}
		for k, v := range r.Values {
			if v == 0 {
				continue
			}
			share := percent(v / total)
			data = append(data, opts.CustomData{Value: []float64{at * unit, (at + v) * unit, float64(i), float64(k), float64(k)}})
			labels = append(labels, share)
			tips = append(tips, tip{cells.OneLine(r.Name), [][]string{{cells.OneLine(c.Parts[k]), share}, {c.X.title(), c.X.number(v)}}})
			at += v
		}
		longest = math.Max(longest, at*unit)
	}
	x := c.X.fit(niceScale(0, longest, true, 5), longest)
	unit := ""
	if c.Share {
		x, unit = scale{0, 100, 20, 0}, " %"
	}
	option, err := rectangles(c.ID, "segments", data, valueAxis("x", x), nameAxis("rows", c.names(), true))
	if err != nil {
		return page.Chart{}, err
	}
	out := c.chart(page.Segments, rowsHeight(len(c.Rows), 46), c.table())
	out.Options, out.Legend = option, fills(c.Parts)
	out.Data = map[string]any{"labels": labels, "tips": map[string]any{"segments": tips}, "xDigits": x.digits, "xUnit": unit}
	out.AxisX = c.X.title() + " →"
	if c.Share {
		out.AxisX = "share of " + cells.OneLine(c.X.Name) + " →"
	}
	return out, nil
}

func (c Stack) check() error {
	if n := len(c.Parts); n == 0 || n > page.Colors {
		return c.fault("%d parts; 1 to %d can be told apart", n, page.Colors)
	}
	if len(c.Rows) == 0 {
		return c.fault("no rows")
	}
	for i, r := range c.Rows {
		if len(r.Values) != len(c.Parts) {
			return c.fault("row %d: %d values for %d parts", i+1, len(r.Values), len(c.Parts))
		}
		for _, v := range r.Values {
			if err := finite(v); err != nil || v < 0 {
				return c.fault("row %d: %v is not a part of a total", i+1, v)
			}
		}
		if sum(r.Values) == 0 {
			return c.fault("row %d: the total is zero", i+1)
		}
	}
	return nil
}

func (c Stack) names() []string {
	out := make([]string, len(c.Rows))
	for i, r := range c.Rows {
		out[i] = cells.OneLine(r.Name)
	}
	return out
}

// table has the given numbers and the share of the row.
func (c Stack) table() cells.Table {
	t := cells.Table{Title: c.X.title() + ", and share of the row", Columns: []cells.Column{{Head: ""}}}
	for _, p := range c.Parts {
		t.Columns = append(t.Columns, cells.Column{Head: cells.OneLine(p), Align: cells.Right})
	}
	t.Columns = append(t.Columns, cells.Column{Head: "total", Align: cells.Right})
	for _, r := range c.Rows {
		total := sum(r.Values)
		row := cells.Texts(cells.OneLine(r.Name))
		for _, v := range r.Values {
			row.Cells = append(row.Cells, cells.Cell{Text: c.X.number(v) + " (" + percent(v/total) + ")"})
		}
		row.Cells = append(row.Cells, cells.Cell{Text: c.X.number(total)})
		t.Rows = append(t.Rows, row)
	}
	return t
}

// fills is the legend of parts.
func fills(parts []string) []page.Key {
	var keys []page.Key
	for i, p := range parts {
		keys = append(keys, page.Key{Label: cells.OneLine(p), Form: page.Fill, Color: i, Pattern: i})
	}
	return keys
}

// rectangles is a chart with one series of rectangles that the boot script
// draws.
func rectangles(id, series string, data []opts.CustomData, x, y map[string]any) (map[string]any, error) {
	b := charts.NewCustom()
	b.SetGlobalOptions(common(id, "item")...)
	b.AddSeries("", data, charts.WithSeriesId(series))
	option, err := optionOf(b, x, y)
	if err != nil {
		return nil, err
	}
	adjust(option, 0, map[string]any{"clip": false})
	return option, nil
}

// rowsHeight is the height of a figure of rows, with room for the axis.
func rowsHeight(rows, each int) int { return max(110, min(rows*each+50, 4000)) }

func sum(vs []float64) float64 {
	total := 0.0
	for _, v := range vs {
		total += v
	}
	return total
}

// percent prints a share of 1 as whole percent; less than half a percent of
// something is "<1 %".
func percent(share float64) string {
	if share > 0 && share < 0.005 {
		return "<1 %"
	}
	return Axis{}.number(share*100) + " %"
}
