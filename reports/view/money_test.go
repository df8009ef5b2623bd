package view

import (
	"math"
	"strings"
	"testing"

	"moldturn/sim"
	"moldturn/sim/money"
	units "moldturn/sim/param/unit"
	"moldturn/sim/record"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

func TestAmountsAreRoundedToTheirInterval(t *testing.T) {
	dollars := Money{Currency: "$"}
	for _, c := range []struct {
		x    stats.Summary
		want string
	}{
		{stats.Summary{}, "–"},
		{stats.Summary{N: 1, Mean: 1234567.4}, "$1,234,567"},
		{stats.Summary{N: 5, Mean: 61234, Half: 1290}, "$61,200 ± 1,300"},
		{stats.Summary{N: 5, Mean: 61234, Half: 8200}, "$61,000 ± 8,000"},
		{stats.Summary{N: 5, Mean: -61234, Half: 8200}, "−$61,000 ± 8,000"},
		{stats.Summary{N: 5, Mean: 12.4, Half: 0.3}, "$12 ± <1"},
		{stats.Summary{N: 5, Mean: -0.2}, "$0"},
	} {
		if got := dollars.amount(c.x); got != c.want {
			t.Errorf("%+v: %s, want %s", c.x, got, c.want)
		}
	}
	for currency, want := range map[string]string{"$": "$27.30", "€": "€27.30", "EUR": "EUR 27.30"} {
		if got := (Money{Currency: currency}).cents(27.3); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

// The family of units changes quantities and prices so that amounts stay.
func TestUnitsKeepAmounts(t *testing.T) {
	for _, u := range []string{"kg", "L", "m²", "1,000 m³", "h", "boat"} {
		for _, sys := range []units.System{units.US, units.Metric} {
			_, factor := Money{Units: sys}.measure(u)
			if amount := (10 * factor) * (3 / factor); amount < 30-1e-9 || amount > 30+1e-9 {
				t.Errorf("%s: 10 × 3 is %v", u, amount)
			}
		}
	}
	if u, factor := (Money{Units: units.US}).measure("kg"); u != "lb" || factor < 2.2046 || factor > 2.2047 {
		t.Errorf("1 kg is %v %s", factor, u)
	}
	if u, _ := (Money{Units: units.Metric}).measure("kg"); u != "kg" {
		t.Errorf("SI has %s", u)
	}
}

// ledger is a year's ledger by hand.
func ledger(prevention, warranty, work, margin float64, boats, escaped int64, strips float64) *money.Ledger {
	cents := func(x float64) money.Cents { return money.Cents(100 * x) }
	g := &money.Ledger{Currency: "$", Years: 1, Open: 50, Shipped: []int64{boats}, Escaped: escaped, Margins: true, MoldDays: 1, MoldUse: make([]float64, record.Doings+1)}
	g.MoldUse[record.Stripping] = strips
	add := func(name string, k money.Kind, c money.Class, amount float64) {
		g.Lines = append(g.Lines, money.Line{Name: name, Label: name, Kind: k, Class: c, Model: -1, Quantity: 1, Per: 1, Unit: "h", Price: amount, Amount: cents(amount)})
	}
	add("wax.x", money.Cost, money.Prevention, prevention)
	add("warranty.x", money.Cost, money.ExternalFailure, warranty)
	add("labor.x", money.Cost, money.Work, work)
	add("margin.x", money.Income, money.Work, margin)
	return g
}

// runs is one alternative with a few replications of the same ledger, a little
// luck apart.
func runs(name string, of func(luck float64) *money.Ledger) study.Runs {
	r := study.Runs{Name: name}
	for _, luck := range []float64{-2, -1, 0, 1, 2} {
		g := of(luck)
		r.Outcomes = append(r.Outcomes, study.Outcome{Capacity: &record.Result{}, CapacityLedger: g, DatedLedger: g, Dated: &record.Result{}})
	}
	return r
}

func qualityOf(list ...study.Runs) *Quality {
	v := &Quality{Study: &Study{Scenario: "Plant", Money: Money{Currency: "$"}, Replications: 5, Years: 1}, Claim: 900, Chance: 0.25, Seldom: len(list) - 1}
	every := make([]int, len(list))
	for i := range list {
		v.Alternatives = append(v.Alternatives, Alternative{Runs: list[i], Plan: &sim.Plan{Name: "Plant"}})
		every[i] = 3 + i
	}
	v.Full = study.CompareQuality(list, every, false)
	return v
}

func says(t *testing.T, text, want string) {
	t.Helper()
	if !strings.Contains(text, want) {
		t.Errorf("%q does not say %q", text, want)
	}
}

func TestQualityHeadlineTellsValleyFromSlope(t *testing.T) {
	cheap := runs("every 7", func(l float64) *money.Ledger { return ledger(100+l, 9000, 1000, 50000, 50, 40, 10) })
	same := runs("every 5", func(l float64) *money.Ledger { return ledger(101-2*l, 9000, 1000, 50000, 50, 40, 12) })
	dear := runs("every 3", func(l float64) *money.Ledger {
		return ledger(900+l, 1800+225*l, 1000, 42000+l, 45+int64(l), 8+int64(l), 40)
	})
	v := qualityOf(dear, same, cheap)
	says(t, v.Headline(), "“every 7” costs least")
	says(t, v.Headline(), "not clearly dearer are “every 5”")
	says(t, v.Headline(), "Clearly dearer: “every 3”")
	says(t, v.Headline(), "The valley is flat: not clearly dearer are “every 5”, by $9 a year at most.") // 1 + 3·√2.5/√5 · 3.961, t of 4 degrees of freedom at 1 − 0.05/6, Bonferroni for three pairs
	wide := qualityOf(cheap, runs("every 5", func(l float64) *money.Ledger { return ledger(101-2000*l, 9000, 1000, 50000, 50, 40, 12) }))
	says(t, wide.Headline(), "Not clearly dearer are “every 5”, but these repeats leave up to $4,000 a year open")
	found := strings.ReplaceAll(strings.Join(v.Findings(), "\n"), nb, " ")
	says(t, found, "Mold time binds: “every 5” ships +5.0 ± 2.0 boats a year against “every 3”")
	says(t, found, "“every 3” pays against “every 7” once a warranty claim costs")
	if strings.Contains(found, "too seldom") {
		t.Error("the policy that ships most is said to ship fewer")
	}
	v = qualityOf(same, cheap)
	says(t, strings.Join(v.Findings(), "\n"), "Mold time does not bind")
	says(t, strings.Join(v.Findings(), "\n"), "does not clearly lower the number of claims")
}

func TestStrippingOftenThatPaysAnyway(t *testing.T) {
	often := runs("every 3", func(l float64) *money.Ledger { return ledger(100+l, 1800+225*l, 1000, 5000, 50, 8+int64(l), 40) })
	seldom := runs("every 10", func(l float64) *money.Ledger { return ledger(400+3*l, 18000, 1000, 5000, 50, 80, 10) })
	says(t, strings.Join(qualityOf(often, seldom).Findings(), "\n"), "pays against “every 10” at any warranty cost")
}

// Where escapes swing around the same mean the break-even has no ends, and yet
// a policy that is dearer stays so up to some claim.
func TestBreakEvenWithoutEndsNamesASide(t *testing.T) {
	often := runs("every 3", func(l float64) *money.Ledger { return ledger(90000+l, 7200, 1000, 5000, 50, 32, 40) })
	for _, c := range []struct {
		swing func(luck float64) int64
		want  string
	}{
		{func(l float64) int64 { return 32 + int64(20*l) }, "clearly dearer with claims of up to $"},
		{func(l float64) int64 { return 30 + int64(l) }, "clearly dearer whatever a claim costs"},
	} {
		seldom := runs("every 10", func(l float64) *money.Ledger {
			return ledger(20000+300*l, 225*float64(c.swing(l)), 1000, 5000, 50, c.swing(l), 10)
		})
		found := strings.ReplaceAll(strings.Join(qualityOf(often, seldom).Findings(), "\n"), nb, " ")
		says(t, found, "does not clearly lower the number of claims")
		says(t, found, c.want)
	}
	level := runs("every 10", func(l float64) *money.Ledger { return ledger(90000-9000*l, 7200, 1000, 5000, 50, 32, 10) })
	says(t, strings.Join(qualityOf(often, level).Findings(), "\n"), "not clearly cheaper or dearer even if claims cost nothing")
}

func TestQualityPage(t *testing.T) {
	v := qualityOf(runs("every 3", func(l float64) *money.Ledger { return ledger(300+l, 20, 1000, 5000, 50, 8, 40) }),
		runs("every 10", func(l float64) *money.Ledger { return ledger(100+3*l, 90, 1000, 5000, 50, 80, 10) }))
	p, err := v.Page()
	if err != nil {
		t.Fatal(err)
	}
	if err := p.Check(); err != nil {
		t.Error(err)
	}
	says(t, p.Title, "what quality costs and returns")
	pair := v.PairTable()
	if err := pair.Check(); err != nil {
		t.Error(err)
	}
	for row, want := range map[int]string{0: "prevention $300 $100 +$200", 3: "external failure $20 $90 −$70", 4: "four classes $320 $190 +$130"} {
		text := ""
		for _, c := range pair.Rows[row].Cells {
			text += " " + c.Text
		}
		says(t, text, want)
	}
}

func investOf(base, with study.Runs, full, dated bool) *Invest {
	v := &Invest{Study: &Study{Scenario: "Plant", Money: Money{Currency: "$"}, Replications: 5, Years: 1}, Investment: money.Investment{Purchase: 1000, Life: 5, Rate: 0.1}, Bought: "2 molds"}
	v.Alternatives = []Alternative{{Runs: base, Plan: &sim.Plan{}}, {Runs: with, Plan: &sim.Plan{}}}
	if full {
		v.Full, _ = study.InvestIn(&v.Investment, &base, &with, false)
	}
	if dated {
		v.Dated, _ = study.InvestIn(&v.Investment, &base, &with, true)
	}
	return v
}

func TestInvestHeadline(t *testing.T) {
	base := runs("today", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l, 50, 0, 0) })
	for _, c := range []struct {
		name string
		gain func(luck float64) float64
		want string
	}{
		{"pays", func(l float64) float64 { return 1000 + l }, "if every boat sells: pays (net present value $2,"},
		{"too little", func(l float64) float64 { return 50 + l }, "does not pay (net present value −$8"},
		{"nothing", func(l float64) float64 { return 20 * l }, "brings no gain: no craft and no place limits more than before"},
		{"luck", func(l float64) float64 { return 265 + 20*l }, "may pay or not (net present value"},
		{"wide luck", func(l float64) float64 { return 200 + 400*l }, "may pay or not (net present value"}, // no clear gain, and no clear loss
	} {
		with := runs(c.name, func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l+c.gain(l), 55, 0, 0) })
		v := investOf(base, with, true, false)
		says(t, v.Headline(), c.want)
		p, err := v.Page()
		if err != nil {
			t.Fatal(err)
		}
		if err := p.Check(); err != nil {
			t.Error(err)
		}
	}
}

