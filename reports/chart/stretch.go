package chart

import (
	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Stretch is a run of places that is shaded and has a dotted edge on either
// side: a season, a shutdown. One of a single place is just a dotted line.
type Stretch struct {
	Label    string
	From, To int // first and last place
}

// stretchColor is the color index of stretches.
const stretchColor = 6

// shade draws stretches behind the first series. Stretches with one label share
// a key of the legend; the pointer tells the label at every place inside.
func (c Lines) shade(out *page.Chart, tips []tip) error {
	if len(c.Stretches) == 0 {
		return nil
	}
	var areas, edges []any
	named := map[string]bool{}
	for _, s := range c.Stretches {
		if s.From < 0 || s.To >= len(c.X) || s.From > s.To {
			return c.fault("stretch %q: places %d to %d of %d", s.Label, s.From+1, s.To+1, len(c.X))
		}
		areas = append(areas, []any{map[string]any{"xAxis": s.From}, map[string]any{"xAxis": s.To}})
		edges = append(edges, map[string]any{"xAxis": s.From}, map[string]any{"xAxis": s.To})
		label := cells.OneLine(s.Label)
		for i := s.From; i <= s.To; i++ {
			tips[i].Rows = append(tips[i].Rows, []string{label, ""})
		}
		if !named[label] {
			named[label] = true
			key := page.Key{Label: label, Form: page.Cloud, Color: stretchColor}
			if s.From == s.To {
				key.Form, key.Pattern = page.Line, 2
			}
			out.Legend = append(out.Legend, key)
		}
	}
	adjust(out.Options, 0, map[string]any{
		"markArea": map[string]any{"silent": true, "label": hidden(), "data": areas,
			"itemStyle": map[string]any{"color": color(stretchColor), "opacity": 0.15}},
		"markLine": map[string]any{"silent": true, "label": hidden(), "symbol": "none", "data": edges, "animation": false,
			"lineStyle": map[string]any{"color": color(stretchColor), "width": 1.5, "type": []int{2, 3}}},
	})
	return nil
}

// stretches says for the table which stretches a place lies in.
func (c Lines) stretches(place int) string {
	text := ""
	for _, s := range c.Stretches {
		if place >= s.From && place <= s.To {
			if text != "" {
				text += ", "
			}
			text += cells.OneLine(s.Label)
		}
	}
	return text
}
