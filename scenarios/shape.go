package scenarios

import (
	"fmt"
	"strconv"

	"moldturn/sim/param"
)

// fits checks the shape of a node against the kind of its branch.
func (b *binder) fits(br *branch, n *node, v *Value) bool {
	want, words := scalar, br.row.Kind.String()
	switch br.row.Kind {
	case param.Group, param.Map, param.Changes:
		want, words = mapping, "named inputs, each on its own line with a colon"
	case param.List:
		want, words = list, "a list, each item on its own line after a dash"
	}
	switch {
	case n.shape == want, n.shape == empty && want != scalar:
		return true
	case n.shape == empty && br.row.Default != "":
		b.complain(v, n.at, v.path+" has no value", "", "remove the line to have the default "+br.row.Default)
	case n.shape == empty:
		b.complain(v, n.at, v.path+" has no value", words, "")
	default:
		v.text = n.text
		found := [...]string{scalar: "the single value " + strconv.Quote(n.text), mapping: "named inputs", list: "a list"}[n.shape]
		b.complain(v, n.at, fmt.Sprintf("%s cannot be %s", pathOr(v, "a scenario"), found), words, "")
	}
	return false
}

// place is where a value is pointed at: a single value itself, for everything
// that holds others its name.
func place(name position, n *node) position {
	if n.shape == scalar {
		return n.at
	}
	return name
}

// defaultNode is the default of a row as a node; single values are not YAML.
func (b *branch) defaultNode(at position) *node {
	if k := b.row.Kind; k != param.List && k != param.Map && k != param.Changes {
		return &node{shape: scalar, text: b.row.Default, at: at}
	}
	n, complaints := parseYAML(newSource("default", b.row.Default), b.row.Default)
	if n == nil || len(complaints) > 0 {
		return &node{shape: scalar, text: b.row.Default, at: at}
	}
	return n.movedTo(at)
}

// pathOr is the path of v, or other words for the root.
func pathOr(v *Value, other string) string {
	if v.path == "" {
		return other
	}
	return v.path
}
