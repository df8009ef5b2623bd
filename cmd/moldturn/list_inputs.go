package main

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/scenarios"
	"moldturn/sim/param"
)

// inputRow is one input; Value, Changed and Place belong to a scenario.
type inputRow struct {
	Path    string  `json:"path"`
	Kind    string  `json:"kind"`
	Unit    string  `json:"unit,omitempty"` // of numbers in the kind's own unit
	Range   string  `json:"range,omitempty"`
	Default string  `json:"default"`
	Mark    string  `json:"mark"`
	Source  string  `json:"source,omitempty"`
	Doc     string  `json:"doc"`
	Value   *string `json:"value,omitempty"` // "" for an input left out
	Changed *bool   `json:"changed,omitempty"`
	Place   *string `json:"place,omitempty"` // "" for a default
}

func inputRowOf(in scenarios.Input) inputRow {
	return inputRow{Path: in.Path, Kind: in.Kind, Unit: in.Unit, Range: in.Range, Default: in.Default, Mark: string(in.Mark), Source: in.Source, Doc: in.Doc}
}

func listInputs(s *scenarios.Scenario) (*sheet, error) {
	if s != nil {
		return listValues(s.Base), nil
	}
	tree, err := scenarios.Inputs()
	if err != nil {
		return nil, err
	}
	rows := []inputRow{}
	out := &sheet{tables: []cells.Table{markTable()}}
	for _, in := range tree.Inputs() {
		rows = append(rows, inputRowOf(in))
		out.lines = append(out.lines, fmt.Sprintf("%s, %s: %s", in.Path, standard(in), describe(in)))
	}
	out.rows = rows
	return out, nil
}

// standard is what holds for an input that is left out.
func standard(in scenarios.Input) string {
	if hasDefault(in) {
		return "default " + in.Default
	}
	return in.Default
}

func hasDefault(in scenarios.Input) bool {
	return in.Default != "optional" && in.Default != "must be given"
}

// listValues lists the values of a scenario, those written in it with their
// places.
func listValues(p *scenarios.Plant) *sheet {
	rows := []inputRow{}
	out := &sheet{tables: []cells.Table{markTable()}}
	for _, in := range p.Assumptions() {
		row := inputRowOf(in)
		row.Value, row.Changed, row.Place = &in.Value, &in.Changed, &in.Place
		rows = append(rows, row)
		if in.Value != "" {
			out.lines = append(out.lines, fmt.Sprintf("%s = %s (%s)", in.Path, in.Value, origin(in)))
		}
	}
	out.rows = rows
	return out
}

// origin says where a value of a scenario comes from.
func origin(in scenarios.Input) string {
	switch {
	case in.Place == "":
		return fmt.Sprintf("default [%s]", in.Mark)
	case in.Changed && hasDefault(in):
		return fmt.Sprintf("%s, default %s", in.Place, in.Default)
	}
	return in.Place
}

// describe is what an input is, with its range and mark.
func describe(in scenarios.Input) string {
	text := in.Doc
	if in.Range != "" {
		text += "; " + in.Range
	}
	return fmt.Sprintf("%s [%s]", text, in.Mark)
}

// breakable lets a long path wrap in a table, at its dots. Spaces of names are
// kept.
func breakable(path string) string {
	if len(path) <= 26 {
		return path
	}
	return strings.ReplaceAll(path, ".", ". ")
}

// marks explain the letters in brackets.
func marks() []struct {
	mark param.Mark
	doc  string
} {
	return []struct {
		mark param.Mark
		doc  string
	}{
		{param.Published, "a published source; \"moldturn explain INPUT\" names it"},
		{param.CommonPractice, "common practice of the trade, no source"},
		{param.Memory, "from memory, not verified"},
		{param.Assumption, "an assumption of the model, to be calibrated with the plant's own records"},
		{param.User, "the plant's own fact; there is no sensible default"},
	}
}

func markTable() cells.Table {
	t := cells.Table{Columns: columns("mark", "where a default comes from")}
	for _, m := range marks() {
		t.Rows = append(t.Rows, cells.Texts("["+string(m.mark)+"]", m.doc))
	}
	return t
}
