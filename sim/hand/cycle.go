package hand

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// turn is the steps of one turn of a mold in order: up to the pull, then care.
func (h *paper) turn(part *sim.Part) []*sim.Step {
	var steps []*sim.Step
	route := h.plan.Routes[part.Route].Steps
	for i := range route {
		if steps = append(steps, &route[i]); route[i].Verb == sim.Pulled {
			break
		}
	}
	care := h.plan.Routes[part.Care].Steps
	for i := range care {
		steps = append(steps, &care[i])
	}
	return steps
}

// cycle works a turn of a mold out in both ways.
func (h *paper) cycle(part *sim.Part, l *line) Mold {
	craft := l.main()
	r := h.rhythm(craft)
	m := Mold{Model: h.plan.Models[part.Model].Name, Part: part.Name, Count: part.InUse,
		ShiftHours: r.hours, Slot: r.slot, WeekShifts: r.shifts}
	if craft != sim.None {
		m.Craft = h.plan.Crafts[craft].Name
	}
	steps := h.turn(part)
	for _, s := range steps {
		hours, holding := h.hours(s)
		hours *= h.often(s.When, part)
		switch {
		case holding:
			m.Hold += hours
		case s.Pace == sim.Labor:
			m.Labor += hours
		default:
			m.Waits += hours
		}
	}
	m.WorkShifts, m.HoldShifts = r.round(m.Labor+m.Waits, m.Hold)
	if n := m.WorkShifts + m.HoldShifts; n > 0 {
		m.WholeTurns = r.shifts / float64(n)
	}
	if turns, each := h.walk(part, steps); turns > 0 {
		m.Turns = turns / h.weeks
		m.Off = max(each.Hours()-m.Labor-m.Waits-m.Hold, 0)
	}
	m.Boats = m.Turns * float64(m.Count)
	return m
}

// walk takes one mold round and round through the counted time and gives the
// turns it makes and how long one takes, shutdowns included.
func (h *paper) walk(part *sim.Part, steps []*sim.Step) (turns float64, each clock.Time) {
	n, last := 0, h.frame.From
	for t := last; n < mostTurns; n++ {
		for _, s := range steps {
			hours, _ := h.hours(s)
			t = h.after(s, t, clock.FromHours(hours*h.often(s.When, part)))
			if t >= h.frame.To {
				return h.turns(n, last)
			}
		}
		if t == last {
			return 0, 0 // a turn that takes no time
		}
		last = t
	}
	return h.turns(n, last)
}

// turns is what n turns up to last make of the whole counted time.
func (h *paper) turns(n int, last clock.Time) (turns float64, each clock.Time) {
	if n == 0 {
		return 0, 0
	}
	each = (last - h.frame.From) / clock.Time(n)
	return float64(h.frame.To-h.frame.From) / float64(each), each
}

// mostTurns bounds the walk for molds that turn in no time.
const mostTurns = 100_000

// after is when a step ends that is asked for at t: labor in the shifts of its
// craft as its end rule says, waits by the clock.
func (h *paper) after(s *sim.Step, t, length clock.Time) clock.Time {
	if s.Pace != sim.Labor || s.Craft == sim.None || length == 0 {
		return t + length
	}
	c := h.calendar(s.Craft)
	if s.End == sim.Pause || length > c.LongestShift() {
		return c.Finish(t, length)
	}
	room := length
	if late := h.plan.Crafts[s.Craft].Late; s.End == sim.Finish {
		room = max(length-late, clock.Minute)
	}
	start := c.NextFit(t, room)
	if s.End == sim.Finish {
		return start + length
	}
	return c.Finish(start, length)
}

// calendar is when a craft works.
func (h *paper) calendar(craft int16) *shift.Calendar {
	if h.calendars == nil {
		h.calendars = make([]*shift.Calendar, len(h.plan.Crafts))
	}
	if h.calendars[craft] == nil {
		var all []*shift.Calendar
		for _, c := range h.plan.Crafts[craft].Crews {
			if c.People > 0 {
				all = append(all, c.Hours)
			}
		}
		h.calendars[craft] = shift.Union(all...)
	}
	return h.calendars[craft]
}
