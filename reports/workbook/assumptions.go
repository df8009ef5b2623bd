package workbook

import (
	"regexp"
	"strconv"
	"strings"

	"moldturn/reports/view"
	"moldturn/reports/view/assume"
)

// assumptions is every value behind the results.
func (b *book) assumptions() *table {
	t := &table{sheet: "Assumptions", lead: "Every value of the base, with what it is known from", block: block{columns: []column{
		{head: "input", wide: 48}, {head: "value"}, {head: "unit of the value"}, {head: "allowed"}, {head: "what it is", wide: 70}, {head: "known from"}, {head: "source", wide: 60},
		{head: "order of checking"}, {head: "worth checking because", wide: 60}, {head: "set"}, {head: "where"}}}}
	rank := map[string]checked{}
	for i, x := range assume.Rank(b.study, b.study.Best()) {
		rank[x.Path] = checked{i + 1, x.Why}
	}
	for _, in := range b.study.Inputs {
		if in.Value == "" {
			continue
		}
		v, unit := measured(in.Value)
		t.rows = append(t.rows, []any{in.Path, v, unit, in.Range, in.Doc, view.MarkName(in.Mark), in.Source,
			rank[in.Path].place, rank[in.Path].why, set(&in), in.Place})
	}
	return t
}

// checked is the place of an input among those worth checking, and why.
type checked struct {
	place int
	why   string
}

// withUnit matches a number and its unit, which has no digit in front.
var withUnit = regexp.MustCompile(`^(-?[0-9]{1,15}(?:\.[0-9]+)?)[ \x{00A0}]([^0-9\s][^\s]*)$`)

// priced matches an amount of money: its currency, the amount, thousands apart or
// not, and what it is for, if anything: "$8", "€1,200.50/h".
var priced = regexp.MustCompile(`^(-?)([$€£¥])([0-9]{1,15}|[0-9]{1,3}(?:,[0-9]{3}){1,4})(\.[0-9]+)?(/[^0-9\s]+)?$`)

// measured is a value with its unit apart: "16 h" is 16 and "h", "$8" is 8 and
// "$". Texts stay whole, without a unit.
func measured(text string) (value any, unit string) {
	if m := priced.FindStringSubmatch(text); m != nil {
		return valueOf(m[1] + strings.ReplaceAll(m[3], ",", "") + m[4]), m[2] + m[5]
	}
	if m := withUnit.FindStringSubmatch(text); m != nil {
		return valueOf(m[1]), m[2]
	}
	return valueOf(text), ""
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
