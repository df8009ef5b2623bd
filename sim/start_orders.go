package sim

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// standOrder puts an order of a start into the list of its model. It is not
// cancelled, however late it is: the shop still has it in its book.
func (r *Run) standOrder(s *StartOrder) {
	i := r.newOrder(s.Model)
	o := &r.orders[i]
	o.band, o.urgent, o.dated, o.due = s.Band, s.Urgent, s.Due < clock.Never, s.Due
	if s.Color != None {
		o.color = s.Color
	}
	if s.Arrived != Unknown {
		o.arrived = s.Arrived
	}
	m := &r.models[s.Model]
	m.open = slices.DeleteFunc(m.open, func(k int32) bool { return k == i })
	r.enqueue(i)
	r.wanted(s.Model)
}

// onTheFloor makes an order one that was begun before the start.
func (r *Run) onTheFloor(s *Start, i int32) {
	o := &r.orders[i]
	if o.onFloor {
		return
	}
	o.onFloor, o.began = true, r.from
	if t := s.Orders[i].Began; t != Unknown {
		o.began = t
	}
	for k := range s.Work {
		if w := &s.Work[k]; w.Order == i {
			for _, t := range []clock.Time{w.Begun, w.Sprayed, w.Skinned, w.Laminated} {
				if t != Unknown {
					o.began = min(o.began, t)
				}
			}
		}
	}
	o.arrived = min(o.arrived, o.began)
	r.onFloor++
	r.models[o.model].onFloor++
	r.note(record.Note{Kind: record.BoatBegun, Order: i, Mold: None, Part: None, Place: None})
}

// startedBefore notes that some parts of an order were started.
func (r *Run) startedBefore(i int32, parts ...int16) {
	o := &r.orders[i]
	for _, p := range parts {
		o.started |= 1 << r.plan.Parts[p].Index
		r.parts[p].started++
	}
	if int(o.started) == 1<<len(r.plan.Models[o.model].Parts)-1 && o.open {
		o.open = false
		m := &r.models[o.model]
		m.open = slices.DeleteFunc(m.open, func(k int32) bool { return k == i })
	}
}
