package validate

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/shift"
)

// law makes a law of times from its mean.
type law func(mean float64) draw.Dist

// must is for laws with parameters written here.
func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func exponential(mean float64) draw.Dist { return must(draw.Exponential(mean)) }
func constant(mean float64) draw.Dist    { return must(draw.Constant(mean)) }
func erlang(stages int) law {
	return func(mean float64) draw.Dist { return must(draw.Erlang(stages, mean)) }
}

// plant is a plan in the making. Its methods return indices.
type plant struct{ sim.Plan }

func newPlant(name string, length clock.Time) *plant {
	return &plant{sim.Plan{Name: name, Length: length, Start: shift.DateOf(2027, 1, 4), Areas: []string{"plant"}, Cure: cure.Default(), Finish: finish.Default()}}
}

// crew is people on one calendar.
type crew struct {
	people int
	hours  *shift.Calendar
}

// craft adds a craft that finishes what it has begun when a step says so, and
// works on without limit.
func (p *plant) craft(name string, crews ...crew) int16 {
	c := sim.Craft{Name: name, Late: clock.Never, Overtime: clock.Never}
	for _, k := range crews {
		c.Crews = append(c.Crews, sim.Crew{Hours: k.hours, People: k.people})
	}
	p.Crafts = append(p.Crafts, c)
	return int16(len(p.Crafts) - 1)
}

// always is a craft that never leaves.
func (p *plant) always(name string, people int) int16 {
	return p.craft(name, crew{people, shift.Always()})
}

// place adds count like places.
func (p *plant) place(name string, count int) int16 {
	p.Places = append(p.Places, sim.Place{Name: name, Count: count})
	return int16(len(p.Places) - 1)
}

// route adds a route.
func (p *plant) route(name string, steps ...sim.Step) int16 {
	p.Routes = append(p.Routes, sim.Route{Name: name, Steps: steps})
	return int16(len(p.Routes) - 1)
}

// model adds a model whose boats are done when their parts are, or after the
// boat steps.
func (p *plant) model(boat ...sim.Step) int16 {
	p.Models = append(p.Models, sim.Model{Name: "boat", Boat: p.route("boat", boat...)})
	return int16(len(p.Models) - 1)
}

// part adds a part of a model that needs no mold.
func (p *plant) part(model int16, steps ...sim.Step) int16 {
	m := &p.Models[model]
	i := int16(len(p.Parts))
	p.Parts = append(p.Parts, sim.Part{Name: "part", Model: model, Index: int16(len(m.Parts)), Area: 30, Color: sim.None, Zone: 1, Care: sim.None, Route: p.route("part", steps...)})
	m.Parts = append(m.Parts, i)
	return i
}

// molds gives a part molds, with the steps of their care after a pull.
func (p *plant) molds(part int16, n int, care ...sim.Step) {
	p.Parts[part].Care = p.route("care", care...)
	p.Parts[part].InUse = n
	for range n {
		p.Molds = append(p.Molds, sim.Mold{Part: part})
	}
}

// demand has orders of a model come at random, so many per hour.
func (p *plant) demand(perHour float64) {
	d := sim.ModelDemand{PerWeek: perHour * 168}
	for i := range d.Monthly {
		d.Monthly[i] = 1
	}
	p.Demand.Models = append(p.Demand.Models, d)
	p.Demand.CancelLate = clock.Never
}

// work is a step of one person of a craft.
func work(name string, craft int16, time draw.Dist) sim.Step {
	s := sim.Step{Name: name, Craft: craft, Want: 1, Least: 1, Slow: 1}
	s.SetTime(time)
	return s
}

// passing is a step in which only time passes.
func passing(name string, time draw.Dist) sim.Step {
	s := work(name, sim.None, time)
	s.Pace = sim.ByClock
	return s
}

// means gives a step its meaning.
func means(s sim.Step, v sim.Verb) sim.Step {
	s.Verb = v
	return s
}

// cycle is a calendar of hours on and off, over and over, a day beyond the run.
func cycle(length clock.Time, period float64, on ...[2]float64) *shift.Calendar {
	var all []shift.Interval
	for _, h := range on {
		all = append(all, shift.Interval{From: clock.FromHours(h[0]), To: clock.FromHours(h[1]), Ends: shift.EndOfShift})
	}
	return must(shift.Repeat(all, clock.FromHours(period), length+clock.Day))
}
