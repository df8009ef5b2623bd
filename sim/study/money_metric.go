package study

import (
	"strings"

	"moldturn/sim/money"
	"moldturn/sim/record"
)

// moneyMark stands in the units of metrics for the scenario's currency.
const moneyMark = "$"

// moneyMetrics are figures of the ledger; runs without one do not have them.
// With orders always waiting every boat is taken to be sold.
var moneyMetrics = []Metric{
	{Name: "cost_per_boat", Label: "cost per boat", Unit: "$/boat", Digits: 0, Better: -1,
		Doc: "all costs of the ledger and the wear of molds over boats shipped; purchased materials outside the ledger, such as engines, are in the margin instead; with orders always waiting", Of: ledger(costPerBoat)},
	{Name: "contribution_per_week", Label: "contribution per week", Unit: "$/week", Digits: 0, Better: 1,
		Doc: "margins of boats shipped less all costs of the ledger, over counted weeks; neither wear nor purchases of molds; with orders always waiting", Of: ledger(contributionPerWeek)},
	{Name: "contribution_per_mold_day", Label: "contribution per mold-day", Unit: "$/day", Digits: 0, Better: 1,
		Doc: "the same contribution over days of molds in rotation, weekends included", Of: ledger(contributionPerMoldDay)},
	{Name: "quality_cost_per_boat", Label: "cost of quality per boat", Unit: "$/boat", Digits: 0, Better: -1,
		Doc: "prevention, appraisal, internal and external failure over boats shipped; mold time is not in it", Of: ledger(qualityPerBoat)},
}

// Ledger is the ledger that figures of money are taken from; nil without one.
func (o *Outcome) Ledger() *money.Ledger {
	if o.Capacity != nil {
		return o.CapacityLedger
	}
	return o.DatedLedger
}

func ledger(of func(*money.Ledger) (float64, bool)) func(*Outcome) (float64, bool) {
	return func(o *Outcome) (float64, bool) {
		if g := o.Ledger(); g != nil {
			return of(g)
		}
		return 0, false
	}
}

func costPerBoat(g *money.Ledger) (float64, bool) {
	return ratio((g.Total(money.Cost) + g.Total(money.Wear)).Amount(), float64(g.Boats()))
}

func contributionPerWeek(g *money.Ledger) (float64, bool) {
	if !g.Margins {
		return 0, false
	}
	return ratio(g.Contribution().Amount(), float64(g.Open))
}

func contributionPerMoldDay(g *money.Ledger) (float64, bool) {
	if !g.Margins {
		return 0, false
	}
	return ratio(g.Contribution().Amount(), g.MoldDays)
}

func qualityPerBoat(g *money.Ledger) (float64, bool) {
	sum := money.Cents(0)
	for c := money.Prevention; c < money.Classes; c++ {
		sum += g.Quality(c)
	}
	return ratio(sum.Amount(), float64(g.Boats()))
}

// ModelMetrics are the cost per boat of each model, by name.
func ModelMetrics(models []string) []Metric {
	var out []Metric
	for m, name := range models {
		out = append(out, Metric{Name: "cost_per_boat." + strings.ReplaceAll(name, " ", "_"), Label: "cost per " + name, Unit: "$/boat", Digits: 0, Better: -1,
			Doc: "the model's own lines of the ledger and its share of those of no model, in proportion to its labor, over its boats shipped",
			Of:  ledger(func(g *money.Ledger) (float64, bool) { return g.OfModel(m) })})
	}
	return out
}

// Currency is the sign that amounts of the runs carry; empty without a ledger.
func (r *Runs) Currency() string {
	for i := range r.Outcomes {
		if g := r.Outcomes[i].Ledger(); g != nil {
			return g.Currency
		}
	}
	return ""
}

// UnitOf is the unit of a figure, in the currency of the runs.
func (r *Runs) UnitOf(m *Metric) string {
	if strings.HasPrefix(m.Unit, moneyMark) {
		return r.Currency() + strings.TrimPrefix(m.Unit, moneyMark)
	}
	return m.Unit
}

// observe joins a ledger's book to the tally of a run; book is nil without one.
func (a *Alternative) observe(tally *record.Tally) (record.Observer, *money.Book) {
	if a.Money == nil {
		return tally, nil
	}
	book := money.NewBook(&a.Money.Plant)
	return both{tally, book}, book
}
