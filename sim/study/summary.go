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
// both have, run under the same luck. The interval holds for itself.
func (r *Runs) Difference(base *Runs, m *Metric) (stats.Difference, bool) {
	return r.difference(base, m, Confidence)
}

// Together is Difference with an interval that holds together with those of
// several differences, this one counted (Bonferroni).
func (r *Runs) Together(base *Runs, m *Metric, several int) (stats.Difference, bool) {
	return r.difference(base, m, stats.Bonferroni(Confidence, several))
}
