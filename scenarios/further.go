package scenarios

import (
	"slices"
	"strings"

	"moldturn/sim/draw"
	"moldturn/sim/param"
)

// further looks on behind the faults of a document, which get a stand-in each,
// for those that only the whole plant or its alternatives show, so that a user
// mends a file once. Faults at places known already are not told again. When a
// fault leaves too much open, such as a group that nobody can read, there is
// nothing further to say yet.
func (t *Tree) further(doc *Document, o Options, known Complaints) Complaints {
	standard, err := standardRoutes()
	if err != nil {
		return nil
	}
	b := &binder{tree: t, stands: true}
	root := b.root(doc)
	if b.lost {
		return nil
	}
	_, found := t.build(root, standard, o)
	for _, v := range b.changes {
		found = append(found, t.try(doc, v)...)
	}
	return found.elsewhere(known)
}

// elsewhere leaves out complaints at places that known ones stand at, and those
// about a group of inputs that holds a known fault: they may be about its stand-in.
func (c Complaints) elsewhere(known Complaints) Complaints {
	type place struct {
		file         string
		line, column int
	}
	told := map[place]bool{}
	for _, k := range known {
		told[place{k.File, k.Line, k.Column}] = true
	}
	var out Complaints
	for _, one := range c {
		if !told[place{one.File, one.Line, one.Column}] && !known.within(one.Path) {
			out = append(out, one)
		}
	}
	return out
}

// within reports whether any of the complaints is about an input below a path.
func (c Complaints) within(path string) bool {
	return path != "" && slices.ContainsFunc(c, func(k Complaint) bool {
		rest, below := strings.CutPrefix(k.Path, path)
		return below && (strings.HasPrefix(rest, ".") || strings.HasPrefix(rest, "["))
	})
}

// standIn gives a value that cannot be read its default, or else some value its
// row allows, for looking further.
func (b *binder) standIn(v *Value) {
	row := v.branch.row
	switch {
	case !b.stands:
	case row.Kind.Container():
		b.lost = true
	case row.Optional:
		v.given = false
	case row.Default != "":
		b.leftOut(v.branch, v)
	default:
		v.given = true
		b.anyValue(v, row)
	}
}

// anyValue fills v with a value its row allows.
func (b *binder) anyValue(v *Value, row param.Row) {
	low, high := row.Limits()
	x := min(max(1, low), high)
	switch row.Kind {
	case param.Text:
		v.text = "text"
	case param.Choice:
		v.text = row.Choices[0]
	case param.Ref:
		b.lost = true
	case param.Dist, param.NumberDist:
		d, err := draw.Constant(x)
		v.dist, b.lost = d, b.lost || err != nil
	case param.Date:
		v.number = 20_000 // days; in 2024
	case param.DayMonth:
		v.number = 101
	default:
		v.number = x
	}
}

// standInName lets a name that leads nowhere mean the first there is.
func (b *binder) standInName(v *Value, names []string) {
	switch {
	case !b.stands:
	case v.branch.row.Optional:
		v.given = false
	case len(names) == 0:
		b.lost = true
	default:
		v.text = names[0]
	}
}
