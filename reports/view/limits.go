package view

import (
	"fmt"

	"moldturn/reports/cells"
	"moldturn/sim"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// WaitWorthNaming is that of the study.
const WaitWorthNaming = study.WaitWorthNaming

const waitWorthNaming = WaitWorthNaming

// fullAllYear is the share of its hours from which on a craft or place counts
// as never free.
const fullAllYear = 0.99

// hoursToSpare is the share of its hours under which a craft that work waits for
// is not what limits the plant: work waits there because it comes in bunches.
// Judgment of this report, no source.
const hoursToSpare = 0.75

// Limits says what holds the base back in January and in July, and what has
// more to do than it can, if anything.
func (s *Study) Limits() []string { return s.LimitsOf(0) }

// LimitsOf is Limits of one alternative.
func (s *Study) LimitsOf(i int) []string {
	a := &s.Alternatives[i]
	lines := []string{"January: " + limit(a.Plan, a.Limits(0)), "July: " + limit(a.Plan, a.Limits(6))}
	if f := full(a.Plan, a.Limits(wholeYear()...)); f != "" {
		lines = append(lines, f)
	}
	return lines
}

func wholeYear() []int { return []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11} }

// full names what is never free over the year; empty for nothing. Small parts
// and other background work may pile up there without holding back a boat.
func full(p *sim.Plan, year []study.Limit) string {
	var names []string
	for _, l := range year {
		if l.Load >= fullAllYear {
			names = append(names, quoted(pool(p, l.Pool)))
		}
	}
	switch len(names) {
	case 0:
		return ""
	case 1:
		return names[0] + " has more to do all year than its hours allow: work for it piles up."
	}
	return and(names) + " have more to do all year than their hours allow: work for them piles up."
}

// Waits is what work waits for in the base: each craft and place with the hours
// a week that work waits for it and how busy it is.
func (s *Study) Waits() cells.Table {
	a := s.Base()
	t := cells.Table{Title: "What work waits for in " + quoted(a.Name), Columns: []cells.Column{
		{Head: "craft or place"}, {Head: "waits for it, h a week", Align: cells.Right}, {Head: "in January", Align: cells.Right},
		{Head: "in July", Align: cells.Right}, {Head: "busy, % of its hours", Align: cells.Right},
	}}
	january, july := waits(a.Limits(0)), waits(a.Limits(6))
	for _, l := range a.Limits(wholeYear()...) {
		t.Rows = append(t.Rows, cells.Texts(pool(a.Plan, l.Pool), fixed(l.Wait, 0), january[l.Pool], july[l.Pool], fixed(100*l.Load, 0)))
	}
	return t
}

// waits are the hours of each pool as texts.
func waits(ls []study.Limit) map[int]string {
	out := map[int]string{}
	for _, l := range ls {
		out[l.Pool] = fixed(l.Wait, 0)
	}
	return out
}

// limit puts the first of ranked limits in words, and the second where work
// waits for it at least half as long.
func limit(p *sim.Plan, ranked []study.Limit) string {
	if len(ranked) == 0 || ranked[0].Wait < waitWorthNaming {
		return "no craft and no place holds work back: molds do, or the limit of the floor."
	}
	first := ranked[0]
	text := fmt.Sprintf("%s; work waits %.0f h a week for %s, busy %.0f %% of %s.",
		pool(p, first.Pool), first.Wait, them(p, first.Pool), 100*first.Load, hours(p, first.Pool))
	if len(ranked) > 1 && ranked[1].Wait >= max(first.Wait/2, waitWorthNaming) {
		text += fmt.Sprintf(" Next: %s, %.0f h.", pool(p, ranked[1].Pool), ranked[1].Wait)
	}
	if first.Pool < len(p.Crafts) && first.Load < hoursToSpare {
		text += " With that many hours to spare, molds hold boats back more, or the limit of the floor."
	}
	return text
}

// pool is the name of a craft or place.
func pool(p *sim.Plan, i int) string {
	if i < len(p.Crafts) {
		return p.Crafts[i].Name
	}
	return p.Places[i-len(p.Crafts)].Name
}

// PoolName is the name of a craft or place: crafts first, then places.
func PoolName(p *sim.Plan, i int) string { return pool(p, i) }

// them is what work waits for when it waits for a craft or place.
func them(p *sim.Plan, i int) string {
	if i < len(p.Crafts) {
		return "its people"
	}
	return "a free one"
}

// hours is what a craft or place is busy of: places stand there at night too.
func hours(p *sim.Plan, i int) string {
	if i < len(p.Crafts) {
		return "the hours there are"
	}
	return "all hours, nights and weekends counted"
}

// Demand says whether orders or the plant limit what is shipped, in the base;
// empty where only one of the two was simulated.
func (s *Study) Demand() string {
	a := s.Base()
	ships, orders := metric("boats_per_week"), metric("orders_per_week")
	spare, ok := a.Summary(metric("spare_boats_per_week"))
	if !ok {
		return ""
	}
	return binds(alone(ships, a.summary(ships)), mean(orders, a.summary(orders)), spare)
}

// binds judges by the boats that could be shipped beyond orders.
func binds(could, come string, spare stats.Summary) string {
	text := fmt.Sprintf("%s boats a week could be shipped, orders come in for %s", could, come)
	switch {
	case spare.Known() && spare.Low > 0:
		return text + ": demand binds."
	case spare.Known() && spare.High < 0:
		return text + ": the plant binds, and the backlog grows."
	}
	return text + ": too close to say whether demand or the plant binds."
}
