package record

import "moldturn/sim/clock"

// Fate is an Observer that finds when an order came, was begun and ended. Make
// one with NewFate.
type Fate struct {
	Nothing
	Order                 int32
	Orders                int // of the whole run
	Model                 int16
	Arrived, Began, Ended clock.Time // clock.Never where it did not come to that
	Shipped, Cancelled    bool
	Last                  Ship // the shipment, when Shipped
}

// NewFate follows one order; orders are numbered from 0.
func NewFate(order int32) *Fate {
	return &Fate{Order: order, Model: -1, Arrived: clock.Never, Began: clock.Never, Ended: clock.Never}
}

// Note implements Observer.
func (f *Fate) Note(n *Note) {
	if n.Kind == OrderArrived {
		f.Orders++
	}
	if n.Order != f.Order {
		return
	}
	switch n.Kind {
	case OrderArrived:
		f.Arrived, f.Model = n.At, n.Model
	case BoatBegun:
		f.Began = n.At
	case OrderCancelled:
		f.Ended, f.Cancelled = n.At, true
	}
}

// Ship implements Observer.
func (f *Fate) Ship(s *Ship) {
	if s.Order == f.Order {
		f.Ended, f.Shipped, f.Last = s.At, true, *s
	}
}
