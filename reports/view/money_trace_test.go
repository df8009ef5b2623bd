package view

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"moldturn/sim/money"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// number reads a number with commas and a currency.
func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(strings.NewReplacer(",", "", "$", "", "−", "-").Replace(s), 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// Quantity times price, as printed, is the amount as printed, to a cent or 0.02
// %: for large and small quantities, and for prices of parts of a cent.
func TestPrintedLinesMultiplyOut(t *testing.T) {
	dollars := Money{Currency: "$"}
	for _, q := range []float64{247478.9, 0.23776, 12.345678, 1, 85.49, 3426.6, -44.4992} {
		for _, p := range []float64{28.6, 0.0019822, 1.587573, 4900, 0.00123456, 19.6666667} {
			got := number(t, quantity(q)) * number(t, dollars.price(p))
			want := number(t, dollars.cents(q*p))
			if math.Abs(got-want) > math.Max(0.01, 0.0002*math.Abs(want)) && math.Abs(want) >= 1 {
				t.Errorf("%s × %s = %s, and multiplies out to %v", quantity(q), dollars.price(p), dollars.cents(q*p), got)
			}
		}
	}
	for v, want := range map[float64]string{28.6: "$28.60", 4900: "$4,900.00", 0.0019822: "$0.0019822", 1.8143695: "$1.8144", 0: "$0.00", 0.25: "$0.25", 123456.789: "$123,456.79"} {
		if got := dollars.price(v); got != want {
			t.Errorf("%v: %s, want %s", v, got, want)
		}
	}
	for v, want := range map[float64]string{2255.94: "2,255.9", 0.2377622: "0.23776", 85: "85.0", -44.4992: "−44.499", 0: "0.0"} {
		if got := quantity(v); got != want {
			t.Errorf("%v: %s, want %s", v, got, want)
		}
	}
}

// The totals of all lines are those of the ledger: margin less costs is its
// contribution, and wear is added to neither.
func TestTotalsAreTheLedgers(t *testing.T) {
	g := ledger(100.25, 50.5, 1000.75, 5000, 50, 0, 0)
	g.Years = 2
	g.Lines = append(g.Lines, money.Line{Name: "mold_wear.x", Kind: money.Wear, Quantity: 1, Per: 1, Unit: "turn", Price: 300, Amount: 30000})
	r := study.Runs{Name: "today", Outcomes: []study.Outcome{{Capacity: &record.Result{}, CapacityLedger: g}}}
	s := &Study{Money: Money{Currency: "$"}, Alternatives: []Alternative{{Runs: r}}}
	rows := map[string]float64{}
	for _, row := range s.Money.Totals(s.Trace("")).Rows {
		rows[row.Cells[0].Text] = number(t, row.Cells[2].Text)
	}
	for label, want := range map[string]float64{
		"margin of boats shipped":         g.Total(money.Income).Amount() / 2,
		"costs":                           g.Total(money.Cost).Amount() / 2,
		"contribution: margin less costs": g.Contribution().Amount() / 2,
		"wear of molds, not in the costs": 150,
	} {
		if math.Abs(rows[label]-want) > 0.0051 { // rounded to cents
			t.Errorf("%s: %v, want %v", label, rows[label], want)
		}
	}
	if len(rows) != 4 {
		t.Errorf("%v", rows)
	}
}
