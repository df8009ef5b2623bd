package scenarios

import (
	"slices"

	"moldturn/sim/param/unit"
)

// resolve checks that the name in a Ref exists in the list it refers to. A list
// without names is passed over when there are complaints: it may be one of them.
func (b *binder) resolve(root, v *Value) {
	words, _ := splitRowPath(v.branch.row.RefTo)
	target := b.tree.lookup(v.branch.row.RefTo)
	names := append(slices.Clone(v.branch.row.Choices), referred(root, words, v.walked())...)
	if slices.Contains(names, v.text) || len(names) == 0 && len(b.complaints) > 0 {
		return
	}
	noun := target.noun()
	p := unknown(noun, v.text, names)
	if len(names) == 0 {
		p = &unit.Problem{Message: p.Message, Hint: "there is no " + noun + " in this scenario"}
	}
	b.wrong(v, p)
	b.standInName(v, names)
}

// step is one word of a row's path with the name that stands for it in a file.
type step struct {
	word string
	name string
}

// walked is the way from the root to v.
func (v *Value) walked() []step {
	names := splitPath(v.path)
	var steps []step
	for br := v.branch; br.up != nil; br = br.up {
		steps = append(steps, step{word: br.word})
	}
	slices.Reverse(steps)
	for i := range steps {
		steps[i].name = names[i]
	}
	return steps
}

// referred lists the names that words lead to from v: the names of a Map, or
// texts. As long as the words are those of the way that leads to the Ref, items
// are the ones on that way; after that, all.
func referred(v *Value, words []string, way []step) []string {
	if len(words) == 0 {
		switch {
		case v.branch.item != nil:
			return v.names
		case v.given:
			return []string{v.text}
		}
		return nil
	}
	onWay := len(way) > 0 && way[0].word == words[0]
	var names []string
	for i, kid := range v.kids {
		switch {
		case words[0] != "*" && words[0] != "[]" && kid.branch.word != words[0]:
			continue
		case words[0] == "*" && onWay && v.names[i] != way[0].name, words[0] == "[]" && onWay && indexName(i) != way[0].name:
			continue
		}
		next := way[:0]
		if onWay {
			next = way[1:]
		}
		names = append(names, referred(kid, words[1:], next)...)
	}
	return names
}
