package view

import (
	"fmt"
	"strings"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Fair says that differences hold together, and what shared luck did to them;
// empty without alternatives, or where no interval is known.
func (s *Study) Fair() string {
	n := len(s.Alternatives) - 1
	if n < 1 || s.Replications < 2 {
		return ""
	}
	text := ""
	if n > 1 {
		all := fmt.Sprintf("all %d", n)
		if n == 2 {
			all = "both"
		}
		text = fmt.Sprintf("Differences from the base hold together for %s alternatives with %.0f %% confidence, figure by figure. ", all, 100*study.Confidence)
	}
	var parts []string
	most := 0.0
	for _, name := range []string{"boats_per_week", "luster_p10"} {
		if times := s.narrower(metric(name)); times > 0 {
			most = max(most, times)
			parts = append(parts, fmt.Sprintf("%s times as wide in %s", fixed(times, 1), lower(metric(name))))
		}
	}
	switch {
	case len(parts) == 0:
		return strings.TrimSpace(text)
	case most < hardly:
		return text + "Shared luck hardly made their intervals narrower here: what a change does to the plant outweighs the luck that both ways share."
	}
	return text + "With separate luck for each alternative their intervals would be " + strings.Join(parts, " and ") + "."
}

// hardly is the width without shared luck, in widths with it, below which the
// gain is not worth a number. Assumption of this report, no source.
const hardly = 1.1

// narrower is how many times as wide the differences of a figure would be
// without shared luck: the middle one of all alternatives; 0 if none is known.
func (s *Study) narrower(m *study.Metric) float64 {
	var all []float64
	for _, d := range s.gains(m)[1:] {
		if d.Narrower > 0 {
			all = append(all, d.Narrower)
		}
	}
	return stats.Quantile(all, 0.5)
}

// several is how many differences of one figure are read together.
func (s *Study) several() int { return max(1, len(s.Alternatives)-1) }
