package scenarios

import (
	"fmt"

	"moldturn/scenarios/floor"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// FloorStart is a plant whose runs begin as it stands one morning.
type FloorStart struct {
	Plant   *Plant // its calendar lies around the morning, and its plans end with the weeks asked for
	Start   *sim.Start
	Orders  []FloorOrder   // what the orders of Start are called, by their index
	Notices []floor.Notice // what was assumed to begin, beside what the reading of the floor tells
}

// FloorOrder says which boat an order of a start is.
type FloorOrder struct {
	Name  string // serial or order number; "" where nothing is written
	Row   int    // index into Floor.Orders; floor.Unknown for work that no order is listed for
	Begun bool   // a part of it is on the floor
}

// FloorOptions say how to begin from a floor.
type FloorOptions struct {
	Weeks    int      // of the run, at least 1
	BookOnly bool     // build the orders of the floor and nothing else
	Changes  []Change // of the plant, on top of the scenario
}

// before is how far before the morning the calendar of a plan begins, so that
// what happened lately has an instant: older dates count as its first.
const before = 70

// StartFrom makes of the scenario's base a plant that begins as a floor says,
// which must have been read for a plan of this scenario. Complaints are about
// the scenario, or about rows of the floor, with their places.
func (s *Scenario) StartFrom(f *floor.Floor, o FloorOptions) (*FloorStart, Complaints) {
	p, complaints := s.around(f.Morning, o)
	if len(complaints) > 0 {
		return nil, complaints
	}
	c := &floorConversion{f: f, plan: p.Plan(), out: &FloorStart{Plant: p, Start: &sim.Start{}}}
	c.convert()
	if faults := c.out.Start.Check(c.plan); len(faults) > 0 {
		for _, x := range faults {
			complaints = append(complaints, c.complaint(x))
		}
		return nil, complaints.sorted()
	}
	return c.out, nil
}

// around lays the plant out around a morning.
func (s *Scenario) around(morning floor.Moment, o FloorOptions) (*Plant, Complaints) {
	first := morning.Date.AddDays(-before).Monday()
	changes := append([]Change{}, o.Changes...)
	for _, text := range []string{"start=" + first.String(), "run.warm_up=0"} {
		ch, complaints := ParseChange("--floor", text)
		if len(complaints) > 0 {
			return nil, complaints
		}
		changes = append(changes, ch)
	}
	long := *s
	long.options.Years = 1 + (7*o.Weeks+before+7)/365
	p, complaints := long.plant(changes)
	if len(complaints) > 0 {
		return nil, complaints
	}
	at := morning.Instant(p.Plan().Start)
	end := shift.Midnight(p.Plan().Start, morning.Date) + clock.Time(max(o.Weeks, 1))*clock.Week
	p.Frame.From, p.Frame.To = at, end
	p.Climate = fmt.Sprintf("%s from %v to %v", p.Climate, at, end)
	for _, plan := range []*sim.Plan{p.Capacity, p.Dated} {
		if plan == nil {
			continue
		}
		plan.Length = end
		if o.BookOnly {
			bookOnly(plan)
		}
	}
	return p, nil
}

// bookOnly takes every order out of a plan that is not on its floor.
func bookOnly(p *sim.Plan) {
	p.Demand.Full, p.Demand.Dated = false, nil
	models := append([]sim.ModelDemand{}, p.Demand.Models...)
	for i := range models {
		models[i].PerWeek = 0
	}
	p.Demand.Models = models
}

// complaint tells a fault of a start by the row of the floor it came from.
func (c *floorConversion) complaint(x sim.StartFault) Complaint {
	places := map[string][]floor.Place{"molds": c.moldRows, "orders": c.orderRows, "work": c.workRows, "out": c.outRows, "down": c.downRows, "days": c.dayRows}
	out := Complaint{File: c.f.Name, Message: x.Text}
	if rows := places[x.List]; x.Index < len(rows) {
		p := rows[x.Index]
		out.File, out.Line, out.Column = p.File, p.Row, max(p.Column, 1)
		if p.Sheet != "" {
			out.File += ":" + p.Sheet
		}
	}
	return out
}
