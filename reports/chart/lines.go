package chart

import (
	"math"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Lines shows several measures over the same places, such as weeks. A NaN is a
// week without a value and leaves a gap.
type Lines struct {
	Figure
	XTitle string   // "week of the year"
	X      []string // names of the places, at least 2
	Y      Axis
	Series []Series // 1 to page.Dashes
	Goals  []Goal

	Stretches []Stretch // shaded places; none leaves the table without their column
}

// Series is one line.
type Series struct {
	Label  string
	Values []float64 // as many as places
}

// Goal is a level drawn across the plot, such as a promise or a limit.
type Goal struct {
	Label  string
	Value  float64
	Values []float64 // one a place, in place of Value; nil for a level line
}

// along is the goal at each of n places.
func (g Goal) along(n int) []float64 {
	if g.Values != nil {
		return g.Values
	}
	level := make([]float64, n)
	for k := range level {
		level[k] = g.Value
	}
	return level
}

// dashes are the line styles in the order of the legend's lines.
var dashes = [page.Dashes][]int{nil, {8, 4}, {2, 3}, {9, 3, 2, 3}}

// goalColor is the color index of goals, which are dotted.
const goalColor = 7

// Build makes the figure. It fails when a series is not as long as X, has no
// number at all, or has one that cannot be drawn.
func (c Lines) Build() (page.Chart, error) {
	if n := len(c.Series); n == 0 || n > page.Dashes {
		return page.Chart{}, c.fault("%d series; 1 to %d can be told apart", n, page.Dashes)
	}
	var all [][]float64
	for _, s := range c.Series {
		if err := places(c.X, s.Values); err != nil {
			return page.Chart{}, c.fault("series %q: %w", s.Label, err)
		}
		all = append(all, s.Values)
	}
	f := lineFigure{c.Figure, c.XTitle, clean(c.X), c.Y, c.Goals}
	l := f.start()
	for i, s := range c.Series {
		l.AddSeries("", values(s.Values), stroke("line"+strconv.Itoa(i), color(i)))
	}
	tips := c.tips()
	out, err := f.finish(l, page.Lines, all, c.legend(), c.table(), tips, len(c.Series))
	if err != nil {
		return page.Chart{}, err
	}
	return out, c.shade(&out, tips)
}

func (c Lines) legend() []page.Key {
	var keys []page.Key
	for i, s := range c.Series {
		keys = append(keys, page.Key{Label: cells.OneLine(s.Label), Form: page.Line, Color: i, Pattern: i})
	}
	return keys
}

func (c Lines) tips() []tip {
	out := make([]tip, len(c.X))
	for i, x := range c.X {
		out[i].Head = cells.OneLine(x)
		for _, s := range c.Series {
			out[i].Rows = append(out[i].Rows, []string{cells.OneLine(s.Label), c.Y.measured(s.Values[i])})
		}
	}
	return out
}

func (c Lines) table() cells.Table {
	t := cells.Table{Title: c.Y.title(), Columns: []cells.Column{{Head: cells.OneLine(c.XTitle)}}}
	for _, s := range c.Series {
		t.Columns = append(t.Columns, cells.Column{Head: cells.OneLine(s.Label), Align: cells.Right})
	}
	if len(c.Stretches) > 0 {
		t.Columns = append(t.Columns, cells.Column{Head: "marked"})
	}
	for i, x := range c.X {
		row := cells.Texts(cells.OneLine(x))
		for _, s := range c.Series {
			row.Cells = append(row.Cells, cells.Cell{Text: c.Y.number(s.Values[i])})
		}
		if len(c.Stretches) > 0 {
			row.Cells = append(row.Cells, cells.Cell{Text: c.stretches(i)})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// stroke is the style of one line.
func stroke(id, color string) charts.SeriesOpts {
	return func(s *charts.SingleSeries) {
		s.Id, s.Symbol = id, "none"
		s.LineStyle = &opts.LineStyle{Color: color, Width: 2.25}
		s.ItemStyle = &opts.ItemStyle{Color: color}
	}
}

// values turns numbers into line data; echarts takes "-" for a gap.
func values(vs []float64) []opts.LineData {
	out := make([]opts.LineData, len(vs))
	for i, v := range vs {
		out[i].Value = v
		if math.IsNaN(v) {
			out[i].Value = "-"
		}
	}
	return out
}
