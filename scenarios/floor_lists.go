package scenarios

import (
	"moldturn/scenarios/floor"
	"moldturn/sim"
	"moldturn/sim/clock"
)

// molds takes the mold log over. Work has been put into its molds before: what
// has a part in it is with it, whatever the log says.
func (c *floorConversion) molds() {
	for i := range c.f.Molds {
		m := &c.f.Molds[i]
		if m.Plan == sim.None {
			continue // the reading tells
		}
		row := sim.StartMold{Mold: int32(m.Plan), Turns: m.Turns, Since: m.Since, Surface: sim.Unknown, Reading: max(m.Luster, 0),
			When: c.instant(m.When, 15*clock.Hour), Step: m.Step, Begun: sim.Unknown, Left: sim.Unknown, Back: sim.Unknown}
		row.Stands = c.stands(m, &row)
		if c.taken[row.Mold] {
			row.Stands = sim.MoldWithPart
		}
		c.out.Start.Molds = append(c.out.Start.Molds, row)
		c.moldRows = append(c.moldRows, m.Place)
	}
}

// stands is what a mold does, with what belongs to it.
func (c *floorConversion) stands(m *floor.Mold, row *sim.StartMold) sim.Stands {
	switch m.State {
	case floor.Pulled:
		return sim.MoldPulled
	case floor.InCare:
		if care := c.plan.Parts[m.Part].Care; !m.When.IsZero() && care != sim.None {
			row.Begun = c.begun(m.When, &c.plan.Routes[care].Steps[m.Step])
		}
		return sim.MoldInCare
	case floor.Reserve:
		return sim.MoldInReserve
	case floor.OutOfUse:
		row.Renewed = m.Renewed
		if !m.Back.IsZero() {
			row.Back = max(m.Back.Instant(c.plan.Start), c.out.Start.At)
		}
		return sim.MoldAway
	}
	return sim.MoldReady
}

// lists takes over who is out, what is down, and which days are different.
func (c *floorConversion) lists() {
	start := c.plan.Start
	s := c.out.Start
	for i := range c.f.Out {
		o := &c.f.Out[i]
		s.Out = append(s.Out, sim.StartOut{Craft: o.Craft, People: o.Number, From: o.From.Date.DaysSince(start), To: o.To.Date.DaysSince(start)})
		c.outRows = append(c.outRows, o.Place)
	}
	for i := range c.f.Down {
		d := &c.f.Down[i]
		row := sim.StartDown{Place: d.At, Unit: d.Unit, From: d.From.Instant(start), To: clock.Never}
		if !d.To.IsZero() {
			row.To = dueOf(d.To, start) // a day without a time is down to its end
		}
		s.Down = append(s.Down, row)
		c.downRows = append(c.downRows, d.Place)
	}
	for i := range c.f.Calendar {
		d := &c.f.Calendar[i]
		s.Days = append(s.Days, sim.StartDay{From: d.From.Date.DaysSince(start), To: d.To.Date.DaysSince(start), Extra: d.Extra, Craft: d.Craft})
		c.dayRows = append(c.dayRows, d.Place)
	}
}
