package sim

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// Luck belongs to what exists in every alternative. One more person on the day
// shift changes nobody's presence on the evening shift, nor that of those who
// were on the day shift before.
func TestOneMorePersonMovesNobodysLuck(t *testing.T) {
	crews := func(day int) []Crew {
		return []Crew{{People: day, Absence: 0.3, AbsenceHot: 0.3}, {People: 40, Absence: 0.3, AbsenceHot: 0.3}}
	}
	root := draw.Root(5, 3)
	of := func(people []Crew, crew int16, d int) int32 {
		r := &Run{root: root, plan: &Plan{Crafts: []Craft{{Crews: people}}}}
		return r.present(&crewState{crew: crew}, &people[crew], d)
	}
	differ := 0
	for d := range 200 {
		if a, b := of(crews(7), 1, d), of(crews(8), 1, d); a != b {
			t.Fatalf("day %d: %d of the evening shift came, %d with one more on the day shift", d, a, b)
		}
		if more := of(crews(8), 0, d) - of(crews(7), 0, d); more != 0 && more != 1 {
			t.Fatalf("day %d: one more person makes %d more", d, more)
		}
		if of(crews(40), 0, d) != of(crews(40), 1, d) {
			differ++
		}
	}
	if differ < 100 {
		t.Errorf("two crews of 40 had as many people on %d days of 200: they share their luck", 200-differ)
	}
}

// downs notes when units of one place broke down.
type downs struct {
	record.Nothing
	of int16
	at []clock.Time
}

// Note implements record.Observer.
func (d *downs) Note(n *record.Note) {
	if n.Kind == record.BrokeDown && n.Place == d.of {
		d.at = append(d.at, n.At)
	}
}

// One more unit of one place moves no breakdown of another.
func TestOneMoreBoothMovesNoBreakdown(t *testing.T) {
	of := func(booths int) []clock.Time {
		p := configC(4, exponential, exponential)
		p.Length = 60 * clock.Day
		p.Places = append(p.Places, Place{Name: "booth", Kind: Booth, Count: booths}, Place{Name: "hoist", Kind: Hoist, Count: 2})
		first := int16(len(p.Places) - 2)
		for k, count := range []int{booths, 2} {
			for u := range count {
				p.Failures = append(p.Failures, Failure{Place: first + int16(k), Unit: int16(u), Gun: None, Up: draw.Compile(exponential(30)), Repair: draw.Compile(exponential(3))})
			}
		}
		d := &downs{of: first + 1}
		if err := Simulate(p, steadyAir(), 4, 2, d); err != nil {
			t.Fatal(err)
		}
		return d.at
	}
	two, three := of(2), of(3)
	if len(two) < 5 || len(two) != len(three) {
		t.Fatalf("%d and %d breakdowns of the hoists", len(two), len(three))
	}
	for i := range two {
		if two[i] != three[i] {
			t.Fatalf("breakdown %d of a hoist is at %v, with one more booth at %v", i, two[i], three[i])
		}
	}
}
