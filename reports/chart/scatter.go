package chart

import (
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Scatter shows alternatives by two measures, with an interval for each, and
// their names beside the points. Names that find no free place become numbers,
// listed below the drawing in the order of Points.
type Scatter struct {
	Figure
	X, Y   Axis
	Groups []Group // 1 to page.Shapes
	Points []Point
}

// Group is a set of points of one shape and color.
type Group struct {
	Label string
	Join  bool // a thin line joins the points, from left to right
}

// Point is one alternative. Group is an index into Scatter.Groups.
type Point struct {
	Name  string
	X, Y  Estimate
	Group int
}

// shapes are the symbols of groups, in the order of the legend's marks.
var shapes = [page.Shapes]string{"circle", "diamond", "triangle", "rect"}

// Build makes the figure. It fails without points or groups, with a group that
// does not exist, and with a number that is not finite.
func (c Scatter) Build() (page.Chart, error) {
	if err := c.check(); err != nil {
		return page.Chart{}, err
	}
	var xs, ys []float64
	for _, p := range c.Points {
		xs = append(xs, p.X.Low, p.X.High)
		ys = append(ys, p.Y.Low, p.Y.High)
	}
	x, y := c.X.spread(xs), c.Y.spread(ys)
	option, err := c.option(x, y)
	if err != nil {
		return page.Chart{}, err
	}
	out := c.chart(page.Points, 460, c.table())
	out.Options, out.Data = option, c.data(x, y)
	out.AxisX, out.AxisY = c.X.title()+" →", "↑ "+c.Y.title()
	if len(c.Groups) > 1 {
		for i, g := range c.Groups {
			out.Legend = append(out.Legend, page.Key{Label: cells.OneLine(g.Label), Form: page.Mark, Color: i, Pattern: i})
		}
	}
	return out, nil
}

func (c Scatter) check() error {
	if len(c.Points) == 0 {
		return c.fault("no points")
	}
	if n := len(c.Groups); n == 0 || n > page.Shapes {
		return c.fault("%d groups; 1 to %d can be told apart", n, page.Shapes)
	}
	for i, p := range c.Points {
		if p.Group < 0 || p.Group >= len(c.Groups) {
			return c.fault("point %d: there is no group %d", i+1, p.Group)
		}
		for _, e := range []Estimate{p.X, p.Y} {
			if err := e.check(); err != nil {
				return c.fault("point %d: %w", i+1, err)
			}
		}
	}
	return nil
}

// spread is a scale with some air, so that names find room around points.
func (a Axis) spread(vs []float64) scale {
	low, high := extent(vs)
	air := (high - low) * 0.04
	return a.fit(niceScale(low-air, high+air, a.Zero, 7), high)
}

// option has one series a group, then the error bars below them and the names
// above them.
func (c Scatter) option(x, y scale) (map[string]any, error) {
	s := charts.NewScatter()
	s.SetGlobalOptions(common(c.ID, "item")...)
	for i := range c.Groups {
		var data []opts.ScatterData
		for _, p := range c.Points {
			if p.Group == i {
				data = append(data, opts.ScatterData{Value: []float64{p.X.Value, p.Y.Value}})
			}
		}
		s.AddSeries("", data, charts.WithSeriesId(groupID(i)), charts.WithScatterChartOpts(opts.ScatterChart{Symbol: shapes[i], SymbolSize: 12}),
			charts.WithItemStyleOpts(opts.ItemStyle{Color: color(i), BorderColor: "@paper", BorderWidth: 1.5, Opacity: opts.Float(1)}))
	}
	extra := charts.NewCustom()
	var bars []opts.CustomData
	for _, p := range c.Points {
		bars = append(bars, opts.CustomData{Value: []float64{p.X.Value, p.Y.Value, p.X.Low, p.X.High, p.Y.Low, p.Y.High, float64(p.Group)}})
	}
	extra.AddSeries("", bars, charts.WithSeriesId("bars"))
	extra.AddSeries("", []opts.CustomData{{Value: []float64{(x.min + x.max) / 2, (y.min + y.max) / 2}}}, charts.WithSeriesId("names"))
	s.Overlap(extra)
	option, err := optionOf(s, valueAxis("x", x), valueAxis("y", y))
	if err != nil {
		return nil, err
	}
	n := len(c.Groups)
	for i := range n {
		adjust(option, i, map[string]any{"z": 4})
	}
	adjust(option, n, map[string]any{"silent": true, "z": 3, "clip": false})
	adjust(option, n+1, map[string]any{"silent": true, "z": 5, "clip": false, "tooltip": hidden()})
	c.join(option)
	return option, nil
}

// join adds the lines of groups that have one.
func (c Scatter) join(option map[string]any) {
	series := option["series"].([]any)
	for i, g := range c.Groups {
		if !g.Join {
			continue
		}
		series = append(series, map[string]any{
			"id": "join" + strconv.Itoa(i), "type": "line", "data": c.path(i), "symbol": "none", "silent": true, "z": 2,
			"tooltip":   hidden(),
			"lineStyle": map[string]any{"color": color(i), "width": 1.25, "type": "solid", "opacity": 0.6},
		})
	}
	option["series"] = series
}

func groupID(i int) string { return "group" + strconv.Itoa(i) }

func color(i int) string { return "@c" + strconv.Itoa(i) }
