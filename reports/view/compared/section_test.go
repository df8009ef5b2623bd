package compared

import (
	"testing"

	"moldturn/reports/view/saying"
	"moldturn/sim/stats"
)

func TestFinding(t *testing.T) {
	up, down, open := saying.Judged(1, 0.1), saying.Judged(-2, 0.1), saying.Judged(0.1, 0.5)
	names := []string{"a", "b", "c"}
	for _, test := range []struct {
		metric string
		better int
		ds     []stats.Difference
		want   string
	}{
		{"boats_per_week", 1, []stats.Difference{open, open, open}, "None of 3 ways clearly ship more boats or ship fewer"},
		{"boats_per_week", 1, []stats.Difference{open, down, open}, "1 of 3 ways clearly ship fewer; none clearly ship more boats"},
		{"boats_per_week", 1, []stats.Difference{up, open, saying.Judged(2, 0.1)}, "2 of 3 ways clearly ship more boats, “c” most"},
		{"boats_per_week", 1, []stats.Difference{up, down, open}, "1 of 3 ways clearly ship more boats, “a” most; 1 clearly ship fewer"},
		{"cost_per_boat", -1, []stats.Difference{up, down, open}, "1 of 3 ways clearly cost less a boat, “b” most; 1 clearly cost more"},
	} {
		if got := Finding(test.metric, test.better, names, test.ds); got != test.want {
			t.Errorf("%s: got %q, want %q", test.metric, got, test.want)
		}
	}
}
