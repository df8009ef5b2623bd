package chart

import (
	"cmp"
	"slices"
	"strconv"

	"moldturn/reports/cells"
)

// drawnPoint is a point as the placing of names reads it.
type drawnPoint struct {
	Name  string  `json:"name"`
	X     float64 `json:"x"`
	Y     float64 `json:"y"`
	XLow  float64 `json:"xLow"`
	XHigh float64 `json:"xHigh"`
	YLow  float64 `json:"yLow"`
	YHigh float64 `json:"yHigh"`
}

func (c Scatter) data(x, y scale) map[string]any {
	points := make([]drawnPoint, len(c.Points))
	tips := map[string][]tip{}
	for i, p := range c.Points {
		points[i] = drawnPoint{cells.OneLine(p.Name), p.X.Value, p.Y.Value, p.X.Low, p.X.High, p.Y.Low, p.Y.High}
		id := groupID(p.Group)
		tips[id] = append(tips[id], tip{Head: cells.OneLine(p.Name), Rows: [][]string{
			{c.X.title(), c.X.number(p.X.Value)}, {"interval", c.X.between(p.X.Low, p.X.High)},
			{c.Y.title(), c.Y.number(p.Y.Value)}, {"interval", c.Y.between(p.Y.Low, p.Y.High)},
		}})
	}
	var joins [][][2]float64
	for i, g := range c.Groups {
		if g.Join {
			joins = append(joins, c.path(i))
		}
	}
	return map[string]any{"points": points, "joins": joins, "tips": tips, "xDigits": x.digits, "yDigits": y.digits}
}

// path is the line through the points of a group.
func (c Scatter) path(group int) [][2]float64 {
	var out [][2]float64
	for _, p := range c.Points {
		if p.Group == group {
			out = append(out, [2]float64{p.X.Value, p.Y.Value})
		}
	}
	slices.SortStableFunc(out, func(a, b [2]float64) int {
		return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(a[1], b[1]))
	})
	return out
}

func (c Scatter) table() cells.Table {
	t := cells.Table{Columns: []cells.Column{
		{Head: "no.", Align: cells.Right}, {Head: "name"},
		{Head: c.X.title(), Align: cells.Right}, {Head: "interval", Align: cells.Right},
		{Head: c.Y.title(), Align: cells.Right}, {Head: "interval", Align: cells.Right},
	}}
	if len(c.Groups) > 1 {
		t.Columns = append(t.Columns, cells.Column{Head: "group"})
	}
	for i, p := range c.Points {
		row := cells.Texts(strconv.Itoa(i+1), cells.OneLine(p.Name), c.X.number(p.X.Value), c.X.between(p.X.Low, p.X.High),
			c.Y.number(p.Y.Value), c.Y.between(p.Y.Low, p.Y.High))
		if len(c.Groups) > 1 {
			row.Cells = append(row.Cells, cells.Cell{Text: cells.OneLine(c.Groups[p.Group].Label)})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
