package view

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// rowsOnScreen is the largest number of points that a terminal table lists.
const rowsOnScreen = 40

// Table is every point with the figures asked for, and the plant as it is.
func (s *Sweep) Table() cells.Table {
	all := make([]int, len(s.Points))
	for i := range all {
		all[i] = i
	}
	return s.titled(s.table(all, false))
}

func (s *Sweep) titled(t cells.Table) cells.Table {
	t.Title = fmt.Sprintf("%s of %s", count(len(s.Points), "setting"), and(s.paths()))
	return t
}

// Screen is Table for a terminal: of many points, those that come first by the
// first figure.
func (s *Sweep) Screen() cells.Table {
	best := make([]int, len(s.Points))
	for i := range best {
		best[i] = i
	}
	if len(s.Points) <= rowsOnScreen {
		return s.titled(s.table(best, true))
	}
	m := &s.Of[0]
	xs := s.figures(m)
	sign := -1.0
	if m.Better < 0 {
		sign = 1
	}
	sortBy(best, func(i int) float64 { return sign * xs[i].Mean })
	t := s.table(best[:rowsOnScreen/2], true)
	t.Title = fmt.Sprintf("The first %d of %d settings by %s", rowsOnScreen/2, len(s.Points), lower(m))
	return t
}

// table has a row for the base and one for each of some points.
func (s *Sweep) table(points []int, narrow bool) cells.Table {
	var t cells.Table
	switch {
	case s.Design.Form == study.Each:
		t = s.named(points, "change", func(i int) string { return s.Points[i].Name })
	case narrow && len(s.Design.Factors) > 2:
		t = s.named(points, strings.Join(s.paths(), " / "), func(i int) string { return strings.Join(s.Design.Points[i].Values, " / ") })
	default:
		t = s.byInput(points)
	}
	t.Rows[0].Strong = true
	for k := range s.Of {
		s.addFigure(&t, points, &s.Of[k])
	}
	return t
}

// named has one column that says what a setting is.
func (s *Sweep) named(points []int, head string, what func(int) string) cells.Table {
	t := cells.Table{Columns: []cells.Column{{Head: head}}, Rows: []cells.Row{cells.Texts(s.Base.Name)}}
	for _, i := range points {
		t.Rows = append(t.Rows, cells.Texts(what(i)))
	}
	return t
}

// byInput has a column for each input.
func (s *Sweep) byInput(points []int) cells.Table {
	var t cells.Table
	for i := range s.Design.Factors {
		t.Columns = append(t.Columns, cells.Column{Head: s.Design.Factors[i].Path, Align: cells.Right})
	}
	base := cells.Row{Cells: make([]cells.Cell, len(t.Columns))}
	base.Cells[0].Text = s.Base.Name
	t.Rows = append(t.Rows, base)
	for _, i := range points {
		t.Rows = append(t.Rows, cells.Texts(s.Design.Points[i].Values...))
	}
	return t
}

// addFigure adds a figure and its difference from the base.
func (s *Sweep) addFigure(t *cells.Table, points []int, m *study.Metric) {
	digits := s.digits(m)
	gains := make([]stats.Difference, len(points))
	spread := make([]stats.Summary, len(points))
	for j, i := range points {
		gains[j], _ = s.Points[i].Difference(&s.Base, m, len(s.Points))
		spread[j] = gains[j].Summary
	}
	gainDigits := together(halves(m, spread), most(m))
	t.Columns = append(t.Columns, cells.Column{Head: head(m), Align: cells.Right}, cells.Column{Head: gainHead(m), Align: cells.Right})
	t.Rows[0].Cells = append(t.Rows[0].Cells, cells.Cell{Text: amount(m, figure(&s.Base, m), digits)}, cells.Cell{})
	for j, i := range points {
		t.Rows[j+1].Cells = append(t.Rows[j+1].Cells,
			cells.Cell{Text: amount(m, figure(&s.Points[i], m), digits)}, cells.Cell{Text: changeOrNone(m, gains[j], gainDigits)})
	}
}

// changeOrNone is change, but "none" where not one replication differs.
func changeOrNone(m *study.Metric, d stats.Difference, digits int) string {
	if d.N >= 2 && d.Mean == 0 && d.SD == 0 {
		return "none"
	}
	return change(m, d, digits)
}

// Effects is what each input does to the figures, from one end of its values to
// the other, strongest first by the first figure; ok is false where one curve
// or map says it better.
func (s *Sweep) Effects() (t cells.Table, ok bool) {
	if s.Design.Form == study.Grid && len(s.Design.Factors) < 3 {
		return t, false
	}
	t = cells.Table{Title: "What each input does from one end to the other", Columns: []cells.Column{{Head: "input"}, {Head: "from"}, {Head: "to"}}}
	for k := range s.Of {
		e, has := study.EffectsOf(s.Design, s.Points, &s.Of[k])
		if !has {
			continue
		}
		if len(t.Rows) == 0 {
			for _, x := range ranked(e.All) {
				t.Rows = append(t.Rows, cells.Texts(s.Design.Factors[x.Factor].Path, x.Low, x.High))
			}
		}
		t.Columns = append(t.Columns, cells.Column{Head: changeHead(&s.Of[k]), Align: cells.Right})
		for r := range t.Rows {
			t.Rows[r].Cells = append(t.Rows[r].Cells, cells.Cell{Text: s.effectIn(&s.Of[k], e.All, t.Rows[r].Cells[0].Text)})
		}
	}
	return t, len(t.Rows) > 0
}

// changeHead is the head of changes of a figure.
func changeHead(m *study.Metric) string {
	if m.Share {
		return m.Label + ", % points"
	}
	return m.Label
}

// effectIn prints the effect of the factor with a path.
func (s *Sweep) effectIn(m *study.Metric, all []study.Effect, path string) string {
	for i := range all {
		if s.Design.Factors[all[i].Factor].Path == path {
			return effect(m, &all[i])
		}
	}
	return "–"
}

// ranked are effects, the largest first.
func ranked(all []study.Effect) []study.Effect {
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	sortBy(order, func(i int) float64 { return -math.Abs(all[i].Change.Mean) })
	out := make([]study.Effect, len(all))
	for i, k := range order {
		out[i] = all[k]
	}
	return out
}

// sortBy sorts indices by a number, the least first; equal ones keep their order.
func sortBy(indices []int, number func(int) float64) {
	slices.SortStableFunc(indices, func(a, b int) int { return cmp.Compare(number(a), number(b)) })
}
