package ahead

import (
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
)

// Change is something that happens to a shop beside its luck, or a way to
// recover from it.
type Change struct {
	Words string // "booth 2 down Tue 11 May to Fri 14 May"
	Down  []sim.StartDown
	Out   []sim.StartOut
	Days  []sim.StartDay
	Stuck []Stuck
	Ready []int32         // molds that are waxed and wait for a part
	Plan  func(*sim.Plan) // changes a copy of the plan, whose crafts, parts and molds are its own; nil for none
}

// Stuck is a mold that is out of use. The part in it is lost, and made again.
type Stuck struct {
	Mold  int32
	Until clock.Time
}

// With is the setup under some changes. The setup itself stays as it is.
func (s *Setup) With(changes ...Change) *Setup {
	out, start, plan := *s, *s.Start, *s.Plan
	start.Molds, start.Work = slices.Clone(start.Molds), slices.Clone(start.Work)
	plan.Crafts, plan.Parts, plan.Molds = slices.Clone(plan.Crafts), slices.Clone(plan.Parts), slices.Clone(plan.Molds)
	for _, c := range changes {
		start.Down = downs(&plan, start.Down, c.Down)
		start.Out = append(slices.Clip(start.Out), c.Out...)
		start.Days = days(start.Days, c.Days)
		for _, x := range c.Stuck {
			stuck(&start, x)
		}
		for i := range start.Molds {
			if slices.Contains(c.Ready, start.Molds[i].Mold) {
				start.Molds[i].Stands = sim.MoldReady
			}
		}
		if c.Plan != nil {
			c.Plan(&plan)
		}
	}
	out.Start, out.Plan = &start, &plan
	return &out
}

// downs adds stretches in which units are down. Those of one unit that meet are
// one stretch.
func downs(p *sim.Plan, list, more []sim.StartDown) []sim.StartDown {
	var out []sim.StartDown
	for _, d := range slices.Concat(list, more) {
		first, last := d.Unit, d.Unit
		if d.Unit == sim.None {
			first, last = 0, int16(p.Places[d.Place].Count)-1
		}
		for u := first; u <= last; u++ {
			row := sim.StartDown{Place: d.Place, Unit: u, From: d.From, To: d.To}
			out = slices.DeleteFunc(out, func(x sim.StartDown) bool {
				meets := x.Place == row.Place && x.Unit == u && x.From <= row.To && row.From <= x.To
				if meets {
					row.From, row.To = min(row.From, x.From), max(row.To, x.To)
				}
				return meets
			})
			out = append(out, row)
		}
	}
	return out
}

// days adds days that are not worked as planned, each once for a craft.
func days(list, more []sim.StartDay) []sim.StartDay {
	out := slices.Clone(list)
	for _, m := range more {
		for day := m.From; day <= m.To; day++ {
			row := sim.StartDay{From: day, To: day, Extra: m.Extra, Craft: m.Craft}
			same := func(x sim.StartDay) bool { return x.Extra == row.Extra && x.From <= day && day <= x.To }
			if slices.ContainsFunc(out, func(x sim.StartDay) bool { return same(x) && (x.Craft == sim.None || x.Craft == row.Craft) }) {
				continue
			}
			var kept []sim.StartDay
			for _, x := range out {
				if row.Craft != sim.None || !same(x) {
					kept = append(kept, x)
					continue
				}
				before, after := x, x
				before.To, after.From = day-1, day+1
				kept = append(kept, slices.DeleteFunc([]sim.StartDay{before, after}, func(y sim.StartDay) bool { return y.To < y.From })...)
			}
			out = append(kept, row)
		}
	}
	return out
}

// stuck takes a mold out of use, with the part that is in it.
func stuck(s *sim.Start, x Stuck) {
	s.Work = slices.DeleteFunc(s.Work, func(w sim.StartWork) bool { return w.Mold == x.Mold })
	away := sim.StartMold{Mold: x.Mold, Stands: sim.MoldAway, Turns: sim.Unknown, Since: sim.Unknown, Surface: sim.Unknown, When: sim.Unknown,
		Step: sim.None, Begun: sim.Unknown, Left: sim.Unknown, Back: x.Until}
	for i := range s.Molds {
		if m := &s.Molds[i]; m.Mold == x.Mold {
			away.Turns, away.Since, away.Surface, away.Reading = m.Turns, m.Since, m.Surface, m.Reading
			*m = away
			return
		}
	}
	s.Molds = append(s.Molds, away)
}
