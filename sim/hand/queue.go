package hand

import (
	"math"

	"moldturn/sim"
	"moldturn/sim/exact"
)

// queueing is what the plant could make when molds and boats wait for people as
// chance has it: the loop of the molds solved by mean value analysis, put as one
// station into the loop of the boats on the floor (flow-equivalent service:
// Chandy, Herzog and Woo 1975, IBM J. Res. Dev. 19:36–42; from memory).
//
// It is an approximation of a real plant: all molds are one mean mold, a craft
// works around the clock at the share of the week that it is there, work outside
// a loop takes its share of the people away from it (reduced work rate: Sevcik
// 1977; from memory), hours of work are exponential, places only bound the answer.
func (h *paper) queueing(t *Table) (boats float64, narrow Narrow) {
	molds := 0
	for _, m := range t.Molds {
		molds += m.Count
	}
	parts := h.moldedParts(t)
	if molds == 0 || parts == 0 || len(t.Limits) == 0 || parts*float64(molds) > mostLoop {
		return 0, narrow
	}
	x := t.Limits[0].Boats
	var stops []exact.Stop
	for range 60 {
		stops = h.moldStops(t, molds, parts, x)
		loop, err := exact.Solve(molds, stops)
		if err != nil {
			return 0, narrow
		}
		next := h.boatLoop(t, parts, loop, x)
		if next == 0 || math.Abs(next-x) < 1e-6*x {
			x = next
			break
		}
		x = (x + next) / 2
	}
	if b := exact.Bounds(molds, stops); b.Narrow >= 0 {
		narrow = Narrow{Craft: stops[b.Narrow].Name, Molds: b.Critical}
	}
	return min(x, t.Limits[0].Boats), narrow
}

// Narrow is the narrowest station of the loop of the molds, by the asymptotic
// bounds of exact.Bounds: with more molds than Molds its people are the limit,
// with fewer the molds are. The zero Narrow is not worked out.
type Narrow struct {
	Craft string  `json:"craft"`
	Molds float64 `json:"molds"`
}

// mostLoop bounds what queueing solves, so that a check stays quick.
const mostLoop = 5000

// moldedParts is how many molds the mean boat takes.
func (h *paper) moldedParts(t *Table) float64 {
	n := 0.0
	for m := range h.plan.Models {
		for _, i := range h.plan.Models[m].Parts {
			if h.plan.Parts[i].Care != sim.None {
				n += t.Models[m].Share
			}
		}
	}
	return n
}

// moldStops are the stations of the loop of the mean mold, while the plant makes
// x boats a week.
func (h *paper) moldStops(t *Table, molds int, parts, x float64) []exact.Stop {
	inside := h.inTurns(t)
	var stops []exact.Stop
	alone := 0.0 // hours of a turn that people take, calendar included
	for i := range t.Crafts {
		c := &t.Crafts[i]
		if inside[i].people == 0 {
			continue
		}
		open := h.rhythm(int16(i)).week
		alone += inside[i].hours / parts / (open / 168)
		stops = append(stops, c.stop(inside[i].scaled(1/parts), c.left(x*(c.PerBoat-inside[i].people)), open))
	}
	turn, still := 0.0, 0.0
	for _, m := range t.Molds {
		share := float64(m.Count) / float64(molds)
		turn += share * 168 / max(m.Turns, 1e-9)
		still += share * (m.Waits + m.Hold)
	}
	return append(stops, exact.Stop{Name: "waits, hold and nights", Time: max(turn-alone, still, 0.01), Visits: 1, Servers: exact.Delay})
}

// boatLoop gives boats a week: boats on the floor up to its limit, in their
// molds or with the people who finish them.
func (h *paper) boatLoop(t *Table, parts float64, molds []exact.Loop, x float64) float64 {
	floor := h.plan.Demand.FloorLimit
	if floor == 0 || floor > 400 {
		return molds[len(molds)-1].X * 168 / parts
	}
	first := molds[min(int(math.Ceil(parts)), len(molds))-1].X / parts
	stage := exact.Stop{Name: "molds", Time: 1 / first, Visits: 1, Servers: 1}
	for k := 1; k <= floor; k++ {
		n := min(int(math.Ceil(float64(k)*parts)), len(molds))
		stage.Speeds = append(stage.Speeds, molds[n-1].X/parts/first)
		if n == len(molds) {
			break
		}
	}
	stops := []exact.Stop{stage}
	inside := h.inTurns(t)
	for i := range t.Crafts {
		c := &t.Crafts[i]
		after := crewWork{people: c.PerBoat - inside[i].people}
		if after.people < 0.01 {
			continue
		}
		after.hours = after.people / h.gang(t, i)
		stops = append(stops, c.stop(after, c.left(x*inside[i].people), h.rhythm(int16(i)).week))
	}
	loops, err := exact.Solve(floor, stops)
	if err != nil {
		return 0
	}
	return loops[floor-1].X * 168
}

// crewWork is work of people of one craft: people hours, and clock hours.
type crewWork struct{ people, hours float64 }

func (w crewWork) scaled(k float64) crewWork { return crewWork{w.people * k, w.hours * k} }

// left is the share of a craft's hours left beside other work of so many hours a
// week; a twentieth at least.
func (c *Craft) left(other float64) float64 {
	if c.Available <= 0 {
		return 0.05
	}
	return max(1-other/c.Available, 0.05)
}

// stop is a craft as a station: as many servers as gangs are there at a time, at
// a speed that makes its capacity that of the hours there are for this work.
func (c *Craft) stop(w crewWork, share, open float64) exact.Stop {
	there := 0.0
	for _, crew := range c.Crews {
		there += float64(crew.People) * crew.Hours
	}
	gangs := max(1, math.Round(there/max(open, 1)/(w.people/w.hours)))
	return exact.Stop{Name: c.Name, Visits: 1, Servers: int(gangs), Time: gangs * 168 * w.people / max(c.Available*share, 1e-6)}
}

// inTurns is the work of each craft in the turns of the molds of the mean boat.
func (h *paper) inTurns(t *Table) []crewWork {
	out := make([]crewWork, len(h.plan.Crafts))
	for i := range h.plan.Parts {
		part := &h.plan.Parts[i]
		if part.Care == sim.None {
			continue
		}
		for _, s := range h.turn(part) {
			h.count(out, s, part, t.Models[part.Model].Share)
		}
	}
	return out
}

// count adds a step of a part, or of a boat, that is done so often.
func (h *paper) count(out []crewWork, s *sim.Step, part *sim.Part, often float64) {
	if s.Craft == sim.None || s.Pace != sim.Labor {
		return
	}
	hours, _ := h.hours(s)
	hours *= often * h.often(s.When, part)
	out[s.Craft].people += float64(s.Want) * hours
	out[s.Craft].hours += hours
}

// gang is how many people of a craft work together on the mean.
func (h *paper) gang(t *Table, craft int) float64 {
	all := make([]crewWork, len(h.plan.Crafts))
	for i := range h.plan.Parts {
		part := &h.plan.Parts[i]
		for k := range h.plan.Routes[part.Route].Steps {
			h.count(all, &h.plan.Routes[part.Route].Steps[k], part, t.Models[part.Model].Share)
		}
	}
	for m := range h.plan.Models {
		for k := range h.plan.Routes[h.plan.Models[m].Boat].Steps {
			h.count(all, &h.plan.Routes[h.plan.Models[m].Boat].Steps[k], nil, t.Models[m].Share)
		}
	}
	if all[craft].hours == 0 {
		return 1
	}
	return all[craft].people / all[craft].hours
}
