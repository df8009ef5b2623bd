package chart

import (
	"time"

	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Gantt shows what each mold, bay or crew does, hour by hour. Bars are drawn
// as far as they lie within From and To.
type Gantt struct {
	Figure
	From, To time.Time // the shown time, To after From
	Rows     []string
	Kinds    []string // what a bar can be, 1 to page.Colors
	Bars     []Bar
}

// Bar is one stretch of work. Row and Kind are indexes.
type Bar struct {
	Row, Kind  int
	Start, End time.Time // End not before Start
	Label      string    // shown in the bar where it fits
}

// clock is how moments are printed in tips and tables.
const clock = "Mon Jan 2 15:04"

// Build makes the figure. Times are shown as they are in UTC, as a plan's own
// time has no daylight saving. It fails without rows, for a bar of an unknown
// row or kind, and for one that ends before it starts.
func (c Gantt) Build() (page.Chart, error) {
	if err := c.check(); err != nil {
		return page.Chart{}, err
	}
	table := cells.Table{Columns: []cells.Column{{Head: ""}, {Head: "what"}, {Head: "kind"}, {Head: "start"}, {Head: "end"}}}
	var data []opts.CustomData
	var labels []string
	var tips []tip
	for _, b := range c.Bars {
		if !b.End.After(c.From) || !b.Start.Before(c.To) {
			continue
		}
		row, kind, label := cells.OneLine(c.Rows[b.Row]), cells.OneLine(c.Kinds[b.Kind]), cells.OneLine(b.Label)
		start, end := b.Start.UTC().Format(clock), b.End.UTC().Format(clock)
		data = append(data, opts.CustomData{Value: []int64{b.Start.UnixMilli(), b.End.UnixMilli(), int64(b.Row), int64(b.Kind), int64(b.Kind)}})
		labels = append(labels, label)
		tips = append(tips, tip{row, [][]string{{kind, label}, {"start", start}, {"end", end}}})
		table.Rows = append(table.Rows, cells.Texts(row, label, kind, start, end))
	}
	option, err := rectangles(c.ID, "segments", data, c.timeAxis(), nameAxis("rows", clean(c.Rows), true))
	if err != nil {
		return page.Chart{}, err
	}
	option["useUTC"] = true
	out := c.chart(page.Segments, rowsHeight(len(c.Rows), 34), table)
	out.Options, out.Legend = option, fills(c.Kinds)
	out.Data = map[string]any{"labels": labels, "tips": map[string]any{"segments": tips}}
	return out, nil
}

func (c Gantt) check() error {
	switch {
	case len(c.Rows) == 0:
		return c.fault("no rows")
	case len(c.Kinds) == 0 || len(c.Kinds) > page.Colors:
		return c.fault("%d kinds; 1 to %d can be told apart", len(c.Kinds), page.Colors)
	case !c.To.After(c.From):
		return c.fault("the shown time ends before it starts")
	}
	for i, b := range c.Bars {
		if b.Row < 0 || b.Row >= len(c.Rows) || b.Kind < 0 || b.Kind >= len(c.Kinds) {
			return c.fault("bar %d: there is no row %d or no kind %d", i+1, b.Row, b.Kind)
		}
		if b.End.Before(b.Start) {
			return c.fault("bar %d ends before it starts", i+1)
		}
	}
	return nil
}

func (c Gantt) timeAxis() map[string]any {
	return map[string]any{
		"id": "x", "type": "time", "min": c.From.UnixMilli(), "max": c.To.UnixMilli(),
		"axisLabel": label("@muted"), "axisTick": hidden(), "minInterval": c.leastStep().Milliseconds(),
		"axisLine":  map[string]any{"lineStyle": map[string]any{"color": "@rule"}},
		"splitLine": map[string]any{"show": true, "lineStyle": map[string]any{"color": "@rule"}},
	}
}

// leastStep keeps the axis to whole days when it spans several.
func (c Gantt) leastStep() time.Duration {
	if c.To.Sub(c.From) > 48*time.Hour {
		return 24 * time.Hour
	}
	return time.Hour
}
