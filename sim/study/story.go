package study

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Story is the life of one order, or of one mold, in one replication.
type Story struct {
	Plan     *sim.Plan
	From, To clock.Time    // the lead time of an order; the stretch asked for of a mold
	Fate     *record.Fate  // of the order; nil for a mold
	Mold     int32         // -1 for an order
	Lives    []record.Life // of an order one for each part, all as long as From to To; of a mold one
	Notes    []record.Note // about it, in the order of time
}

// NoSuchOrder is the error for an order that a run does not have.
type NoSuchOrder struct {
	Order  int32 // from 0
	Orders int   // in the run
}

func (e *NoSuchOrder) Error() string {
	return fmt.Sprintf("there is no order %d, the run has %d", e.Order+1, e.Orders)
}

// OrderStory runs one replication of a plan of an alternative twice: to find the
// order, which is numbered from 0, and to keep what happened while it was there.
// With orders always waiting its life begins with its first part, otherwise when
// it comes.
func OrderStory(a *Alternative, plan *sim.Plan, seed uint64, replication int, order int32) (*Story, error) {
	air, err := a.Air(seed, replication)
	if err != nil {
		return nil, err
	}
	f := record.NewFate(order)
	if err := sim.Simulate(plan, air, seed, replication, f); err != nil {
		return nil, err
	}
	if f.Model < 0 {
		return nil, &NoSuchOrder{order, f.Orders}
	}
	s := &Story{Plan: plan, From: f.Arrived, To: min(f.Ended, plan.Length), Fate: f, Mold: sim.None}
	if plan.Demand.Full && f.Began < clock.Never {
		s.From = f.Began
	}
	r := record.NewRecorder(s.From, s.To)
	r.Limits = floorLimits(plan)
	if err := sim.Simulate(plan, air, seed, replication, r); err != nil {
		return nil, err
	}
	if err := Complete(r); err != nil {
		return nil, err
	}
	s.Lives, err = r.OrderLife(order, plan.Models[f.Model].Parts)
	s.note(r, func(n *record.Note) bool { return n.Order == order })
	return s, err
}

// MoldStory runs one replication of a plan of an alternative and keeps what mold
// m did from from to before to.
func MoldStory(a *Alternative, plan *sim.Plan, seed uint64, replication int, m int32, from, to clock.Time) (*Story, error) {
	air, err := a.Air(seed, replication)
	if err != nil {
		return nil, err
	}
	r := record.NewRecorder(from, to)
	r.Limits = floorLimits(plan)
	if err := sim.Simulate(plan, air, seed, replication, r); err != nil {
		return nil, err
	}
	if err := Complete(r); err != nil {
		return nil, err
	}
	l, err := r.MoldLife(m)
	s := &Story{Plan: plan, From: from, To: to, Mold: m, Lives: []record.Life{l}}
	s.note(r, func(n *record.Note) bool { return n.Mold == m })
	return s, err
}

// floorLimits are what the plan says of work on the floor.
func floorLimits(p *sim.Plan) record.FloorLimits {
	l := record.FloorLimits{All: p.Demand.FloorLimit}
	for i := range p.Demand.Models {
		l.Models = append(l.Models, p.Demand.Models[i].Floor)
	}
	for i := range p.Parts {
		l.OfPart = append(l.OfPart, p.Parts[i].Model)
	}
	return l
}

// Complete fails when a recorder had to leave facts out.
func Complete(r *record.Recorder) error {
	if r.Dropped > 0 {
		return fmt.Errorf("more happened than is kept of one run: %d facts of %d were left out", r.Dropped, r.Dropped+r.Most)
	}
	return nil
}

func (s *Story) note(r *record.Recorder, about func(*record.Note) bool) {
	for i := range r.Notes {
		if about(&r.Notes[i]) {
			s.Notes = append(s.Notes, r.Notes[i])
		}
	}
}
