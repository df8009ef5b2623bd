package view

import (
	"fmt"
	"math"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Page is the report of a comparison by the cost of quality.
func (v *Quality) Page() (page.Page, error) {
	p := page.Page{Title: v.Scenario + ": what quality costs and returns", Lead: v.Headline(), Foot: []string{Caution}}
	answer := page.Section{Heading: "The answer", Blocks: []page.Block{page.Table{Table: v.PairTable()}, page.List(v.Findings())}}
	p.Sections = append(p.Sections, answer)
	for _, q := range []*study.Quality{v.Full, v.Dated} {
		if q == nil {
			continue
		}
		s := page.Section{Heading: "Orders always waiting"}
		if q.Dated {
			s.Heading = "Orders as they come"
		}
		charts, err := v.charts(q)
		if err != nil {
			return page.Page{}, err
		}
		s.Blocks = append(s.Blocks, charts...)
		for _, t := range v.Tables(q) {
			s.Blocks = append(s.Blocks, page.Table{Table: t})
		}
		p.Sections = append(p.Sections, s)
	}
	p.Sections = append(p.Sections, page.Section{Heading: "Every line", Blocks: []page.Block{page.Text(moneyWords), page.Table{Table: v.Lines(&v.Base().Runs)}}},
		page.Section{Heading: "How it was computed", Blocks: []page.Block{page.List(append(v.Computed(), v.YearsCounted(), v.Known()))}},
		page.Section{Heading: "Assumptions", Blocks: v.assumptions()})
	return p, nil
}

// Tables are the tables of one kind of demand.
func (v *Quality) Tables(q *study.Quality) []cells.Table {
	return []cells.Table{v.TotalTable(q), v.ClassTable(q, false), v.ClassTable(q, true), v.PlantTable(q)}
}

// charts are the four classes and the totals of the policies.
func (v *Quality) charts(q *study.Quality) ([]page.Block, error) {
	id := "full"
	if q.Dated {
		id = "dated"
	}
	classesOf := chart.Stack{Figure: chart.Figure{ID: "classes-" + id, Finding: v.classFinding(q),
		Caption: "Cost of quality a year by class, means over runs.", Alt: "One bar per policy, in four parts: prevention, appraisal, internal failure, external failure."},
		X: chart.Axis{Name: "cost of quality", Unit: v.Money.Currency + " a year", Zero: true}}
	for _, c := range classes() {
		classesOf.Parts = append(classesOf.Parts, c.String())
	}
	more := chart.Intervals{Figure: chart.Figure{ID: "more-" + id, Finding: v.moreFinding(q),
		Caption: "What each policy costs in all, a year, more than the one that costs least; intervals of all pairs hold together.", Alt: "One point with its interval per policy."},
		X: chart.Axis{Name: "more than the least", Unit: v.Money.Currency + " a year", Zero: true}, Dots: true}
	for i := range q.Policies {
		x := &q.Policies[i]
		row := chart.StackRow{Name: x.Runs.Name}
		sum := 0.0
		for _, c := range classes() {
			row.Values = append(row.Values, max(x.Class[c].Mean, 0))
			sum += row.Values[len(row.Values)-1]
		}
		if sum > 0 {
			classesOf.Rows = append(classesOf.Rows, row)
		}
		more.Rows = append(more.Rows, chart.IntervalRow{Name: x.Runs.Name, Estimate: drawn(x.More.Summary)})
	}
	var out []page.Block
	if len(classesOf.Rows) > 0 {
		c, err := classesOf.Build()
		if err != nil {
			return nil, err
		}
		out = append(out, c)
	}
	c, err := more.Build()
	if err != nil {
		return nil, err
	}
	return append(out, c), nil
}

// classFinding is what the drawing of the classes shows.
func (v *Quality) classFinding(q *study.Quality) string {
	least := 0
	for i := range q.Policies {
		if q.Policies[i].Four.Mean < q.Policies[least].Four.Mean {
			least = i
		}
	}
	return "The four classes together are least with “" + v.name(q, least) + "”: " + v.Money.mean(q.Policies[least].Four) + " a year"
}

func (v *Quality) moreFinding(q *study.Quality) string {
	clear := 0
	for i := range q.Policies {
		if !q.Policies[i].NotWorse {
			clear++
		}
	}
	text := "“" + v.name(q, q.Least) + "” costs least in all; "
	switch clear {
	case 0:
		return text + "no other policy is clearly dearer"
	case len(q.Policies) - 1:
		return text + "every other policy is clearly dearer"
	}
	if clear == 1 {
		return text + "one other policy is clearly dearer"
	}
	return text + fmt.Sprintf("%d other policies are clearly dearer", clear)
}

// drawn is a summary to be drawn, rounded to what its interval supports.
func drawn(x stats.Summary) chart.Estimate {
	g := grain(x.Half)
	round := func(v float64) float64 { return math.Round(v/g) * g }
	return chart.Estimate{Value: round(x.Mean), Low: round(x.Low), High: round(x.High)}
}

// worthFinding is what the drawing of present values shows.
func (v *Invest) worthFinding() string {
	var words []string
	for _, d := range v.demands() {
		verdict := map[payVerdict]string{pays: "pays", loses: "does not pay", useless: "does not pay", unclear: "may pay or not"}[v.judge(d.r)]
		words = append(words, verdict+" "+v.demandWords(d.dated))
	}
	return "It " + listed(words)
}

// Page is the report of an investment.
func (v *Invest) Page() (page.Page, error) {
	p := page.Page{Title: v.Scenario + ": does “" + v.with().Name + "” pay?", Lead: v.Headline(), Foot: []string{Caution}}
	worth := chart.Intervals{Figure: chart.Figure{ID: "worth", Finding: v.worthFinding(), Caption: "Net present value with its 95 % confidence interval.", Alt: "One point with its interval per kind of demand."},
		X: chart.Axis{Name: "net present value", Unit: v.Money.Currency, Zero: true}, Dots: true}
	for _, d := range v.demands() {
		worth.Rows = append(worth.Rows, chart.IntervalRow{Name: d.head, Estimate: drawn(d.r.Worth)})
	}
	c, err := worth.Build()
	if err != nil {
		return page.Page{}, err
	}
	p.Sections = []page.Section{
		{Heading: "The answer", Blocks: []page.Block{page.List(v.Findings()), c, page.Table{Table: v.Cash()}, page.Table{Table: v.BreakEven()}, page.Table{Table: v.Wear()}}},
		{Heading: "What changes in the plant", Blocks: append([]page.Block{page.Table{Table: v.Changes()}, page.List(v.Limits())}, tables(v.Comparison())...)},
		{Heading: "Every line", Blocks: []page.Block{page.Text(moneyWords), page.Table{Table: v.Lines(&v.Base().Runs)}, page.Table{Table: v.Lines(&v.with().Runs)}}},
		{Heading: "How it was computed", Blocks: []page.Block{page.List(append(v.Computed(), v.YearsCounted(), v.Known()))}},
		{Heading: "Assumptions", Blocks: v.assumptions()},
	}
	return p, nil
}

func tables(list []cells.Table) []page.Block {
	var out []page.Block
	for _, t := range list {
		out = append(out, page.Table{Table: t})
	}
	return out
}
