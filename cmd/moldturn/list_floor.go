package main

import (
	"strings"

	"moldturn/reports/cells"
	"moldturn/scenarios"
	"moldturn/scenarios/floor"
)

// floorColumn is one column of a floor file.
type floorColumn struct {
	File   string   `json:"file"`
	Column string   `json:"column"`
	Needed bool     `json:"needed"`
	Doc    string   `json:"doc"`
	Also   []string `json:"also"` // other heads that are understood
	Gap    string   `json:"gap"`  // what it does to the answer where it is blank
}

// listFloor shows what a folder of floor files may hold.
func listFloor(*scenarios.Scenario) (*sheet, error) {
	out := &sheet{lines: []string{
		"A floor is a folder with any of these files, as .csv, or as sheets of an .xlsx file. Columns may stand in any order, under near names, with others between them; columns marked * are needed.",
	}}
	rows := []floorColumn{}
	for _, f := range floor.Files() {
		t := cells.Table{Title: f.Name + ": " + f.Doc, Columns: columns("column", "what it is", "where it is blank")}
		for _, c := range f.Columns {
			name := c.Name
			if c.Needed {
				name += " *"
			}
			t.Rows = append(t.Rows, cells.Texts(name, c.Doc, blankOf(c)))
			rows = append(rows, floorColumn{f.Name, c.Name, c.Needed, c.Doc, c.Also, c.Gap})
		}
		out.tables = append(out.tables, t)
	}
	out.rows = rows
	return out, nil
}

// blankOf says what a blank cell means.
func blankOf(c floor.Column) string {
	switch {
	case c.Same:
		return "the same as in the row above"
	case c.Needed:
		return "the row is not used"
	}
	return c.Gap
}

// floorTerms are the columns of floor files, "molds.turns since strip".
func floorTerms() []entry {
	var out []entry
	for _, f := range floor.Files() {
		for _, c := range f.Columns {
			t := entry{Name: f.Name + "." + c.Name, Doc: c.Doc, Notes: []string{"a column of the floor file " + f.Name + ": " + f.Doc}, also: []string{c.Name}}
			if c.Needed {
				t.Notes = append(t.Notes, "needed")
			}
			if len(c.Also) > 0 {
				t.Notes = append(t.Notes, "other heads: "+strings.Join(c.Also, ", "))
			}
			if c.Gap != "" {
				t.Notes = append(t.Notes, "where it is blank: "+c.Gap)
			}
			out = append(out, t)
		}
	}
	return out
}
