package money

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// priced is a ledger of the small plant after some facts.
func priced(p Prices, facts func(*Book)) *Ledger {
	plant := small()
	b := NewBook(plant)
	facts(b)
	s := &Setup{Plant: *plant, Prices: p}
	return s.Price(b.Quantities())
}

func line(t *testing.T, g *Ledger, name string) *Line {
	t.Helper()
	for i := range g.Lines {
		if g.Lines[i].Name == name {
			return &g.Lines[i]
		}
	}
	t.Fatalf("no line %s", name)
	return nil
}

// Every amount by hand: quantity times price, in cents.
func TestLinesByHand(t *testing.T) {
	p := Prices{Wages: []float64{20}, Loading: 1.3, Overtime: 1.5, OffFloor: 0.06, Resin: 3.5, Glass: 2.6, Wax: 30, Stripper: 8, Compound: 25,
		Solvent: 2.5, MoldRepair: 8, Rework: 6, FloorDay: 6, Claim: 900, ClaimChance: 0.25, LateDay: 40, BoothAir: 0.07}
	g := priced(p, func(b *Book) {
		arrive(b, 1, 0)
		b.Use(&record.Use{Pool: 0, Used: 2, Capacity: 4, From: at, To: at + 8*clock.Hour})
		b.Use(&record.Use{Pool: 0, Used: 2, Capacity: 1, From: at + 8*clock.Hour, To: at + 9*clock.Hour})
		b.Span(span(0, 0, record.Laminating, 0, 9))
		b.Span(span(0, 1, record.Masking, 20, 1)) // of another craft's people: lent by hand below
		b.Pull(&record.Pull{At: at + clock.Day, Order: 1, Part: 0})
		b.Note(&record.Note{At: at, Kind: record.FullStrip, Part: 0, Mold: 0, Order: -1})
		b.Note(&record.Note{At: at, Kind: record.LightStrip, Part: 0, Mold: 0, Order: -1})
		b.Note(&record.Note{At: at, Kind: record.WaxCoat, Part: 0, Mold: 0, Order: -1})
		b.Note(&record.Note{At: at, Kind: record.Flushed, Part: 0, Mold: 0, Order: 1, Value: 15})
		b.Note(&record.Note{At: at, Kind: record.Flushed, Part: 0, Mold: 0, Order: 1, Value: 5})
		b.Ship(&record.Ship{At: at + 3*clock.Day, Order: 1, Model: 0, Due: at + 2*clock.Day, Escaped: true})
	})
	for _, c := range []struct {
		name  string
		cents Cents
	}{
		{"labor.gel.laminating.work.A", 18 * 2600},
		{"labor.gel.masking.work.A", 2 * 2600},
		{"paid.gel.lent", -2 * 2600},               // 16 + 1 h on shift and 1 h over were worked, 20 h are in steps
		{"paid.gel.idle", 16 * 2600},               // 33 h on shift, 17 h worked
		{"paid.gel.off_floor", 33 * 26 * 6},        // 6 % of 33 h
		{"paid.gel.overtime", 1 * 1300},            // half a rate for one hour
		{"gel_coat.A_hull", 18 * 1100},             // 18 kg
		{"gel_coat_band.A_hull", 1540},             // 1.4 kg
		{"resin.A_hull", 150 * 350},                // 150 kg
		{"glass.A_hull", 80 * 260},                 // 80 kg
		{"wax.A_hull", 4968},                       // 1 coat, and 2 + 3 of the strips, 276 g each
		{"stripper.A_hull", 2208},                  // two strips
		{"compound.A_hull", 4025},                  // one full strip
		{"mold_wear.A_hull", 3000},                 // one turn of 900
		{"solvent.pumped_gun.A_hull", 1750},        // 7 L
		{"flush_gel_coat.pumped_gun.A_hull", 4950}, // 4.5 kg
		{"solvent.pot_gun.A_hull", 225},            // 0.9 L
		{"flush_gel_coat.pot_gun.A_hull", 220},     // 0.2 kg
		{"booth_air", 287},                         // an hour of 41,000 m³
		{"margin.A", 100000},                       //
		{"warranty.A", 22500},                      // 0.25 × 900
		{"late.A", 4000},                           // one day
	} {
		if got := line(t, g, c.name).Amount; got != c.cents {
			t.Errorf("%s: %d cents, want %d", c.name, got, c.cents)
		}
	}
}

