package sim

import (
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// Learning says from which boat of a model on the hours of the plan hold, and
// how much longer the first ones take at most. Its zero value is off.
type Learning struct {
	Standard float64 // number of that boat, 1 or more
	Most     float64 // times the hours of the plan, 1 or more
}

// Curve is how the people learn one model: what work takes at twice the number
// of boats, as a share of what it took, by kind of work. 1 is no learning; so is
// 0. Built is the boats of the model that were built before the run.
type Curve struct {
	Gel, Lamination, Assembly float64
	Built                     int
}

// Hires is how people of a craft come and go. Its zero value is off: everybody
// works at full speed.
type Hires struct {
	Turnover float64 // people who leave in a year, per place; each is replaced at once
	Ramp     float64 // days until a new person has full speed
	Start    float64 // speed of a new person, above 0 and at most 1
	Flaws    float64 // chance of flaws at the hands of a new person over the usual one, 1 or more
}

// UnitFactor is the time of the n-th unit over that of the first where every
// doubling takes rate times as long: n^(ln rate / ln 2), Wright's curve in its
// unit form. The cumulative average form is another model. rate and n above 0.
//
// Source: T. P. Wright, "Factors Affecting the Cost of Airplanes", Journal of
// the Aeronautical Sciences 3 (1936) 122; the unit form as in operations
// textbooks.
func UnitFactor(rate, n float64) float64 { return math.Pow(n, math.Log2(rate)) }

// rate is the learning of a kind of work; 1 for what is not learned.
func (c *Curve) rate(d record.Doing) float64 {
	rate := 0.0
	switch d {
	case record.Masking, record.Spraying:
		rate = c.Gel
	case record.Laminating:
		rate = c.Lamination
	case record.Assembling:
		rate = c.Assembly
	}
	if rate <= 0 {
		return 1
	}
	return rate
}

// learns tells whether some model is being learned.
func (p *Plan) learns() bool {
	for i := range p.Models {
		c := &p.Models[i].Curve
		if c.rate(record.Spraying) != 1 || c.rate(record.Laminating) != 1 || c.rate(record.Assembling) != 1 {
			return p.Learning.Standard > 1 && p.Learning.Most > 1
		}
	}
	return false
}

// Learned is how many times the hours of the plan a kind of work takes on the
// n-th boat of a model, from 1; 1 from the standard boat on.
func (p *Plan) Learned(model int16, d record.Doing, n int) float64 {
	c := &p.Models[model].Curve
	rate := c.rate(d)
	at := float64(c.Built + max(n, 1))
	if rate == 1 || p.Learning.Standard <= 1 || at >= p.Learning.Standard {
		return 1
	}
	return min(UnitFactor(rate, at/p.Learning.Standard), max(p.Learning.Most, 1))
}

// learned is what learning makes of the hours of a step of a job; exactly 1
// where nothing is learned.
func (r *Run) learned(b *job, s *Step) float64 {
	if !r.learning || b.unit == 0 {
		return 1
	}
	model := None
	switch {
	case b.part != None:
		model = int(r.plan.Parts[b.part].Model)
	case b.order != None:
		model = int(r.orders[b.order].model)
	}
	if model == None {
		return 1
	}
	return r.plan.Learned(int16(model), s.Doing, int(b.unit))
}

// countBoat gives a boat that is put together its number among those of its
// model.
func (r *Run) countBoat(b *job, model int16) {
	r.models[model].assembled++
	b.unit = r.models[model].assembled
}

// hireState is how long each place of a craft has been held by the same person.
type hireState struct {
	day    int
	leaves float64  // chance of a day
	tenure []uint32 // days, by place
	speed  float64
	flaws  float64
}

// startHires sets up the crafts that people leave. None does where no craft has
// turnover, and no luck is drawn.
func (r *Run) startHires() {
	r.learning = r.plan.learns()
	for c := range r.plan.Crafts {
		if r.plan.Crafts[c].Hires.Turnover > 0 {
			r.hires = make([]hireState, len(r.plan.Crafts))
			break
		}
	}
	for c := range r.hires {
		h := &r.hires[c]
		h.leaves = 1 - math.Exp(-r.plan.Crafts[c].Hires.Turnover/365.25)
		if h.leaves <= 0 {
			h.speed, h.flaws = 1, 1
			continue
		}
		for i := range r.plan.Crafts[c].Crews {
			for k := range r.plan.Crafts[c].Crews[i].People {
				stayed := math.Log(r.held(c, i, k).U(0)) / math.Log1p(-h.leaves)
				h.tenure = append(h.tenure, uint32(min(stayed, 1e6)))
			}
		}
		r.judgeHires(c)
	}
}

// held is the luck of one place in a crew of a craft: who leaves it, and when.
func (r *Run) held(c, crew, i int) draw.Key {
	return r.root.At2(luckTurnover, uint64(c), personSlot(crew, uint64(i)))
}

// hire brings a craft up to today.
func (r *Run) hire(c int16) *hireState {
	h := &r.hires[c]
	if today := int(r.clk.Now() / clock.Day); h.leaves > 0 && h.day != today {
		r.hireUntil(int(c), today)
	}
	return h
}

// hireUntil goes through days: on each day each person may leave, by the luck of
// the place and the date, and is replaced by a new one.
func (r *Run) hireUntil(c, day int) {
	h := &r.hires[c]
	for h.day < day {
		h.day++
		at := 0
		for i := range r.plan.Crafts[c].Crews {
			for k := range r.plan.Crafts[c].Crews[i].People {
				h.tenure[at]++
				if r.held(c, i, k).U(uint64(h.day)) < h.leaves {
					h.tenure[at] = 0
				}
				at++
			}
		}
	}
	r.judgeHires(c)
}

// judgeHires works out the mean speed of the people of a craft, and their share
// of flaws over the usual.
func (r *Run) judgeHires(c int) {
	x := &r.plan.Crafts[c].Hires
	h := &r.hires[c]
	h.speed, h.flaws = 1, 1
	if len(h.tenure) == 0 {
		return
	}
	green := 0.0
	for _, days := range h.tenure {
		if float64(days) < x.Ramp {
			green += 1 - float64(days)/x.Ramp
		}
	}
	green /= float64(len(h.tenure))
	h.speed -= green * (1 - x.Start)
	h.flaws += green * (max(x.Flaws, 1) - 1)
}

// crewSpeed is the mean speed of the people of a craft today, 1 at full speed.
func (r *Run) crewSpeed(c int16) float64 {
	if r.hires == nil || c == None {
		return 1
	}
	return r.hire(c).speed
}

// newHands is the chance of a flaw at the hands of the people who do the present
// step of a job over the usual one.
func (r *Run) newHands(b *job) float64 {
	if r.hires == nil || int(b.step) >= len(r.steps[b.route]) {
		return 1
	}
	c := r.step(b).Craft
	if c == None {
		return 1
	}
	return r.hire(c).flaws
}
