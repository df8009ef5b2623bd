package scenarios

import (
	"fmt"
	"strings"

	"moldturn/sim/param"
)

// Change is one edit of a document: an input named by its path takes another
// value. A value of nothing ("path=" or null) takes the input out of the file,
// so that its default holds.
type Change struct {
	Path  string
	value *node
	at    position // of the path
}

// ParseChange reads an edit from a command line, "hold.clock=16 h". The value is
// taken as written; only one that begins with [, { or a quote is read as YAML.
// option is what complaints call the place, "--set".
func ParseChange(option, text string) (Change, Complaints) {
	path, value, ok := cutEqual(text)
	src := &source{name: strings.TrimSpace(option + " " + path)}
	at := position{source: src}
	if !ok || path == "" {
		c := at.complaint("no value is given")
		c.Hint = "write path=value, for example hold.clock=16 h"
		return Change{}, Complaints{c}
	}
	ch := Change{Path: path, at: at}
	switch {
	case value == "" || value == "null" || value == "~":
		ch.value = &node{shape: empty, at: at}
	case strings.ContainsAny(value[:1], `[{"'`):
		n, complaints := parseYAML(newSource(src.name, value), value)
		for i := range complaints {
			complaints[i].Line, complaints[i].Column, complaints[i].Hint = 0, 0, ""
		}
		if n == nil || len(complaints) > 0 {
			return Change{}, complaints.sorted()
		}
		ch.value = n.movedTo(at)
	default:
		ch.value = &node{shape: scalar, text: value, at: at}
	}
	return ch, nil
}

// cutEqual cuts at the first equal sign outside of double quotes.
func cutEqual(text string) (path, value string, ok bool) {
	quoted := false
	for i, r := range text {
		switch {
		case r == '"':
			quoted = !quoted
		case r == '=' && !quoted:
			return strings.TrimSpace(text[:i]), strings.TrimSpace(text[i+1:]), true
		}
	}
	return strings.TrimSpace(text), "", false
}

// Changes is a value of kind Changes: the edits an alternative makes, each with
// its place in the file, in file order. None if it was left out.
func (v *Value) Changes() []Change {
	if v.branch.row.Kind != param.Changes {
		panic(fmt.Sprintf("scenarios: %s has no changes", v.branch.path))
	}
	if v.node == nil {
		return nil
	}
	var list []Change
	for i, k := range v.node.keys {
		list = append(list, Change{Path: k.name, value: v.node.items[i], at: k.at})
	}
	return list
}

// Apply works changes into a document, one after the other, and gives the new
// one, without those it complains about; doc stays as it is. Complaints are about
// paths only: values are checked by Bind, with the places where the changes were
// written.
func (t *Tree) Apply(doc *Document, changes ...Change) (*Document, Complaints) {
	root := doc.root
	var complaints Complaints
	for _, ch := range changes {
		words, err := parsePath(ch.Path)
		if err != nil {
			complaints = append(complaints, ch.complaint(err.Error(), nil, ""))
			continue
		}
		e := editor{change: ch}
		if next := e.edit(t.root, root, "", words); e.fault == nil {
			root = next
		} else {
			complaints = append(complaints, *e.fault)
		}
	}
	return &Document{root: root}, complaints.sorted()
}

// try binds the document once more with the changes in v.
func (t *Tree) try(doc *Document, v *Value) Complaints {
	changed, complaints := t.Apply(doc, v.Changes()...)
	if len(complaints) == 0 {
		b := &binder{tree: t}
		b.root(changed)
		complaints = b.complaints
	}
	for i := range complaints {
		complaints[i].Message = "with " + v.path + ": " + complaints[i].Message
	}
	return complaints
}

// complaint is about the path of the change; word is the part not understood.
func (ch Change) complaint(message string, names []string, word string) Complaint {
	c := ch.at.complaint(message)
	c.Path, c.Found, c.Allowed, c.Hint = ch.Path, word, short(names), didYouMean(word, names)
	return c
}

// String is the change as a person would write it, "strip.every = 3".
func (ch Change) String() string {
	if ch.value == nil || ch.value.shape == empty {
		return ch.Path + " left out"
	}
	return ch.Path + " = " + ch.value.flow()
}
