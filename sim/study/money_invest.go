package study

import (
	"moldturn/sim/money"
	"moldturn/sim/stats"
)

// Returns is what an investment brings under one kind of demand.
type Returns struct {
	Gain  stats.Difference // contribution a year more than today
	Boats stats.Difference // boats a week more than today
	Worth stats.Summary    // net present value, by replication

	Pays, Of int // replications in which the worth is above zero

	Payback      float64 // years, without interest; PaysBack tells whether it comes
	PaysBack     bool
	Rate         float64 // internal rate of return
	HasRate      bool
	BoatsNeeded  float64 // more boats a week than today that pay the yearly cost, at the gain of each boat more
	HasNeed      bool    // more boats gain clearly
	MarginShare  Ratio   // share of today's margins at which the worth is zero
	WearNow      stats.Summary
	WearThen     stats.Summary // wear of molds a year
	Contribution stats.Summary // a year, today
}

// InvestIn works out the returns of a change of the plant; base and with are
// runs under the same luck. False where one of them has no ledger with margins.
func InvestIn(v *money.Investment, base, with *Runs, dated bool) (*Returns, bool) {
	now, then := base.books(dated), with.books(dated)
	if len(now) == 0 || len(now) != len(then) {
		return nil, false
	}
	n := len(now)
	gain, before, worth := make([]float64, n), make([]float64, n), make([]float64, n)
	boatsNow, boatsThen := make([]float64, n), make([]float64, n)
	wearNow, wearThen := make([]float64, n), make([]float64, n)
	income, costs := make([]float64, n), make([]float64, n)
	after := make([]float64, n)
	for i := range n {
		a, b := now[i], then[i]
		before[i], after[i] = a.Contribution().Amount()/a.Years, b.Contribution().Amount()/b.Years
		gain[i] = after[i] - before[i]
		worth[i] = v.Worth(gain[i])
		boatsNow[i], boatsThen[i] = float64(a.Boats())/float64(max(a.Open, 1)), float64(b.Boats())/float64(max(b.Open, 1))
		wearNow[i], wearThen[i] = a.Total(money.Wear).Amount()/a.Years, b.Total(money.Wear).Amount()/b.Years
		income[i] = b.Total(money.Income).Amount()/b.Years - a.Total(money.Income).Amount()/a.Years
		costs[i] = income[i] - gain[i] + v.YearlyCost()
	}
	r := &Returns{Of: n, Gain: stats.Paired(after, before, Confidence), Boats: stats.Paired(boatsThen, boatsNow, Confidence),
		Worth: stats.TInterval(worth, Confidence), Contribution: stats.TInterval(before, Confidence),
		WearNow: stats.TInterval(wearNow, Confidence), WearThen: stats.TInterval(wearThen, Confidence)}
	for _, w := range worth {
		if w > 0 {
			r.Pays++
		}
	}
	r.Payback, r.PaysBack = v.Payback(r.Gain.Mean)
	r.Rate, r.HasRate = v.ReturnRate(r.Gain.Mean)
	if r.Boats.Clear && r.Boats.Mean > 0 && r.Gain.Mean > 0 {
		r.BoatsNeeded, r.HasNeed = max(v.YearlyCost(), 0)/(r.Gain.Mean/r.Boats.Mean), true
	}
	r.MarginShare, _ = RatioOfMeans(costs, income, Confidence)
	return r, true
}

// books are the ledgers of all replications; none where one is missing or a
// margin is not known.
func (r *Runs) books(dated bool) []*money.Ledger {
	var out []*money.Ledger
	for i := range r.Outcomes {
		g := r.Outcomes[i].CapacityLedger
		if dated {
			g = r.Outcomes[i].DatedLedger
		}
		if g == nil || !g.Margins {
			return nil
		}
		out = append(out, g)
	}
	return out
}
