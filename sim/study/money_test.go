package study

import (
	"math"
	"testing"

	"moldturn/sim/money"
	"moldturn/sim/record"
)

// book is a ledger of a year made by hand: amounts in whole units of money.
func book(prevention, internal, external, work, margin float64, boats, escaped int64, strips float64) *money.Ledger {
	cents := func(x float64) money.Cents { return money.Cents(math.Round(100 * x)) }
	g := &money.Ledger{Currency: "$", Years: 1, Open: 50, Shipped: []int64{boats}, Escaped: escaped, MoldDays: 1000, Margins: true, MoldUse: make([]float64, record.Doings+1)}
	g.MoldUse[record.Stripping] = strips
	g.Lines = []money.Line{
		{Name: "a", Class: money.Prevention, Amount: cents(prevention)}, {Name: "b", Class: money.InternalFailure, Amount: cents(internal)},
		{Name: "c", Class: money.ExternalFailure, Amount: cents(external)}, {Name: "d", Amount: cents(work)},
		{Name: "e", Kind: money.Income, Amount: cents(margin)}, {Name: "f", Kind: money.Wear, Amount: cents(700)},
	}
	return g
}

func runsWith(name string, books ...*money.Ledger) Runs {
	r := Runs{Name: name}
	for _, g := range books {
		r.Outcomes = append(r.Outcomes, Outcome{Capacity: &record.Result{}, CapacityLedger: g})
	}
	return r
}

// Three policies, eight runs each: often is dear in prevention, seldom in
// failure and warranty.
func policies() []Runs {
	var often, middle, seldom []*money.Ledger
	for _, luck := range []float64{-3, 3, -3, 3, -3, 3, -3, 3} {
		often = append(often, book(900+luck, 100, 25, 5000+2*luck, 9000+4*luck, 90, 10, 60))
		middle = append(middle, book(500+luck, 200, 50, 5100+2*luck, 10000+4*luck, 100, 20, 30))
		seldom = append(seldom, book(300+luck, 900, 250, 5100+3*luck, 9500+4*luck, 95, 100, 10))
	}
	return []Runs{runsWith("often", often...), runsWith("middle", middle...), runsWith("seldom", seldom...)}
}

func TestQualityByHand(t *testing.T) {
	q := CompareQuality(policies(), []int{3, 5, 10}, false)
	if q == nil || q.Least != 1 || q.Most != 1 || !q.Margins {
		t.Fatalf("%+v", q)
	}
	for i, want := range []struct{ four, margin, other, total float64 }{
		{1025, 1000, -100, 1925}, {750, 0, 0, 750}, {1450, 500, 0, 1950},
	} {
		p := &q.Policies[i]
		for _, c := range []struct {
			what      string
			got, want float64
		}{{"four classes", p.Four.Mean, want.four}, {"margin", p.Margin.Mean, want.margin}, {"other", p.Other.Mean, want.other}, {"total", p.Total.Mean, want.total}} {
			if math.Abs(c.got-c.want) > 1e-9 {
				t.Errorf("%s, %s: %v, want %v", p.Runs.Name, c.what, c.got, c.want)
			}
		}
	}
	if q.Policies[0].NotWorse || !q.Policies[1].NotWorse || q.Policies[2].NotWorse {
		t.Error("the valley is not where it is")
	}
}

// What a policy costs in all more than another is what it contributes less.
func TestTotalsAreContributions(t *testing.T) {
	runs := policies()
	q := CompareQuality(runs, []int{3, 5, 10}, false)
	contribution := Metric{Of: ledger(func(g *money.Ledger) (float64, bool) { return g.Contribution().Amount() / g.Years, true })}
	for i := range runs {
		d, _ := runs[q.Least].Difference(&runs[i], &contribution)
		if math.Abs(d.Mean-q.Policies[i].More.Mean) > 1e-9 {
			t.Errorf("%s: %v dearer, %v less contribution", runs[i].Name, q.Policies[i].More.Mean, d.Mean)
		}
	}
}

// 90 escapes fewer, of which a fourth are claimed: the claim at which 1225 of
// other costs are paid back is 1225 + the warranty of today, over 22.5.
func TestBreakEvenByHand(t *testing.T) {
	q := CompareQuality(policies(), []int{3, 5, 10}, false)
	e := q.BreakEvenOf(0, 2, 0.25, 10)
	if !e.Claims || math.Abs(e.Fewer.Mean-22.5) > 1e-9 {
		t.Fatalf("fewer claims %+v", e.Fewer)
	}
	// four classes without warranty: often 1000, seldom 1200: often is cheaper by 200 already
	if math.Abs(e.Four.Value-(-200/22.5)) > 1e-9 {
		t.Errorf("four classes: %v", e.Four.Value)
	}
	// contributions: often 2975, seldom 2950; warranty 25 and 250: without it often is 200 poorer
	if math.Abs(e.Claim.Value-200/22.5) > 1e-9 {
		t.Errorf("all costs: %v", e.Claim.Value)
	}
}

