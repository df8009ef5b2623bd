package money

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Quantities is what happened in the counted time of one run, in whole units.
// Those by model have one place more than there are models, for what belongs to
// no model.
type Quantities struct {
	Labor               [][record.Doings][Classes][]int64 // person-ms by craft, activity, class, model
	Paid, Worked, Over  []int64                           // person-ms by craft: on shift, worked on shift, worked beyond it
	Pulled, Scrapped    []int64                           // parts by type; scrapped ones were pulled too
	Resprayed, Bands    []int64                           // by part type
	Coats, Light, Full  []int64                           // coats of wax without those of strips, strips, by part type
	Resurfaced, Renewed []int64                           // molds by part type
	PotFlush, PumpFlush []int64                           // changes of color by the part type sprayed next
	RepairTime          [2][]int64                        // person-ms of mold repair, routine and after sticking, by part type
	ReworkTime          []int64                           // person-ms with rework materials, by model
	SmallTime           []int64                           // person-ms by kind of background work
	BoothTime           [12]int64                         // ms of a booth spraying, by month
	FloorTime           []int64                           // boat-ms by model
	MoldTime            [record.Doings + 1]int64          // mold-ms by activity; the last is waiting
	Shipped, Escaped    []int64                           // boats by model
	LateTime            []int64                           // boat-ms after the due date, by model
	EscapesByWeek       map[int]int64                     // all escapes of the run, warm-up too, by whole weeks from the start of the counted time
}

// Book is a record.Observer that keeps Quantities. Make it with NewBook, read
// it with Quantities once the run has ended.
type Book struct {
	record.Nothing
	plant *Plant
	q     Quantities

	month   monthOf
	model   []int16            // by order number
	floor   []int64            // boats on the floor by model
	counted clock.Time         // the floor is counted up to here
	parts   map[partKey]*piece // parts that are being made
	free    []*piece
	last    map[int32]int16 // by job: the band step it works on
	stuck   map[int32]bool  // by mold, until its next pull
}

// partKey is one part of one boat; a plain number, since it is looked up at
// every span.
type partKey int64

func keyOf(order int32, part int16) partKey { return partKey(order)<<16 | partKey(part) }

// piece is the labor in a part whose boat is not shipped.
type piece struct {
	labor   []bit
	respray bool
}

// bit is labor of one kind.
type bit struct {
	craft int16
	doing record.Doing
	time  int64
}

// NewBook starts counting for a plant.
func NewBook(p *Plant) *Book {
	b := &Book{plant: p, month: monthOf{start: p.Start}, counted: p.From,
		parts: map[partKey]*piece{}, last: map[int32]int16{}, stuck: map[int32]bool{}}
	crafts, parts, models := len(p.Crafts), len(p.Parts), len(p.Models)+1
	q := &b.q
	q.Labor = make([][record.Doings][Classes][]int64, crafts)
	for c := range q.Labor {
		for d := range q.Labor[c] {
			for k := range q.Labor[c][d] {
				q.Labor[c][d][k] = make([]int64, models)
			}
		}
	}
	for _, list := range []*[]int64{&q.Paid, &q.Worked, &q.Over} {
		*list = make([]int64, crafts)
	}
	for _, list := range []*[]int64{&q.Pulled, &q.Scrapped, &q.Resprayed, &q.Bands, &q.Coats, &q.Light, &q.Full,
		&q.Resurfaced, &q.Renewed, &q.PotFlush, &q.PumpFlush, &q.RepairTime[0], &q.RepairTime[1]} {
		*list = make([]int64, parts)
	}
	for _, list := range []*[]int64{&q.ReworkTime, &q.FloorTime, &q.Shipped, &q.Escaped, &q.LateTime, &b.floor} {
		*list = make([]int64, models)
	}
	q.SmallTime = make([]int64, len(p.Small))
	q.EscapesByWeek = map[int]int64{}
	return b
}

// Quantities ends the count. The Book must not be used afterwards.
func (b *Book) Quantities() *Quantities {
	b.countFloor(b.plant.To)
	return &b.q
}

// in tells whether an instant is counted.
func (b *Book) in(t clock.Time) bool { return t >= b.plant.From && t < b.plant.To }

// clip is the counted part of a stretch of time; from is not before to when
// there is none.
func (b *Book) clip(from, to clock.Time) (clock.Time, clock.Time) {
	return max(from, b.plant.From), min(to, b.plant.To)
}

// modelOf is the model of a part or an order, or the place of what belongs to
// none.
func (b *Book) modelOf(part int16, order int32) int {
	if part >= 0 {
		return b.plant.Parts[part].Model
	}
	if order >= 0 && int(order) < len(b.model) {
		return int(b.model[order])
	}
	return len(b.plant.Models)
}

// countFloor adds up boats on the floor until t.
func (b *Book) countFloor(t clock.Time) {
	if t = min(t, b.plant.To); t > b.counted {
		for m, n := range b.floor {
			b.q.FloorTime[m] += n * int64(t-b.counted)
		}
		b.counted = t
	}
}

// monthOf finds the month of an instant; it remembers the last one.
type monthOf struct {
	start     shift.Date
	at, until clock.Time
	month     int
}

func (m *monthOf) of(t clock.Time) (int, clock.Time) {
	if t < m.at || t >= m.until {
		d := shift.DateAt(m.start, t)
		m.month = int(d.Month) - 1
		m.at = shift.Midnight(m.start, shift.DateOf(d.Year, d.Month, 1))
		m.until = shift.Midnight(m.start, shift.DateOf(d.Year, d.Month+1, 1))
	}
	return m.month, m.until
}
