package study

import (
	"encoding/json"
	"math"

	"moldturn/sim/stats"
)

// Figures is what one alternative gave, figure by figure and replication by
// replication: all that curves, maps and frontiers need, and small enough to
// keep of hundreds of alternatives.
type Figures struct {
	Name    string
	Changes []string          // what differs from the base, "hold.clock = 16 h"
	Values  map[string]Values // by the name of the metric
}

// Values is one figure by replication; NaN where a replication does not have
// it. In JSON a missing one is null.
type Values []float64

// MarshalJSON writes numbers in the shortest form that reads back the same.
func (v Values) MarshalJSON() ([]byte, error) {
	out := make([]*float64, len(v))
	for i := range v {
		if !math.IsNaN(v[i]) {
			out[i] = &v[i]
		}
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what MarshalJSON wrote.
func (v *Values) UnmarshalJSON(b []byte) error {
	var in []*float64
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	*v = make(Values, len(in))
	for i, x := range in {
		(*v)[i] = math.NaN()
		if x != nil {
			(*v)[i] = *x
		}
	}
	return nil
}

// ValuesOf gives every figure of every outcome. Figures that no outcome has are
// left out.
func ValuesOf(outcomes []Outcome) map[string]Values {
	all := map[string]Values{}
	for _, m := range metrics {
		v, any := make(Values, len(outcomes)), false
		for i := range outcomes {
			x, ok := m.Of(&outcomes[i])
			if v[i] = x; !ok {
				v[i] = math.NaN()
			}
			any = any || ok
		}
		if any {
			all[m.Name] = v
		}
	}
	if len(outcomes) > 0 {
		all[firstLimit] = limitsOf(outcomes)
	}
	return all
}

// Figures is the runs without what happened in them.
func (r *Runs) Figures() Figures {
	return Figures{Name: r.Name, Changes: r.Changes, Values: ValuesOf(r.Outcomes)}
}

// N is the number of replications.
func (f *Figures) N() int {
	n := 0
	for _, v := range f.Values {
		n = max(n, len(v))
	}
	return n
}

// Summary is a figure over replications with its interval; false if it has none.
func (f *Figures) Summary(m *Metric) (stats.Summary, bool) {
	xs := f.known(m)
	if len(xs) == 0 {
		return stats.Summary{}, false
	}
	return stats.TInterval(xs, Confidence), true
}

// Mean of a figure over the replications that have it; false if none has.
func (f *Figures) Mean(m *Metric) (float64, bool) {
	xs := f.known(m)
	return stats.Mean(xs), len(xs) > 0
}

// Difference is a figure of f less that of base under the same luck, one of
// several that hold together with Confidence (see stats.Bonferroni).
func (f *Figures) Difference(base *Figures, m *Metric, several int) (stats.Difference, bool) {
	return differenceOf(f.Values[m.Name], base.Values[m.Name], several)
}

// Same is true if no replication tells f from other by any figure.
func (f *Figures) Same(other *Figures) bool {
	for _, m := range metrics {
		a, b := f.Values[m.Name], other.Values[m.Name]
		if len(a) != len(b) {
			return false
		}
		for i := range a {
			if a[i] != b[i] && !(math.IsNaN(a[i]) && math.IsNaN(b[i])) {
				return false
			}
		}
	}
	return true
}

func (f *Figures) known(m *Metric) []float64 {
	var xs []float64
	for _, x := range f.Values[m.Name] {
		if !math.IsNaN(x) {
			xs = append(xs, x)
		}
	}
	return xs
}

// differenceOf pairs the replications that both have.
func differenceOf(a, b Values, several int) (stats.Difference, bool) {
	var first, second []float64
	for i := range min(len(a), len(b)) {
		if !math.IsNaN(a[i]) && !math.IsNaN(b[i]) {
			first, second = append(first, a[i]), append(second, b[i])
		}
	}
	if len(first) == 0 {
		return stats.Difference{}, false
	}
	return stats.Paired(first, second, stats.Bonferroni(Confidence, several)), true
}