func TestMoldTimeThatCostsBoats(t *testing.T) {
	q := CompareQuality(policies(), []int{3, 5, 10}, false)
	binds, many, d := q.MoldsBind()
	if many != 0 || d.Mean != 10 {
		t.Errorf("binds %v, policy %d, boats %v", binds, many, d.Mean)
	}
	if got := q.Fewer(2).Mean; got != -5 {
		t.Errorf("seldom ships %v more", got)
	}
}

func TestQualityWithoutLedgersOrMargins(t *testing.T) {
	if CompareQuality(policies(), []int{3, 5, 10}, true) != nil {
		t.Error("a comparison of runs that were not made")
	}
	runs := policies()
	for i := range runs {
		for k := range runs[i].Outcomes {
			runs[i].Outcomes[k].CapacityLedger.Margins = false
		}
	}
	q := CompareQuality(runs, []int{3, 5, 10}, false)
	if q.Margins || q.Policies[0].Total.Mean != q.Policies[0].Four.Mean {
		t.Error("without margins the four classes decide")
	}
	for _, m := range moneyMetrics {
		if _, ok := m.Of(&runs[0].Outcomes[0]); ok != (m.Name == "cost_per_boat" || m.Name == "quality_cost_per_boat") {
			t.Errorf("%s without margins: %v", m.Name, ok)
		}
		if _, ok := m.Of(&Outcome{Capacity: &record.Result{}}); ok {
			t.Errorf("%s without a ledger", m.Name)
		}
	}
}

// Figures of money by hand.
func TestMoneyMetrics(t *testing.T) {
	o := runsWith("one", book(900, 100, 25, 5000, 9000, 90, 10, 60)).Outcomes[0]
	for name, want := range map[string]float64{
		"cost_per_boat":             (900 + 100 + 25 + 5000 + 700) / 90.0,
		"contribution_per_week":     (9000 - 6025) / 50.0,
		"contribution_per_mold_day": (9000 - 6025) / 1000.0,
		"quality_cost_per_boat":     1025 / 90.0,
	} {
		m, ok := MetricNamed(name)
		if !ok {
			t.Fatalf("no figure %s", name)
		}
		if got, ok := m.Of(&o); !ok || math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: %v, want %v", name, got, want)
		}
	}
	r := runsWith("one", book(1, 1, 1, 1, 1, 1, 1, 1))
	r.Outcomes[0].CapacityLedger.Currency = "EUR"
	m, _ := MetricNamed("cost_per_boat")
	if got := r.UnitOf(&m); got != "EUR/boat" {
		t.Errorf("unit %q", got)
	}
}

// An investment by hand: ten boats a year more for 300 of contribution.
func TestInvestmentByHand(t *testing.T) {
	var now, then []*money.Ledger
	for _, luck := range []float64{-10, 10, -10, 10, -10, 10, -10, 10} {
		now = append(now, book(0, 0, 0, 5000+luck, 9000+luck, 90, 0, 0))
		then = append(then, book(0, 0, 0, 5700+luck, 10000+2*luck, 100, 0, 0))
	}
	base, with := runsWith("now", now...), runsWith("then", then...)
	v := money.Investment{Purchase: 1000, Life: 5, Rate: 0.1}
	r, ok := InvestIn(&v, &base, &with, false)
	if !ok {
		t.Fatal("no returns")
	}
	if math.Abs(r.Gain.Mean-300) > 1e-9 || !r.Gain.Clear || r.Pays != 8 || r.Of != 8 {
		t.Errorf("gain %v, pays in %d of %d", r.Gain.Mean, r.Pays, r.Of)
	}
	if want := -1000 + 300*3.790786769; math.Abs(r.Worth.Mean-want) > 1e-5 { // P/A (10 %, 5) from factor tables
		t.Errorf("worth %v, want %v", r.Worth.Mean, want)
	}
	if math.Abs(r.Boats.Mean-0.2) > 1e-12 {
		t.Errorf("boats a week %v", r.Boats.Mean)
	}
	if !r.HasNeed {
		// boats differ by exactly ten in each of eight runs: that is clear
		t.Fatal("no need of boats worked out")
	}
	if want := 1000 * 0.2637974808 / (300 / 0.2); math.Abs(r.BoatsNeeded-want) > 1e-9 {
		t.Errorf("boats needed %v, want %v", r.BoatsNeeded, want)
	}
	if want := (700 + 263.7974808) / 1000.0; math.Abs(r.MarginShare.Value-want) > 1e-9 {
		t.Errorf("margins at %v, want %v", r.MarginShare.Value, want)
	}
	if _, ok := InvestIn(&v, &base, &with, true); ok {
		t.Error("returns of runs that were not made")
	}
}
