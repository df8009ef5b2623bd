package ahead

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// slot looks for the day that costs least.
func (b *Board) slot(s *Strip, futures []Future) {
	craft, _ := s.Most(func(t *Task) int { return int(t.Craft) })
	if s.Under = s.begunBefore(b.Setup.Start.At); craft < 0 || s.Under {
		return
	}
	free := make([]clock.Time, len(b.Days))
	there := make([]clock.Time, len(b.Days))
	empty := make([]int, len(b.Days))
	n := 0
	for f, t := range s.In {
		for d := range free {
			free[d] += futures[f].Free[craft][d]
			there[d] += futures[f].There[craft][d]
		}
		if t != nil {
			n++
			b.own(free, t)
			b.empty(empty, &futures[f], t)
		}
	}
	for d := range free {
		free[d] /= clock.Time(len(futures))
	}
	for d := range free {
		open := 2*empty[d] > n && there[d] > 0
		if open && (free[d] > free[s.Slot] || free[d] == free[s.Slot] && d < s.Slot) {
			s.Slot = d
		}
	}
	s.FreeDay, s.FreeNow = free[s.Slot], free[s.Day]
}

// begunBefore says whether a strip is under way in the morning.
func (x *Thing) begunBefore(t clock.Time) bool { return x.When(BegunAt).By(t+1) >= 0.5 }

// own counts the work of a strip as free time of the day on which it is begun.
func (b *Board) own(free []clock.Time, t *Task) {
	if d := int((t.Began - b.Setup.Morning()) / clock.Day); d < len(free) {
		free[d] += t.Worked * clock.Time(max(t.People, 1))
	}
}

// empty counts the days of a future on which a mold is empty, for some time at
// least, and a strip is not before its time by more than a turn nor late: from
// the pull before the last until the next part, but for the time of the part
// between.
func (b *Board) empty(days []int, f *Future, strip *Task) {
	from, until := b.stretches(f, strip)
	seen := make([]bool, len(days))
	for i := range from {
		first := max(int((from[i]-b.Setup.Morning())/clock.Day), 0)
		for d := first; d < len(days) && b.Days[d].From < until[i]; d++ {
			if !seen[d] {
				seen[d] = true
				days[d]++
			}
		}
	}
}

// stretches are the time that holds a strip and, if the mold was not stripped in
// it, the one before, in each of which the mold is empty.
func (b *Board) stretches(f *Future, strip *Task) (from, until []clock.Time) {
	open := clock.Never // the mold is empty since
	if !b.full(strip.Mold) {
		open = b.Setup.Start.At
	}
	held, stripped := false, false
	for _, i := range begun(f.Tasks) {
		t := &f.Tasks[i]
		if t.Mold != strip.Mold {
			continue
		}
		switch t.Doing {
		case record.Stripping:
			held = held || t.Began == strip.Began
			stripped = true
		case record.Masking, record.Spraying:
			if open == clock.Never {
				continue // a second coat on the same part
			}
			from, until = append(from, open), append(until, t.Began)
			if stripped && !held {
				from, until = from[:0], until[:0]
			}
			open, stripped = clock.Never, false
			if held {
				return tail(from, until)
			}
		case record.Pulling:
			open = t.End
		}
	}
	if held && open != clock.Never {
		from, until = append(from, open), append(until, b.Setup.Plan.Length)
	}
	return tail(from, until)
}

// tail is the last two stretches.
func tail(from, until []clock.Time) (f, u []clock.Time) {
	n := max(len(from)-2, 0)
	return from[n:], until[n:]
}

// full says whether a mold has a part in it in the morning.
func (b *Board) full(mold int32) bool {
	for i := range b.Setup.Start.Molds {
		if m := &b.Setup.Start.Molds[i]; m.Mold == mold {
			return m.Stands == sim.MoldWithPart
		}
	}
	return false
}
