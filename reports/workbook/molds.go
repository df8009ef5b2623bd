package workbook

import (
	"slices"

	"moldturn/reports/chart"
	"moldturn/reports/view"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// molds is what the molds of each part type do.
func (b *book) molds() *table {
	t := &table{sheet: "Molds", lead: "The molds of each part, and where the 168 hours of a mold in rotation go in a week, mean over all seasons and shutdowns", block: block{columns: []column{
		{head: "alternative"}, {head: "part"}, {head: "molds in rotation"}, {head: "pulled a week"}, {head: "from pull to pull, h"}, {head: "mean luster, points"}}}}
	s := b.study
	stacks := make([]chart.Stack, len(s.Alternatives))
	var uses []string
	for i := range s.Alternatives {
		stacks[i], _ = alone(s, i).MoldHours()
		uses = merged(uses, stacks[i].Parts)
	}
	for _, u := range uses {
		t.columns = append(t.columns, column{head: u + ", h a week"})
	}
	for i := range s.Alternatives {
		for _, row := range partRows(&s.Alternatives[i]) {
			t.rows = append(t.rows, append(row, hoursOf(&stacks[i], row[1].(string), uses)...))
		}
	}
	return t
}

// merged joins two lists that keep one order, each name once.
func merged(all, more []string) []string {
	at := 0
	for _, name := range more {
		if k := slices.Index(all, name); k >= 0 {
			at = k + 1
			continue
		}
		all = slices.Insert(all, at, name)
		at++
	}
	return all
}

// partRows are what each part type with molds did.
func partRows(a *view.Alternative) [][]any {
	var out [][]any
	for p := range a.Plan.Parts {
		var sum record.Part
		weeks := 0.0
		for i := range a.Outcomes {
			r := shown(&a.Outcomes[i])
			x := &r.Parts[p]
			sum.Pulls, sum.Cycles, sum.CycleSum = sum.Pulls+x.Pulls, sum.Cycles+x.Cycles, sum.CycleSum+x.CycleSum
			sum.Luster.N, sum.Luster.Sum = sum.Luster.N+x.Luster.N, sum.Luster.Sum+x.Luster.Sum
			sum.Molds = x.Molds
			weeks += float64(r.Frame.To-r.Frame.From) / float64(clock.Week)
		}
		if sum.Molds == 0 {
			continue
		}
		row := []any{a.Name, a.Plan.Models[a.Plan.Parts[p].Model].Name + " " + a.Plan.Parts[p].Name, sum.Molds, number{float64(sum.Pulls) / weeks, decimals(2)}, nil, nil}
		if sum.Cycles > 0 {
			row[4] = number{sum.CycleSum.Hours() / float64(sum.Cycles), decimals(1)}
		}
		if sum.Luster.N > 0 {
			row[5] = number{sum.Luster.Mean(), decimals(2)}
		}
		out = append(out, row)
	}
	return out
}

// hoursOf are the hours of a part's molds by use; a use that its plant does not
// have is no hours.
func hoursOf(s *chart.Stack, part string, uses []string) []any {
	out := make([]any, len(uses))
	k := slices.IndexFunc(s.Rows, func(r chart.StackRow) bool { return r.Name == part })
	if k < 0 {
		return out
	}
	for i, u := range uses {
		h := number{0, decimals(1)}
		if at := slices.Index(s.Parts, u); at >= 0 {
			h.value = s.Rows[k].Values[at]
		}
		out[i] = h
	}
	return out
}
