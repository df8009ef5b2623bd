package chart

import (
	"fmt"
	"math"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// lineFigure is what Lines and Band share.
type lineFigure struct {
	Figure
	xTitle string
	x      []string
	y      Axis
	goals  []Goal
}

// places reports a list that does not fit the places, or cannot be drawn.
func places(x []string, vs []float64) error {
	if len(x) < 2 {
		return fmt.Errorf("%d places; a line needs at least 2", len(x))
	}
	if len(vs) != len(x) {
		return fmt.Errorf("%d values for %d places", len(vs), len(x))
	}
	numbers := 0
	for i, v := range vs {
		if math.IsNaN(v) {
			continue
		}
		if err := finite(v); err != nil {
			return fmt.Errorf("place %d: %w", i+1, err)
		}
		numbers++
	}
	if numbers == 0 {
		return fmt.Errorf("there is no value at all")
	}
	return nil
}

func (f lineFigure) start() *charts.Line {
	l := charts.NewLine()
	l.SetGlobalOptions(common(f.ID, "axis")...)
	l.SetXAxis(f.x)
	return l
}

// finish adds goals, axes and data. lines is how many of the first series get
// dashes.
func (f lineFigure) finish(l *charts.Line, kind page.Kind, all [][]float64, legend []page.Key, table cells.Table, tips []tip, lines int) (page.Chart, error) {
	for i, g := range f.goals {
		level := g.along(len(f.x))
		if err := places(f.x, level); err != nil {
			return page.Chart{}, f.fault("goal %q: %w", g.Label, err)
		}
		all = append(all, level)
		l.AddSeries("", values(level), stroke("goal"+strconv.Itoa(i), color(goalColor)))
		name := cells.OneLine(g.Label)
		legend = append(legend, page.Key{Label: name, Form: page.Line, Color: goalColor, Pattern: 2})
		for k := range tips {
			tips[k].Rows = append(tips[k].Rows, []string{name, f.y.measured(level[k])})
		}
	}
	low, high := extent(all...)
	y := f.y.fit(niceScale(low, high, f.y.Zero, 5), high)
	option, err := optionOf(l, nameAxis("x", f.x, false), valueAxis("y", y))
	if err != nil {
		return page.Chart{}, err
	}
	for i := range lines {
		dash(option, i, i)
	}
	for i := range f.goals {
		dash(option, len(option["series"].([]any))-len(f.goals)+i, 2)
	}
	option["tooltip"].(map[string]any)["axisPointer"] = map[string]any{"type": "line", "lineStyle": map[string]any{"color": "@muted", "type": "solid"}}
	out := f.chart(kind, 320, table)
	out.Options, out.Legend = option, legend
	out.Data = map[string]any{"tips": map[string]any{"axis": tips}, "yDigits": y.digits}
	out.AxisX, out.AxisY = cells.OneLine(f.xTitle)+" →", "↑ "+f.y.title()
	return out, nil
}

// dash sets the dashes of series i.
func dash(option map[string]any, i, pattern int) {
	if dashes[pattern] == nil {
		return
	}
	s := option["series"].([]any)[i].(map[string]any)
	s["lineStyle"].(map[string]any)["type"] = dashes[pattern]
}
