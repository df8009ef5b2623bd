package scenarios

import (
	"fmt"
	"slices"

	"moldturn/scenarios/floor"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// floorConversion turns the rows of a floor into those of a start, keeping the
// place of each.
type floorConversion struct {
	f    *floor.Floor
	plan *sim.Plan
	out  *FloorStart

	moldRows, orderRows, workRows, outRows, downRows, dayRows []floor.Place
	taken                                                     map[int32]bool // molds with a part in them
}

func (c *floorConversion) convert() {
	c.taken = map[int32]bool{}
	c.out.Start.At = c.f.Morning.Instant(c.plan.Start)
	c.orders()
	c.work()
	c.molds()
	c.lists()
}

func (c *floorConversion) tell(p floor.Place, rule, message, effect string) {
	c.out.Notices = append(c.out.Notices, floor.Notice{Place: p, Level: floor.Gap, Rule: rule, Message: message, Effect: effect})
}

// instant is a moment before the morning. A day without a time is taken at hour
// of that day, before the morning in any case.
func (c *floorConversion) instant(m floor.Moment, hour clock.Time) clock.Time {
	if m.IsZero() {
		return sim.Unknown
	}
	t := m.Instant(c.plan.Start)
	if !m.Timed {
		t += hour
	}
	return min(max(t, 0), c.out.Start.At)
}

// ended is the instant of work that ended on a day: without a time of day, the
// end of the shift of the craft that did it.
func (c *floorConversion) ended(m floor.Moment, craft int16) clock.Time {
	if m.IsZero() || m.Timed || craft == sim.None {
		return c.instant(m, 12*clock.Hour)
	}
	noon := m.Instant(c.plan.Start) + 12*clock.Hour
	end := clock.Time(-1)
	for i := range c.plan.Crafts[craft].Crews {
		if t, ok := c.plan.Crafts[craft].Crews[i].Hours.DayEnd(noon); ok && t < clock.Never {
			end = max(end, t)
		}
	}
	if end < 0 {
		return c.instant(m, 12*clock.Hour)
	}
	return min(max(end, 0), c.out.Start.At)
}

func (c *floorConversion) orders() {
	for i := range c.f.Orders {
		o := &c.f.Orders[i]
		row := sim.StartOrder{Model: o.Model, Color: o.Color, Band: o.Band, Arrived: c.instant(o.Arrived, 0), Began: sim.Unknown, Due: clock.Never, Urgent: o.Priority}
		if !o.Due.IsZero() {
			row.Due = dueOf(o.Due, c.plan.Start)
		}
		c.order(o.Place, FloorOrder{Name: o.ID, Row: i, Begun: o.Begun}, row)
	}
}

func (c *floorConversion) order(p floor.Place, name FloorOrder, row sim.StartOrder) int32 {
	c.out.Start.Orders = append(c.out.Start.Orders, row)
	c.out.Orders = append(c.out.Orders, name)
	c.orderRows = append(c.orderRows, p)
	return int32(len(c.out.Start.Orders) - 1)
}

// dueOf is the end of the day that was promised, or the time of it.
func dueOf(m floor.Moment, start shift.Date) clock.Time {
	if m.Timed {
		return m.Instant(start)
	}
	return m.Instant(start) + clock.Day
}

// work puts pieces on the floor. Pieces of one serial are of one order, whether
// it is listed or not.
func (c *floorConversion) work() {
	listed := map[string]int32{}
	for i := range c.f.Work {
		w := &c.f.Work[i]
		boat := fmt.Sprintf("%d %s", w.Model, w.Serial)
		order, ok := listed[boat]
		if !ok && w.Order != floor.Unknown {
			order, ok = int32(w.Order), true
		}
		if !ok {
			order = c.order(w.Place, FloorOrder{Name: w.Serial, Row: floor.Unknown, Begun: true},
				sim.StartOrder{Model: w.Model, Color: w.Color, Band: w.Band, Arrived: sim.Unknown, Began: sim.Unknown, Due: clock.Never})
		}
		listed[boat] = order
		if row := &c.out.Start.Orders[order]; w.Color != sim.None {
			row.Color, row.Band = w.Color, w.Band // as it is being built
		}
		c.piece(w, order)
	}
}

func (c *floorConversion) piece(w *floor.Work, order int32) {
	steps := c.plan.Routes[w.Route].Steps
	s := &steps[w.Step]
	out := sim.StartWork{Order: order, Part: w.Part, Mold: sim.None, Step: w.Step, Begun: sim.Unknown, Since: sim.Unknown, Left: sim.Unknown,
		Sprayed: sim.Unknown, Skinned: sim.Unknown, Laminated: sim.Unknown}
	if !w.Started.IsZero() {
		out.Begun = c.begun(w.Started, s)
		if left, ok := w.LeftHours(s.Mean); ok {
			out.Left = left
		}
	}
	if w.Part != sim.None {
		out.Sprayed = c.ended(w.Sprayed, craftOf(steps, sim.Sprayed))
		out.Skinned = c.ended(w.Skinned, craftOf(steps, sim.SkinBegun))
		out.Laminated = c.ended(w.Laminated, craftOf(steps, sim.LaborEnded))
		if out.Mold = c.moldOf(w); out.Mold == noMold {
			return
		}
	}
	c.out.Start.Work = append(c.out.Start.Work, out)
	c.workRows = append(c.workRows, w.Place)
}

// begun is when a step was begun. A wait that began on a day without a time
// began at the end of that day's work.
func (c *floorConversion) begun(m floor.Moment, s *sim.Step) clock.Time {
	if s.Pace == sim.Labor {
		return c.instant(m, 0)
	}
	return c.instant(m, 15*clock.Hour)
}

// craftOf is the craft of the last step with a meaning.
func craftOf(steps []sim.Step, v sim.Verb) int16 {
	craft := int16(sim.None)
	for i := range steps {
		if steps[i].Verb == v {
			craft = steps[i].Craft
		}
	}
	return craft
}

// noMold is for a part that must be in a mold when none is left.
const noMold = -2

// moldOf is the mold of the plan a part is in; sim.None after its pull. A part
// whose mold is not known is in one that nothing else is said of.
func (c *floorConversion) moldOf(w *floor.Work) int32 {
	part := &c.plan.Parts[w.Part]
	steps := c.plan.Routes[part.Route].Steps
	if pulled := slices.IndexFunc(steps, func(s sim.Step) bool { return s.Verb == sim.Pulled }); part.Care == sim.None || pulled >= 0 && int(w.Step) > pulled {
		return sim.None
	}
	if w.Mold != floor.Unknown {
		if m := int32(c.f.Molds[w.Mold].Plan); m != sim.None && !c.taken[m] {
			c.taken[m] = true
			return m
		}
	}
	for _, free := range []func(m int32) bool{c.unsaid, c.unlisted, c.idle} {
		for i := range c.plan.Molds {
			if m := int32(i); c.plan.Molds[i].Part == w.Part && !c.taken[m] && free(m) {
				c.taken[m] = true
				c.tell(w.Place, "mold not known", fmt.Sprintf("which mold %s is in is not known; it is put into %s", w.Serial, c.moldName(m)),
					"the counters of that mold count for its part")
				return m
			}
		}
	}
	c.tell(w.Place, "no mold left", fmt.Sprintf("%s must be in a mold, and the plan has none left for it", w.Serial), "it is not on the floor of the run, and its order is built anew")
	return noMold
}

// row is what the mold log says of a mold of the plan; nil for nothing.
func (c *floorConversion) row(m int32) *floor.Mold {
	for i := range c.f.Molds {
		if int32(c.f.Molds[i].Plan) == m {
			return &c.f.Molds[i]
		}
	}
	return nil
}

func (c *floorConversion) unsaid(m int32) bool {
	row := c.row(m)
	return row != nil && row.Work == floor.Unknown && (row.State == floor.NotSaid || row.State == floor.Occupied)
}

func (c *floorConversion) unlisted(m int32) bool {
	return c.row(m) == nil && c.plan.Molds[m].Arrives == 0
}

func (c *floorConversion) idle(m int32) bool {
	row := c.row(m)
	return row != nil && row.Work == floor.Unknown && row.State == floor.Ready
}

func (c *floorConversion) moldName(m int32) string {
	if row := c.row(m); row != nil {
		return "mold " + row.ID
	}
	return "a mold of the plan that is not in the log"
}
