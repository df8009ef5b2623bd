package study

import "moldturn/sim/stats"

// Confidence of all intervals.
const Confidence = 0.95

// Values gives a figure of each replication; ok is false when no replication
// has it. Replications without it are left out.
func (r *Runs) Values(m *Metric) (xs []float64, ok bool) {
	for i := range r.Outcomes {
		if x, has := m.Of(&r.Outcomes[i]); has {
			xs = append(xs, x)
		}
	}
	return xs, len(xs) > 0
}

// Summary is a figure over replications, with its interval.
func (r *Runs) Summary(m *Metric) (stats.Summary, bool) {
	xs, ok := r.Values(m)
	if !ok {
		return stats.Summary{}, false
	}
	return stats.TInterval(xs, Confidence), true
}

// Difference is a figure of r less that of base, over the replications that
// both have, run under the same luck.
func (r *Runs) Difference(base *Runs, m *Metric) (stats.Difference, bool) {
	var a, b []float64
	for i := range min(len(r.Outcomes), len(base.Outcomes)) {
		x, okX := m.Of(&r.Outcomes[i])
		y, okY := m.Of(&base.Outcomes[i])
		if okX && okY {
			a, b = append(a, x), append(b, y)
		}
	}
	if len(a) == 0 {
		return stats.Difference{}, false
	}
	return stats.Paired(a, b, Confidence), true
}
