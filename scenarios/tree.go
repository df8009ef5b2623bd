package scenarios

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"moldturn/sim/param"
	"moldturn/sim/param/guess"
)

// Tree is the set of inputs a scenario may give: one branch per word of the
// paths of all rows. It remembers the distributions it has read, whose tables
// take time to make, so one Tree serves one goroutine at a time.
type Tree struct {
	root *branch
	laws laws
}

// branch is one input, or a group of inputs that has no row of its own.
type branch struct {
	word     string // as in the path; "*" for a free name, "[]" for an item of a list
	path     string // whole, "models.*.area"; "" for the root
	row      param.Row
	declared bool      // row was given, not implied
	up       *branch   // nil for the root
	kids     []*branch // fixed words, in the order of the rows
	item     *branch   // of a Map or List
}

// NewTree puts rows together and checks them; the order of rows is kept
// wherever inputs are shown. The input "version" is added, a row for it is
// refused. The error names every row that is wrong (see check.go).
func NewTree(rows []param.Row) (*Tree, error) {
	t := &Tree{laws: laws{}, root: &branch{row: param.Row{Kind: param.Group}}}
	var faults []error
	for _, row := range append([]param.Row{versionRow}, rows...) {
		if err := t.add(row); err != nil {
			faults = append(faults, fmt.Errorf("input %s: %w", row.Path, err))
		}
	}
	return t, errors.Join(append(faults, t.check()...)...)
}

// add puts one row into the tree.
func (t *Tree) add(row param.Row) error {
	words, err := splitRowPath(row.Path)
	if err != nil {
		return err
	}
	b := t.root
	for _, w := range words {
		b = b.grow(w)
	}
	if b.declared {
		return errors.New("there are two rows for it")
	}
	b.row, b.declared = row, true
	return nil
}

// grow finds or makes the branch for one word below b.
func (b *branch) grow(word string) *branch {
	if word == "*" || word == "[]" {
		if b.item == nil {
			b.item = b.sprout(word)
		}
		return b.item
	}
	kid := b.kid(word)
	if kid == nil {
		kid = b.sprout(word)
		b.kids = append(b.kids, kid)
	}
	return kid
}

// sprout makes a branch, taken for a group until its row comes.
func (b *branch) sprout(word string) *branch {
	path := b.path + "." + word
	if b.path == "" || word == "[]" {
		path = b.path + word
	}
	return &branch{word: word, path: path, up: b, row: param.Row{Path: path, Kind: param.Group}}
}

// kid is the branch for a fixed word, or nil.
func (b *branch) kid(word string) *branch {
	for _, k := range b.kids {
		if k.word == word {
			return k
		}
	}
	return nil
}

// words lists the fixed words below b.
func (b *branch) words() []string {
	var list []string
	for _, k := range b.kids {
		list = append(list, k.word)
	}
	return list
}

// walk calls visit for b and everything below it, in the order of the rows.
func (b *branch) walk(visit func(*branch)) {
	visit(b)
	for _, k := range b.kids {
		k.walk(visit)
	}
	if b.item != nil {
		b.item.walk(visit)
	}
}

// splitRowPath takes a row's path apart: "a.*.b[].c" gives a, *, b, [], c.
func splitRowPath(path string) ([]string, error) {
	var words []string
	for part := range strings.SplitSeq(path, ".") {
		word, isList := strings.CutSuffix(part, "[]")
		if word != "*" && !isWord(word) {
			return nil, fmt.Errorf("%q is not a word of lower-case letters, digits and _", part)
		}
		words = append(words, word)
		if isList {
			words = append(words, "[]")
		}
	}
	return words, nil
}

// isWord reports whether s may stand in a row's path.
func isWord(s string) bool {
	letters := strings.Trim(s, "abcdefghijklmnopqrstuvwxyz0123456789_")
	return s != "" && letters == "" && s[0] >= 'a' && s[0] <= 'z'
}

// lookup finds the branch of a row's path, or nil.
func (t *Tree) lookup(path string) *branch {
	words, err := splitRowPath(path)
	b := t.root
	for _, w := range words {
		switch {
		case b == nil:
			return nil
		case w == "*" || w == "[]":
			if b = b.item; b != nil && b.word != w {
				return nil
			}
		default:
			b = b.kid(w)
		}
	}
	if err != nil {
		return nil
	}
	return b
}

// noun is what one item below b is called: "models" gives "model". Used in
// complaints, where a wrong guess would be awkward but not false.
func (b *branch) noun() string {
	w := strings.ReplaceAll(b.word, "_", " ")
	if b.word == "*" || b.word == "[]" {
		return b.up.noun()
	}
	for _, end := range []struct{ plural, singular string }{
		{"ies", "y"}, {"ches", "ch"}, {"shes", "sh"}, {"xes", "x"}, {"sses", "ss"}, {"s", ""},
	} {
		if stem, ok := strings.CutSuffix(w, end.plural); ok {
			return stem + end.singular
		}
	}
	return w
}

// choose finds the one name that text means: the same text, or else the only
// one that differs by case, spaces, "-" and "_" alone. -1 if there is none.
func choose(text string, names []string) int {
	if i := slices.Index(names, text); i >= 0 {
		return i
	}
	found := -1
	for i, name := range names {
		if guess.Fold(name) == guess.Fold(text) {
			if found >= 0 {
				return -1
			}
			found = i
		}
	}
	return found
}
