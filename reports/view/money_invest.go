package view

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim"
	"moldturn/sim/money"
	"moldturn/sim/study"
)

// Invest is a finished look at one investment. The study's first alternative is
// the plant as it is, its second the plant with the change.
type Invest struct {
	*Study
	Investment money.Investment
	Bought     string         // what the purchase is, in words
	Full       *study.Returns // with orders always waiting; nil: not simulated
	Dated      *study.Returns // with the dated order book; nil: not simulated
}

func (v *Invest) with() *Alternative { return &v.Alternatives[1] }

// DemandBinds says whether the plant as it is clearly ships all orders.
func (v *Invest) DemandBinds() bool {
	x, ok := v.Base().Summary(metric("spare_boats_per_week"))
	return ok && x.Known() && x.Low > 0
}

// Deciding is the returns that the answer stands on: those with the orders as
// they come where demand binds, else those with orders always waiting.
func (v *Invest) Deciding() (r *study.Returns, dated bool) {
	if v.Dated != nil && (v.Full == nil || v.DemandBinds()) {
		return v.Dated, true
	}
	return v.Full, false
}

func (v *Invest) demandWords(dated bool) string {
	if dated {
		return "with the orders as they come"
	}
	return "if every boat sells"
}

// limitedBy names what keeps the change from bringing anything.
func (v *Invest) limitedBy(dated bool) string {
	if dated && v.DemandBinds() {
		return "orders limit; the plant as it is ships them all"
	}
	a := v.with()
	year := []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}
	ranked := a.Limits(year...)
	if len(ranked) == 0 || ranked[0].Wait < waitWorthNaming {
		return "no craft and no place limits more than before"
	}
	return fmt.Sprintf("%s; work waits %.0f h a week for %s", limits(a.Plan, ranked[0].Pool), ranked[0].Wait, them(a.Plan, ranked[0].Pool))
}

// limits is "finish limits" of a craft and "the booth limits" of a place, "the
// places “booth” limit" of several.
func limits(p *sim.Plan, i int) string {
	switch {
	case i < len(p.Crafts):
		return pool(p, i) + " limits"
	case p.Places[i-len(p.Crafts)].Count > 1:
		return "the places " + quoted(pool(p, i)) + " limit"
	}
	return "the " + pool(p, i) + " limits"
}

func percent(share float64) string {
	const most = 9.995 // what rounds to 1,000 %: beyond it a rate of return says no more
	if share >= most {
		return "1,000 % or more"
	}
	return strings.Replace(fmt.Sprintf("%.3g %%", 100*share), "-", "−", 1)
}

// Findings are the sentences under the headline.
func (v *Invest) Findings() []string {
	r, _ := v.Deciding()
	out := []string{v.capacityLine()}
	if text := v.twoQuestions(); text != "" {
		out = append(out, text)
	}
	return append(out,
		fmt.Sprintf("The chance that it pays is over the luck of the plant: in %s %s of it, taken for every year of use, would pay. The chance that buyers come is not in it: each column takes its demand as given.", aboveZero(r), count(v.Years, "year")),
		"Cash and wear are two views of the same molds and are never added: the cash view pays for them once, the wear view spreads their price over turns. Amounts are before taxes.")
}

func (v *Invest) capacityLine() string {
	if v.Full == nil {
		return "Only the dated order book was simulated."
	}
	text := fmt.Sprintf("With orders always waiting it ships %s boats a week", plusBoats(v.Full.Boats))
	if !v.Full.Boats.Clear {
		text += " (not clear): " + v.limitedBy(false)
	}
	return text + "."
}

// demandOf is a column of the table: a kind of demand.
type demandOf struct {
	head  string
	r     *study.Returns
	dated bool
}

func (v *Invest) demands() []demandOf {
	var out []demandOf
	if v.Dated != nil {
		out = append(out, demandOf{"orders as they come", v.Dated, true})
	}
	if v.Full != nil {
		out = append(out, demandOf{"if every boat sells", v.Full, false})
	}
	return out
}

// Cash is the cash view.
func (v *Invest) Cash() cells.Table {
	t := cells.Table{Title: "Cash view", Columns: []cells.Column{{Head: ""}}}
	for _, d := range v.demands() {
		t.Columns = append(t.Columns, cells.Column{Head: d.head, Align: cells.Right})
	}
	row := func(label string, text func(*study.Returns) string) {
		r := cells.Texts(label)
		for _, d := range v.demands() {
			r.Cells = append(r.Cells, cells.Cell{Text: text(d.r)})
		}
		t.Rows = append(t.Rows, r)
	}
	i := &v.Investment
	fixedRow := func(label, text string) { row(label, func(*study.Returns) string { return text }) }
	fixedRow("purchase: "+v.Bought, v.Money.whole(i.Purchase, 1))
	fixedRow("lead time", fmt.Sprintf("%.0f weeks", i.Lead*365.25/7))
	fixedRow("years of use", fmt.Sprint(i.Life))
	fixedRow("worth at the end", v.Money.whole(i.Residual, 1))
	fixedRow("discount rate", percent(i.Rate))
	fixedRow("equivalent annual cost", v.Money.whole(i.YearlyCost(), 1))
	row("boats a week more", func(r *study.Returns) string { return plusBoats(r.Boats) })
	row("contribution a year more", func(r *study.Returns) string { return v.Money.plus(r.Gain) })
	row("net present value", func(r *study.Returns) string { return v.Money.amount(r.Worth) })
	row("payback, in years", func(r *study.Returns) string {
		if !r.PaysBack {
			return "not within its life"
		}
		return fixed(r.Payback, 1)
	})
	row("internal rate of return", func(r *study.Returns) string {
		if !r.HasRate {
			return "not defined"
		}
		return percent(r.Rate)
	})
	row("chance that it pays (95 %)", chanceText)
	return t
}

// Wear is the wear view: the price of molds over the turns of their life.
func (v *Invest) Wear() cells.Table {
	t := cells.Table{Title: "Wear view: molds spread over their turns, a year", Columns: []cells.Column{{Head: ""}, {Head: "today", Align: cells.Right}, {Head: "with it", Align: cells.Right}}}
	for _, d := range v.demands() {
		t.Rows = append(t.Rows, cells.Texts(d.head, v.Money.amount(d.r.WearNow), v.Money.amount(d.r.WearThen)))
	}
	return t
}
