package workbook

import (
	"time"

	"moldturn/reports/view"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

const weeksSheet = "Weeks"

// monthRows are the rows of the sheet that hold the months of an alternative.
type monthRows struct{ first, last int }

// weeks is boats by week of the year, and beside it by month; months says in
// which rows those of each alternative stand.
func (b *book) weeks() (t *table, months []monthRows) {
	s := b.study
	t = &table{sheet: weeksSheet, lead: "Boats shipped by week of the year and by month, with orders always waiting; weeks in which the plant is shut are left out",
		block:  block{columns: []column{{head: "alternative"}, {head: "week of the year"}, {head: "boats, mean"}, {head: "boats, 1 year in 10 is below"}, {head: "boats, 1 year in 10 is above"}}},
		beside: &block{columns: []column{{head: "alternative"}, {head: "month"}, {head: "open weeks a year"}, {head: "boats a week"}}}}
	for i := range s.Alternatives {
		a := &s.Alternatives[i]
		if band, ok := s.Weeks(i); ok {
			r := &band.Series[0]
			for w := range band.X {
				if r.Middle[w] == r.Middle[w] { // not a gap
					t.rows = append(t.rows, []any{a.Name, w + 1, number{r.Middle[w], decimals(2)}, number{r.Low[w], decimals(1)}, number{r.High[w], decimals(1)}})
				}
			}
		}
		first := headRow + 1 + len(t.beside.rows)
		for m := range 12 {
			boats, open := byMonth(&a.Runs, m)
			row := []any{a.Name, time.Month(m + 1).String()[:3], number{float64(open) / float64(max(1, s.SimulatedYears())), decimals(1)}, nil}
			if open > 0 {
				row[3] = number{float64(boats) / float64(open), decimals(2)}
			}
			t.beside.rows = append(t.beside.rows, row)
		}
		months = append(months, monthRows{first, first + 11})
	}
	return t, months
}

// byMonth is the boats shipped in the open weeks of a month, and the number of
// those weeks, over all replications.
func byMonth(r *study.Runs, month int) (boats, open int) {
	for i := range r.Outcomes {
		x := shown(&r.Outcomes[i])
		boats, open = boats+x.MonthShip[month], open+x.MonthOpen[month]
	}
	return boats, open
}

// shown is the run that figures are taken from: with orders always waiting, or
// the only one.
func shown(o *study.Outcome) *record.Result {
	if o.Capacity != nil {
		return o.Capacity
	}
	return o.Dated
}

// alone is a study of one of the alternatives.
func alone(s *view.Study, i int) *view.Study {
	one := *s
	one.Alternatives = s.Alternatives[i : i+1]
	return &one
}
