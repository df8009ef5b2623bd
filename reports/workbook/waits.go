package workbook

import (
	"time"

	"moldturn/reports/view"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// waits is what work waits for.
func (b *book) waits() *table {
	t := &table{sheet: "Waits", lead: "Hours a week that boats, parts and molds in work wait, by what they wait for, and how busy that is", block: block{columns: []column{
		{head: "alternative"}, {head: "waits for"}, {head: "which is"}, {head: "busy, share of its hours"}, {head: "overtime, h a week"}, {head: "over the year, h a week"}}}}
	for m := range 12 {
		t.columns = append(t.columns, column{head: time.Month(m+1).String() + ", h a week"})
	}
	for i := range b.study.Alternatives {
		a := &b.study.Alternatives[i]
		told := toldWaits(a)
		for k := range len(a.Plan.Crafts) + len(a.Plan.Places) + int(record.Reasons) {
			if row, ok := waitRow(a, k, told); ok {
				t.rows = append(t.rows, row)
			}
		}
	}
	return t
}

// toldWaits is the hours a week that work waits for each craft and place, by month
// and then over the year, as the report tells them: of open weeks alone.
func toldWaits(a *view.Alternative) (out [13]map[int]float64) {
	var all []int
	for m := range 12 {
		all = append(all, m)
	}
	for m := range out {
		of := all
		if m < 12 {
			of = all[m : m+1]
		}
		out[m] = map[int]float64{}
		for _, l := range a.Limits(of...) {
			out[m][l.Pool] = l.Wait
		}
	}
	return out
}

// waitRow is cause k: a craft, a place, or a reason that is about neither; ok is
// false for a reason that nothing waited for.
func waitRow(a *view.Alternative, k int, told [13]map[int]float64) (row []any, ok bool) {
	pools := len(a.Plan.Crafts) + len(a.Plan.Places)
	row = []any{a.Name, causeName(a, k), "a reason of its own", nil, nil}
	var used, over, capacity, all clock.Time
	var months [12]clock.Time
	var open [12]int
	for i := range a.Outcomes {
		r := shown(&a.Outcomes[i])
		for m := range 12 {
			months[m], open[m] = months[m]+r.Waits[m][k], open[m]+r.MonthOpen[m]
			if k < pools {
				used, over, capacity = used+r.Load[k][m].Used, over+r.Load[k][m].Over, capacity+r.Load[k][m].Capacity
			}
		}
	}
	weeks := 0
	for m := range 12 {
		all, weeks = all+months[m], weeks+open[m]
	}
	if k < pools {
		row[2] = "a craft"
		if k >= len(a.Plan.Crafts) {
			row[2] = "a place"
		}
		if capacity > 0 {
			row[3] = number{float64(used) / float64(capacity), percent(1)}
		}
		row[4] = perWeek(over, weeks)
	} else if all == 0 {
		return nil, false
	}
	row = append(row, waited(told[12], k, all, weeks))
	for m := range 12 {
		row = append(row, waited(told[m], k, months[m], open[m]))
	}
	return row, true
}

// waited is the wait that the report tells, or where it tells none, all hours over
// open weeks.
func waited(told map[int]float64, k int, hours clock.Time, weeks int) any {
	if h, ok := told[k]; ok && weeks > 0 {
		return number{h, decimals(1)}
	}
	return perWeek(hours, weeks)
}

// perWeek is hours over weeks; empty without an open week.
func perWeek(t clock.Time, weeks int) any {
	if weeks == 0 {
		return nil
	}
	return number{t.Hours() / float64(weeks), decimals(1)}
}

func causeName(a *view.Alternative, k int) string {
	crafts, places := len(a.Plan.Crafts), len(a.Plan.Places)
	switch {
	case k < crafts:
		return a.Plan.Crafts[k].Name
	case k < crafts+places:
		return a.Plan.Places[k-crafts].Name
	}
	if name := record.Reason(k - crafts - places).String(); name != "" {
		return name
	}
	return "cause not recorded"
}
