package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// BoothDay is what one booth sprays on a day, in an order of colors: what is in
// the gun first, then from light to dark.
type BoothDay struct {
	Place, Unit int16
	Sprays      []Spray
	Flushes     int        // in that order
	Flushing    clock.Time // time they take
	AsRun       int        // flushes in the order in which the futures spray
	AsRunTime   clock.Time
}

// Spray is the base coat of one part, and of its accent band.
type Spray struct {
	*Thing
	Color  int16 // sim.None: not the same in most futures
	Accent int16 // color of the band, which goes first; sim.None for none
}

// agreed is the share of futures from which on a color or an order is named.
const agreed = 0.5

// sprays makes the list of every booth and day.
func (b *Board) sprays(c *things) {
	for _, x := range c.list {
		if x.Doing != record.Spraying || x.Accent {
			continue
		}
		d := b.on(x.Day, x.Chance)
		if d == nil {
			continue
		}
		booth := d.booth(x)
		booth.Sprays = append(booth.Sprays, Spray{Thing: x, Color: x.color(), Accent: b.accent(c, x)})
	}
	ordered, asRun := newGuns(b.Setup), newGuns(b.Setup)
	for i := range b.Days {
		list := b.Days[i].Booths
		slices.SortFunc(list, func(a, b BoothDay) int { return cmp.Or(cmp.Compare(a.Place, b.Place), cmp.Compare(a.Unit, b.Unit)) })
		for k := range list {
			booth := &list[k]
			slices.SortStableFunc(booth.Sprays, func(a, b Spray) int { return sooner(a.Thing, b.Thing) })
			booth.AsRun, booth.AsRunTime = asRun.all(booth)
			ordered.sort(booth)
			booth.Flushes, booth.Flushing = ordered.all(booth)
		}
	}
}

// booth is the row of the booth that most futures spray a thing in.
func (d *Day) booth(x *Thing) *BoothDay {
	const units = 1 << 12
	at, _ := x.Most(func(t *Task) int { return int(t.Place)*units + int(t.Unit) + 1 })
	place, unit := int16((at)/units), int16(at%units-1)
	for i := range d.Booths {
		if d.Booths[i].Place == place && d.Booths[i].Unit == unit {
			return &d.Booths[i]
		}
	}
	d.Booths = append(d.Booths, BoothDay{Place: place, Unit: unit})
	return &d.Booths[len(d.Booths)-1]
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

// accent is the color of the band of a part, if it has one in most futures.
func (b *Board) accent(c *things, base *Thing) int16 {
	i, ok := c.at[thingKey{doing: record.Spraying, accent: true, mold: base.Mold, nth: base.Nth}]
	if !ok {
		return sim.None
	}
	if order := b.Order(c.list[i]); order >= 0 && 2*len(c.list[i].When(BegunAt).Given()) > len(base.When(BegunAt).Given()) {
		return b.Setup.Start.Orders[order].Band
	}
	return sim.None
}
