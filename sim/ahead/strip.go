package ahead

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Strip is a strip of a mold, with the day that costs least.
type Strip struct {
	*Thing
	Turns int  // parts since the strip before, in most futures
	Apart int  // days that it may be away from its day, 8 times in 10
	Later bool // or later: in more than 1 of 10 futures it is not in the time looked at
	Under bool // under way in the morning

	// Slot is the day on which the people who strip have most time free, of the
	// days on which the mold is empty in most futures, from one turn before it is
	// due until the next part after that; its own work counts as free time.
	// Day where there is no other.
	Slot             int
	FreeDay, FreeNow clock.Time // people's free time on Slot and on Day
}

// strips finds every strip and its slot.
func (b *Board) strips(c *things, futures []Future) {
	for _, x := range c.list {
		if x.Doing != record.Stripping {
			continue
		}
		d := b.on(x.Day, x.Chance)
		if d == nil {
			continue
		}
		s := Strip{Thing: x, Slot: x.Day}
		s.Turns = b.turns(x, futures)
		s.spread(b.Setup.Morning())
		b.slot(&s, futures)
		d.Strips = append(d.Strips, s)
	}
	for i := range b.Days {
		slices.SortStableFunc(b.Days[i].Strips, func(a, b Strip) int { return sooner(a.Thing, b.Thing) })
	}
}

// turns is how many parts the mold has made since its strip before, in most
// futures.
func (b *Board) turns(x *Thing, futures []Future) int {
	var all []int
	for f, t := range x.In {
		if t == nil {
			continue
		}
		n := b.since(x.Mold)
		for i := range futures[f].Pulls {
			if p := &futures[f].Pulls[i]; p.Mold == x.Mold && p.At <= t.Began {
				n = int(p.Turns)
			}
		}
		all = append(all, n)
	}
	n, _ := most(all)
	return n
}

// since is how many parts a mold had made since its strip in the morning.
func (b *Board) since(mold int32) int {
	for i := range b.Setup.Start.Molds {
		if m := &b.Setup.Start.Molds[i]; m.Mold == mold && m.Since >= 0 {
			return m.Since
		}
	}
	return max(b.Setup.Plan.Molds[mold].Since, 0)
}

// spread is how far its day may move.
func (s *Strip) spread(morning clock.Time) {
	w := s.When(BegunAt)
	early, late := w.Given().Surely(0.1), w.Given().Surely(0.9)
	s.Apart = max(s.Day-int((early-morning)/clock.Day), int((late-morning)/clock.Day)-s.Day, 0)
	s.Later = w.Surely(0.9) == clock.Never
}
