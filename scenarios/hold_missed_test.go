package scenarios

import "testing"

// A hardness far from the plateau is reached on all days, one just under it on
// none, and without a longest hold nothing is missed.
func TestHoldMissed(t *testing.T) {
	for _, c := range []struct {
		sets        []string
		least, most int
		often       bool
	}{
		{nil, 0, 0, false},
		{[]string{"hold.barcol=35"}, 0, 30, false},
		{[]string{"hold.barcol=49"}, 300, 365, true},
		{[]string{"hold.barcol=49", "hold.most=0 h"}, 0, 0, false},
	} {
		s, faults := loaded(t, "fenwater", c.sets...)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		days, often, _ := s.Base.HoldMissed()
		if days < c.least || days > c.most || often != c.often {
			t.Errorf("%v: missed on %d days, often %v", c.sets, days, often)
		}
	}
}
