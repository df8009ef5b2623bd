package permit

import (
	"math"
	"math/rand/v2"
	"testing"
)

// sample is a setup that uses everything, with invented counts of two years.
func sample() (*Setup, *Counts) {
	p := onePlant()
	s := &Setup{Plant: *p, Amounts: Amounts{
		Density: 1.2, Transfer: 0.75, BandArea: 0.1, Barrier: 0.5, Laminate: 1.5, Glass: 0.4, Waste: 0.1, SmallGel: []float64{1}, SmallResin: []float64{2},
		MoldFilm: 0.9, RenewFilm: 0.5, MoldThick: 12, MoldGlass: 0.3, PumpGel: 4, PotGel: 0.2, PumpSolvent: 6, PotSolvent: 1, CleaningPerHour: 0.1},
		Materials: []Material{
			{Name: "white", Operation: PigmentedGel, HAP: 30, Styrene: 25, Averaged: true, For: []Use{GelCoat, Band, FlushGel, SmallGel}, Share: 0.9},
			{Name: "clear", Operation: ClearGel, HAP: 44, Styrene: 44, Averaged: true, For: []Use{GelCoat, Band, FlushGel, SmallGel}, Share: 0.1},
			{Name: "resin", Operation: ProductionResin, Method: Atomized, HAP: 34, Styrene: 34, Filler: 10, Averaged: true, For: []Use{Barrier, Skin, Laminate, SmallResin}, Share: 1},
			{Name: "tooling gel", Operation: ToolingGel, HAP: 38, Styrene: 38, For: []Use{MoldGel}, Share: 1},
			{Name: "tooling resin", Operation: ToolingResin, Method: Manual, HAP: 38, Styrene: 38, For: []Use{MoldResin}, Share: 1},
			{Name: "solvent", Operation: Solvent, HAP: 5, Styrene: 5, Evaporates: 0.5, For: []Use{FlushSolvent, Cleaning}, Share: 1},
		},
		Steps: Steps{ResinHAP: 3, GelHAP: 3, Film: 0.0254, Transfer: 0.05, Glass: 0.03, Flushes: 0.5},
	}
	r := rand.New(rand.NewPCG(1, 2))
	c := &Counts{}
	for range p.End() {
		m := MonthCounts{Parts: make([][lastOfPart + 1]int64, 1), Small: []int64{r.Int64N(1e9)}, Lay: r.Int64N(1e9), New: []int64{r.Int64N(2)},
			Resurfaced: []int64{r.Int64N(2)}, Pump: r.Int64N(9), Pot: r.Int64N(9), Shipped: []int64{r.Int64N(40)}}
		for u := GelCoat; u <= lastOfPart; u++ {
			m.Parts[0][u] = r.Int64N(40 * Whole)
		}
		c.Months = append(c.Months, m)
	}
	return s, c
}

// One part of 10 m² in one month, by hand: gel coat 10 · 0.5 · 1.2 / 0.75 = 8 kg;
// resin 10 · 5 · 1.5 · 0.6 / 0.9 = 50 kg.
func TestOnePartByHand(t *testing.T) {
	s, _ := sample()
	m := MonthCounts{Parts: [][lastOfPart + 1]int64{{GelCoat: Whole, Skin: Whole / 4, Laminate: 3 * Whole / 4}}, Small: []int64{0}, New: []int64{0}, Resurfaced: []int64{0}}
	got := s.Grams(&m)
	want := []int64{7200, 800, 50000, 0, 0, 0}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("%s: %d g, want %d", s.Materials[i].Name, got[i], want[i])
		}
	}
	// resin without its 10 % of filler: 45 kg at (0.714 · 0.34 − 0.18) · 2000 lb/ton
	if kg, want := s.Materials[2].Emitted(50), 45*(0.714*0.34-0.18); math.Abs(kg-want) > 1e-12 {
		t.Errorf("%v kg, want %v", kg, want)
	}
	// solvent: 10 kg of 5 %, half of it into the air
	if kg := s.Materials[5].Emitted(10); kg != 0.25 {
		t.Errorf("%v kg, want 0.25", kg)
	}
}

// Every month-end is the sum of its twelve months, gram by gram, and the ledger
// the sum of its months.
func TestLedgerAddsUp(t *testing.T) {
	s, c := sample()
	before := [Year]float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
	for i := range s.Materials {
		s.Materials[i].Before = &before
	}
	l := s.Ledger(c)
	var all [][]int64
	for k := range Year {
		all = append(all, []int64{})
		for range s.Materials {
			all[k] = append(all[k], int64(1000*before[k]))
		}
	}
	hap, boats := 0.0, int64(0)
	for n, m := range l.Months {
		all = append(all, m.Grams)
		hap += m.HAP
		boats += m.Boats
		rolling := 0.0
		for i := range s.Materials {
			sum := int64(0)
			for _, g := range all[n+1 : n+1+Year] {
				sum += g[i]
			}
			if m.Used[i] != sum {
				t.Fatalf("month %d, %s: %d g, want %d", n, s.Materials[i].Name, m.Used[i], sum)
			}
			rolling += s.Materials[i].Emitted(float64(sum) / 1000)
		}
		if math.Abs(m.Rolling-rolling) > 1e-9 || !m.Known || m.One >= m.Rolling {
			t.Fatalf("month %d: rolling %v, want %v; one %v", n, m.Rolling, rolling, m.One)
		}
		if mg := m.Average.Mg[ToolingGel]; mg != 0 || len(m.Content) == 0 {
			t.Fatalf("month %d: materials judged by content entered the averaging: %v", n, mg)
		}
	}
	if math.Abs(hap-l.HAP) > 1e-9 || boats != l.Boats || len(l.Months) != 24 {
		t.Errorf("%v kg and %d boats in %d months, want %v and %d", l.HAP, l.Boats, len(l.Months), hap, boats)
	}
}

