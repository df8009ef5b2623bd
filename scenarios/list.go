package scenarios

import (
	"math"
	"slices"
	"strings"

	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// Input is one row as people read it: in the list of inputs, or, with its value
// in a scenario, in the table of assumptions. Texts are ready to print.
type Input struct {
	Path    string // "models.*.area", or with the names of a scenario
	Kind    string // "a length of time"
	Unit    string // base unit of the kind, "h"; may be empty
	Range   string // "0.5 h to 120 h", or the choices; may be empty
	Default string // as the row writes it; "optional" or "must be given" without one
	Doc     string
	Mark    param.Mark
	Source  string

	Value   string // in a scenario only: the value, "" if not given
	Changed bool   // in a scenario only: it differs from the default
	Place   string // in a scenario only: where it was written; "" for a default
}

// Inputs lists every row except plain groups, sorted by path.
func (t *Tree) Inputs() []Input {
	var list []Input
	t.root.walk(func(b *branch) {
		if b.declared && (b.row.Kind != param.Group || b.row.Optional) {
			list = append(list, b.input())
		}
	})
	slices.SortStableFunc(list, func(a, b Input) int { return strings.Compare(a.Path, b.Path) })
	return list
}

// input describes a row.
func (b *branch) input() Input {
	r := b.row
	in := Input{Path: b.path, Kind: r.Kind.String(), Unit: r.Kind.Unit(), Default: r.Default,
		Doc: r.Doc, Mark: r.Mark, Source: r.Source}
	switch {
	case r.Kind == param.Choice:
		in.Range = strings.Join(r.Choices, ", ")
	case r.Kind == param.Ref:
		in.Range = strings.Join(append(slices.Clone(r.Choices), "a name from "+r.RefTo), ", ")
	default:
		in.Range = b.rangeOf()
	}
	switch {
	case r.Optional:
		in.Default = "optional"
	case r.Default == "":
		in.Default = "must be given"
	}
	return in
}

// rangeOf writes the limits of a row; a list that may have any length has none.
func (b *branch) rangeOf() string {
	low, high := b.row.Limits()
	if b.row.Kind.Container() && low == 0 && math.IsInf(high, 1) {
		return ""
	}
	return rangeText(amountKind(b.row.Kind), low, high, b.row.Default)
}

// amountKind is the kind of the single numbers that bounds of a row hold for.
func amountKind(k param.Kind) param.Kind {
	switch k {
	case param.Dist:
		return param.Duration
	case param.NumberDist:
		return param.Number
	case param.Map, param.List:
		return param.Count
	}
	return k
}

// Assumptions lists every single value of a bound scenario with its row, in the
// order of rows and file. Inputs that were left out without a default are in it
// with an empty Value.
func (v *Value) Assumptions(sys unit.System) []Input {
	var list []Input
	v.leaves(false, func(leaf *Value, replaced bool) {
		in := leaf.branch.input()
		in.Path, in.Value, in.Changed = leaf.path, leaf.Format(sys), replaced || leaf.changed()
		if leaf.given && !leaf.standard {
			in.Place = leaf.Place()
		}
		list = append(list, in)
	})
	return list
}

// Assumptions are those of the plant's inputs, with values, defaults and limits
// in the units and the currency that the scenario asks for. Texts about an input
// and its source stay as they are written.
func (p *Plant) Assumptions() []Input {
	style := p.Style()
	list := p.Value.Assumptions(style.System)
	i := 0
	p.Value.leaves(false, func(leaf *Value, _ bool) {
		in := &list[i]
		i++
		k := leaf.branch.row.Kind
		if !isNumber(k) {
			return
		}
		if leaf.given {
			in.Value = style.Format(k, leaf.number)
		}
		if row := leaf.branch.row; row.Default != "" && in.Default == row.Default {
			in.Default = style.Text(k, row.Default)
		}
		if in.Range != "" {
			in.Range = leaf.branch.rangeIn(style, in.Value)
		}
	})
	return list
}

// rangeIn is rangeOf in a style, in the unit of a value beside it.
func (b *branch) rangeIn(style unit.Style, value string) string {
	low, high := b.row.Limits()
	return between(low, high, func(x float64) string { return style.Like(b.row.Kind, x, value) })
}

// changed reports whether a value differs from the default of its row.
func (v *Value) changed() bool {
	row := v.branch.row
	if row.Default == "" || v.standard || !v.given {
		return false
	}
	b := &binder{tree: &Tree{laws: laws{}}}
	standard := &Value{}
	b.bind(v.branch, v.branch.defaultNode(v.at), standard)
	if v.dist != nil && standard.dist != nil {
		return v.dist.String() != standard.dist.String()
	}
	if isNumber(row.Kind) {
		return v.number != standard.number
	}
	return v.text != standard.text
}
