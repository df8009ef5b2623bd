package money

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Pull implements record.Observer: the part has taken its materials.
func (b *Book) Pull(p *record.Pull) {
	if b.in(p.At) {
		b.q.Pulled[p.Part]++
	}
	if !p.Stuck {
		delete(b.stuck, p.Mold)
	}
}

// forget gives up what is known of a part.
func (b *Book) forget(key partKey) {
	if p := b.parts[key]; p != nil {
		p.labor, p.respray = p.labor[:0], false
		b.free = append(b.free, p)
		delete(b.parts, key)
	}
}

// scrapped takes the labor of a part that is thrown away along as failure.
func (b *Book) scrapped(n *record.Note) {
	key := keyOf(n.Order, n.Part)
	if p := b.parts[key]; p != nil {
		b.scrap(p, b.plant.Parts[n.Part].Model)
	}
	b.forget(key)
}

// scrap moves the labor in a part from work to failure.
func (b *Book) scrap(p *piece, model int) {
	for _, x := range p.labor {
		by := &b.q.Labor[x.craft][x.doing]
		by[Work][model] -= x.time
		by[InternalFailure][model] += x.time
	}
}

// Ship implements record.Observer.
func (b *Book) Ship(s *record.Ship) {
	b.countFloor(s.At)
	b.floor[s.Model]--
	for i := range b.plant.Parts {
		if b.plant.Parts[i].Model == int(s.Model) {
			b.forget(keyOf(s.Order, int16(i)))
		}
	}
	if s.Escaped {
		b.q.EscapesByWeek[week(s.At-b.plant.From)]++
	}
	if !b.in(s.At) {
		return
	}
	b.q.Shipped[s.Model]++
	if s.Escaped {
		b.q.Escaped[s.Model]++
	}
	if s.Due < clock.Never && s.At > s.Due {
		b.q.LateTime[s.Model] += int64(s.At - s.Due)
	}
}

// week is the whole weeks in t, rounded down also below zero.
func week(t clock.Time) int {
	w := int(t / clock.Week)
	if t%clock.Week < 0 {
		w--
	}
	return w
}

// Note implements record.Observer.
func (b *Book) Note(n *record.Note) {
	switch n.Kind {
	case record.OrderArrived:
		b.learn(n.Order, n.Model)
	case record.BoatBegun:
		b.countFloor(n.At)
		b.floor[n.Model]++
	case record.Stuck:
		b.stuck[n.Mold] = true
	case record.Scrapped:
		b.scrapped(n)
	case record.Resprayed:
		b.pieceOf(keyOf(n.Order, n.Part)).respray = true
	}
	if !b.in(n.At) {
		return
	}
	if list := b.counts(n); list != nil && n.Part >= 0 {
		list[n.Part]++
	}
}

// counts is the list by part type in which a note is counted.
func (b *Book) counts(n *record.Note) []int64 {
	switch n.Kind {
	case record.Scrapped:
		return b.q.Scrapped
	case record.Resprayed:
		return b.q.Resprayed
	case record.WaxCoat:
		return b.q.Coats
	case record.LightStrip:
		return b.q.Light
	case record.FullStrip:
		return b.q.Full
	case record.Resurfaced:
		return b.q.Resurfaced
	case record.Retired:
		return b.q.Renewed
	case record.Flushed:
		if b.pot(n.Value) {
			return b.q.PotFlush
		}
		return b.q.PumpFlush
	}
	return nil
}

// pot tells a flush of a pot gun from that of a pumped one by its length; what
// fits both, or none, counts as pumped.
func (b *Book) pot(minutes float64) bool {
	return among(b.plant.PotFlush, minutes) && !among(b.plant.PumpFlush, minutes)
}

func among(list []float64, x float64) bool {
	for _, y := range list {
		if y == x {
			return true
		}
	}
	return false
}

// learn keeps the model of an order.
func (b *Book) learn(order int32, model int16) {
	for int(order) >= len(b.model) {
		b.model = append(b.model, int16(len(b.plant.Models)))
	}
	b.model[order] = model
}
