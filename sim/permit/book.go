package permit

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Counts is what happened in each calendar month of a run, in whole units, from
// the month in which the run begins.
type Counts struct {
	Months []MonthCounts
}

// MonthCounts is one month.
type MonthCounts struct {
	Parts      [][lastOfPart + 1]int64 // by part type and use, parts per million of a part
	Small      []int64                 // by kind of background work, person-ms
	Lay        int64                   // laminating, person-ms
	Spray      int64                   // gel coat guns at work, ms
	New        []int64                 // by part type: molds made
	Resurfaced []int64                 // by part type: molds
	Pump, Pot  int64                   // flushes
	Shipped    []int64                 // boats by model
}

// Book is a record.Observer that keeps Counts. Make it with NewBook, read it
// with Counts once the run has ended.
type Book struct {
	record.Nothing
	plant *Plant
	cal   calendar
	c     Counts
	on    map[partKey]int16 // the step that a part's material was last counted for
}

// partKey is one part of one boat.
type partKey struct {
	order int32
	part  int16
}

// NewBook starts counting for a plant.
func NewBook(p *Plant) *Book {
	return &Book{plant: p, cal: calendar{start: p.Start}, on: map[partKey]int16{}}
}

// Counts ends the count. The Book must not be used afterwards.
func (b *Book) Counts() *Counts {
	for len(b.c.Months) < b.plant.End() {
		b.grow()
	}
	return &b.c
}

func (b *Book) grow() {
	parts := len(b.plant.Parts)
	b.c.Months = append(b.c.Months, MonthCounts{
		Parts: make([][lastOfPart + 1]int64, parts), Small: make([]int64, b.plant.Kinds),
		New: make([]int64, parts), Resurfaced: make([]int64, parts), Shipped: make([]int64, len(b.plant.Models)),
	})
}

// month is the month of an instant.
func (b *Book) month(t clock.Time) *MonthCounts {
	n := b.cal.of(t)
	for len(b.c.Months) <= n {
		b.grow()
	}
	return &b.c.Months[n]
}

// Span implements record.Observer. A part takes the material of a step when the
// step is begun, once however often the work is interrupted, and again when the
// part comes back to the step.
func (b *Book) Span(s *record.Span) {
	if !s.Working {
		return
	}
	step := b.plant.step(s.Route, s.Step)
	if step.Lays {
		b.month(s.From).Lay += labor(s)
	}
	if step.Sprays {
		b.month(s.From).Spray += int64(s.To - s.From)
	}
	if k := b.plant.back(s.Route); k >= 0 {
		b.month(s.From).Small[k] += labor(s)
	}
	if s.Order < 0 || s.Part < 0 {
		return
	}
	key := partKey{s.Order, s.Part}
	before, known := b.on[key]
	switch {
	case step.Use == NoUse && known:
		delete(b.on, key)
	case step.Use != NoUse && (!known || before != s.Step):
		b.on[key] = s.Step
		b.month(s.From).Parts[s.Part][step.Use] += step.Share
	}
}

func labor(s *record.Span) int64 { return int64(s.People) * int64(s.To-s.From) }

// Pull implements record.Observer: the order may need the same part again.
func (b *Book) Pull(p *record.Pull) { delete(b.on, partKey{p.Order, p.Part}) }

// Ship implements record.Observer.
func (b *Book) Ship(s *record.Ship) {
	b.month(s.At).Shipped[s.Model]++
	for p := range b.plant.Parts {
		if b.plant.Parts[p].Model == int(s.Model) {
			delete(b.on, partKey{s.Order, int16(p)})
		}
	}
}

// Note implements record.Observer.
func (b *Book) Note(n *record.Note) {
	switch n.Kind {
	case record.Retired, record.MoldNew:
		b.month(n.At).New[n.Part]++
	case record.Resurfaced:
		b.month(n.At).Resurfaced[n.Part]++
	case record.Flushed:
		if m := b.month(n.At); b.pot(n.Place, n.Value) {
			m.Pot++
		} else {
			m.Pump++
		}
	}
}

// pot tells a flush of a pot gun from that of a pumped one by its minutes.
func (b *Book) pot(place int16, minutes float64) bool {
	if place < 0 || int(place) >= len(b.plant.Pots) {
		return false
	}
	for _, m := range b.plant.Pots[place] {
		if m == minutes {
			return true
		}
	}
	return false
}
