package view

import (
	"fmt"
	"math"
	"slices"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/sim/money"
	"moldturn/sim/study"
)

// spent is a line of the ledger over replications: means per year.
type spent struct {
	money.Line
	size, amount float64
}

// spending averages the lines of an alternative by name, per year. A line that
// a replication does not have counts as nothing there.
func spending(r *study.Runs) []spent {
	var out []spent
	at := map[string]int{}
	n := float64(len(r.Outcomes))
	for i := range r.Outcomes {
		g := r.Outcomes[i].Ledger()
		if g == nil {
			return nil
		}
		for _, l := range g.Lines {
			k, known := at[l.Name]
			if !known {
				k = len(out)
				at[l.Name] = k
				out = append(out, spent{Line: l})
			}
			out[k].size += l.Size() / g.Years / n
			out[k].amount += l.Amount.Amount() / g.Years / n
		}
	}
	return out
}

// heading is a group of lines that a manager reads as one.
type heading struct {
	label string
	has   func(*money.Line) bool
}

func lineStarts(words ...string) func(*money.Line) bool {
	return func(l *money.Line) bool {
		return slices.ContainsFunc(words, func(w string) bool { return len(l.Name) >= len(w) && l.Name[:len(w)] == w })
	}
}

// headings are the rows of the table of spending, in order; the last takes
// what is left.
func headings() []heading {
	return []heading{
		{"margin of boats shipped", func(l *money.Line) bool { return l.Kind == money.Income }},
		{"labor at work", lineStarts("labor.")},
		{"paid without work", func(l *money.Line) bool {
			return lineStarts("paid.")(l) && l.Of == "hours on shift less hours worked on shift"
		}},
		{"paid off the floor", lineStarts("paid.")},
		{"resin and glass", lineStarts("resin.", "glass.", "scrap_resin.", "scrap_glass.", "small_resin.", "small_glass.")},
		{"gel coat and barrier coat", lineStarts("gel_coat", "flush_gel_coat.", "barrier_coat.", "scrap_gel_coat.", "scrap_barrier_coat.", "small_gel_coat.")},
		{"wax, strip, solvent, repair and rework materials", lineStarts("wax.", "stripper.", "compound.", "solvent.", "mold_repair.", "rework_materials", "resurfacing.")},
		{"booth air and heat", lineStarts("booth_")},
		{"floor and money tied up", lineStarts("floor.", "holding.")},
		{"warranty set aside", lineStarts("warranty.")},
		{"late boats", lineStarts("late.")},
		{"training", lineStarts("training")},
		{"wear of molds, spread over their turns", func(l *money.Line) bool { return l.Kind == money.Wear }},
		{"molds bought for worn ones, as cash", func(l *money.Line) bool { return l.Kind == money.Purchase }},
	}
}

// headingOf is the index of the group a line belongs to.
func headingOf(l *money.Line) int {
	for i, h := range headings() {
		if h.has(l) {
			return i
		}
	}
	return -1
}

// Spending is where money comes from and goes, a year, of one alternative, with
// orders always waiting.
func (m Money) Spending(r *study.Runs) cells.Table {
	t := cells.Table{Title: "Money a year, “" + r.Name + "”", Columns: []cells.Column{{Head: ""}, {Head: "a year", Align: cells.Right}, {Head: "largest line"}}}
	lines := spending(r)
	for i, h := range headings() {
		sum, largest := 0.0, -1
		for k := range lines {
			if headingOf(&lines[k].Line) != i {
				continue
			}
			sum += lines[k].amount
			if largest < 0 || lines[k].amount > lines[largest].amount {
				largest = k
			}
		}
		if largest >= 0 && (sum != 0 || lines[largest].amount != 0) {
			t.Rows = append(t.Rows, cells.Texts(h.label, m.whole(sum, 100), m.trace(&lines[largest])))
		}
	}
	t.Rows = append(t.Rows, cells.Texts("warranty claims that came in, as cash", m.whole(claimed(r), 100), "claims come some weeks after shipping; what is set aside is not added"))
	return t
}

// claimed is the mean cost a year of the claims that came in.
func claimed(r *study.Runs) float64 {
	sum := 0.0
	for i := range r.Outcomes {
		if g := r.Outcomes[i].Ledger(); g != nil {
			sum += g.Claimed / g.Years / float64(len(r.Outcomes))
		}
	}
	return sum
}

// trace is how an amount came about: quantity × price.
func (m Money) trace(l *spent) string {
	u, factor := m.measure(l.Unit)
	return fmt.Sprintf("%s: %s %s × %s", l.Label, grouped(fmt.Sprintf("%.0f", l.size*factor)), u, m.price(l.Price/factor))
}

// YearsCounted says how amounts of the counted time become amounts a year, so
// that those of ledger.csv can be checked against the tables. Empty without a
// ledger.
func (s *Study) YearsCounted() string {
	outcomes := s.Base().Outcomes
	if len(outcomes) == 0 {
		return ""
	}
	g := outcomes[0].Ledger()
	if g == nil {
		return ""
	}
	const daysAYear = 365.25
	text := fmt.Sprintf("%s were counted in every repeat; a year is %v days, so amounts a year are those that were counted, divided by %s.",
		count(int(math.Round(g.Years*daysAYear)), "day"), daysAYear, fixed(g.Years, 5))
	return text + " Lines of ledger.csv are as counted, and its column “years” has the divisor."
}

// word is the class of a cost, and the kind of what is no cost.
func (l *spent) word() string {
	if l.Kind != money.Cost {
		return l.Kind.String()
	}
	return l.Class.String()
}

// MoneySection is the ledger of the base for the report; false without one.
func (s *Study) MoneySection() (page.Section, bool) {
	a, m := s.Base(), s.Money
	if len(spending(&a.Runs)) == 0 {
		return page.Section{}, false
	}
	out := page.Section{Heading: "Money", Blocks: []page.Block{
		page.Text(moneyWords), page.Table{Table: m.Spending(&a.Runs)}, page.Table{Table: m.ByModel(a)}, page.Table{Table: s.Lines(&a.Runs)}}}
	return out, true
}

const moneyWords = "With orders always waiting, so every boat is taken to be sold. Each amount is a quantity that was counted times one price, rounded to cents once; the letters behind an input say where it is known from: U the plant, S a published source, CP common practice, M memory, A an assumption. " +
	"Wear of molds and cash paid for molds are two views of the same thing and are never added."

// ByModel is the cost per boat of each model.
func (m Money) ByModel(a *Alternative) cells.Table {
	t := cells.Table{Title: "Cost per boat by model, “" + a.Name + "”", Columns: []cells.Column{{Head: "model"}, {Head: "cost per boat", Align: cells.Right}}}
	var names []string
	for i := range a.Plan.Models {
		names = append(names, a.Plan.Models[i].Name)
	}
	for i, metric := range study.ModelMetrics(names) {
		if x, ok := a.Summary(&metric); ok {
			t.Rows = append(t.Rows, cells.Texts(names[i], m.amount(x)))
		}
	}
	return t
}