// Two runs that are the same but for demand: with both known, the table has
// both, and cash and wear stand in two tables.
func TestInvestShowsBothViews(t *testing.T) {
	base := runs("today", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l, 50, 0, 0) })
	with := runs("more", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 6000+2*l, 60, 0, 0) })
	v := investOf(base, with, true, true)
	if n := len(v.Cash().Columns); n != 3 {
		t.Errorf("%d columns", n)
	}
	if v.Cash().Title == v.Wear().Title || len(v.Wear().Rows) != 2 {
		t.Error("cash and wear are not two views")
	}
	says(t, v.Headline(), "“more” pays with the orders as they come (net present value")
	v.Dated, _ = study.InvestIn(&v.Investment, &base, &base, true)
	says(t, v.Headline(), "“more” pays only if the boats it adds sell: then net present value")
	says(t, v.Headline(), "with the orders as they come it does not pay (net present value −$1,000")
}

// Every line of the ledger has its heading, so that the table of spending adds
// up to the ledger.
func TestEveryLineHasAHeading(t *testing.T) {
	for _, name := range []string{"labor.gel.x", "paid.gel.idle", "paid.gel.lent", "paid.gel.off_floor", "paid.gel.overtime", "gel_coat.x", "gel_coat_band.x", "gel_coat_again.x", "barrier_coat.x", "resin.x", "glass.x",
		"scrap_gel_coat.x", "scrap_barrier_coat.x", "scrap_resin.x", "scrap_glass.x", "wax.x", "stripper.x", "compound.x", "resurfacing.x", "small_gel_coat.x", "small_resin.x", "small_glass.x", "solvent.x", "flush_gel_coat.x",
		"mold_repair.routine.x", "rework_materials.x", "booth_air", "booth_heat", "training", "warranty.x", "floor.x", "holding.x", "late.x"} {
		if headingOf(&money.Line{Name: name}) < 0 {
			t.Errorf("%s has no heading", name)
		}
	}
}

// The interval of E. B. Wilson: for 5 of 10, 0.2366 to 0.7634, and for 0 of 10,
// 0 to 0.2775, both from its closed form at z = 1.96; within 0 and 1 always.
func TestChanceThatItPays(t *testing.T) {
	for _, c := range []struct {
		hits, of  int
		low, high float64
	}{{5, 10, 0.2366, 0.7634}, {0, 10, 0, 0.2775}, {10, 10, 0.7225, 1}} {
		low, high := chance(c.hits, c.of)
		if math.Abs(low-c.low) > 5e-5 || math.Abs(high-c.high) > 5e-5 {
			t.Errorf("%d of %d: %.4f to %.4f, want %.4f to %.4f", c.hits, c.of, low, high, c.low, c.high)
		}
	}
}
