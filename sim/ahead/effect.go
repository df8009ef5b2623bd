package ahead

import (
	"cmp"
	"context"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
)

// Effect is what changes do to the orders of the start, and what would help.
type Effect struct {
	Changes []Change
	Lost    float64 // days that all orders together leave later, on average
	Late    float64 // orders that leave after their date, on average
	Before  float64 // the same without the changes
	Moved   []Moved
	Options []Option // what wins most first
	Reserve bool     // a mold is in reserve, so that its use was tried
}

// Option is a way to recover.
type Option struct {
	Change
	Won  float64 // days that all orders together leave earlier than without it, on average
	Late float64 // orders that leave after their date, on average
}

// Weigh runs the futures under the same luck without changes, with them, and
// with each way to recover on top. The futures given back are those with the
// changes.
func Weigh(ctx context.Context, s *Setup, changes []Change) (*Effect, *Setup, []Future, error) {
	without, err := s.Run(ctx)
	if err != nil {
		return nil, nil, nil, err
	}
	changed := s.With(changes...)
	with, err := changed.Run(ctx)
	if err != nil {
		return nil, nil, nil, err
	}
	n := len(s.Start.Orders)
	before, after := Shipped(without, n), Shipped(with, n)
	e := &Effect{Changes: changes, Lost: later(s, before, after), Late: late(s, after), Before: late(s, before), Moved: moved(s.Start.Orders, before, after, true), Reserve: s.reserve()}
	for _, c := range ways(changed, with) {
		futures, err := changed.With(c).Run(ctx)
		if err != nil {
			return nil, nil, nil, err
		}
		left := Shipped(futures, n)
		e.Options = append(e.Options, Option{Change: c, Won: -later(s, after, left), Late: late(s, left)})
	}
	slices.SortStableFunc(e.Options, func(a, b Option) int { return cmp.Compare(b.Won, a.Won) })
	return e, changed, with, nil
}

func (s *Setup) reserve() bool {
	return slices.ContainsFunc(s.Start.Molds, func(m sim.StartMold) bool { return m.Stands == sim.MoldInReserve })
}

// later is by how many days all orders together leave later, on average; those
// that are there at the end of the time looked at count as leaving then.
func later(s *Setup, a, b []When) float64 {
	sum := clock.Time(0)
	for i := range a {
		for f := range a[i] {
			sum += min(b[i][f], s.Plan.Length) - min(a[i][f], s.Plan.Length)
		}
	}
	return float64(sum) / float64(clock.Day) / float64(s.Futures)
}

// late is how many orders leave after their date, on average.
func late(s *Setup, w []When) float64 {
	sum := 0.0
	for i := range w {
		if due := s.Start.Orders[i].Due; due <= s.Plan.Length {
			sum += 1 - w[i].By(due)
		}
	}
	return sum
}
