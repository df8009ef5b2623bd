package sim

import "slices"

// rebind gives a finished part to the order that was begun first among those of
// its model that lack such a part, where any part will do; the order it was
// made for gets the part that is under way for that one.
func (r *Run) rebind(j int32) {
	b := &r.jobs[j]
	bit := uint8(1) << r.plan.Parts[b.part].Index
	to := r.firstWithout(r.orders[b.order].model, bit)
	if to == None || to == b.order {
		return
	}
	from := b.order
	b.order, b.number = to, r.orders[to].number
	for k := range r.jobs {
		q := &r.jobs[k]
		if int32(k) != j && q.kind == partJob && q.state != unused && q.state != stored && q.order == to && q.part == b.part {
			q.order, q.number = from, r.orders[from].number
			return
		}
	}
	r.setStarted(to, bit, true)
	r.setStarted(from, bit, false)
}

// firstWithout is the order of a model on the floor, begun first, that has no
// finished part of the kind; None when all have.
func (r *Run) firstWithout(model int16, bit uint8) int32 {
	best := int32(None)
	for i := range r.orders {
		o := &r.orders[i]
		if o.ended || !o.onFloor || o.model != model || o.done&bit != 0 {
			continue
		}
		if best == None || o.began < r.orders[best].began || o.began == r.orders[best].began && o.number < r.orders[best].number {
			best = int32(i)
		}
	}
	return best
}

// setStarted notes that a part of an order is, or is no longer, started, and
// keeps the list of open orders in step.
func (r *Run) setStarted(i int32, bit uint8, started bool) {
	o := &r.orders[i]
	m := &r.models[o.model]
	if started {
		o.started |= bit
	} else {
		o.started &^= bit
	}
	open := int(o.started) != 1<<len(r.plan.Models[o.model].Parts)-1
	switch {
	case open && !o.open:
		m.open = slices.Insert(m.open, 0, i)
	case !open && o.open:
		m.open = slices.DeleteFunc(m.open, func(k int32) bool { return k == i })
	}
	o.open = open
}
