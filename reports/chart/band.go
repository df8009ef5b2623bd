package chart

import (
	"fmt"
	"math"
	"strconv"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Band shows lines with the range around them, week by week: the middle, and
// the band in which most runs lie.
type Band struct {
	Figure
	XTitle string
	X      []string // names of the places, at least 2
	Y      Axis
	Middle string // what the line is: "mean"
	Range  string // what the band is: "8 years in 10"
	Series []Ribbon
	Goals  []Goal
}

// Ribbon is one line and its band. Label may be empty when there is only one.
type Ribbon struct {
	Label             string
	Low, Middle, High []float64 // as many as places, Low <= High
}

// Build makes the figure. It fails as Lines.Build does, and when a low end is
// above its high end.
func (c Band) Build() (page.Chart, error) {
	if n := len(c.Series); n == 0 || n > 3 {
		return page.Chart{}, c.fault("%d bands; 1 to 3 can be told apart", n)
	}
	var all [][]float64
	for _, s := range c.Series {
		if err := s.check(c.X); err != nil {
			return page.Chart{}, c.fault("band %q: %w", s.Label, err)
		}
		all = append(all, s.Low, s.Middle, s.High)
	}
	f := lineFigure{c.Figure, c.XTitle, clean(c.X), c.Y, c.Goals}
	l := f.start()
	for i, s := range c.Series {
		l.AddSeries("", values(s.Middle), stroke("line"+strconv.Itoa(i), color(i)))
	}
	for i, s := range c.Series {
		ribbon(l, i, s)
	}
	out, err := f.finish(l, page.Band, all, c.legend(), c.table(), c.tips(), len(c.Series))
	if err != nil {
		return page.Chart{}, err
	}
	for i := range c.Series {
		// Without this a band that starts below zero is stacked from zero.
		adjust(out.Options, len(c.Series)+2*i, map[string]any{"stackStrategy": "all", "silent": true})
		adjust(out.Options, len(c.Series)+2*i+1, map[string]any{"stackStrategy": "all", "silent": true})
	}
	return out, nil
}

func (s Ribbon) check(x []string) error {
	for _, vs := range [][]float64{s.Low, s.Middle, s.High} {
		if err := places(x, vs); err != nil {
			return err
		}
	}
	for i := range s.Low {
		if s.Low[i] > s.High[i] {
			return fmt.Errorf("place %d: low end %v above high end %v", i+1, s.Low[i], s.High[i])
		}
	}
	return nil
}

// ribbon adds an unseen line at the low end, and the width stacked on it.
func ribbon(l *charts.Line, i int, s Ribbon) {
	width := make([]float64, len(s.Low))
	for k := range width {
		width[k] = s.High[k] - s.Low[k]
	}
	stack := "band" + strconv.Itoa(i)
	unseen := func(id string) charts.SeriesOpts {
		return func(t *charts.SingleSeries) {
			t.Id, t.Symbol, t.Stack = id, "none", stack
			t.LineStyle = &opts.LineStyle{Width: 0.01, Opacity: opts.Float(0)}
		}
	}
	l.AddSeries("", values(s.Low), unseen("low"+strconv.Itoa(i)))
	l.AddSeries("", values(width), unseen("width"+strconv.Itoa(i)),
		charts.WithAreaStyleOpts(opts.AreaStyle{Color: color(i), Opacity: opts.Float(0.22)}))
}

// named joins the label of a ribbon with what a part of it is.
func named(label, part string) string {
	if label == "" {
		return cells.OneLine(part)
	}
	return cells.OneLine(label + ": " + part)
}

func (c Band) legend() []page.Key {
	var keys []page.Key
	for i, s := range c.Series {
		keys = append(keys,
			page.Key{Label: named(s.Label, c.Middle), Form: page.Line, Color: i, Pattern: i},
			page.Key{Label: named(s.Label, c.Range), Form: page.Cloud, Color: i})
	}
	return keys
}

func (c Band) tips() []tip {
	out := make([]tip, len(c.X))
	for i, x := range c.X {
		out[i].Head = cells.OneLine(x)
		for _, s := range c.Series {
			out[i].Rows = append(out[i].Rows, []string{named(s.Label, c.Middle), c.Y.measured(s.Middle[i])},
				[]string{named(s.Label, c.Range), c.Y.span(s.Low[i], s.High[i])})
		}
	}
	return out
}

// span is between, or a dash where an end is missing.
func (a Axis) span(low, high float64) string {
	if math.IsNaN(low) || math.IsNaN(high) {
		return "–"
	}
	return a.between(low, high)
}

func (c Band) table() cells.Table {
	t := cells.Table{Title: c.Y.title(), Columns: []cells.Column{{Head: cells.OneLine(c.XTitle)}}}
	for _, s := range c.Series {
		t.Columns = append(t.Columns, cells.Column{Head: named(s.Label, c.Middle), Align: cells.Right},
			cells.Column{Head: named(s.Label, c.Range), Align: cells.Right})
	}
	for i, x := range c.X {
		row := cells.Texts(cells.OneLine(x))
		for _, s := range c.Series {
			row.Cells = append(row.Cells, cells.Cell{Text: c.Y.number(s.Middle[i])}, cells.Cell{Text: c.Y.span(s.Low[i], s.High[i])})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
