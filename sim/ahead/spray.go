package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// BoothDay is what the booths of one kind spray on a day, in an order of colors:
// what is in the guns first, then from light to dark, each part in the booth
// that is done with it first.
type BoothDay struct {
	Place     int16
	Units     []int16   // those in use
	Lists     [][]Spray // by Units
	Flushes   int       // in that order
	Flushing  clock.Time
	AsRun     int // flushes of the same parts in the order in which the futures spray them
	AsRunTime clock.Time
}

// Spray is the base coat of one part, and of its accent band.
type Spray struct {
	*Thing
	Color  int16 // sim.None: not the same in most futures
	Accent int16 // color of the band, which goes first; sim.None for none
}

// agreed is the share of futures above which a color or an order is named.
const agreed = 0.5

// sprays makes the list of every kind of booth and day.
func (b *Board) sprays(c *things, futures []Future) {
	days := make([]map[int16][]Spray, len(b.Days))
	for _, x := range c.list {
		if x.Doing != record.Spraying || x.Accent || b.on(x.Day, x.Chance) == nil {
			continue
		}
		if place, _ := x.Most(func(t *Task) int { return int(t.Place) }); place >= 0 {
			if days[x.Day] == nil {
				days[x.Day] = map[int16][]Spray{}
			}
			days[x.Day][int16(place)] = append(days[x.Day][int16(place)], Spray{x, x.color(), b.accent(c, x)})
		}
	}
	guns := newGuns(b.Setup)
	for i := range days {
		for place := range b.Setup.Plan.Places {
			if list := days[i][int16(place)]; len(list) > 0 {
				b.Days[i].Booths = append(b.Days[i].Booths, b.boothDay(int16(place), b.units(futures, place, i), list, guns))
			}
		}
	}
}

// boothDay orders a list by colors, twice: parts go to the booth that is done
// first, or to the one that needs no flush. What flushes least is kept, and the
// guns are left as it leaves them; both begin with the guns as the day before
// leaves them, as does the order in which the futures spray.
func (b *Board) boothDay(place int16, units []int16, list []Spray, guns *guns) BoothDay {
	d := BoothDay{Place: place, Units: units}
	slices.SortStableFunc(list, func(a, b Spray) int { return sooner(a.Thing, b.Thing) })
	before := guns.copy()
	_, d.AsRun, d.AsRunTime = before.copy().all(&d, list, false)
	guns.sort(&d, list)
	d.Lists, d.Flushes, d.Flushing = guns.all(&d, list, false)
	if lists, n, time := before.all(&d, list, true); time < d.Flushing {
		d.Lists, d.Flushes, d.Flushing = lists, n, time
		*guns = *before
	}
	return d
}

// usedIn is the share of futures from which on a booth counts as used on a day.
const usedIn = 0.25

// units lists the booths of a kind that enough futures spray in on a day; all of
// them if none is.
func (b *Board) units(futures []Future, place, day int) []int16 {
	count := make([]int, max(b.Setup.Plan.Places[place].Count, 1))
	for f := range futures {
		seen := make([]bool, len(count))
		for i := range futures[f].Tasks {
			t := &futures[f].Tasks[i]
			on := t.Doing == record.Spraying && int(t.Place) == place && t.Unit >= 0 && int((t.Began-b.Setup.Morning())/clock.Day) == day
			if on && !seen[t.Unit] {
				seen[t.Unit] = true
				count[t.Unit]++
			}
		}
	}
	var some, all []int16
	for u, n := range count {
		all = append(all, int16(u))
		if float64(n) >= usedIn*float64(len(futures)) {
			some = append(some, int16(u))
		}
	}
	if len(some) == 0 {
		return all
	}
	return some
}

// color is what most futures spray it in.
func (x *Thing) color() int16 {
	color, share := x.Most(func(t *Task) int { return int(t.Color) })
	if share <= agreed {
		return sim.None
	}
	return int16(color)
}

// Order is the order it is for in most futures; -1 when there is none, or one
// that the start does not list.
func (b *Board) Order(x *Thing) int {
	order, share := x.Most(func(t *Task) int { return int(t.Order) })
	if share <= agreed || order >= len(b.Setup.Start.Orders) {
		return -1
	}
	return order
}

// accent is the color of the band of a part whose order is known, if it gets one
// in most of the futures in which it is for that order.
func (b *Board) accent(c *things, base *Thing) int16 {
	order := b.Order(base)
	i, ok := c.at[thingKey{doing: record.Spraying, accent: true, mold: base.Mold, nth: base.Nth}]
	if order < 0 || !ok {
		return sim.None
	}
	n, banded := 0, 0
	for f, t := range base.In {
		if t == nil || int(t.Order) != order {
			continue
		}
		n++
		if c.list[i].In[f] != nil {
			banded++
		}
	}
	if float64(banded) <= agreed*float64(n) {
		return sim.None
	}
	return b.Setup.Start.Orders[order].Band
}

// soonest is the index of the least of some times; the first of several.
func soonest(times []clock.Time) int {
	best := 0
	for i, t := range times {
		if cmp.Less(t, times[best]) {
			best = i
		}
	}
	return best
}
