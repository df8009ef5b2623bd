package workbook

import (
	"regexp"
	"strconv"

	"moldturn/reports/view"
)

// assumptions is every value behind the results.
func (b *book) assumptions() *table {
	t := &table{sheet: "Assumptions", lead: "Every value of the base, with what it is known from", block: block{columns: []column{
		{head: "input", wide: 48}, {head: "value"}, {head: "allowed"}, {head: "what it is", wide: 70}, {head: "known from"}, {head: "source", wide: 60}, {head: "set"}, {head: "where"}}}}
	for _, in := range b.study.Inputs {
		if in.Value == "" {
			continue
		}
		t.rows = append(t.rows, []any{in.Path, valueOf(in.Value), in.Range, in.Doc, view.MarkName(in.Mark), in.Source, set(&in), in.Place})
	}
	return t
}

func set(in *view.Input) string {
	switch {
	case in.Changed:
		return "changed from its default"
	case in.Place != "":
		return "given for this plant"
	}
	return "left at its default"
}

// bare matches a number without a unit.
var bare = regexp.MustCompile(`^-?[0-9]{1,15}(\.[0-9]+)?$`)

// valueOf is a number without a unit as a number, anything else as its text.
func valueOf(text string) any {
	if !bare.MatchString(text) {
		return text
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return text
	}
	return number{v, "General"}
}
