package scenarios

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"math"
	"strings"
	"testing"

	"moldturn/sim"
	"moldturn/sim/money"
	"moldturn/sim/param/unit"
	"moldturn/sim/record"
)

// factHash is the hash of all facts of a run, in order.
type factHash struct{ h hash.Hash }

func (f factHash) Span(x *record.Span) { fmt.Fprintf(f.h, "s%+v\n", *x) }
func (f factHash) Use(x *record.Use)   { fmt.Fprintf(f.h, "u%+v\n", *x) }
func (f factHash) Pull(x *record.Pull) { fmt.Fprintf(f.h, "p%+v\n", *x) }
func (f factHash) Ship(x *record.Ship) { fmt.Fprintf(f.h, "b%+v\n", *x) }
func (f factHash) Note(x *record.Note) { fmt.Fprintf(f.h, "n%+v\n", *x) }

// fenwaterWith is the bundled Fenwater over a year, with changes written as on a
// command line.
func fenwaterWith(t *testing.T, changes ...string) *Plant {
	t.Helper()
	data, ok := BundledFile("fenwater")
	if !ok {
		t.Fatal("no fenwater")
	}
	o := Options{Years: 1}
	for _, text := range append([]string{"run.warm_up=0", "alternatives="}, changes...) {
		ch, complaints := ParseChange("--set", text)
		if len(complaints) > 0 {
			t.Fatal(complaints)
		}
		o.Sets = append(o.Sets, ch)
	}
	s, complaints := Load("fenwater.yaml", data, o)
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	return s.Base
}

// booked runs a plant with orders always waiting and gives what a Book kept.
func booked(t *testing.T, p *Plant) *money.Quantities {
	t.Helper()
	book := money.NewBook(&p.Money().Plant)
	simulateInto(t, p, book)
	return book.Quantities()
}

func simulateInto(t *testing.T, p *Plant, obs record.Observer) {
	t.Helper()
	air, err := p.Air(3, 0)
	if err != nil {
		t.Fatal(err)
	}
	if err := sim.Simulate(p.Capacity, air, 3, 0, obs); err != nil {
		t.Fatal(err)
	}
}

// everyPrice are all prices of a setup, by pointer.
func everyPrice(s *money.Setup) []*float64 {
	p := &s.Prices
	out := []*float64{&p.Barrier, &p.Resin, &p.Glass, &p.Wax, &p.Compound, &p.Stripper, &p.Solvent, &p.MoldRepair, &p.Rework, &p.Resurface,
		&p.BoothAir, &p.BoothHeat, &p.FloorDay, &p.FloorValue, &p.LateDay, &p.Claim, &p.Training}
	for i := range p.Wages {
		out = append(out, &p.Wages[i])
	}
	for i := range s.Plant.Parts {
		out = append(out, &s.Plant.Parts[i].GelPrice, &s.Plant.Parts[i].MoldPrice)
	}
	for i := range s.Plant.Small {
		out = append(out, &s.Plant.Small[i].GelPrice)
	}
	for i := range s.Plant.Models {
		out = append(out, &s.Plant.Models[i].Margin)
	}
	return out
}

// A price never changes what the plant does: the facts are the same, one by one.
func TestPricesDoNotChangeTheFlow(t *testing.T) {
	sum := func(changes ...string) string {
		f := factHash{sha256.New()}
		simulateInto(t, fenwaterWith(t, changes...), f)
		return hex.EncodeToString(f.h.Sum(nil))
	}
	plain := sum("money=")
	dear := []string{"money.resin=$99", "money.wages.lamination=$1", "money.warranty.claim=$90k", `models."Rush 23".margin=$1`,
		"money.gel_coat.transfer=50 %", "money.laminate.thickness=20 mm", "money.discount=40 %", "units=US", "currency=€"}
	if sum(dear...) != plain {
		t.Errorf("%v change the facts of a run", dear)
	}
	if sum("hold.clock=16 h") == plain {
		t.Error("the hash of facts does not see a change of the hold")
	}
}

func TestZeroPricesGiveZero(t *testing.T) {
	p := fenwaterWith(t)
	q := booked(t, p)
	s := p.Money()
	for _, x := range everyPrice(s) {
		*x = 0
	}
	g := s.Price(q)
	if len(g.Lines) < 50 {
		t.Fatalf("only %d lines", len(g.Lines))
	}
	for _, l := range g.Lines {
		if l.Amount != 0 {
			t.Errorf("%s: %d cents without a price", l.Name, l.Amount)
		}
	}
	if g.Contribution() != 0 || g.Total(money.Wear) != 0 {
		t.Error("nothing is not nothing")
	}
}

