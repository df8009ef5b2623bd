package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim/clock"
)

// Short says how short of people a craft is on a day.
type Short struct {
	Craft int16
	Out   int        // people who are said to be out
	There clock.Time // time of people at work, on average over the futures
	Waits clock.Time // time that work waits for them while they are at work, all pieces added, on average
}

// leastWait is the wait on a day from which on a craft counts as short.
const leastWait = clock.Hour

// short finds the crafts that work waits for, or of whom people are out, on the
// days on which they work.
func (b *Board) short(futures []Future) {
	for day := range b.Days {
		d := &b.Days[day]
		for c := range b.Setup.Plan.Crafts {
			s := Short{Craft: int16(c), Out: b.out(c, d.From)}
			for f := range futures {
				s.There += futures[f].There[c][day]
				s.Waits += futures[f].Short[c][day]
			}
			n := clock.Time(max(len(futures), 1))
			s.There, s.Waits = s.There/n, s.Waits/n
			if s.Waits >= leastWait || s.Out > 0 && d.Works {
				d.Short = append(d.Short, s)
			}
		}
		slices.SortStableFunc(d.Short, func(a, b Short) int { return cmp.Compare(b.Waits, a.Waits) })
	}
}

func (b *Board) out(craft int, day clock.Time) int {
	n, number := 0, int(day/clock.Day)
	for _, o := range b.Setup.Start.Out {
		if int(o.Craft) == craft && o.From <= number && number <= o.To {
			n += o.People
		}
	}
	return n
}
