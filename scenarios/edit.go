package scenarios

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/sim/param"
)

// editor works one change into a tree of nodes.
type editor struct {
	change Change
	fault  *Complaint
}

// edit gives what takes the place of n, which may be nil: the value of the
// change at the end of its path, else a copy of n with one item changed. Groups
// that are not in the file are made; lists and maps that are a default are
// written out first.
func (e *editor) edit(br *branch, n *node, path string, words []string) *node {
	if len(words) == 0 {
		return e.change.value
	}
	if n == nil && br.row.Default != "" && br.row.Kind.Container() {
		n = br.defaultNode(e.change.at)
	}
	switch br.row.Kind {
	case param.Group:
		return e.inGroup(br, n, path, words)
	case param.Map:
		return e.inMap(br, n, path, words)
	case param.List:
		return e.inList(br, n, path, words)
	}
	return e.fail(fmt.Sprintf("%s is %v and has no %q in it", path, br.row.Kind, words[0]), nil, "")
}

// fail keeps the complaint; the node that edit gives does not matter then.
func (e *editor) fail(message string, names []string, word string) *node {
	c := e.change.complaint(message, names, word)
	e.fault = &c
	return e.change.value
}

// inGroup goes on with one named input.
func (e *editor) inGroup(br *branch, n *node, path string, words []string) *node {
	i := choose(words[0], br.words())
	if i < 0 {
		where := ""
		if path != "" {
			where = " in " + path
		}
		return e.fail(fmt.Sprintf("unknown input %q%s", words[0], where), br.words(), words[0])
	}
	kid := br.kids[i]
	item := e.edit(kid, n.get(kid.word), joinPath(path, kid.word), words[1:])
	return n.with(key{name: kid.word, at: e.change.at}, item)
}

// inMap goes on with one of the user's names. A new name is accepted only at the
// end of a path and with a whole item as its value.
func (e *editor) inMap(br *branch, n *node, path string, words []string) *node {
	var names []string
	if n != nil {
		for _, k := range n.keys {
			names = append(names, k.name)
		}
	}
	name := words[0]
	if i := choose(name, names); i >= 0 {
		name = names[i]
	} else if len(words) > 1 || e.change.value.shape != mapping {
		return e.fail(fmt.Sprintf("unknown %s %q", br.noun(), name), names, name)
	}
	item := e.edit(br.item, n.get(name), joinPath(path, name), words[1:])
	return n.with(key{name: name, at: e.change.at}, item)
}

// inList goes on with one item, counted from 1.
func (e *editor) inList(br *branch, n *node, path string, words []string) *node {
	count := 0
	if n != nil && n.shape == list {
		count = len(n.items)
	}
	number, err := strconv.Atoi(strings.Trim(words[0], "[]"))
	if err != nil || !strings.HasPrefix(words[0], "[") || number < 1 || number > count {
		return e.fail(fmt.Sprintf("%s has no item %s; it has %d, counted from [1]", path, words[0], count), nil, "")
	}
	item := e.edit(br.item, n.items[number-1], path+words[0], words[1:])
	return n.withItem(number-1, item)
}
