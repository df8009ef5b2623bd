package chart

import (
	"time"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Gantt shows what each mold, bay or crew does, hour by hour. Bars are drawn
// as far as they lie within From and To.
type Gantt struct {
	Figure
	From, To time.Time // the shown time, To after From; whole minutes
	Rows     []string
	Kinds    []string // what a bar can be, 1 to page.Colors
	Bars     []Bar
	Shades   []Shade // behind the bars: nights, weekends
	Shaded   string  // what the shades are, for the legend; "" without
	// Numbers is the table behind the figure; without columns it has a row for
	// each bar.
	Numbers cells.Table
}

// Bar is one stretch of work. Row and Kind are indexes.
type Bar struct {
	Row, Kind  int
	Start, End time.Time // End not before Start
	Label      string    // shown in the bar where it fits
	Thin       bool      // a wait, told by shape as well as by color
	Line       bool      // a wait that is not worth a look: thinner still
}

// Shade is a stretch of the time axis. To is not before From.
type Shade struct{ From, To time.Time }

// clock is how moments are printed in tables.
const clock = "Mon Jan 2 15:04"

// Build makes the figure. Times are shown as they are in UTC, as a plan's own
// time has no daylight saving. It fails without rows, for a bar of an unknown
// row or kind, and for one that ends before it starts.
func (c Gantt) Build() (page.Chart, error) {
	if err := c.check(); err != nil {
		return page.Chart{}, err
	}
	data, labels := c.data()
	option, err := c.option(data)
	if err != nil {
		return page.Chart{}, err
	}
	table := c.Numbers
	if len(table.Columns) == 0 {
		table = c.table()
	}
	out := c.chart(page.Gantt, rowsHeight(len(c.Rows), 34), table)
	out.Options, out.Legend = option, fills(c.Kinds)
	shades := [][2]int64{}
	for _, s := range c.Shades {
		shades = append(shades, [2]int64{c.minute(s.From), c.minute(s.To)})
	}
	if c.Shaded != "" {
		out.Legend = append(out.Legend, page.Key{Label: cells.OneLine(c.Shaded), Form: page.Dim})
	}
	out.Data = map[string]any{"labels": labels, "kinds": clean(c.Kinds), "from": c.From.UnixMilli(), "shades": shades}
	return out, nil
}

// minute is how long after From a moment is, within the shown time.
func (c Gantt) minute(t time.Time) int64 {
	return int64(min(max(t.Sub(c.From), 0), c.To.Sub(c.From)) / time.Minute)
}

func (c Gantt) shows(b Bar) bool { return b.End.After(c.From) && b.Start.Before(c.To) }

// data is the bars as numbers, [start, end, row, kind, thin, label], and the
// texts that labels point to, each once.
func (c Gantt) data() (data [][6]int64, labels []string) {
	at := map[string]int{} // never ranged over
	for _, b := range c.Bars {
		if !c.shows(b) {
			continue
		}
		label := cells.OneLine(b.Label)
		k, ok := at[label]
		if !ok {
			k = len(labels)
			at[label], labels = k, append(labels, label)
		}
		thin := int64(0)
		switch {
		case b.Line:
			thin = 2
		case b.Thin:
			thin = 1
		}
		data = append(data, [6]int64{c.minute(b.Start), c.minute(b.End), int64(b.Row), int64(b.Kind), thin, int64(k)})
	}
	return data, labels
}

// option has the shades as one drawing, and the bars above them.
func (c Gantt) option(data [][6]int64) (map[string]any, error) {
	b := charts.NewCustom()
	b.SetGlobalOptions(common(c.ID, "item")...)
	b.AddSeries("", []opts.CustomData{{Value: []int64{c.From.UnixMilli(), 0}}}, charts.WithSeriesId("shades"))
	b.AddSeries("", nil, charts.WithSeriesId("stretches"))
	option, err := optionOf(b, c.timeAxis(), nameAxis("rows", clean(c.Rows), true))
	if err != nil {
		return nil, err
	}
	option["useUTC"] = true
	adjust(option, 0, map[string]any{"silent": true, "z": 0, "clip": false, "tooltip": hidden()})
	adjust(option, 1, map[string]any{"z": 2, "clip": false, "data": data})
	return option, nil
}

func (c Gantt) table() cells.Table {
	t := cells.Table{Columns: []cells.Column{{Head: ""}, {Head: "what"}, {Head: "kind"}, {Head: "start"}, {Head: "end"}}}
	for _, b := range c.Bars {
		if c.shows(b) {
			t.Rows = append(t.Rows, cells.Texts(cells.OneLine(c.Rows[b.Row]), cells.OneLine(b.Label), cells.OneLine(c.Kinds[b.Kind]),
				b.Start.UTC().Format(clock), b.End.UTC().Format(clock)))
		}
	}
	return t
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
	for i, s := range c.Shades {
		if s.To.Before(s.From) {
			return c.fault("shade %d ends before it starts", i+1)
		}
	}
	return nil
}

// timeAxis names hours or days; from Monday to Monday over two weeks or more it
// names the Mondays.
func (c Gantt) timeAxis() map[string]any {
	axis := map[string]any{
		"id": "x", "type": "time", "min": c.From.UnixMilli(), "max": c.To.UnixMilli(),
		"axisLabel": label("@muted"), "axisTick": hidden(), "minInterval": c.leastStep().Milliseconds(),
		"axisLine":  map[string]any{"lineStyle": map[string]any{"color": "@rule"}},
		"splitLine": map[string]any{"show": true, "lineStyle": map[string]any{"color": "@rule"}},
	}
	if c.mondays() {
		delete(axis, "minInterval")
		axis["type"], axis["interval"] = "value", week.Milliseconds()
		axis["splitLine"] = map[string]any{"show": true, "lineStyle": map[string]any{"color": "@muted"}}
	}
	return axis
}

const week = 7 * 24 * time.Hour

func (c Gantt) mondays() bool {
	from := c.From.UTC()
	length := c.To.Sub(c.From)
	return from.Weekday() == time.Monday && from.Equal(from.Truncate(24*time.Hour)) && length >= 2*week && length%week == 0
}

// leastStep keeps the axis to whole days when it spans several.
func (c Gantt) leastStep() time.Duration {
	if c.To.Sub(c.From) > 48*time.Hour {
		return 24 * time.Hour
	}
	return time.Hour
}