// Each price is doubled by itself: lines either stay or double, to the cent that
// rounding leaves, and at least one doubles where the quantity is there.
func TestDoublingAPriceDoublesItsLines(t *testing.T) {
	p := fenwaterWith(t)
	q := booked(t, p)
	s := p.Money()
	before := s.Price(q)
	moved := 0
	for k, x := range everyPrice(s) {
		was := *x
		*x = 2 * was
		after := s.Price(q)
		*x = was
		for i := range after.Lines {
			a, b := before.Lines[i], after.Lines[i]
			switch {
			case a.Name != b.Name || a.Quantity != b.Quantity:
				t.Fatalf("price %d: line %s became %s", k, a.Name, b.Name)
			case b.Price == a.Price:
				if b.Amount != a.Amount {
					t.Errorf("price %d: %s changed without its price", k, a.Name)
				}
			default:
				moved++
				if b.Price != 2*a.Price {
					t.Errorf("price %d: %s at %v, was %v", k, a.Name, b.Price, a.Price)
				}
				if d := b.Amount - 2*a.Amount; d < -1 || d > 1 {
					t.Errorf("price %d: %s is %d cents, was %d", k, a.Name, b.Amount, a.Amount)
				}
			}
		}
	}
	if moved < len(before.Lines)-5 {
		t.Errorf("%d of %d lines moved with a price", moved, len(before.Lines))
	}
}

// The ledger adds up to the cent: a line is its quantity times its price,
// rounded once, names are unique, and kinds and classes split the lines.
func TestFenwatersLedgerAddsUp(t *testing.T) {
	p := fenwaterWith(t)
	g := p.Money().Price(booked(t, p))
	names := map[string]bool{}
	var all, kinds, classes money.Cents
	for _, l := range g.Lines {
		if names[l.Name] {
			t.Errorf("two lines %s", l.Name)
		}
		names[l.Name] = true
		if want := money.Cents(math.Round(float64(l.Quantity) / l.Per * l.Price * 100)); l.Amount != want {
			t.Errorf("%s: %d cents, want %d", l.Name, l.Amount, want)
		}
		if l.Label == "" || l.Of == "" || l.Unit == "" || len(l.Inputs) == 0 {
			t.Errorf("%s cannot be traced: %+v", l.Name, l)
		}
		all += l.Amount
	}
	for k := money.Cost; k < money.Kinds; k++ {
		kinds += g.Total(k)
	}
	for c := money.Work; c < money.Classes; c++ {
		classes += g.Quality(c)
	}
	if all != kinds || classes != g.Total(money.Cost) {
		t.Errorf("lines %d, kinds %d; costs %d, classes %d", all, kinds, g.Total(money.Cost), classes)
	}
}

// Hours in steps are the hours that crafts worked, since nobody helps another
// craft at Fenwater; and boats are those of the facts.
func TestFenwatersHoursAreAllAccountedFor(t *testing.T) {
	p := fenwaterWith(t)
	q := booked(t, p)
	for c := range q.Labor {
		var sum int64
		for d := range q.Labor[c] {
			for k := range q.Labor[c][d] {
				for _, time := range q.Labor[c][d][k] {
					sum += time
				}
			}
		}
		if sum != q.Worked[c]+q.Over[c] {
			t.Errorf("%s: %d ms in steps, %d worked", p.Money().Plant.Crafts[c], sum, q.Worked[c]+q.Over[c])
		}
	}
	tally := record.NewTally(p.Frame)
	simulateInto(t, p, tally)
	for m, model := range tally.Result().Models {
		if int64(model.Shipped) != q.Shipped[m] {
			t.Errorf("model %d: %d shipped, ledger %d", m, model.Shipped, q.Shipped[m])
		}
	}
	for part, x := range tally.Result().Parts {
		if int64(x.Pulls) != q.Pulled[part] {
			t.Errorf("part %d: %d pulled, ledger %d", part, x.Pulls, q.Pulled[part])
		}
	}
}

// A scenario says nothing about money: no ledger. Wrong names and missing
// prices are complaints with their place.
func TestMoneyOfAScenario(t *testing.T) {
	if fenwaterWith(t, "money=").Money() != nil {
		t.Error("a ledger without a group money")
	}
	if p := fenwaterWith(t, "units=US", "currency=EUR"); p.Units() != unit.US || p.Currency() != "EUR" {
		t.Errorf("units %v, currency %q", p.Units(), p.Currency())
	}
	data, _ := BundledFile("fenwater")
	for _, c := range []struct{ change, want string }{
		{"money.wages={painting: $20}", `unknown craft "painting"`},
		{"money.warranty.to=1 wk", "money.warranty.to must not be before money.warranty.from"},
		{"money.gel_coat.price={entry: $5}", `no price for gel coat of grade "premium"`},
		{"money.resin=-$1", "money.resin"},
		{"money.loading=0.5", "money.loading"},
	} {
		ch, complaints := ParseChange("--set", c.change)
		if len(complaints) == 0 {
			_, complaints = Load("fenwater.yaml", data, Options{Years: 1, Sets: []Change{ch}})
		}
		if !contains(complaints, c.want) {
			t.Errorf("%s: %v, want %q", c.change, complaints, c.want)
		}
	}
}

func contains(complaints Complaints, text string) bool {
	for _, c := range complaints {
		if strings.Contains(c.Message, text) || c.Path == text {
			return true
		}
	}
	return false
}
