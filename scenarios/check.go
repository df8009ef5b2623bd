package scenarios

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"moldturn/sim/param"
)

// check finds what is wrong with the rows themselves: a program's fault, met by
// the first test that makes the tree and never by a user.
func (t *Tree) check() []error {
	var faults []error
	t.root.walk(func(b *branch) {
		for _, fault := range b.faults(t) {
			faults = append(faults, fmt.Errorf("input %s: %s", b.path, fault))
		}
	})
	return faults
}

// faults lists what is wrong with one branch.
func (b *branch) faults(t *Tree) []string {
	list := b.shapeFaults()
	if !b.declared {
		return list
	}
	r := b.row
	list = append(list, textFaults(r)...)
	if low, high := r.Limits(); !(low <= high) {
		list = append(list, "its low bound is not under its high bound")
	}
	if r.Kind != param.Ref && (r.Kind == param.Choice) != (len(r.Choices) > 0) {
		list = append(list, "choices go with the kind Choice, and only with it and Ref")
	}
	switch {
	case (r.Kind == param.Ref) != (r.RefTo != ""):
		list = append(list, "RefTo goes with the kind Ref, and only with it")
	case r.Kind == param.Ref && !t.isNames(r.RefTo):
		list = append(list, fmt.Sprintf("RefTo %q is neither a map nor a text in a list", r.RefTo))
	}
	return append(list, b.defaultFaults(t)...)
}

// shapeFaults checks that what is below b fits its kind.
func (b *branch) shapeFaults() []string {
	var list []string
	itemWord := map[param.Kind]string{param.Map: "*", param.List: "[]"}[b.row.Kind]
	if b.item != nil && b.item.word != itemWord {
		list = append(list, fmt.Sprintf("has items %q but is %v by its row", b.item.word, b.row.Kind))
	}
	if b.item == nil && itemWord != "" {
		list = append(list, "has no row for its items")
	}
	if len(b.kids) > 0 && b.row.Kind != param.Group {
		list = append(list, fmt.Sprintf("has named inputs but is %v by its row", b.row.Kind))
	}
	if b.row.Kind == param.Group && len(b.kids) == 0 && b.up != nil {
		list = append(list, "is a group without inputs")
	}
	return list
}

// textFaults checks that a row says what a reader of the assumptions needs.
func textFaults(r param.Row) []string {
	var list []string
	if r.Kind > param.Changes {
		list = append(list, "its kind is unknown")
	}
	if strings.TrimSpace(r.Doc) == "" {
		list = append(list, "has no Doc")
	}
	marks := []param.Mark{param.Published, param.CommonPractice, param.Memory, param.Assumption, param.User}
	if !r.Kind.Container() && !slices.Contains(marks, r.Mark) {
		list = append(list, fmt.Sprintf("its mark %q is unknown", r.Mark))
	}
	if r.Mark == param.Published && r.Source == "" {
		list = append(list, "is marked published and names no source")
	}
	if math.IsNaN(r.Low) || math.IsNaN(r.High) {
		list = append(list, "a bound is not a number")
	}
	return list
}

// defaultFaults reads the default with the same code that reads files.
func (b *branch) defaultFaults(t *Tree) []string {
	switch {
	case b.row.Default == "":
		return nil
	case b.row.Optional:
		return []string{"has a default and so cannot be optional"}
	case b.row.Kind == param.Group:
		return []string{"is a group; defaults belong to its inputs"}
	}
	binder := binder{tree: t}
	binder.bind(b, b.defaultNode(position{source: &source{name: "default"}}), &Value{path: b.path})
	var list []string
	for _, c := range binder.complaints {
		text := "its default: " + c.Message
		if c.Allowed != "" {
			text += "; allowed: " + c.Allowed
		}
		list = append(list, text)
	}
	return list
}

// isNames reports whether a path of names leads to a Map or to a text.
func (t *Tree) isNames(path string) bool {
	b := t.lookup(path)
	return b != nil && (b.row.Kind == param.Map || b.row.Kind == param.Text)
}
