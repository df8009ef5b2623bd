package view

import (
	"slices"

	"moldturn/reports/cells"
)

// Input is one value of the scenario with what is known about it, in finished
// texts.
type Input struct {
	Path, Value, Range, Doc string
	Mark                    string // S, CP, M, A or U, as package param writes it
	Source                  string
	Changed                 bool   // differs from the default
	Place                   string // where it was written; empty for a default
}

// Assumptions is the table of all values that are given, those that differ from
// their defaults first.
func (s *Study) Assumptions() cells.Table {
	t := cells.Table{Columns: []cells.Column{
		{Head: "input"}, {Head: "value"}, {Head: "from default"}, {Head: "allowed"}, {Head: "what it is"}, {Head: "known from"}, {Head: "source"},
	}}
	var given []Input
	for _, in := range s.Inputs {
		if in.Value != "" {
			given = append(given, in)
		}
	}
	slices.SortStableFunc(given, func(a, b Input) int { return rank(a) - rank(b) })
	for _, in := range given {
		t.Rows = append(t.Rows, cells.Texts(in.Path, in.Value, origin(in), in.Range, in.Doc, markName(in.Mark), in.Source))
	}
	return t
}

// rank orders inputs: changed, written in the scenario, left at the default.
func rank(in Input) int {
	switch {
	case in.Changed:
		return 0
	case in.Place != "":
		return 1
	}
	return 2
}

func origin(in Input) string {
	return [...]string{"changed", "given", "default"}[rank(in)]
}

// markName says what stands behind a value.
func markName(mark string) string {
	switch mark {
	case "S":
		return "published source"
	case "CP":
		return "common practice"
	case "M":
		return "memory, not verified"
	case "A":
		return "assumption"
	}
	return "the plant"
}
