package scenarios

import (
	"encoding/json"
	"math"
	"strings"

	"moldturn/sim/param"
	"moldturn/sim/param/unit"

	"github.com/google/jsonschema-go/jsonschema"
)

// Schema is the JSON Schema (2020-12) of scenario files, for editors: names,
// shapes, forms of units, choices, and for each input its meaning, range,
// default and source. It cannot check ranges of values with units, references
// or distributions; Bind does. A file that Bind accepts is valid by it.
func (t *Tree) Schema() ([]byte, error) {
	s := t.root.schema()
	s.Schema = "https://json-schema.org/draft/2020-12/schema"
	s.Title = "Scenario of an open-mold plant, version " + Version
	return json.MarshalIndent(s, "", "  ")
}

// schema describes one branch and what is below it.
func (b *branch) schema() *jsonschema.Schema {
	var s *jsonschema.Schema
	switch b.row.Kind {
	case param.Group:
		s = b.groupSchema()
	case param.Map:
		s = &jsonschema.Schema{Types: []string{"object", "null"}, AdditionalProperties: b.item.schema()}
		s.MinProperties, s.MaxProperties = b.counts()
	case param.List:
		s = &jsonschema.Schema{Types: []string{"array", "null"}, Items: b.item.schema()}
		s.MinItems, s.MaxItems = b.counts()
	case param.Changes:
		s = &jsonschema.Schema{Types: []string{"object", "null"}}
	default:
		s = b.scalarSchema()
	}
	s.Description = b.description()
	if b.row.Default != "" && !b.row.Kind.Container() {
		s.Default, _ = json.Marshal(b.row.Default)
	}
	return s
}

// groupSchema lists the inputs of a group and allows no others.
func (b *branch) groupSchema() *jsonschema.Schema {
	s := &jsonschema.Schema{
		Types:                []string{"object", "null"},
		Properties:           make(map[string]*jsonschema.Schema),
		AdditionalProperties: &jsonschema.Schema{Not: &jsonschema.Schema{}},
	}
	for _, kid := range b.kids {
		s.Properties[kid.word] = kid.schema()
		s.PropertyOrder = append(s.PropertyOrder, kid.word)
		if kid.demanded() {
			s.Required = append(s.Required, kid.word)
		}
	}
	if len(s.Required) > 0 {
		s.Type, s.Types = "object", nil
	}
	return s
}

// demanded reports whether a file that gives the group must give this input.
func (b *branch) demanded() bool {
	switch {
	case b.row.Optional || b.row.Default != "":
		return false
	case b.row.Kind != param.Group:
		return true
	}
	for _, kid := range b.kids {
		if kid.demanded() {
			return true
		}
	}
	return false
}

// scalarSchema describes the forms of a single value.
func (b *branch) scalarSchema() *jsonschema.Schema {
	text := &jsonschema.Schema{Type: "string", Pattern: unit.Pattern(b.row.Kind)}
	low, high := b.row.Limits()
	number := &jsonschema.Schema{Type: "number", Minimum: finite(low), Maximum: finite(high)}
	switch k := b.row.Kind; k {
	case param.Choice:
		return &jsonschema.Schema{Enum: choicesOf(b.row.Choices)}
	case param.Text, param.Ref:
		return &jsonschema.Schema{Types: []string{"string", "number", "boolean"}}
	case param.Flag:
		return &jsonschema.Schema{AnyOf: []*jsonschema.Schema{{Type: "boolean"}, text}}
	case param.Number, param.Share, param.NumberDist:
		return &jsonschema.Schema{AnyOf: []*jsonschema.Schema{number, text}}
	case param.Count:
		number.Type = "integer"
		return &jsonschema.Schema{AnyOf: []*jsonschema.Schema{number, text}}
	case param.Date, param.DayMonth, param.ClockTime, param.Weekdays, param.Months, param.Temperature:
		return text
	}
	zero := any(0)
	return &jsonschema.Schema{AnyOf: []*jsonschema.Schema{text, {Const: &zero}}}
}

// choicesOf lists choices as texts and, where editors would take a text for one,
// as numbers or truth values.
func choicesOf(choices []string) []any {
	var list []any
	for _, c := range choices {
		list = append(list, c)
		var other any
		if json.Unmarshal([]byte(c), &other) == nil && other != nil {
			list = append(list, other)
		}
	}
	return list
}

// counts are the limits of the number of items.
func (b *branch) counts() (low, high *int) {
	from, to := b.row.Limits()
	if from > 0 {
		low = jsonschema.Ptr(int(from))
	}
	if !math.IsInf(to, 1) {
		high = jsonschema.Ptr(int(to))
	}
	return low, high
}

// finite is a pointer to x, or nil for a missing bound.
func finite(x float64) *float64 {
	if math.IsInf(x, 0) {
		return nil
	}
	return &x
}

// description is what an editor shows beside an input.
func (b *branch) description() string {
	if !b.declared {
		return ""
	}
	in := b.input()
	parts := []string{in.Doc}
	add := func(name, text string) {
		if text != "" {
			parts = append(parts, name+": "+text)
		}
	}
	add("range", in.Range)
	add("default", b.row.Default)
	add("source", in.Source)
	return strings.Join(parts, "; ")
}
