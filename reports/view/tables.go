package view

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// group is figures that are read together.
type group struct {
	title string
	names []string
}

// groups are the tables of a comparison, narrow enough for a terminal.
func groups() []group {
	return []group{
		{"Boats and mold turns", []string{"boats_per_week", "mold_turns_per_week"}},
		{"Luster of parts as pulled, 100-point scale", []string{"luster_mean", "luster_p10"}},
		{"What the customer gets", []string{"share_at_target", "on_time_share"}},
	}
}

// Comparison is the figures of all alternatives with their paired differences
// from the base, in several tables of few columns. Figures that no alternative
// has are left out.
func (s *Study) Comparison() []cells.Table {
	var tables []cells.Table
	for _, g := range groups() {
		if t, ok := s.compared(g); ok {
			tables = append(tables, t)
		}
	}
	return tables
}

// compared is the table of one group.
func (s *Study) compared(g group) (cells.Table, bool) {
	t := cells.Table{Title: g.title, Columns: []cells.Column{{Head: ""}}, Rows: make([]cells.Row, len(s.Alternatives))}
	for i := range s.Alternatives {
		t.Rows[i] = cells.Row{Cells: []cells.Cell{{Text: s.Alternatives[i].Name}}, Strong: i == 0 && len(s.Alternatives) > 1}
	}
	for _, name := range g.names {
		s.addColumns(&t, metric(name))
	}
	return t, len(t.Columns) > 1
}

// addColumns adds a figure and, where there are several alternatives, its
// differences from the base.
func (s *Study) addColumns(t *cells.Table, m *study.Metric) {
	levels, gains := s.levels(m), s.gains(m)
	if len(levels) == 0 {
		return
	}
	t.Columns = append(t.Columns, cells.Column{Head: head(m), Align: cells.Right})
	digits := together(halves(m, levels), most(m))
	for i := range t.Rows {
		t.Rows[i].Cells = append(t.Rows[i].Cells, cells.Cell{Text: amount(m, levels[i], digits)})
	}
	if len(s.Alternatives) < 2 {
		return
	}
	t.Columns = append(t.Columns, cells.Column{Head: gainHead(m), Align: cells.Right})
	spread := make([]stats.Summary, len(gains))
	for i := range gains {
		spread[i] = gains[i].Summary
	}
	digits = together(halves(m, spread), most(m))
	for i := range t.Rows {
		text := ""
		if i > 0 {
			text = change(m, gains[i], digits)
		}
		t.Rows[i].Cells = append(t.Rows[i].Cells, cells.Cell{Text: text})
	}
}

// levels is a figure of each alternative; none if no alternative has it.
func (s *Study) levels(m *study.Metric) []stats.Summary {
	out, any := make([]stats.Summary, len(s.Alternatives)), false
	for i := range s.Alternatives {
		x, ok := s.Alternatives[i].Summary(m)
		out[i], any = x, any || ok
	}
	if !any {
		return nil
	}
	return out
}

// gains is the difference of each alternative from the base, with intervals that
// hold together; the first says nothing.
func (s *Study) gains(m *study.Metric) []stats.Difference {
	out := make([]stats.Difference, len(s.Alternatives))
	for i := 1; i < len(out); i++ {
		out[i], _ = s.Alternatives[i].Together(&s.Base().Runs, m, s.several())
	}
	return out
}

func halves(m *study.Metric, xs []stats.Summary) []float64 {
	out := make([]float64, len(xs))
	for i := range xs {
		out[i] = scale(m) * xs[i].Half
	}
	return out
}

// head is a figure's label with the unit where the label does not say it.
func head(m *study.Metric) string {
	if m.Share {
		return m.Label + ", %"
	}
	return m.Label
}

// gainHead is the head of the differences of a figure. Those of percentages are
// in points.
func gainHead(m *study.Metric) string {
	if m.Share {
		return "against the base, % points"
	}
	return "against the base"
}

// Figures is every figure of one alternative with its unit.
func (s *Study) Figures(a *Alternative) cells.Table {
	t := cells.Table{Title: a.Name, Columns: []cells.Column{{Head: "figure"}, {Head: "value", Align: cells.Right}, {Head: "unit"}}}
	for _, m := range study.Metrics() {
		if x, ok := a.Summary(&m); ok {
			t.Rows = append(t.Rows, cells.Texts(m.Label, alone(&m, x), a.unitOf(&m)))
		}
	}
	return t
}

// unitOf is a figure's unit as people read it, amounts in the scenario's currency.
func (a *Alternative) unitOf(m *study.Metric) string {
	if m.Share {
		return "%"
	}
	return a.UnitOf(m)
}

// Known says how many years stand behind the figures and how well boats per
// week are known.
func (s *Study) Known() string {
	each := ""
	if len(s.Alternatives) > 1 {
		each = " of each alternative"
	}
	text := fmt.Sprintf("%s%s simulated", count(s.SimulatedYears(), "year"), each)
	m := metric("boats_per_week")
	wide := 0.0
	for i := range s.Alternatives {
		wide = max(wide, s.Alternatives[i].summary(m).Half)
	}
	switch {
	case s.Replications < 2:
		return text + "; one run does not show how well its figures are known."
	case wide == 0:
		return text + "; boats a week were the same in every repeat."
	}
	text += fmt.Sprintf("; boats a week are known to %s or better", known(wide, decimals(wide, most(m))))
	if s.Replications < stats.Few {
		text += fmt.Sprintf(". Only %d repeats: intervals from so few are rough", s.Replications)
	}
	return text + "."
}

// known is a half width in a sentence, "± 0.08".
func known(half float64, digits int) string {
	return strings.TrimPrefix(plusMinus(half, digits), nb)
}

// count is a number with its noun, "1 year", "20 years".
func count(n int, noun string) string {
	if n == 1 {
		return fmt.Sprintf("%d %s", n, noun)
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
