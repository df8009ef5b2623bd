package workbook

import (
	"fmt"

	"moldturn/reports/view"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// alternatives is every figure of every alternative.
func (b *book) alternatives() *table {
	t := &table{sheet: "Alternatives", lead: fmt.Sprintf("Every figure of every way to run the plant, with its %.0f %% confidence interval and its difference from the base", 100*study.Confidence), block: block{columns: []column{
		{head: "figure"}, {head: "alternative"}, {head: "unit"}, {head: "mean"}, {head: "low"}, {head: "high"}, {head: "repeats"},
		{head: "against the base"}, {head: "against the base, low"}, {head: "against the base, high"}, {head: "verdict"},
		{head: "name in Data"}, {head: "what it is", wide: 90}}}}
	s := b.study
	for _, m := range study.Metrics() {
		for i := range s.Alternatives {
			a := &s.Alternatives[i]
			x, ok := a.Summary(&m)
			if !ok {
				continue
			}
			f := formatOf(&m)
			low, high := ends(within(&m, x), f)
			row := []any{m.Label, a.Name, a.UnitOf(&m), number{x.Mean, f}, low, high, x.N, nil, nil, nil, aside("the base"), m.Name, loose(m.Doc)}
			if i > 0 {
				d := against(s, i, &m)
				row[7], row[10] = mean(d.Summary, sign(f)), aside(verdict(d))
				row[8], row[9] = ends(d.Summary, sign(f))
			}
			t.rows = append(t.rows, row)
		}
	}
	return t
}

// against is a figure of alternative i less that of the base, with an interval
// that holds together with those of the others.
func against(s *view.Study, i int, m *study.Metric) stats.Difference {
	d, _ := s.Alternatives[i].Together(&s.Base().Runs, m, max(1, len(s.Alternatives)-1))
	return d
}

// within is the interval of a share cut at 0 and 1; others are as they are.
func within(m *study.Metric, x stats.Summary) stats.Summary {
	if m.Share {
		x.Low, x.High = max(x.Low, 0), min(x.High, 1)
	}
	return x
}

// verdict says what a difference tells.
func verdict(d stats.Difference) string {
	switch {
	case d.N > 1 && d.Mean == 0 && d.Half == 0:
		return "the same"
	case d.N == 0 || !d.Known():
		return "not known"
	case !d.Clear:
		return "not clear"
	case d.Mean > 0:
		return "clearly more"
	}
	return "clearly less"
}

// formatOf shows a figure with the digits of its metric.
func formatOf(m *study.Metric) string {
	if m.Share {
		return percent(m.Digits - 2)
	}
	return decimals(m.Digits)
}

// mean is the mean as a cell; empty without one.
func mean(x stats.Summary, format string) any {
	if x.N == 0 {
		return nil
	}
	return number{x.Mean, format}
}

// ends are the ends of an interval as cells; empty without one.
func ends(x stats.Summary, format string) (low, high any) {
	if x.N == 0 || !x.Known() {
		return nil, nil
	}
	return number{x.Low, format}, number{x.High, format}
}
