package record

import "moldturn/sim/clock"

// FloorLimits are the limits of work on the floor, to tell which boats fill it.
// The zero value knows of none: then every boat on the floor does.
type FloorLimits struct {
	All    int     // boats of all models; 0: no limit
	Models []int   // boats of each model; 0 or short: no limit
	OfPart []int16 // the model of each part type
}

// boat is an order on the floor, from its first part to its shipping.
type boat struct {
	order    int32
	model    int16
	from, to clock.Time // to is clock.Never while it is there
}

// noteFloor keeps who was on the floor during the stretch that is kept. A boat
// that came before it counts, one that left before it does not.
func (r *Recorder) noteFloor(n *Note) {
	switch n.Kind {
	case OrderArrived:
		for int(n.Order) >= len(r.models) {
			r.models = append(r.models, -1)
		}
		r.models[n.Order] = n.Model
	case BoatBegun:
		if n.At < r.To {
			b := boat{order: n.Order, model: -1, from: n.At, to: clock.Never}
			if int(n.Order) < len(r.models) {
				b.model = r.models[n.Order]
			}
			r.boats = append(r.boats, b)
		}
	}
}

func (r *Recorder) leaveFloor(s *Ship) {
	for i := range r.boats {
		b := &r.boats[i]
		if b.order != s.Order || b.to != clock.Never {
			continue
		}
		if b.to = s.At; b.to <= r.From {
			r.boats = append(r.boats[:i], r.boats[i+1:]...)
		}
		return
	}
}

// onFloor adds to h the boats that filled the floor during a wait for its limit,
// each once, with what it did for most of that time. When the floor was not full
// as a whole, the limit of the model was reached, and its boats are named.
func (r *Recorder) onFloor(h Held, wait *Span) Held {
	var there []boat
	sum := clock.Time(0)
	for _, b := range r.boats {
		b.from, b.to = max(b.from, wait.From), min(b.to, wait.To)
		if b.to > b.from && (wait.Order < 0 || b.order != wait.Order) {
			there = append(there, b)
			sum += b.to - b.from
		}
	}
	whole := r.Limits.All > 0 && sum >= clock.Time(r.Limits.All)*(wait.To-wait.From)
	model := r.Limits.modelOf(wait.Part)
	for i := range there {
		if b := &there[i]; whole || model < 0 || b.model == model {
			h = h.withBoat(r.mostly(b), b.to-b.from)
		}
	}
	return h
}

// modelOf is the model of a part type if it has a limit of its own, or -1.
func (l *FloorLimits) modelOf(part int16) int16 {
	if part < 0 || int(part) >= len(l.OfPart) {
		return -1
	}
	m := l.OfPart[part]
	if int(m) >= len(l.Models) || l.Models[m] == 0 {
		return -1
	}
	return m
}

// mostly is what a boat or one of its parts did for the longest time in a row.
func (r *Recorder) mostly(b *boat) Holder {
	out := Holder{Job: -1, Order: b.order, Mold: -1, Part: -1, Route: -1, Step: -1}
	longest := clock.Time(0)
	for i := range r.Spans {
		s := &r.Spans[i]
		if s.Order != b.order || s.Job < 0 {
			continue
		}
		if d := min(s.To, b.to) - max(s.From, b.from); d > longest {
			longest = d
			out.Part, out.Route, out.Step = s.Part, s.Route, s.Step
			out.Doing, out.Working, out.Cause = s.Doing, s.Working, s.Cause
		}
	}
	return out
}

// withBoat adds time of a boat; one boat is one holder, whatever it did.
func (h Held) withBoat(n Holder, d clock.Time) Held {
	for i := range h {
		if h[i].Order == n.Order {
			h[i].For += d
			return h
		}
	}
	n.For = d
	return append(h, n)
}
