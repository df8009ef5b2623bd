package main

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/reports/cells"
	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/param/unit"
)

// partRow is one part of one boat.
type partRow struct {
	Model     string  `json:"model"`
	Orders    float64 `json:"orders_per_week"`
	Part      string  `json:"part"`
	Area      float64 `json:"area_m2"`
	Molds     int     `json:"molds"`
	Reserve   int     `json:"reserve"`
	Grade     string  `json:"grade"`
	Color     string  `json:"color"` // "" for the boat's
	BandShare float64 `json:"band_share"`
}

func listModels(s *scenarios.Scenario) (*sheet, error) {
	p, style := s.Base.Plan(), s.Base.Style()
	rows := []partRow{}
	_, sign := style.SquareMeters(0)
	t := cells.Table{Columns: columns("model", ">orders a week", "part", ">area, "+sign, ">molds", ">in reserve", "gel coat", "color", ">bands, %")}
	for i := range p.Models {
		for k, part := range p.Models[i].Parts {
			row := partRowOf(p, i, &p.Parts[part])
			rows = append(rows, row)
			model, orders := row.Model, number(row.Orders)
			if k > 0 {
				model, orders = "", ""
			}
			color := row.Color
			if color == "" {
				color = "of the boat"
			}
			area, _ := style.SquareMeters(row.Area)
			t.Rows = append(t.Rows, cells.Texts(model, orders, row.Part, number(area), strconv.Itoa(row.Molds),
				strconv.Itoa(row.Reserve), row.Grade, color, number(100*row.BandShare)))
		}
	}
	return &sheet{tables: []cells.Table{t}, rows: rows}, nil
}

func partRowOf(p *sim.Plan, model int, part *sim.Part) partRow {
	row := partRow{Model: p.Models[model].Name, Part: part.Name, Area: part.Area, Grade: p.Finish.Grades[part.Grade].Name, BandShare: part.Band}
	if model < len(p.Demand.Models) {
		row.Orders = p.Demand.Models[model].PerWeek
	}
	if part.Color != sim.None {
		row.Color = p.Colors[part.Color].Name
	}
	for i := range p.Molds {
		if m := &p.Molds[i]; &p.Parts[m.Part] == part {
			if m.Reserve {
				row.Reserve++
			} else {
				row.Molds++
			}
		}
	}
	return row
}

// number prints an amount as people write it, to four digits.
func number(x float64) string {
	s := strconv.FormatFloat(x, 'g', 4, 64)
	if strings.Contains(s, "e") {
		s = strconv.FormatFloat(x, 'f', 0, 64)
	}
	return s
}

// stepRow is one step of a route. Hours are means with the people wanted.
type stepRow struct {
	Route string   `json:"route"`
	Step  string   `json:"step"`
	Does  string   `json:"does"`
	When  string   `json:"when"`
	Craft string   `json:"craft,omitempty"`
	Want  int      `json:"people,omitempty"`
	Least int      `json:"least,omitempty"`
	Time  string   `json:"time"` // labor, clock, cure, hold
	Hours float64  `json:"hours"`
	Extra string   `json:"extra,omitempty"`
	Takes []string `json:"takes,omitempty"`
	Swaps []string `json:"swaps,omitempty"`
	Uses  []string `json:"uses,omitempty"`
	Frees []string `json:"frees,omitempty"`
	End   string   `json:"end,omitempty"` // for labor: pause, finish, fit
	Means string   `json:"means,omitempty"`
	Back  string   `json:"back_to,omitempty"`
	While string   `json:"while,omitempty"`
}

func listSteps(s *scenarios.Scenario) (*sheet, error) {
	p := s.Base.Plan()
	rows := []stepRow{}
	out := &sheet{}
	for i := range p.Routes {
		r := &p.Routes[i]
		t := cells.Table{Title: r.Name, Columns: columns("step", "who", "people × hours", "places", "end", "when", "then")}
		for k := range r.Steps {
			row := stepRowOf(p, r, k)
			rows = append(rows, row)
			if row.empty() {
				continue
			}
			t.Rows = append(t.Rows, cells.Texts(row.Step, row.Craft, row.time(), row.places(), row.End, row.when(), row.then()))
		}
		if len(t.Rows) > 0 {
			out.tables = append(out.tables, t)
		}
	}
	out.tables = append(out.tables, stepsKey(s.Base.Style()))
	out.rows = rows
	return out, nil
}

