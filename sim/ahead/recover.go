package ahead

import (
	"cmp"
	"fmt"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/policy"
)

// ways lists the ways to recover that a plant has: overtime, the next
// Saturday, help for the craft that most work waits for from those who have most
// time free, molds in reserve, and an order of colors.
func ways(s *Setup, futures []Future) []Change {
	out := []Change{overtime(), s.saturday()}
	out = append(out, s.help(futures)...)
	out = append(out, s.reserves()...)
	if s.Plan.Release.Kind != policy.ColorRun {
		out = append(out, Change{Words: "release orders in runs of one color", Plan: func(p *sim.Plan) {
			p.Release.Kind, p.Release.Look, p.Release.Run = policy.ColorRun, max(p.Release.Look, runLook), max(p.Release.Run, runLook)
		}})
	}
	return slices.DeleteFunc(out, func(c Change) bool { return c.Words == "" })
}

const (
	overtimeHours = 2 * clock.Hour
	runLook       = 5 // orders that a run of colors looks at, where the plant says nothing
	helpers       = 2 // crafts that are tried for help
)

func overtime() Change {
	return Change{Words: "2 h of overtime to finish what is begun", Plan: func(p *sim.Plan) {
		for i := range p.Crafts {
			c := &p.Crafts[i]
			c.Late += overtimeHours
			if c.Overtime < clock.Never {
				c.Overtime += overtimeHours
			}
		}
	}}
}

// saturday is the first one after the morning that is not worked as an extra day
// already.
func (s *Setup) saturday() Change {
	monday := s.Plan.Start.Monday()
	first := int(s.Morning() / clock.Day)
	for day := first; day < first+21; day++ {
		date := s.Plan.Start.AddDays(day)
		if date.DaysSince(monday)%7 != 5 || s.extra(day) {
			continue
		}
		return Change{Words: fmt.Sprintf("Saturday %s worked by all", date), Days: []sim.StartDay{{From: day, To: day, Extra: true, Craft: sim.None}}}
	}
	return Change{}
}

// extra says whether all crafts work a day as an extra one.
func (s *Setup) extra(day int) bool {
	return slices.ContainsFunc(s.Start.Days, func(d sim.StartDay) bool { return d.Extra && d.Craft == sim.None && d.From <= day && day <= d.To })
}

// help lends to the craft that most work waits for.
func (s *Setup) help(futures []Future) []Change {
	n := len(s.Plan.Crafts)
	waits, free := make([]clock.Time, n), make([]clock.Time, n)
	var order []int
	for c := range n {
		order = append(order, c)
		for f := range futures {
			for d := range futures[f].Short[c] {
				waits[c] += futures[f].Short[c][d]
				free[c] += futures[f].Free[c][d]
			}
		}
	}
	needs := slices.MaxFunc(order, func(a, b int) int { return cmp.Compare(waits[a], waits[b]) })
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(free[b], free[a]) })
	var out []Change
	for _, c := range order {
		if c == needs || len(out) == helpers || waits[needs] == 0 || slices.Contains(s.Plan.Crafts[c].Helps, int16(needs)) {
			continue
		}
		out = append(out, Change{Words: fmt.Sprintf("%s helps %s when it has nothing to do", s.Plan.Crafts[c].Name, s.Plan.Crafts[needs].Name), Plan: func(p *sim.Plan) {
			craft := &p.Crafts[c]
			craft.Helps = append(slices.Clip(craft.Helps), int16(needs))
		}})
	}
	return out
}

// reserves puts each kind of mold that is in reserve into rotation, on top of
// those that are.
func (s *Setup) reserves() []Change {
	var out []Change
	seen := map[int16]bool{}
	for i := range s.Start.Molds {
		m := s.Start.Molds[i]
		part := s.Plan.Molds[m.Mold].Part
		if m.Stands != sim.MoldInReserve || seen[part] {
			continue
		}
		seen[part] = true
		pt := &s.Plan.Parts[part]
		out = append(out, Change{Words: fmt.Sprintf("the reserve mold of the %s %s in rotation", s.Plan.Models[pt.Model].Name, pt.Name), Plan: func(p *sim.Plan) {
			p.Parts[part].InUse++
			p.Molds[m.Mold].Reserve = false
		}, Ready: []int32{m.Mold}})
	}
	return out
}
