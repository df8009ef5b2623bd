package scenarios

import (
	"slices"
	"strings"
)

// shape is what a node looks like in the file.
type shape uint8

const (
	scalar  shape = iota
	mapping       // keys with items
	list          // items
	empty         // nothing, or ~ or null
	refused       // complained about already; binding passes over it in silence
)

// node is a part of a Document. Nodes are not changed once made: a change copies
// the nodes on its way and shares the rest.
type node struct {
	shape shape
	text  string // of a scalar
	at    position
	keys  []key   // of a mapping, one per item
	items []*node // of a mapping or list
}

// key is the name of an item of a mapping.
type key struct {
	name string
	at   position
}

// Document is a scenario as it was written, changes included.
type Document struct {
	root *node
}

// find is the place of a key among the items, or -1; it accepts nil.
func (n *node) find(name string) int {
	if n == nil || n.shape != mapping {
		return -1
	}
	return slices.IndexFunc(n.keys, func(k key) bool { return k.name == name })
}

// get is the item of a key, or nil.
func (n *node) get(name string) *node {
	if i := n.find(name); i >= 0 {
		return n.items[i]
	}
	return nil
}

// with is a copy of n, or a new mapping if n is none, in which the key has the
// item; new keys come last. An empty item takes the key away; taking it from
// nothing leaves nothing.
func (n *node) with(k key, item *node) *node {
	if n == nil && item.shape == empty {
		return item
	}
	c := &node{shape: mapping, at: k.at}
	if n != nil && n.shape == mapping {
		c.at, c.keys, c.items = n.at, slices.Clone(n.keys), slices.Clone(n.items)
	}
	switch i := c.find(k.name); {
	case i >= 0 && item.shape == empty:
		c.keys, c.items = slices.Delete(c.keys, i, i+1), slices.Delete(c.items, i, i+1)
	case i >= 0:
		c.items[i] = item
	case item.shape != empty:
		c.keys, c.items = append(c.keys, k), append(c.items, item)
	}
	return c
}

// withItem is a copy of a list in which item i is another, or left out if the
// other is empty.
func (n *node) withItem(i int, item *node) *node {
	c := *n
	c.items = slices.Clone(n.items)
	if item.shape == empty {
		c.items = slices.Delete(c.items, i, i+1)
	} else {
		c.items[i] = item
	}
	return &c
}

// movedTo is a copy of n and everything in it, all at one place.
func (n *node) movedTo(at position) *node {
	c := *n
	c.at, c.keys, c.items = at, slices.Clone(n.keys), slices.Clone(n.items)
	for i := range c.keys {
		c.keys[i].at = at
	}
	for i, item := range c.items {
		c.items[i] = item.movedTo(at)
	}
	return &c
}

// flow writes a node in one line, for people.
func (n *node) flow() string {
	switch n.shape {
	case scalar:
		return n.text
	case list, mapping:
		out := make([]string, len(n.items))
		for i, item := range n.items {
			out[i] = item.flow()
			if n.shape == mapping {
				out[i] = n.keys[i].name + ": " + out[i]
			}
		}
		if n.shape == list {
			return "[" + strings.Join(out, ", ") + "]"
		}
		return "{" + strings.Join(out, ", ") + "}"
	}
	return "nothing"
}
