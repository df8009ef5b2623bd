package money

import (
	"math"
	"testing"
)

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if math.Abs(got-want) > within {
		t.Errorf("%s: %v, want %v within %v", what, got, want, within)
	}
}

// Capital recovery factors to 5 decimals: ASHRAE Pocket Guide 2013, table of
// capital recovery factors, as shown at engineersedge.com. The longer digits
// were computed from the stated formula with 30 digits.
func TestCapitalRecoveryTable(t *testing.T) {
	for _, c := range []struct {
		rate  float64
		years int
		want  float64
	}{
		{0.035, 2, 0.52640}, {0.035, 10, 0.12024}, {0.045, 10, 0.12638}, {0.06, 8, 0.16104}, {0.06, 18, 0.09236},
		{0.08, 10, 0.14903}, {0.08, 18, 0.10670}, {0.10, 2, 0.57619}, {0.10, 4, 0.31547}, {0.10, 6, 0.22961},
		{0.10, 10, 0.16275}, {0.10, 18, 0.12193},
	} {
		near(t, "capital recovery", CapitalRecovery(c.rate, c.years), c.want, 0.5e-5)
	}
	near(t, "(10 %, 10)", CapitalRecovery(0.10, 10), 0.1627453949, 1e-10)
	near(t, "(10 %, 5)", CapitalRecovery(0.10, 5), 0.2637974808, 1e-10)
	near(t, "(8 %, 10)", CapitalRecovery(0.08, 10), 0.1490294887, 1e-10)
	near(t, "P/A (10 %, 10)", SeriesWorth(0.10, 10), 6.144567106, 1e-9)
	near(t, "P/A (10 %, 5)", SeriesWorth(0.10, 5), 3.790786769, 1e-9)
	near(t, "P/A at no interest", SeriesWorth(0, 7), 7, 0)
}

// Worked examples of net present value and internal rate of return: avatto.com,
// questions for the CFA exam (-19,722 and 8.65 %; -2,710). Digits beyond were
// computed from the stated formula.
func TestPresentWorthExamples(t *testing.T) {
	first := []float64{-750000, 200000, 300000, 400000}
	near(t, "worth at 10 %", PresentWorth(0.10, first), -19722.0135237, 1e-6)
	rate, ok := ReturnRate(first)
	if !ok {
		t.Fatal("no rate of return")
	}
	near(t, "rate of return", rate, 0.0865525480708, 1e-12)
	near(t, "worth at 12 %", PresentWorth(0.12, []float64{-50000, 25000, 20000, 10000, 3000}), -2710.3371642, 1e-6)
}

func TestReturnRateIsRefusedWhereItIsNotDefined(t *testing.T) {
	for _, flows := range [][]float64{{}, {0, 0}, {100, 200}, {-100}, {-100, -50}, {100, -50}, {-100, 230, -132}} {
		if rate, ok := ReturnRate(flows); ok {
			t.Errorf("%v: rate %v, want none", flows, rate)
		}
	}
}

// An investment without lead time is the textbook series of flows.
func TestInvestmentAgreesWithItsFlows(t *testing.T) {
	v := Investment{Purchase: 90000, Life: 6, Residual: 5000, Rate: 0.10}
	const gain = 26000
	flows := []float64{-90000, gain, gain, gain, gain, gain, gain + 5000}
	near(t, "worth", v.Worth(gain), PresentWorth(0.10, flows), 1e-9)
	rate, ok := v.ReturnRate(gain)
	want, known := ReturnRate(flows)
	if !ok || !known {
		t.Fatal("no rate of return")
	}
	near(t, "rate of return", rate, want, 1e-9)
	near(t, "worth at the yearly cost", v.Worth(v.YearlyCost()), 0, 1e-9)
	near(t, "worth at the rate of return", v.worthAt(rate, gain), 0, 1e-6)
	near(t, "yearly cost", v.YearlyCost(), 90000*CapitalRecovery(0.10, 6)-5000*(CapitalRecovery(0.10, 6)-0.10), 1e-9)
	back, ok := v.Payback(gain)
	if !ok {
		t.Fatal("no payback")
	}
	near(t, "payback", back, 90000.0/26000, 1e-12)
}

// Lead time puts gains off: a year of it is a year of discount on all of them.
func TestLeadTimeDelaysEveryGain(t *testing.T) {
	late := Investment{Purchase: 90000, Lead: 1, Life: 3, Residual: 1000, Rate: 0.08}
	near(t, "worth", late.Worth(40000), PresentWorth(0.08, []float64{-90000, 0, 40000, 40000, 41000}), 1e-9)
	back, ok := late.Payback(40000)
	if !ok {
		t.Fatal("no payback")
	}
	near(t, "payback", back, 1+90000.0/40000, 1e-12)
}

func TestInvestmentsThatNeverPay(t *testing.T) {
	v := Investment{Purchase: 1000, Life: 4, Rate: 0.1}
	if _, ok := v.Payback(249); ok {
		t.Error("249 a year in 4 years pay back 1000")
	}
	if _, ok := v.ReturnRate(0); ok {
		t.Error("a gain of nothing has a rate of return")
	}
	if v.Worth(0) != -1000 {
		t.Errorf("worth without gain %v", v.Worth(0))
	}
}
