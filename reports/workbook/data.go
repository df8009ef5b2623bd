package workbook

import (
	"fmt"

	"moldturn/sim/study"
)

// data is every figure of every replication, the rows of results.csv. A sheet
// holds 1,048,576 rows (Microsoft, Excel specifications and limits); of more
// than most, the first are shown and the lead says so.
func (b *book) data(most int) *table {
	t := &table{sheet: "Data", lead: "Every figure of every repeat, as in results.csv", block: block{columns: []column{
		{head: "alternative"}, {head: "replication"}, {head: "metric"}, {head: "value"}, {head: "unit"}}}}
	metrics := study.Metrics()
	n := 0
	for i := range b.study.Alternatives {
		a := &b.study.Alternatives[i]
		for r := range a.Outcomes {
			for k := range metrics {
				x, ok := metrics[k].Of(&a.Outcomes[r])
				if !ok {
					continue
				}
				if n++; n <= most {
					t.rows = append(t.rows, []any{a.Name, r + 1, metrics[k].Name, number{x, "General"}, a.UnitOf(&metrics[k])})
				}
			}
		}
	}
	if n > most {
		t.lead = fmt.Sprintf("The first %d of %d figures of the repeats; results.csv has all", most, n)
	}
	return t
}
