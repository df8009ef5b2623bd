package study

import (
	"math"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// What limits most replications limits a setting; waits too short to name leave
// the molds, and figures kept without it have none.
func TestFirstLimit(t *testing.T) {
	for _, row := range []struct {
		kept Values
		want int
		ok   bool
	}{
		{Values{2, 0, 2}, 2, true},
		{Values{3, 1}, 1, true},
		{Values{-1, -1, 4}, -1, true},
		{Values{math.NaN()}, 0, false},
		{nil, 0, false},
	} {
		f := Figures{Values: map[string]Values{firstLimit: row.kept}}
		if got, ok := f.FirstLimit(); got != row.want || ok != row.ok {
			t.Errorf("%v: %d, %v", row.kept, got, ok)
		}
	}
	waiting := func(hours float64) Outcome {
		r := &record.Result{Frame: *frame(0, 1), Load: make([][12]record.Load, 2)}
		for m := range 12 {
			r.MonthOpen[m] = 4
			r.Load[0][m], r.Load[1][m] = record.Load{Used: 1, Capacity: 2}, record.Load{Used: 1, Capacity: 2}
			r.Waits[m] = make([]clock.Time, 2)
			r.Waits[m][1] = clock.FromHours(4 * hours)
		}
		return Outcome{Capacity: r}
	}
	if got := limitsOf([]Outcome{waiting(2.1), waiting(1.9)}); got[0] != 1 || got[1] != -1 {
		t.Errorf("waits just above and below what is worth naming: %v", got)
	}
}
