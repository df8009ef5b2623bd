package chart

import (
	"encoding/json"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"
)

// builder is what the rectangular charts of go-echarts share.
type builder interface {
	Validate()
	JSON() map[string]any
}

// common are the settings of every chart. The id is set because go-echarts
// makes a random one otherwise.
func common(id, trigger string) []charts.GlobalOpts {
	return []charts.GlobalOpts{
		charts.WithInitializationOpts(opts.Initialization{ChartID: id}),
		charts.WithAnimation(false),
		charts.WithTooltipOpts(opts.Tooltip{Show: opts.Bool(true), Trigger: trigger}),
	}
}

// optionOf turns a chart into plain maps, takes out what go-echarts always
// writes and a page must not have, and sets the axes.
func optionOf(b builder, x, y map[string]any) (map[string]any, error) {
	b.Validate()
	raw, err := json.Marshal(b.JSON())
	if err != nil {
		return nil, err
	}
	var option map[string]any
	if err := json.Unmarshal(raw, &option); err != nil {
		return nil, err
	}
	for _, k := range []string{"title", "toolbox", "legend", "color"} {
		delete(option, k)
	}
	option["xAxis"], option["yAxis"] = x, y
	return option, nil
}

// adjust sets fields of series i that go-echarts has no word for.
func adjust(option map[string]any, i int, fields map[string]any) {
	s := option["series"].([]any)[i].(map[string]any)
	for k, v := range fields {
		s[k] = v
	}
}

// valueAxis is a numeric axis with thin lines across the plot.
func valueAxis(id string, s scale) map[string]any {
	return map[string]any{
		"id": id, "type": "value", "min": s.min, "max": s.max, "interval": s.step,
		"axisLabel": label("@muted"), "axisLine": hidden(), "axisTick": hidden(),
		"splitLine": map[string]any{"lineStyle": map[string]any{"color": "@rule"}},
	}
}

// nameAxis is an axis of names. id "rows" gives every name its room; any other
// id shows as many names as fit.
func nameAxis(id string, names []string, gap bool) map[string]any {
	ink := "@muted"
	if id == "rows" {
		ink = "@ink"
	}
	return map[string]any{
		"id": id, "type": "category", "data": names, "inverse": id == "rows", "boundaryGap": gap,
		"axisLabel": label(ink), "axisTick": hidden(), "splitLine": hidden(),
		"axisLine": map[string]any{"onZero": false, "lineStyle": map[string]any{"color": "@rule"}},
	}
}

func label(color string) map[string]any {
	return map[string]any{"show": true, "color": color, "fontSize": 12, "hideOverlap": true}
}

func hidden() map[string]any { return map[string]any{"show": false} }
