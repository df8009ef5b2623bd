package view

import (
	"fmt"

	"moldturn/reports/chart"
	"moldturn/sim"
	"moldturn/sim/record"
)

// hoursOfWeek is what a mold can spend in a week.
const hoursOfWeek = 168

// use is one way a mold in rotation spends its hours. Ways are few enough to be
// told apart in a drawing.
type use int

const (
	worked use = iota
	setting
	held
	forPeople
	forShift
	forPlace
	forWork
	untold
	uses
)

// useNames are the ways, in the order of the bars.
var useNames = [uses]string{
	"worked on", "gel and cure between shots", "cure hold", "waits for people or the gel window",
	"waits for the next shift", "waits for a place, a hoist or fit air", "no order, or ahead of its mates", "waits, cause not recorded",
}

// useOf sorts a state of a mold; ok is false for a mold out of rotation.
func useOf(state int) (u use, ok bool) {
	if state < int(record.Doings) {
		switch record.Doing(state) {
		case record.Gelling, record.SkinCure:
			return setting, true
		case record.Curing:
			return held, true
		case record.OutOfUse:
			return 0, false
		case record.Idle:
			return forWork, true
		}
		return worked, true
	}
	switch record.Reason(state - int(record.Doings)) {
	case record.NoCrew, record.GelWindow:
		return forPeople, true
	case record.OffShift, record.ShiftEnds:
		return forShift, true
	case record.NoPlace, record.NoGun, record.NoHoist, record.Down, record.DewPoint, record.TooHumid, record.TooCold, record.NeedsHeat:
		return forPlace, true
	case record.RotationFull:
		return 0, false
	case record.NoReason:
		return untold, true
	}
	return forWork, true
}

// MoldHours is where the hours of a mold in rotation go, by part type, in the
// base: the mean over the year, 168 a week. ok is false without molds.
func (s *Study) MoldHours() (c chart.Stack, ok bool) {
	a := s.Base()
	rows := moldHours(a)
	if len(rows) == 0 {
		return c, false
	}
	kept := make([]bool, uses)
	var mean [uses]float64
	for _, r := range rows {
		for u, h := range r.Values {
			kept[u] = kept[u] || h > 0
			mean[u] += h / float64(len(rows))
		}
	}
	c = chart.Stack{
		Figure: chart.Figure{ID: "mold-hours", Finding: longest(mean),
			Caption: fmt.Sprintf("Hours of a mold in rotation in a week of %d hours, by part, in %s: mean over all seasons and shutdowns. Work at night and over weekends waits for the next shift.", hoursOfWeek, quoted(a.Name)),
			Alt:     "Bars of the hours of a mold week, one bar a part."},
		X: chart.Axis{Name: "mold hours", Unit: "h a week", Digits: 1, Most: hoursOfWeek, Step: 24},
	}
	for u := range uses {
		if kept[u] {
			c.Parts = append(c.Parts, useNames[u])
		}
	}
	for _, r := range rows {
		row := chart.StackRow{Name: r.Name}
		for u, h := range r.Values {
			if kept[u] {
				row.Values = append(row.Values, h)
			}
		}
		c.Rows = append(c.Rows, row)
	}
	return c, true
}

// moldHours has a row for each part type with molds and a value for each use.
func moldHours(a *Alternative) []chart.StackRow {
	var rows []chart.StackRow
	for p := range a.Plan.Parts {
		var sums [uses]float64
		total := 0.0
		for i := range a.Outcomes {
			for month := range 12 {
				for state, h := range capacity(&a.Outcomes[i]).MoldHours[p][month] {
					if u, ok := useOf(state); ok {
						sums[u] += h.Hours()
						total += h.Hours()
					}
				}
			}
		}
		if total == 0 {
			continue
		}
		for u := range sums {
			sums[u] *= hoursOfWeek / total
		}
		rows = append(rows, chart.StackRow{Name: partName(a.Plan, p), Values: sums[:]})
	}
	return rows
}

func partName(p *sim.Plan, i int) string {
	return p.Models[p.Parts[i].Model].Name + " " + p.Parts[i].Name
}

// longest names work, and what takes most of a mold's week beside it.
func longest(mean [uses]float64) string {
	at := setting
	for u := setting; u < uses; u++ {
		if mean[u] > mean[at] {
			at = u
		}
	}
	return fmt.Sprintf("A mold is worked on %.0f of its %d hours a week; most of the rest, %.0f hours, %s", mean[worked], hoursOfWeek, mean[at], phrases[at])
}

// phrases end the finding of the mold hours.
var phrases = [uses]string{
	worked: "is work", setting: "gel coat and laminate set between steps", held: "it stands in cure hold",
	forPeople: "it waits for people", forShift: "it waits for the next shift", forPlace: "it waits for a place, a hoist or fit air",
	forWork: "it has no order, or is ahead of its mates", untold: "it waits in a line",
}
