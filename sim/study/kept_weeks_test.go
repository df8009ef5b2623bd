package study

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Weeks come back as they were; a list that was cut is refused.
func TestKeptWeeks(t *testing.T) {
	pools := make([]record.ByWeek, 3)
	for p := range pools {
		for w := range pools[p] {
			pools[p][w] = record.PoolWeek{Load: record.Load{Used: clock.Time(p*w) * clock.Hour, Over: clock.Time(w), Capacity: clock.Time(w) * clock.Week}, Wait: clock.Time(p)}
		}
	}
	b := weeksOf(pools)
	got, err := readWeeks(b)
	if err != nil || cmp.Diff(pools, got) != "" {
		t.Errorf("%v\n%s", err, cmp.Diff(pools, got))
	}
	if got, err := readWeeks(nil); got != nil || err != nil {
		t.Errorf("nothing became %d pools, %v", len(got), err)
	}
	if _, err := readWeeks(b[:len(b)-1]); err == nil {
		t.Error("a list that was cut was read")
	}
}
