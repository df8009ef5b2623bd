package chart

import (
	"strings"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Intervals shows one value a row with its interval: alternatives side by side,
// or differences against today. The value and interval stand as text beside
// each row.
type Intervals struct {
	Figure
	X    Axis
	Dots bool // dots instead of bars, for measures where zero means nothing, and for differences
	Plus bool // a plus before what is above zero, for differences
	Rows []IntervalRow
}

// IntervalRow is one value.
type IntervalRow struct {
	Name string
	Estimate
}

// Build makes the figure. It fails without rows and with a number that is not
// finite.
func (c Intervals) Build() (page.Chart, error) {
	if len(c.Rows) == 0 {
		return page.Chart{}, c.fault("no rows")
	}
	table := cells.Table{Columns: []cells.Column{{Head: ""}, {Head: c.X.title(), Align: cells.Right}, {Head: "interval", Align: cells.Right}}}
	var names, labels []string
	var bars []opts.BarData
	var marks []opts.CustomData
	var tips []tip
	var ends []float64
	for i, r := range c.Rows {
		if err := r.check(); err != nil {
			return page.Chart{}, c.fault("row %d: %w", i+1, err)
		}
		name, value, interval := cells.OneLine(r.Name), c.signed(r.Value), c.X.between(r.Low, r.High)
		names, labels = append(names, name), append(labels, value)
		bars = append(bars, opts.BarData{Value: r.Value})
		marks = append(marks, opts.CustomData{Value: []float64{r.Value, float64(i), r.Low, r.High}})
		tips = append(tips, tip{name, [][]string{{c.X.title(), value}, {"interval", interval}}})
		ends = append(ends, r.Low, r.High, r.Value)
		table.Rows = append(table.Rows, cells.Texts(name, value, interval))
	}
	low, high := extent(ends)
	x := c.X.fit(niceScale(low, high, c.X.Zero || !c.Dots, 5), high)
	option, err := c.option(names, bars, marks, x)
	if err != nil {
		return page.Chart{}, err
	}
	out := c.chart(page.Intervals, rowsHeight(len(names), 38), table)
	out.Options = option
	out.Data = map[string]any{"labels": labels, "dots": c.Dots, "tips": map[string]any{"axis": tips}, "xDigits": x.digits}
	out.AxisX = c.X.title() + " →"
	return out, nil
}

// signed is a value with its sign, where differences are shown.
func (c Intervals) signed(v float64) string {
	text := c.X.number(v)
	if c.Plus && v > 0 && strings.Trim(text, "0.,") != "" {
		return "+" + text
	}
	return text
}

func (c Intervals) option(names []string, bars []opts.BarData, marks []opts.CustomData, x scale) (map[string]any, error) {
	b := charts.NewBar()
	b.SetGlobalOptions(common(c.ID, "axis")...)
	b.AddSeries("", bars, charts.WithSeriesId("bar"), charts.WithItemStyleOpts(opts.ItemStyle{Color: color(0)}),
		charts.WithBarChartOpts(opts.BarChart{BarWidth: "56%"}))
	extra := charts.NewCustom()
	extra.AddSeries("", marks, charts.WithSeriesId("spans"))
	b.Overlap(extra)
	option, err := optionOf(b, valueAxis("x", x), nameAxis("rows", names, true))
	if err != nil {
		return nil, err
	}
	if c.Dots {
		adjust(option, 0, map[string]any{"itemStyle": map[string]any{"color": "transparent"}})
		// the line of the names stands at zero, where a difference says nothing
		option["yAxis"].(map[string]any)["axisLine"] = map[string]any{"show": true, "onZero": true, "lineStyle": map[string]any{"color": "@muted", "width": 1.25}}
	} else {
		adjust(option, 0, map[string]any{"itemStyle": map[string]any{"color": color(0), "opacity": 0.55}})
	}
	adjust(option, 1, map[string]any{"clip": false, "silent": true, "z": 4})
	option["tooltip"].(map[string]any)["axisPointer"] = map[string]any{"type": "none"}
	return option, nil
}
