package permit

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// onePlant has one part of 10 m² whose route sprays, washes out, sprays and
// lays up.
func onePlant() *Plant {
	start := shift.DateOf(2027, 1, 4)
	return &Plant{
		Start: start, From: 0, To: shift.Midnight(start, shift.DateOf(2029, 1, 4)), Models: []string{"skiff"},
		Parts: []Part{{Model: 0, Area: 10, Film: 0.5, Thick: 5}}, Kinds: 1, Back: []int{-1, 0},
		Routes: [][]Step{{{Use: GelCoat, Share: Whole}, {}, {Use: Skin, Share: 250_000, Lays: true}, {Use: Laminate, Share: 750_000, Lays: true}}, {{}}},
		Pots:   [][]float64{nil, {5}},
	}
}

func work(b *Book, order int32, step int16, from, to clock.Time) {
	b.Span(&record.Span{Order: order, Part: 0, Route: 0, Step: step, Working: true, People: 2, From: from, To: to})
}

// A step takes its material once, however often it is interrupted, and again
// when the part comes back to it.
func TestMaterialIsTakenOnceAStep(t *testing.T) {
	b := NewBook(onePlant())
	h := clock.Hour
	work(b, 1, 0, 0, h)
	b.Span(&record.Span{Order: 1, Part: 0, Route: 0, Step: 0, From: h, To: 2 * h}) // waits
	work(b, 1, 0, 2*h, 3*h)
	work(b, 1, 1, 3*h, 4*h) // washed out
	work(b, 1, 0, 4*h, 5*h)
	work(b, 1, 2, 5*h, 6*h)
	work(b, 1, 3, 6*h, 7*h)
	work(b, 2, 0, 7*h, 8*h) // another boat
	b.Pull(&record.Pull{At: 9 * h, Order: 1, Part: 0, Scrapped: true})
	work(b, 1, 3, 9*h, 10*h) // the same step of the part that replaces it
	got := b.Counts().Months[0]
	if want := [lastOfPart + 1]int64{GelCoat: 3 * Whole, Skin: 250_000, Laminate: 1_500_000}; got.Parts[0] != want {
		t.Errorf("%v, want %v", got.Parts[0], want)
	}
	if want := int64(2 * 3 * h); got.Lay != want {
		t.Errorf("laminating %v, want %v person-ms", got.Lay, want)
	}
}

func TestOtherCounts(t *testing.T) {
	b := NewBook(onePlant())
	day := clock.Day
	b.Span(&record.Span{Order: -1, Part: -1, Route: 1, Step: 0, Working: true, People: 1, From: 30 * day, To: 30*day + clock.Hour})
	for _, n := range []record.Note{
		{At: 0, Kind: record.Flushed, Place: 1, Value: 5}, {At: 0, Kind: record.Flushed, Place: 1, Value: 15},
		{At: 0, Kind: record.Flushed, Place: 0, Value: 5}, {At: 0, Kind: record.Retired}, {At: 40 * day, Kind: record.Resurfaced},
	} {
		b.Note(&n)
	}
	b.Ship(&record.Ship{At: 364 * day, Model: 0})
	c := b.Counts()
	if jan := c.Months[0]; jan.Pot != 1 || jan.Pump != 2 || jan.New[0] != 1 {
		t.Errorf("January: %+v", jan)
	}
	if feb := c.Months[1]; feb.Small[0] != int64(clock.Hour) || feb.Resurfaced[0] != 1 {
		t.Errorf("February: %+v", feb)
	}
	if c.Months[12].Shipped[0] != 1 || len(c.Months) != 24 { // 4 January and 364 days is 3 January
		t.Errorf("%d months, boats in the thirteenth %v", len(c.Months), c.Months[12].Shipped)
	}
}

// Months that are counted: whole, and begun no more than a week before the
// counted time.
func TestCountedMonths(t *testing.T) {
	start := shift.DateOf(2027, 1, 4)
	for _, c := range []struct {
		from, to   shift.Date
		first, end int
	}{
		{shift.DateOf(2027, 1, 4), shift.DateOf(2028, 1, 4), 0, 12},
		{shift.DateOf(2028, 1, 4), shift.DateOf(2030, 1, 4), 12, 36},
		{shift.DateOf(2028, 1, 8), shift.DateOf(2028, 3, 1), 12, 14},
		{shift.DateOf(2028, 1, 9), shift.DateOf(2028, 2, 29), 13, 13},
	} {
		p := Plant{Start: start, From: shift.Midnight(start, c.from), To: shift.Midnight(start, c.to)}
		if p.First() != c.first || p.End() != c.end {
			t.Errorf("%v to %v: months %d to %d, want %d to %d", c.from, c.to, p.First(), p.End(), c.first, c.end)
		}
	}
	p := Plant{Start: shift.DateOf(2027, 11, 1)}
	if m := p.Month(14); m != (Month{2029, 1}) {
		t.Errorf("14 months after November 2027: %v", m)
	}
}
