package reports

import (
	"io"

	"moldturn/reports/csv"
	"moldturn/reports/view"
	"moldturn/sim/study"
)

// CSV writes every figure of every replication of every alternative, one a
// row, in full. Figures that a replication does not have are left out.
func CSV(w io.Writer, s *view.Study) error {
	out, err := csv.New(w, "alternative", "replication", "metric", "value", "unit")
	if err != nil {
		return err
	}
	metrics := study.Metrics()
	for i := range s.Alternatives {
		a := &s.Alternatives[i]
		for r := range a.Outcomes {
			for _, m := range metrics {
				x, ok := m.Of(&a.Outcomes[r])
				if !ok {
					continue
				}
				if err := out.Row(csv.Text(a.Name), csv.Int(int64(r+1)), csv.Text(m.Name), csv.Number(x), csv.Text(a.UnitOf(&m))); err != nil {
					return err
				}
			}
		}
	}
	return out.Flush()
}
