package main

import (
	"math"
	"regexp"
	"strings"

	"moldturn/reports/cells"
	"moldturn/scenarios"
	"moldturn/sim/draw"
	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// law is one amount of time that varies, as a scenario writes it.
type law struct {
	path, written, place string
	dist                 draw.Dist
}

// people is the front of a part's work: "4 (3) x ".
var people = regexp.MustCompile(`^\d+\s*(\(\s*\d+\s*\))?\s*[x×]\s*`)

// lawsIn finds every length of time in a scenario that is not one number, those
// of a part's work included.
func lawsIn(v *scenarios.Value) []law {
	var found []law
	for _, in := range v.Assumptions(unit.Metric) {
		text := in.Value
		switch {
		case text == "":
			continue
		case strings.Contains(in.Path, ".work."):
			text = people.ReplaceAllString(text, "")
		case in.Kind != param.Dist.String():
			continue
		}
		d, err := draw.Parse(text, func(s string) (float64, error) { return unit.Parse(param.Duration, s) })
		if err != nil { // "none", which is no length of time
			continue
		}
		if low, high := d.Bounds(); low != high {
			found = append(found, law{in.Path, in.Value, in.Place, d})
		}
	}
	return found
}

// lawRow is a law with its figures in hours.
type lawRow struct {
	Path    string   `json:"path"`
	Written string   `json:"written"`
	Place   string   `json:"place"` // "" for a default
	Mean    float64  `json:"mean_h"`
	SD      float64  `json:"sd_h"`
	Low     float64  `json:"low_h"`
	High    *float64 `json:"high_h"` // null without a limit
	Warning string   `json:"warning,omitempty"`
}

func lawRowOf(l law) lawRow {
	low, high := l.dist.Bounds()
	row := lawRow{Path: l.path, Written: l.written, Place: l.place, Mean: l.dist.Mean(), SD: math.Sqrt(l.dist.Variance()), Low: low}
	if !math.IsInf(high, 1) {
		row.High = &high
	}
	if w, ok := draw.WarningOf(l.dist); ok {
		row.Warning = w.String()
	}
	return row
}

func listDistributions(s *scenarios.Scenario) (*sheet, error) {
	if s == nil {
		return listForms(), nil
	}
	rows := []lawRow{}
	t := cells.Table{Columns: columns("input", "as written", ">mean, h", ">sd, h", ">low, h", ">high, h")}
	for _, l := range lawsIn(s.Base.Value) {
		row := lawRowOf(l)
		rows = append(rows, row)
		high := "none"
		if row.High != nil {
			high = number(*row.High)
		}
		cellsOf := cells.Texts(breakable(row.Path), row.Written, number(row.Mean), number(row.SD), number(row.Low), high)
		if row.Warning != "" {
			cellsOf.Cells[2].Notes = []int{len(t.Notes)}
			t.Notes = append(t.Notes, row.Warning)
		}
		t.Rows = append(t.Rows, cellsOf)
	}
	return &sheet{tables: []cells.Table{t}, rows: rows}, nil
}

// formRow is one way to write a law.
type formRow struct {
	Form string `json:"form"`
	Doc  string `json:"doc"`
}

// formDocs says of each form what it is for.
func formDocs() map[string]string {
	return map[string]string{
		"a single value":       "always this value; labor varies by the input \"variation\" around it",
		"low - typical - high": "as people estimate: 3 - 3.75 - 6 h; the same as pert",
		"pert":                 "a hump between the limits with its top at the typical value",
		"triangular":           "straight lines from the limits to the typical value",
		"uniform":              "every value between the limits alike",
		"lognormal":            "a long tail upward; cv is standard deviation over mean",
		"gamma":                "a tail upward, shorter than lognormal's",
		"weibull":              "lives of things that wear out",
		"exponential":          "waits for things that come at any time, such as failures",
		"normal":               "even on both sides, cut off at zero",
		"empirical":            "one of the values given, each alike: a list of records",
	}
}

func listForms() *sheet {
	rows := []formRow{}
	t := cells.Table{Columns: columns("written as", "what it is")}
	for _, form := range draw.Forms() {
		name, _, _ := strings.Cut(form, "(")
		rows = append(rows, formRow{form, formDocs()[name]})
		t.Rows = append(t.Rows, cells.Texts(form, formDocs()[name]))
	}
	return &sheet{tables: []cells.Table{t}, rows: rows}
}
