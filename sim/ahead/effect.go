package ahead

import (
	"context"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/stats"
)

// Effect is what changes do to the orders of the start, and what would help.
type Effect struct {
	Changes []Change
	Net     stats.Summary // days that all orders together leave later, over the futures pair by pair
	Hurt    []int         // orders that clearly leave later, as indices into those of the start
	Lost    stats.Summary // days that those together leave later
	Late    float64       // orders that leave after their date, on average
	Before  float64       // the same without the changes
	Moved   []Moved
	Options []Option // ways that were tried: those that help clearly first; nil where nothing clear is lost
	Reserve bool     // a mold is in reserve, so that its use was tried
	Length  clock.Time
}

// Confidence is that of the intervals over the futures of a board.
const Confidence = 0.95

// fewestLost is how many days, of all orders together, are worth a word.
const fewestLost = 0.5

// Costs says whether the changes clearly make orders leave later by an amount
// worth a word: one of them, or all of them together.
func (e *Effect) Costs() bool {
	if !e.Lost.Known() || e.Lost.Low <= 0 || e.Lost.Mean < fewestLost {
		return false
	}
	one := slices.ContainsFunc(e.Moved, func(m Moved) bool { return m.Days >= fewestDays && m.Days > m.Half })
	return one || e.Net.Low > 0 && e.Net.Mean >= fewestLost
}

// Gains says whether the changes clearly make the orders leave earlier, and
// clearly cost no order much.
func (e *Effect) Gains() bool {
	return !e.Costs() && e.Net.Known() && e.Net.High < 0 && e.Net.Mean <= -fewestLost
}

// Weigh runs the futures under the same luck without changes, with them, and,
// where they clearly cost days, with each way to recover on top. The futures
// given back are those with the changes.
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
	e := &Effect{Changes: changes, Net: later(s, before, after), Hurt: hurt(before, after), Late: late(s, after), Before: late(s, before),
		Moved: moved(s.Start.Orders, before, after, true), Reserve: s.reserve(), Length: s.Plan.Length - s.Morning()}
	e.Lost = later(s, those(before, e.Hurt), those(after, e.Hurt))
	if !e.Costs() {
		return e, changed, with, nil
	}
	for _, c := range ways(changed, with) {
		futures, err := changed.With(c).Run(ctx)
		if err != nil {
			return nil, nil, nil, err
		}
		left := Shipped(futures, n)
		o := OptionOf(c, e.Lost.Mean, later(s, those(left, e.Hurt), those(after, e.Hurt)), later(s, left, after))
		o.Late, o.Hours = late(s, left), hours(futures)-hours(with)
		e.Options = append(e.Options, o)
	}
	slices.SortStableFunc(e.Options, better)
	return e, changed, with, nil
}

func (s *Setup) reserve() bool {
	return slices.ContainsFunc(s.Start.Molds, func(m sim.StartMold) bool { return m.Stands == sim.MoldInReserve })
}

// hurt lists the orders that clearly leave later, on average over the futures in
// which they leave either way.
func hurt(before, after []When) []int {
	var out []int
	for i := range before {
		if d := apart(before[i], after[i]); d.Known() && d.Low > 0 {
			out = append(out, i)
		}
	}
	return out
}

// those picks some orders out.
func those(w []When, orders []int) []When {
	var out []When
	for _, i := range orders {
		out = append(out, w[i])
	}
	return out
}

// later is by how many days all orders together leave later in b than in a,
// future by future; those that are there at the end of the time looked at count
// as leaving then.
func later(s *Setup, a, b []When) stats.Summary {
	days := make([]float64, s.Futures)
	for i := range a {
		for f := range a[i] {
			days[f] += float64(min(b[i][f], s.Plan.Length)-min(a[i][f], s.Plan.Length)) / float64(clock.Day)
		}
	}
	return stats.TInterval(days, Confidence)
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