func stepRowOf(p *sim.Plan, r *sim.Route, k int) stepRow {
	s := &r.Steps[k]
	row := stepRow{Route: r.Name, Step: s.Name, Does: s.Doing.String(), When: s.When.String(), Hours: s.Mean, Extra: s.Add.String(), Means: s.Verb.String(),
		Time:  map[sim.Pace]string{sim.Labor: "labor", sim.ByClock: "clock", sim.ByCure: "cure", sim.ByPolicy: "hold"}[s.Pace],
		Takes: placeNames(p, s.Take), Swaps: placeNames(p, s.Swap), Uses: placeNames(p, s.Use), Frees: placeNames(p, s.Free)}
	if s.Craft != sim.None && s.Pace == sim.Labor {
		row.Craft, row.Want, row.Least = p.Crafts[s.Craft].Name, int(s.Want), int(s.Least)
		row.End = map[sim.EndRule]string{sim.Pause: "pause", sim.Finish: "finish", sim.Fit: "fit"}[s.End]
	}
	if s.Loop {
		row.Back, row.While = r.Steps[s.Back].Name, s.Again.String()
	}
	return row
}

func placeNames(p *sim.Plan, places []int16) []string {
	var names []string
	for _, i := range places {
		names = append(names, p.Places[i].Name)
	}
	return names
}

// empty tells whether the step takes no time and changes nothing, such as a wait
// that a part does not have.
func (r *stepRow) empty() bool {
	return r.Hours == 0 && r.Time != "hold" && r.Extra+r.Means+r.Back == "" && r.places() == ""
}

// time is people times hours, or how the wait runs.
func (r *stepRow) time() string {
	hours := number(r.Hours) + " h"
	if r.Extra != "" {
		if hours += " + " + r.Extra; r.Hours == 0 {
			hours = r.Extra
		}
	}
	switch {
	case r.Time == "cure":
		return hours + " cure"
	case r.Time == "clock":
		return hours + " clock"
	case r.Time == "hold":
		return "hold policy"
	case r.Craft == "":
		return hours
	case r.Least < r.Want:
		return fmt.Sprintf("%d (%d) × %s", r.Want, r.Least, hours)
	}
	return fmt.Sprintf("%d × %s", r.Want, hours)
}

func (r *stepRow) places() string {
	var words []string
	for _, list := range []struct {
		sign  string
		names []string
	}{{"+", r.Takes}, {"−", r.Swaps}, {"with ", r.Uses}, {"−", r.Frees}} {
		for _, name := range list.names {
			words = append(words, list.sign+name)
		}
	}
	return strings.Join(words, ", ")
}

func (r *stepRow) when() string {
	if r.When == "always" {
		return ""
	}
	return r.When
}

func (r *stepRow) then() string {
	words := []string{}
	if r.Means != "" {
		words = append(words, r.Means)
	}
	if r.Back != "" {
		back := "back to " + r.Back
		if r.While != "always" {
			back += " while " + r.While
		}
		words = append(words, back)
	}
	return strings.Join(words, "; ")
}

// stepsKey says how to read the tables of steps.
func stepsKey(style unit.Style) cells.Table {
	t := cells.Table{Title: "How to read this", Columns: columns("column", "what it says")}
	for _, row := range [][2]string{
		{"people × hours", "people wanted (the least it runs with) × mean hours with all of them; waits run by the clock, or cure: hours at " + style.Temperature(25) + ", longer in a cool shop"},
		{"places", "+ is taken and kept, − is given back, with is needed while it runs"},
		{"end", "at the end of a shift: pause, go on next shift; finish, begun only if it ends about with the day; fit, begun only if it fits into the shift"},
		{"when", "the step is left out unless this holds; empty: always"},
		{"then", "what its end means to the plant"},
	} {
		t.Rows = append(t.Rows, cells.Texts(row[0], row[1]))
	}
	return t
}
