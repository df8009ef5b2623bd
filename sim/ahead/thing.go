package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Thing is one thing that is done to a mold or to the part in it, over all
// futures: "the second pull of hull mold 1 from now". It is the same thing in
// every future whichever order it is for.
type Thing struct {
	Doing  record.Doing
	Mold   int32
	Part   int16
	Nth    int     // which pull or strip of the mold from now, from 1; of a spraying, which pull it is for
	Accent bool    // the spraying of a band
	In     []*Task // by future; nil where it is not begun in the time looked at

	// Day is the day from the morning on which it is begun most often, and
	// Chance the share of futures in which it is begun on that day.
	Day    int
	Chance float64
}

// When is an instant of it over all futures: its Ready, Began or End.
func (x *Thing) When(of func(*Task) clock.Time) When {
	w := never(len(x.In))
	for f, t := range x.In {
		if t != nil {
			w[f] = of(t)
		}
	}
	return w
}

// ReadyAt is when a task could have begun.
func ReadyAt(t *Task) clock.Time { return t.Ready }

// BegunAt is when people began it.
func BegunAt(t *Task) clock.Time { return t.Began }

// EndedAt is when it was done; clock.Never when it is not in the time looked at.
func EndedAt(t *Task) clock.Time {
	if !t.Over {
		return clock.Never
	}
	return t.End
}

// Most is the value that most futures agree on, of those in which the thing is
// begun, and their share among those; the smallest of several.
func (x *Thing) Most(of func(*Task) int) (value int, share float64) {
	var all []int
	for _, t := range x.In {
		if t != nil {
			all = append(all, of(t))
		}
	}
	return most(all)
}

// Mean is a length of time on average over the futures in which it is begun.
func (x *Thing) Mean(of func(*Task) clock.Time) clock.Time {
	sum, n := clock.Time(0), clock.Time(0)
	for _, t := range x.In {
		if t != nil {
			sum += of(t)
			n++
		}
	}
	return sum / max(n, 1)
}

// OnDay is the middle of the time at which it is begun, over the futures in which
// that is on its day.
func (x *Thing) OnDay(morning clock.Time) clock.Time {
	w := x.When(BegunAt)
	for f, t := range w {
		if int((t-morning)/clock.Day) != x.Day {
			w[f] = clock.Never
		}
	}
	return w.Given().Surely(0.5)
}

// most is the value that occurs most often and its share; the smallest of
// several, and 0 of none.
func most(all []int) (value int, share float64) {
	slices.Sort(all)
	best := 0
	for i := 0; i < len(all); {
		k := i
		for k < len(all) && all[k] == all[i] {
			k++
		}
		if k-i > best {
			best, value = k-i, all[i]
		}
		i = k
	}
	return value, float64(best) / float64(max(len(all), 1))
}

// thingKey tells things apart.
type thingKey struct {
	doing  record.Doing
	accent bool
	mold   int32
	nth    int
}

// things collects the pulls, strips and sprayings of all futures.
type things struct {
	setup   *Setup
	futures int
	list    []*Thing
	at      map[thingKey]int
}

// collect finds every thing of the futures, in the order in which the first
// future that has it begins it.
func collect(s *Setup, futures []Future) *things {
	c := &things{setup: s, futures: len(futures), at: map[thingKey]int{}}
	for f := range futures {
		c.future(f, futures[f].Tasks)
	}
	for _, x := range c.list {
		x.likely(s.Morning())
	}
	return c
}

// future adds the things of one future. Sprayings are counted by the turn of the
// mold they are for, so that gel coat that is washed out and sprayed again moves
// no later one; two steps of one strip are one strip.
func (c *things) future(f int, tasks []Task) {
	pulls, strips := map[int32]int{}, map[int32]int{}
	last := map[int32]*Task{} // by mold: the strip it had, until something else is done
	for _, i := range begun(tasks) {
		t := tasks[i]
		key := thingKey{doing: t.Doing, mold: t.Mold, nth: pulls[t.Mold] + 1}
		strip := last[t.Mold]
		last[t.Mold] = nil
		switch t.Doing {
		case record.Pulling:
			pulls[t.Mold]++
		case record.Masking, record.Spraying:
			spray := c.setup.spray(&t)
			if spray == sim.NoSpray {
				continue // tape, or old gel coat that is washed out
			}
			key.doing, key.accent = record.Spraying, spray == sim.SprayBand
		case record.Stripping:
			if last[t.Mold] = strip; strip != nil {
				joined(strip, &t)
				continue
			}
			last[t.Mold] = &t
			strips[t.Mold]++
			key.nth = strips[t.Mold]
		default:
			continue
		}
		if x := c.thing(key); x.In[f] == nil {
			x.In[f] = &t
		}
	}
}

func (s *Setup) spray(t *Task) sim.Spray { return s.Plan.Routes[t.Route].Steps[t.Step].Spray }

// joined adds a step of a strip to those before.
func joined(into, t *Task) {
	into.Worked += t.Worked
	into.End, into.Over = t.End, t.Over
	into.People = max(into.People, t.People)
}

func (c *things) thing(key thingKey) *Thing {
	i, ok := c.at[key]
	if !ok {
		i = len(c.list)
		c.at[key] = i
		c.list = append(c.list, &Thing{Doing: key.doing, Mold: key.mold, Part: c.setup.Plan.Molds[key.mold].Part, Nth: key.nth, Accent: key.accent, In: make([]*Task, c.futures)})
	}
	return c.list[i]
}

// begun lists the tasks at a mold that people begin, in the order in which they
// do.
func begun(tasks []Task) []int {
	var out []int
	for i := range tasks {
		if tasks[i].Mold >= 0 && tasks[i].Began != clock.Never {
			out = append(out, i)
		}
	}
	slices.SortStableFunc(out, func(a, b int) int { return cmp.Compare(tasks[a].Began, tasks[b].Began) })
	return out
}

// likely finds the day on which it is begun most often.
func (x *Thing) likely(morning clock.Time) {
	day, share := x.Most(func(t *Task) int { return int((t.Began - morning) / clock.Day) })
	x.Day, x.Chance = day, share*x.When(BegunAt).Ever()
}
