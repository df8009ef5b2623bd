package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Board is a plan of the next days, made of what happens in most futures. A
// thing stands on the day on which it is begun most often, with its chance; what
// is less likely than Least on its day is left out.
type Board struct {
	Setup *Setup
	Days  []Day
	Left  int // how many things were left out
}

// Least is the chance from which on a thing stands on its day.
const Least = 0.1

// Day is what stands on one day.
type Day struct {
	From   clock.Time // its midnight
	Works  bool       // somebody is at work
	Pulls  []*Thing   // in the order of their time, like those below
	Strips []Strip
	Booths []BoothDay
	Risks  []Risk
	Leaves []Leaving
	Short  []Short // those for whom most work waits first
}

// Leaving is an order of the start that leaves.
type Leaving struct {
	Order  int
	At     When
	Chance float64 // that it leaves on this day
}

// BoardOf lays out the first days of some futures, which must reach at least as
// far. Reaching further keeps the last days free of cut-off work.
func BoardOf(s *Setup, futures []Future, days int) *Board {
	b := &Board{Setup: s, Days: make([]Day, days)}
	for d := range b.Days {
		b.Days[d].From = s.Morning() + clock.Time(d)*clock.Day
		b.Days[d].Works = works(futures, d)
	}
	c := collect(s, futures)
	b.pulls(c)
	b.strips(c, futures)
	b.sprays(c, futures)
	b.risks(c, futures)
	b.leaves(futures)
	b.short(futures)
	return b
}

// works says whether anybody is at work on a day, in any future.
func works(futures []Future, day int) bool {
	for f := range futures {
		for _, days := range futures[f].There {
			if days[day] > 0 {
				return true
			}
		}
	}
	return false
}

// on is the day that a thing stands on; nil for one that is left out.
func (b *Board) on(day int, chance float64) *Day {
	if day < 0 || day >= len(b.Days) {
		return nil
	}
	if chance < Least {
		b.Left++
		return nil
	}
	return &b.Days[day]
}

func (b *Board) pulls(c *things) {
	for _, x := range c.list {
		if x.Doing == record.Pulling {
			if d := b.on(x.Day, x.Chance); d != nil {
				d.Pulls = append(d.Pulls, x)
			}
		}
	}
	for i := range b.Days {
		slices.SortStableFunc(b.Days[i].Pulls, sooner)
	}
}

// sooner orders things by their middle time, then by mold.
func sooner(a, b *Thing) int {
	return cmp.Or(cmp.Compare(a.Middle(BegunAt), b.Middle(BegunAt)), cmp.Compare(a.Mold, b.Mold), cmp.Compare(a.Nth, b.Nth))
}

// Middle is the middle of an instant over the futures in which the thing is
// begun.
func (x *Thing) Middle(of func(*Task) clock.Time) clock.Time {
	return x.When(of).Given().Surely(0.5)
}

func (b *Board) leaves(futures []Future) {
	for i, w := range Shipped(futures, len(b.Setup.Start.Orders)) {
		var days []int
		for _, t := range w.Given() {
			days = append(days, int((t-b.Setup.Morning())/clock.Day))
		}
		if len(days) == 0 {
			continue
		}
		day, share := most(days)
		share *= w.Ever()
		if d := b.on(day, share); d != nil {
			d.Leaves = append(d.Leaves, Leaving{Order: i, At: w, Chance: share})
		}
	}
}
