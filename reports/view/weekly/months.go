package weekly

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"moldturn/reports/cells"
	"moldturn/sim"
	"moldturn/sim/study"
)

// byMonth names, for each month with an open week, what work waits for most and
// next.
func byMonth(pools []study.PoolWeeks, p *sim.Plan) cells.Table {
	t := cells.Table{Title: "What work waits for most, month by month", Columns: []cells.Column{{Head: "month"},
		{Head: "first"}, {Head: "h a week", Align: cells.Right}, {Head: "next"}, {Head: "h a week", Align: cells.Right}}}
	for m := time.January; m <= time.December; m++ {
		if !isOpen(pools, m) {
			continue
		}
		ranked := slices.Clone(pools)
		slices.SortStableFunc(ranked, func(a, b study.PoolWeeks) int { return cmp.Compare(monthOf(&b, m), monthOf(&a, m)) })
		row := []string{m.String()}
		for i := range 2 {
			row = append(row, waitIn(ranked, i, m, p)...)
		}
		t.Rows = append(t.Rows, cells.Texts(row...))
	}
	return t
}

// waitIn is the name and the wait of the i-th of ranked crews and places; dashes
// where that is not worth naming.
func waitIn(ranked []study.PoolWeeks, i int, m time.Month, p *sim.Plan) []string {
	if i >= len(ranked) || monthOf(&ranked[i], m) < waitWorthNaming {
		return []string{"–", "–"}
	}
	return []string{cells.OneLine(poolName(p, ranked[i].Pool)), fmt.Sprintf("%.0f", monthOf(&ranked[i], m))}
}

func isOpen(pools []study.PoolWeeks, m time.Month) bool {
	for w := range pools[0].Weeks {
		if pools[0].Weeks[w].Open > 0 && study.WeekThursday(w).Month() == m {
			return true
		}
	}
	return false
}
