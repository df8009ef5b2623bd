package chart

import (
	"cmp"
	"slices"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Pareto shows causes by their share of a total, the largest first, and the
// running sum: how many causes make most of it. Bars and sum share one axis.
type Pareto struct {
	Figure
	Of      Axis // what is counted: "waiting", "h a week"
	Amounts bool // bars tell the amount with its share, not the share alone
	Causes  []Cause
	Rest    string // name of a cause that stands last, whatever its amount: "3 others"
}

// Cause is one cause with its amount, not negative.
type Cause struct {
	Name   string
	Amount float64
}

// Build makes the figure. Equal causes keep the given order. It fails without
// causes, with a negative amount, and when all amounts are zero.
func (c Pareto) Build() (page.Chart, error) {
	causes := slices.Clone(c.Causes)
	total := 0.0
	for i, e := range causes {
		if err := finite(e.Amount); err != nil || e.Amount < 0 {
			return page.Chart{}, c.fault("cause %d: %v is not an amount", i+1, e.Amount)
		}
		total += e.Amount
	}
	if total == 0 {
		return page.Chart{}, c.fault("the total is zero")
	}
	slices.SortStableFunc(causes, func(a, b Cause) int {
		return cmp.Or(c.last(a)-c.last(b), cmp.Compare(b.Amount, a.Amount))
	})
	table := cells.Table{Columns: []cells.Column{{Head: ""}, {Head: c.Of.title(), Align: cells.Right},
		{Head: "share", Align: cells.Right}, {Head: "running sum", Align: cells.Right}}}
	var names, labels []string
	var bars []opts.CustomData
	var tips []tip
	var line [][2]float64
	at := 0.0
	for i, e := range causes {
		at += e.Amount
		name, share, run := cells.OneLine(e.Name), percent(e.Amount/total), percent(at/total)
		names, labels = append(names, name), append(labels, c.label(e.Amount, share))
		bars = append(bars, opts.CustomData{Value: []float64{100 * e.Amount / total, float64(i), 100 * at / total}})
		line = append(line, [2]float64{100 * at / total, float64(i)})
		tips = append(tips, tip{name, [][]string{{c.Of.title(), c.Of.number(e.Amount)}, {"share", share}, {"running sum", run}}})
		table.Rows = append(table.Rows, cells.Texts(name, c.Of.number(e.Amount), share, run))
	}
	option, err := c.option(names, bars, line)
	if err != nil {
		return page.Chart{}, err
	}
	out := c.chart(page.Pareto, rowsHeight(len(names), 34), table)
	out.Options = option
	out.Data = map[string]any{"labels": labels, "tips": map[string]any{"shares": tips, "sum": tips}, "xDigits": 0, "xUnit": " %"}
	out.AxisX = "share of " + cells.OneLine(c.Of.Name) + " →"
	out.Legend = []page.Key{{Label: c.bars(), Form: page.Fill}, {Label: "running sum", Form: page.Line, Color: 1}}
	return out, nil
}

func (c Pareto) last(e Cause) int {
	if c.Rest != "" && e.Name == c.Rest {
		return 1
	}
	return 0
}

// label is what stands in or beside a bar.
func (c Pareto) label(amount float64, share string) string {
	if !c.Amounts {
		return share
	}
	return c.Of.number(amount) + " (" + share + ")"
}

// bars is what the bars are, for the legend.
func (c Pareto) bars() string {
	if !c.Amounts {
		return "share"
	}
	return c.Of.title() + ", and share"
}

func (c Pareto) option(names []string, bars []opts.CustomData, line [][2]float64) (map[string]any, error) {
	b := charts.NewCustom()
	b.SetGlobalOptions(common(c.ID, "item")...)
	b.AddSeries("", bars, charts.WithSeriesId("shares"))
	sums := charts.NewLine()
	sums.AddSeries("", nil, stroke("sum", color(1)))
	b.Overlap(sums)
	option, err := optionOf(b, valueAxis("x", scale{0, 100, 20, 0}), nameAxis("rows", names, true))
	if err != nil {
		return nil, err
	}
	adjust(option, 0, map[string]any{"clip": false})
	adjust(option, 1, map[string]any{"data": line, "symbol": "circle", "symbolSize": 7, "z": 4, "clip": false})
	return option, nil
}
