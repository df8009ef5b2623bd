package view

import (
	"moldturn/reports/cells"
	"moldturn/sim/record"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Models is what each model does in an alternative: boats a week, how many
// reach the luster target, and days from the first part to shipping.
func (s *Study) Models(a *Alternative) cells.Table {
	t := cells.Table{Title: "Boats by model, " + quoted(a.Name), Columns: []cells.Column{{Head: "model"}}, Rows: make([]cells.Row, len(a.Plan.Models))}
	for i := range t.Rows {
		t.Rows[i] = cells.Texts(a.Plan.Models[i].Name)
	}
	for _, f := range []struct {
		like string // the study's figure that it is a part of
		of   func(*record.Result, *record.Model) (above, below float64)
	}{
		{"boats_per_week", func(r *record.Result, m *record.Model) (float64, float64) {
			return float64(m.Shipped), float64(r.Frame.Open())
		}},
		{"share_at_target", func(_ *record.Result, m *record.Model) (float64, float64) {
			return float64(m.AtTarget), float64(m.Shipped)
		}},
		{"lead_time_days", func(_ *record.Result, m *record.Model) (float64, float64) {
			return m.LeadSum.Hours() / 24, float64(m.Shipped)
		}},
	} {
		m := metric(f.like)
		xs := make([]stats.Summary, len(t.Rows))
		for i := range xs {
			xs[i] = overRuns(a, i, f.of)
		}
		digits := together(halves(m, xs), most(m))
		t.Columns = append(t.Columns, cells.Column{Head: modelHead(m), Align: cells.Right})
		for i := range t.Rows {
			t.Rows[i].Cells = append(t.Rows[i].Cells, cells.Cell{Text: amount(m, xs[i], digits)})
		}
	}
	return t
}

// overRuns summarizes a ratio of one model over the replications that have it.
func overRuns(a *Alternative, model int, of func(*record.Result, *record.Model) (above, below float64)) stats.Summary {
	var xs []float64
	for i := range a.Outcomes {
		r := capacity(&a.Outcomes[i])
		if above, below := of(r, &r.Models[model]); below > 0 {
			xs = append(xs, above/below)
		}
	}
	return stats.TInterval(xs, study.Confidence)
}

// modelHead is head with the unit of figures whose label does not say it.
func modelHead(m *study.Metric) string {
	if m.Unit == "days" {
		return m.Label + ", days"
	}
	return head(m)
}
