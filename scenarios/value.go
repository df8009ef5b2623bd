package scenarios

import (
	"fmt"
	"iter"
	"strings"

	"moldturn/sim/draw"
)

// Value is one bound input, or a group of them. A Tree hands out Values only
// when binding found no fault, so everything demanded is there and in range.
//
// Asking for a path that no row has, or for the wrong kind of value, is an error
// of the program and panics; so does reading an optional input that was left
// out: ask Given first.
type Value struct {
	branch   *branch
	path     string // with the names of this file, `models."Rush 23".area`
	at       position
	named    position // of the name of an item in a Map
	given    bool
	standard bool // from the row's default

	number float64   // base unit; every kind that is a number
	text   string    // Text, Choice, Ref; for the rest as written
	dist   draw.Dist // Dist, NumberDist
	node   *node     // Changes

	names []string // of children in a Map
	kids  []*Value // Group: one per row, in their order; Map and List: in file order
}

// Path is the full name of the input, with the names the file uses.
func (v *Value) Path() string { return v.path }

// Given reports whether there is a value: from the file, a change or the row's
// default.
func (v *Value) Given() bool { return v.given }

// IsDefault reports whether the value comes from the row's default.
func (v *Value) IsDefault() bool { return v.standard }

// Place is where the value was written, "plant.yaml:14:9"; for a default, where
// the group begins that it was left out of.
func (v *Value) Place() string { return v.at.complaint("").Place() }

// Complain makes a complaint about this value, for rules that no row can state.
func (v *Value) Complain(message, allowed, hint string) Complaint {
	c := v.at.complaint(message)
	c.Path, c.Found, c.Allowed, c.Hint = v.path, v.text, allowed, hint
	return c
}

// At is the input below v at a path of words, "hold.clock"; "" is v itself.
func (v *Value) At(path string) *Value {
	if path == "" {
		return v
	}
	for word := range strings.SplitSeq(path, ".") {
		v = v.child(word)
	}
	return v
}

// child is one named input of a group. Below a group that was left out all
// inputs are "not given".
func (v *Value) child(word string) *Value {
	for i, b := range v.branch.kids {
		if b.word != word {
			continue
		}
		if v.given {
			return v.kids[i]
		}
		return &Value{branch: b, path: joinPath(v.path, word), at: v.at}
	}
	panic(fmt.Sprintf("scenarios: there is no input %q in %q", word, v.branch.path))
}

// Each gives the items of the Map at path with their names, in file order; none
// if it was left out. Items of a List come with an empty name.
func (v *Value) Each(path string) iter.Seq2[string, *Value] {
	m := v.At(path)
	if m.branch.item == nil {
		panic(fmt.Sprintf("scenarios: Each of %q, which is %v", m.branch.path, m.branch.row.Kind))
	}
	return func(yield func(string, *Value) bool) {
		for i, kid := range m.kids {
			name := ""
			if m.names != nil {
				name = m.names[i]
			}
			if !yield(name, kid) {
				return
			}
		}
	}
}

// Item is the item of a Map with exactly this name.
func (v *Value) Item(name string) (item *Value, ok bool) {
	for n, kid := range v.Each("") {
		if n == name {
			return kid, true
		}
	}
	return nil, false
}

// Len is the number of items of a Map or List.
func (v *Value) Len() int { return len(v.kids) }

// leaves calls visit for every value below v that is not a container, given or
// not, in the order of rows and file; replaced tells that it is part of a list or
// map which stands in place of a default.
func (v *Value) leaves(replaced bool, visit func(v *Value, replaced bool)) {
	if !v.branch.row.Kind.Container() {
		visit(v, replaced)
		return
	}
	replaced = replaced || v.branch.row.Default != "" && !v.standard
	for _, kid := range v.kids {
		kid.leaves(replaced, visit)
	}
}