// Amounts of overtime and idle hours are on what the craft was paid for, so the
// lines of a craft add up to its pay.
func TestLaborAddsUpToPay(t *testing.T) {
	p := Prices{Wages: []float64{20}, Loading: 1.25, Overtime: 1.5}
	g := priced(p, func(b *Book) {
		b.Use(&record.Use{Pool: 0, Used: 5, Capacity: 4, From: at, To: at + 10*clock.Hour})
		b.Span(span(0, 0, record.Laminating, 0, 10))
	})
	want := Cents(40*2500 + 10*3750) // 40 h on shift, 10 h beyond it at one and a half
	if got := g.Total(Cost); got != want {
		t.Errorf("%d cents, want %d", got, want)
	}
}

// Sums are sums of lines: the kinds and the classes split the ledger.
func TestKindsAndClassesSplitTheLedger(t *testing.T) {
	p := Prices{Wages: []float64{21.37}, Loading: 1.31, Overtime: 1.5, Resin: 3.517, Glass: 2.61, Wax: 29.99, Claim: 901, ClaimChance: 0.25}
	g := priced(p, func(b *Book) {
		for i := range 40 {
			b.Span(span(int16(i%2), int16(i%2), record.Waxing, float64(i)/3, 0.137))
			b.Pull(&record.Pull{At: at + clock.Time(i), Order: 1, Part: 0})
			b.Ship(&record.Ship{At: at, Order: 1, Model: int16(i % 2), Due: clock.Never, Escaped: i%3 == 0})
		}
	})
	var all, kinds, classes Cents
	for _, l := range g.Lines {
		all += l.Amount
	}
	for k := Cost; k < Kinds; k++ {
		kinds += g.Total(k)
	}
	for c := Work; c < Classes; c++ {
		classes += g.Quality(c)
	}
	if all != kinds || classes != g.Total(Cost) {
		t.Errorf("all lines %d, by kind %d; costs %d, by class %d", all, kinds, g.Total(Cost), classes)
	}
	if g.Contribution() != g.Total(Income)-g.Total(Cost) {
		t.Error("a contribution holds wear or purchases")
	}
}

// What claims cost in a period with as many escapes before it as in it is what
// is set aside; the last weeks' claims are still to come.
func TestClaimsComeLater(t *testing.T) {
	s := &Setup{Plant: *small(), Prices: Prices{Claim: 1000, ClaimChance: 0.5, ClaimFrom: 2, ClaimTo: 14}}
	s.Plant.To = s.Plant.From + 52*clock.Week
	steady, late := map[int]int64{}, map[int]int64{}
	for w := -20; w < 52; w++ {
		steady[w] = 3
	}
	late[51], late[-30] = 4, 9
	near(t, "steady escapes", s.Claimed(&Quantities{EscapesByWeek: steady}), 3*52*500, 1e-6)
	near(t, "escapes of the last week, and of long ago", s.Claimed(&Quantities{EscapesByWeek: late}), 0, 1e-9)
	near(t, "an escape of half a year ago", s.Claimed(&Quantities{EscapesByWeek: map[int]int64{20: 1}}), 500, 1e-9)
}

// The gel coat of a 24 ft hull: 34 m², 20 mil, 1.2 kg/L, 78 % on the mold, is
// 27 kg (arithmetic of a trade table; no source).
func TestMassOfALayer(t *testing.T) {
	if got := Mass(34, 0.508, 1.2, 0.78); got < 26000 || got > 27500 {
		t.Errorf("%d g", got)
	}
	if Mass(34, 0.5, 1.2, 0) != 0 {
		t.Error("gel coat of which nothing reaches the mold has a mass")
	}
	if Mass(1, 1, 1, 1) != 1000 {
		t.Error("1 mm on 1 m² is not 1 L")
	}
}

// Shared lines go by labor; all models together cost what the ledger holds.
func TestModelsShareTheLedger(t *testing.T) {
	p := Prices{Wages: []float64{20}, Loading: 1, Resin: 3, Training: 5200}
	g := priced(p, func(b *Book) {
		arrive(b, 1, 0)
		arrive(b, 2, 1)
		b.Span(span(0, 0, record.Laminating, 0, 3))
		other := span(0, 0, record.Laminating, 3, 1)
		other.Order, other.Part = 2, 1
		b.Span(other)
		b.Use(&record.Use{Pool: 0, Used: 2, Capacity: 10, From: at, To: at + 4*clock.Hour})
		b.Ship(&record.Ship{At: at + clock.Day, Order: 1, Model: 0, Due: clock.Never})
		b.Ship(&record.Ship{At: at + clock.Day, Order: 2, Model: 1, Due: clock.Never})
	})
	a, _ := g.OfModel(0)
	b, _ := g.OfModel(1)
	near(t, "both models", a+b, (g.Total(Cost) + g.Total(Wear)).Amount(), 1e-9)
	near(t, "three fourths of the labor", a, 3*b, 1e-9)
	if _, ok := g.OfModel(5); ok {
		t.Error("a model that is not there has a cost")
	}
}
