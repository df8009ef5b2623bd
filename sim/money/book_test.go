package money

import (
	"testing"
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// small is a plant of one craft, two models with a part each, and a route with
// one step of each kind. A week is counted, from the second one on.
func small() *Plant {
	return &Plant{
		Start: shift.DateOf(2027, time.January, 4), From: clock.Week, To: 2 * clock.Week, Open: 1,
		Crafts: []string{"gel"},
		Models: []Model{{Name: "A", Margin: 1000, Known: true}, {Name: "B", Margin: 2000, Known: true}},
		Parts: []Part{{Name: "A hull", Model: 0, Gel: 18000, Band: 1400, Resin: 150000, Glass: 80000, Coat: 276, Light: 1380, Full: 1610, Area: 230000, GelPrice: 11, MoldPrice: 27000, MoldLife: 900},
			{Name: "B hull", Model: 1, Gel: 24000, GelPrice: 7}},
		Routes: [][]Step{{{}, {Band: true, Booth: true}, {Class: InternalFailure, Rework: true}, {Class: Appraisal}},
			{{Class: Prevention}, {Repair: true}}},
		LightCoats: 2, FullCoats: 3,
		PotFlush: []float64{5}, PumpFlush: []float64{15},
		Pump: Flush{Solvent: 7000, Gel: 4500}, Pot: Flush{Solvent: 900, Gel: 200},
		AirPerHour: 41000,
	}
}

const at = clock.Week // the first counted instant

// span is work of two people on part 0 of order 1, hour by hour.
func span(route, step int16, doing record.Doing, from, hours float64) *record.Span {
	return &record.Span{Job: 7, Order: 1, Mold: 0, Route: route, Step: step, Part: 0, Doing: doing, Working: true, People: 2, Craft: 0,
		From: at + clock.FromHours(from), To: at + clock.FromHours(from+hours)}
}

func arrive(b *Book, order int32, model int16) {
	b.Note(&record.Note{Kind: record.OrderArrived, Order: order, Model: model, Part: -1, Mold: -1})
}

// Labor goes under its class, its model and its activity, and only in counted
// time.
func TestLaborByClassAndModel(t *testing.T) {
	b := NewBook(small())
	arrive(b, 1, 0)
	b.Span(span(0, 0, record.Laminating, -3, 5)) // two of five hours are counted
	b.Span(span(1, 0, record.Waxing, 3, 1))
	b.Span(span(0, 3, record.Finishing, 4, 0.5))
	boat := span(0, 0, record.Assembling, 5, 4)
	boat.Part, boat.Mold = -1, -1
	b.Span(boat)
	wait := span(0, 0, record.Laminating, 10, 9)
	wait.Working = false
	b.Span(wait)
	q := b.Quantities()
	for _, c := range []struct {
		doing record.Doing
		class Class
		hours float64
	}{{record.Laminating, Work, 4}, {record.Waxing, Prevention, 2}, {record.Finishing, Appraisal, 1}, {record.Assembling, Work, 8}} {
		if got := q.Labor[0][c.doing][c.class][0]; got != int64(clock.FromHours(c.hours)) {
			t.Errorf("%v, %v: %v, want %v h", c.doing, c.class, clock.Time(got), c.hours)
		}
	}
	if q.MoldTime[record.Doings] != int64(9*clock.Hour) {
		t.Errorf("molds waited %v", clock.Time(q.MoldTime[record.Doings]))
	}
}

// A part that is thrown away takes its labor along as failure, whatever that
// was, and nothing of the labor on the next attempt.
func TestScrapMovesItsLabor(t *testing.T) {
	b := NewBook(small())
	arrive(b, 1, 0)
	b.Span(span(0, 0, record.Laminating, 0, 3))
	b.Span(span(0, 2, record.Finishing, 4, 1)) // already failure
	b.Pull(&record.Pull{At: at + clock.Day, Order: 1, Part: 0, Stuck: true, Scrapped: true})
	b.Note(&record.Note{At: at + clock.Day, Kind: record.Scrapped, Order: 1, Part: 0, Mold: 0})
	b.Span(span(0, 0, record.Laminating, 48, 2))
	q := b.Quantities()
	by := &q.Labor[0][record.Laminating]
	if by[InternalFailure][0] != int64(6*clock.Hour) || by[Work][0] != int64(4*clock.Hour) {
		t.Errorf("failure %v, work %v, want 6 h and 4 h", clock.Time(by[InternalFailure][0]), clock.Time(by[Work][0]))
	}
	if q.Labor[0][record.Finishing][InternalFailure][0] != int64(2*clock.Hour) {
		t.Error("rework is counted other than once")
	}
	if q.Pulled[0] != 1 || q.Scrapped[0] != 1 {
		t.Errorf("pulled %d, scrapped %d", q.Pulled[0], q.Scrapped[0])
	}
}

// Repair of a mold is failure from the sticking until the mold's next pull.
func TestRepairAfterSticking(t *testing.T) {
	b := NewBook(small())
	b.Span(span(1, 1, record.Repairing, 0, 1))
	b.Note(&record.Note{At: at, Kind: record.Stuck, Order: 1, Part: 0, Mold: 0, Value: 20})
	b.Pull(&record.Pull{At: at, Order: 1, Part: 0, Stuck: true})
	b.Span(span(1, 1, record.Repairing, 2, 3))
	b.Pull(&record.Pull{At: at + clock.Day, Order: 1, Part: 0})
	b.Span(span(1, 1, record.Repairing, 30, 5))
	q := b.Quantities()
	if q.RepairTime[0][0] != int64(12*clock.Hour) || q.RepairTime[1][0] != int64(6*clock.Hour) {
		t.Errorf("routine %v, after sticking %v", clock.Time(q.RepairTime[0][0]), clock.Time(q.RepairTime[1][0]))
	}
}

// A band that pauses for the night is one band; the next part's band is another.
func TestBandsAreCountedWhenBegun(t *testing.T) {
	b := NewBook(small())
	b.Span(span(0, 1, record.Masking, 0, 1))
	pause := span(0, 1, record.Masking, 1, 15)
	pause.Working, pause.People, pause.Craft = false, 0, -1
	b.Span(pause)
	b.Span(span(0, 1, record.Masking, 16, 1))
	b.Span(span(0, 0, record.Laminating, 17, 1))
	other := span(0, 1, record.Masking, 20, 1)
	other.Job = 8
	b.Span(other)
	if q := b.Quantities(); q.Bands[0] != 2 {
		t.Errorf("%d bands, want 2", q.Bands[0])
	}
}

// Boats on the floor are counted from the first part to shipping, those begun
// before the counted time too.
func TestBoatDaysOnTheFloor(t *testing.T) {
	b := NewBook(small())
	begin := func(order int32, model int16, when clock.Time) {
		arrive(b, order, model)
		b.Note(&record.Note{At: when, Kind: record.BoatBegun, Order: order, Model: model, Part: -1, Mold: -1})
	}
	begin(1, 0, at-3*clock.Day)
	begin(2, 1, at+clock.Day)
	b.Ship(&record.Ship{At: at + 2*clock.Day, Order: 1, Model: 0, Due: at + clock.Day, Escaped: true})
	begin(3, 0, at+6*clock.Day)
	q := b.Quantities()
	if q.FloorTime[0] != int64(3*clock.Day) || q.FloorTime[1] != int64(6*clock.Day) {
		t.Errorf("floor %v and %v, want 3 and 6 days", clock.Time(q.FloorTime[0]), clock.Time(q.FloorTime[1]))
	}
	if q.LateTime[0] != int64(clock.Day) || q.Escaped[0] != 1 || q.Shipped[0] != 1 {
		t.Errorf("late %v, escaped %d, shipped %d", clock.Time(q.LateTime[0]), q.Escaped[0], q.Shipped[0])
	}
}

func TestPaidWorkedAndOverTime(t *testing.T) {
	b := NewBook(small())
	b.Use(&record.Use{Pool: 0, Used: 3, Capacity: 4, From: at, To: at + 8*clock.Hour})
	b.Use(&record.Use{Pool: 0, Used: 2, Capacity: 0, From: at + 8*clock.Hour, To: at + 9*clock.Hour})
	b.Use(&record.Use{Pool: 1, Used: 1, Capacity: 1, From: at, To: at + clock.Day}) // a place
	q := b.Quantities()
	if q.Paid[0] != int64(32*clock.Hour) || q.Worked[0] != int64(24*clock.Hour) || q.Over[0] != int64(2*clock.Hour) {
		t.Errorf("paid %v, worked %v, over %v", clock.Time(q.Paid[0]), clock.Time(q.Worked[0]), clock.Time(q.Over[0]))
	}
}
