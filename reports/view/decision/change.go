package decision

import (
	"fmt"

	"moldturn/reports/view"
	"moldturn/sim/stats"
)

// mostChanges is how many lines the sheet has room for.
const mostChanges = 5

// Changes is what would change the answer: rivals that ship as many, money that
// points another way, orders that do not come, luster near its target, and luck.
func Changes(s *view.Study, best int) []string {
	var out []string
	add := func(line string) {
		if line != "" && len(out) < mostChanges {
			out = append(out, line)
		}
	}
	if best > 0 {
		near, open := s.Near(best)
		for _, i := range near {
			luster, known := s.Against(i, best, named("luster_p10"))
			add(rival(s.Alternatives[i].Name, luster, known, s.Size(named("luster_p10"), luster)))
		}
		add(undecided(s.Names(open)))
		add(richer(s, best))
	}
	add(unsold(s, best))
	add(target(s, best))
	if best == 0 && len(s.Alternatives) > 1 {
		add("More simulated years: a difference that is not clear now may become so.")
	}
	return out
}

// rival says what else is a good choice, and what it does to luster.
func rival(name string, luster stats.Difference, known bool, size string) string {
	text := fmt.Sprintf("%s ships as many: take it if it is easier to do", view.Quoted(name))
	switch {
	case !known:
		return text + "."
	case luster.Known() && luster.Low > -view.SameLuster && luster.High < view.SameLuster:
		return text + "; its luster is the same."
	case luster.Clear && luster.Mean < 0:
		return text + fmt.Sprintf(" and a luster %s points lower is accepted.", size)
	case luster.Clear:
		return text + fmt.Sprintf("; its luster is %s points higher.", size)
	}
	return text + "; a difference in luster is not clear."
}

// undecided says what more years would settle; empty without names.
func undecided(names []string) string {
	switch len(names) {
	case 0:
		return ""
	case 1:
		return fmt.Sprintf("More simulated years: for %s they would show whether it ships more than today.", names[0])
	}
	return fmt.Sprintf("More simulated years: for %s they would show whether they ship more than today.", view.And(names))
}

// richer names an alternative that clearly earns more than the best; empty
// without one, or without money.
func richer(s *view.Study, best int) string {
	m := named("contribution_per_week")
	at := -1
	var lead stats.Difference
	for i := range s.Alternatives {
		d, ok := s.Against(i, best, m)
		if i != best && ok && d.Clear && d.Mean > lead.Mean {
			at, lead = i, d
		}
	}
	if at < 0 {
		return ""
	}
	return fmt.Sprintf("Money first: %s earns %s a week more.", view.Quoted(s.Alternatives[at].Name), s.Size(m, lead))
}

// unsold says whether orders could take the boats of the best; empty where
// orders were not simulated.
func unsold(s *view.Study, best int) string {
	a := &s.Alternatives[best]
	spare, ok := a.Summary(named("spare_boats_per_week"))
	orders, known := a.Summary(named("orders_per_week"))
	if !ok || !known {
		return ""
	}
	return orderly(spare, view.Fixed(orders.Mean, 1))
}

// orderly judges by the boats that could be shipped beyond orders.
func orderly(spare stats.Summary, orders string) string {
	switch {
	case spare.Known() && spare.Low > 0:
		return fmt.Sprintf("Orders: they come in for %s a week, so about %s boats a week of what it could ship have no buyer yet.", orders, view.Fixed(spare.Mean, 1))
	case spare.Known() && spare.High < 0:
		return fmt.Sprintf("Orders: they come in for %s a week, more than it ships; demand would have to fall before it matters.", orders)
	}
	return fmt.Sprintf("Orders: they come in for %s a week, about what it ships; fewer orders would leave boats without a buyer.", orders)
}

// target says how the luster that 9 parts in 10 reach stands to the target;
// empty without luster or target.
func target(s *view.Study, best int) string {
	a := &s.Alternatives[best]
	x, ok := a.Summary(named("luster_p10"))
	if !ok || len(a.Outcomes) == 0 {
		return ""
	}
	return reaches(x, counted(&a.Outcomes[0]).Frame.Target)
}

// nearTarget is how many points of luster above the target are still near it.
// Assumption of this report, no source.
const nearTarget = 0.5

func reaches(x stats.Summary, goal float64) string {
	if goal == 0 {
		return ""
	}
	at := view.Fixed(goal, 1)
	switch over := x.Mean - goal; {
	case over < 0:
		return fmt.Sprintf("Luster: fewer than 9 parts in 10 leave the mold at the target of %s; a lower target would accept them.", at)
	case over < nearTarget:
		return fmt.Sprintf("Luster: 9 parts in 10 are only %s points above the target of %s; a higher target would decide by luster instead.", view.Fixed(over, 1), at)
	}
	return ""
}
