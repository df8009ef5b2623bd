package permit

import (
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Whole is one whole part, in the parts per million in which a Book counts.
const Whole = 1_000_000

// Plant is what a Book must know of the plant.
type Plant struct {
	Start    shift.Date // day of instant 0
	From, To clock.Time // counted time
	Models   []string
	Parts    []Part
	Routes   [][]Step    // by route and step
	Kinds    int         // kinds of background work
	Back     []int       // by route: which kind of background work it is, -1 for none
	Pots     [][]float64 // by place: minutes of a flush that only its pot guns take
}

// Part is a part type.
type Part struct {
	Model int
	Area  float64 // m²
	Film  float64 // wet gel coat, mm
	Thick float64 // laminate, mm
}

// Step is what the permit must know of a step of a route.
type Step struct {
	Use   Use   // of the part's materials; NoUse for most
	Share int64 // of one part's amount for that use, parts per million

	Lays   bool // laminating: tools are cleaned after it
	Sprays bool // gel coat
}

// step looks a step up; the zero Step for none.
func (p *Plant) step(route, step int16) Step {
	if route < 0 || step < 0 || int(route) >= len(p.Routes) || int(step) >= len(p.Routes[route]) {
		return Step{}
	}
	return p.Routes[route][step]
}

// back is the kind of background work of a route, -1 for none.
func (p *Plant) back(route int16) int {
	if route < 0 || int(route) >= len(p.Back) {
		return -1
	}
	return p.Back[route]
}
