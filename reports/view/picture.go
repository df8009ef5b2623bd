package view

import (
	"fmt"

	"moldturn/reports/chart"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Picture is boats per week against luster, one point an alternative.
func (s *Study) Picture() chart.Scatter {
	x, y := metric("boats_per_week"), metric("luster_p10")
	xs, ys := s.levels(x), s.levels(y)
	c := chart.Scatter{
		Figure: chart.Figure{ID: "boats-and-luster", Finding: s.tradeoff(),
			Caption: fmt.Sprintf("Each point is one way to run the plant over %d simulated years, with orders always waiting. Bars are %.0f %% confidence intervals. To the right is more boats, up is more luster.",
				s.SimulatedYears(), 100*study.Confidence),
			Alt: fmt.Sprintf("%d points: boats shipped a week against the luster that 9 parts in 10 reach.", len(s.Alternatives))},
		X:      chart.Axis{Name: "boats shipped", Unit: "a week", Digits: together(halves(x, xs), most(x))},
		Y:      chart.Axis{Name: "luster that 9 parts in 10 reach, as pulled", Unit: "of 100", Digits: together(halves(y, ys), most(y)), Most: 100},
		Groups: []chart.Group{{Label: "none is clearly better"}, {Label: "another is clearly better"}},
	}
	for i := range s.Alternatives {
		if xs[i].N > 0 && ys[i].N > 0 {
			c.Points = append(c.Points, chart.Point{Name: s.Alternatives[i].Name, X: estimate(xs[i]), Y: estimate(ys[i]), Group: s.beaten(i)})
		}
	}
	return c
}

func estimate(x stats.Summary) chart.Estimate {
	return chart.Estimate{Value: x.Mean, Low: x.Low, High: x.High}
}

// beaten is 1 for an alternative to which another is clearly better in boats or
// luster and not clearly worse in the other, else 0.
func (s *Study) beaten(i int) int {
	for k, r := range s.rivals(i) {
		if k != i && better(r) {
			return 1
		}
	}
	return 0
}

// better tells whether a rival is better than what it is held against.
func better(r rival) bool {
	boats, luster := verdict(r.boats), verdict(r.luster)
	if r.luster.Known() && r.luster.Low > -same && r.luster.High < same {
		luster = 0
	}
	return boats >= 0 && luster >= 0 && boats+luster > 0
}

// verdict is 1 for clearly more, -1 for clearly less, 0 for not clear.
func verdict(d stats.Difference) int {
	switch {
	case d.Clear && d.Mean > 0:
		return 1
	case d.Clear:
		return -1
	}
	return 0
}

// tradeoff is what the picture shows of the best, or else of what ships most.
func (s *Study) tradeoff() string {
	fastest, finest := s.Best(), s.greatest(metric("luster_p10"))
	if fastest == 0 {
		fastest = s.greatest(metric("boats_per_week"))
	}
	if fastest == finest {
		return best(s.Alternatives[fastest].Name, s.leads(fastest, metric("boats_per_week")), s.leads(fastest, metric("luster_p10")))
	}
	return tradeoff(rival{s.Alternatives[fastest].Name, s.between(fastest, finest, metric("boats_per_week")),
		s.between(fastest, finest, metric("luster_p10"))}, s.Alternatives[finest].Name)
}

// leads tells whether an alternative has clearly more of a figure than each other.
func (s *Study) leads(i int, m *study.Metric) bool {
	for k := range s.Alternatives {
		if k != i && verdict(s.between(i, k, m)) <= 0 {
			return false
		}
	}
	return true
}

// best is what has the highest means of both, and whether that is clear.
func best(name string, boats, luster bool) string {
	switch {
	case boats && luster:
		return fmt.Sprintf("%s ships the most boats and has the best luster", quoted(name))
	case boats:
		return fmt.Sprintf("%s ships the most boats, and none has clearly better luster", quoted(name))
	case luster:
		return fmt.Sprintf("%s has the best luster, and none clearly ships more boats", quoted(name))
	}
	return fmt.Sprintf("None clearly ships more boats than %s, and none has clearly better luster", quoted(name))
}

// tradeoff holds what ships most against what has the best luster.
func tradeoff(fastest rival, finest string) string {
	d := fastest.luster
	m := metric("luster_p10")
	switch {
	case verdict(fastest.boats) <= 0:
		return fmt.Sprintf("%s has the best luster, and it is not clear that any ships more boats", quoted(finest))
	case d.Known() && d.Low > -same:
		return fmt.Sprintf("The most boats cost no luster to speak of: %s stays within %s point of the best", quoted(fastest.name), fixed(same, 1))
	case d.Clear && -d.Mean < same:
		return fmt.Sprintf("The most boats cost hardly any luster: %s is %s points below %s", quoted(fastest.name), fixed(-d.Mean, decimals(d.Half, most(m))), quoted(finest))
	case d.Clear:
		return fmt.Sprintf("The most boats cost luster: %s is %s points below %s", quoted(fastest.name), fixed(-d.Mean, decimals(d.Half, most(m))), quoted(finest))
	}
	return fmt.Sprintf("It is not clear that more boats cost luster: %s ships the most", quoted(fastest.name))
}

// greatest is the alternative with the greatest mean of a figure.
func (s *Study) greatest(m *study.Metric) int {
	at := 0
	for i, x := range s.levels(m) {
		if x.N > 0 && x.Mean > s.Alternatives[at].summary(m).Mean {
			at = i
		}
	}
	return at
}
