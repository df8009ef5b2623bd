package view

import (
	"fmt"

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

// Assumptions are tables of all values that there are: those that differ from
// their defaults, those that the scenario gives where there is no other default,
// and those left at the default. Empty tables are left out.
func (s *Study) Assumptions() []cells.Table {
	var out []cells.Table
	for rank, title := range [...]string{"Changed from the default", "Given for this plant", "Left at the default"} {
		t := cells.Table{Columns: []cells.Column{
			{Head: "input"}, {Head: "value"}, {Head: "allowed"}, {Head: "what it is"}, {Head: "known from"}, {Head: "source"},
		}}
		for _, in := range s.Inputs {
			if in.Value != "" && in.rank() == rank {
				t.Rows = append(t.Rows, cells.Texts(in.Path, in.Value, in.Range, in.Doc, markName(in.Mark), in.Source))
			}
		}
		if n := len(t.Rows); n > 0 {
			t.Title = fmt.Sprintf("%s: %s", title, count(n, "value"))
			out = append(out, t)
		}
	}
	return out
}

// rank orders inputs: changed, written in the scenario, left at the default.
func (in Input) rank() int {
	switch {
	case in.Changed:
		return 0
	case in.Place != "":
		return 1
	}
	return 2
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