// Without last year's use the first month-end that is judged is the twelfth, as
// in §63.5710 (first evaluation at the end of month 12).
func TestFirstEvaluation(t *testing.T) {
	s, c := sample()
	l := s.Ledger(c)
	for n, m := range l.Months {
		if m.Known != (n >= 11) {
			t.Errorf("month %d known: %v", n+1, m.Known)
		}
	}
	if l.Highest() < 11 {
		t.Errorf("highest is month %d", l.Highest())
	}
}

// Nothing used is nothing emitted, and complies.
func TestZeroUseGivesZero(t *testing.T) {
	s, c := sample()
	for i := range c.Months {
		c.Months[i] = MonthCounts{Parts: make([][lastOfPart + 1]int64, 1), Small: []int64{0}, New: []int64{0}, Resurfaced: []int64{0}, Shipped: []int64{0}}
	}
	l := s.Ledger(c)
	if _, some := l.PerBoat(); l.HAP != 0 || some {
		t.Errorf("%v kg", l.HAP)
	}
	for _, m := range l.Months {
		if m.Rolling != 0 || !m.Average.Complies() || len(m.Content) != 0 {
			t.Fatalf("%+v", m)
		}
	}
	if _, ok := l.Left(1000); ok || l.Crossed(0) >= 0 {
		t.Error("boats left without boats, or nothing crosses a cap of nothing")
	}
}

// More HAP in any one material never gives less in the air, twice the HAP more
// than twice for resin; more boats never give less.
func TestMoreIsNeverLess(t *testing.T) {
	s, c := sample()
	base := s.Ledger(c)
	for i := range s.Materials {
		more := s.copied()
		more.Materials[i].HAP = min(2*more.Materials[i].HAP, 100)
		l := more.Ledger(c)
		if l.HAP < base.HAP {
			t.Errorf("%s with twice the HAP: %v kg after %v", s.Materials[i].Name, l.HAP, base.HAP)
		}
		for n := range l.Months {
			if l.Months[n].Rolling < base.Months[n].Rolling || l.Months[n].Average.Emissions < base.Months[n].Average.Emissions || l.Months[n].Average.Limit != base.Months[n].Average.Limit {
				t.Fatalf("%s, month %d", s.Materials[i].Name, n)
			}
		}
	}
	for i := range c.Months {
		c.Months[i].Parts[0][Laminate] *= 2
	}
	if l := s.Ledger(c); l.HAP <= base.HAP {
		t.Error("more laminate, no more HAP")
	}
}

// Every lever saves, alone, and leaves the setup it came from as it was.
func TestLeversSave(t *testing.T) {
	s, c := sample()
	base := s.Ledger(c)
	levers := s.Levers()
	if len(levers) != 7 {
		t.Fatalf("%d levers", len(levers))
	}
	for _, x := range levers {
		if l := x.Setup.Ledger(c); l.HAP >= base.HAP || l.Boats != base.Boats {
			t.Errorf("%s: %v kg after %v", x.Name, l.HAP, base.HAP)
		}
	}
	if again := s.Ledger(c); again.HAP != base.HAP {
		t.Error("a lever moved the base")
	}
	s.Materials[2].Method = Nonatomized
	s.Amounts.PumpGel, s.Amounts.PotGel, s.Amounts.PumpSolvent, s.Amounts.PotSolvent = 0, 0, 0, 0
	if n := len(s.Levers()); n != 5 {
		t.Errorf("%d levers where nothing is atomized and no flush loses anything, want 5", n)
	}
}

// A cap: the month that crosses it is the first above it, and boats left are the
// room of the fullest twelve months over the HAP of a boat.
func TestCap(t *testing.T) {
	s, c := sample()
	l := s.Ledger(c)
	top := l.Months[l.Highest()].Rolling
	per, _ := l.PerBoat()
	if n := l.Crossed(top); n != -1 {
		t.Errorf("at the highest itself the cap is not crossed, month %d", n)
	}
	if n := l.Crossed(top - 1e-6); n != l.Highest() {
		t.Errorf("crossed in month %d, want %d", n, l.Highest())
	}
	if left, ok := l.Left(top + 10*per); !ok || math.Abs(left-10) > 1e-9 {
		t.Errorf("%v boats left, want 10", left)
	}
}

func TestFaults(t *testing.T) {
	s, _ := sample()
	if f := s.Faults(); len(f) != 0 {
		t.Fatalf("%v", f)
	}
	s.Materials[0].Share = 0.8
	if f := s.Faults(); len(f) != 4 || f[0].Material != 1 {
		t.Errorf("four uses without their whole: %v", f)
	}
}
