package scenarios

import (
	"fmt"

	"moldturn/sim/param"
	"moldturn/sim/param/guess"
)

// binder walks nodes and branches together and collects every complaint.
type binder struct {
	tree       *Tree
	complaints Complaints
	refs       []*Value // looked up when all names are known
	changes    []*Value // of kind Changes
	standard   bool     // inside a default
	stands     bool     // faults get a stand-in, see further
	lost       bool     // a fault that no stand-in can help
}

// Bind checks a document against the tree and gives the value of its root, or
// every complaint there is. Changes inside the document ("alternatives") are
// tried one by one when the document itself is right; their row should limit
// their number.
func (t *Tree) Bind(doc *Document) (*Value, Complaints) {
	b := &binder{tree: t}
	root := b.root(doc)
	if len(b.complaints) == 0 {
		for _, v := range b.changes {
			b.complaints = append(b.complaints, t.try(doc, v)...)
		}
	}
	if len(b.complaints) > 0 {
		return nil, b.complaints.sorted()
	}
	return root, nil
}

// root binds the whole document; nothing but its version if that is unknown.
func (b *binder) root(doc *Document) *Value {
	root := &Value{at: doc.root.at}
	if c := checkVersion(doc); c != nil {
		b.complaints, b.lost = append(b.complaints, *c), true
		return root
	}
	b.bind(b.tree.root, doc.root, root)
	for _, v := range b.refs {
		b.resolve(root, v)
	}
	b.currencies(root)
	return root
}

// complain adds a complaint about v.
func (b *binder) complain(v *Value, at position, message, allowed, hint string) {
	c := at.complaint(message)
	c.Path, c.Found, c.Allowed, c.Hint = v.path, v.text, allowed, hint
	b.complaints = append(b.complaints, c)
}

// bind fills v, whose path and place are set, from the node n of its branch; a
// nil node was left out.
func (b *binder) bind(br *branch, n *node, v *Value) {
	v.branch, v.standard = br, b.standard
	if n == nil {
		b.leftOut(br, v)
		return
	}
	v.given = true
	if n.shape == refused || !b.fits(br, n, v) {
		b.standIn(v)
		return
	}
	switch br.row.Kind {
	case param.Group:
		b.group(br, n, v)
	case param.Map, param.List:
		b.items(br, n, v)
	case param.Changes:
		v.node = n
		b.changes = append(b.changes, v)
	default:
		v.text = n.text
		b.scalar(v)
	}
}

// leftOut gives v its default, or finds that it may be missing, or complains.
func (b *binder) leftOut(br *branch, v *Value) {
	switch {
	case br.row.Optional:
	case br.row.Default != "":
		was := b.standard
		b.standard = true
		b.bind(br, br.defaultNode(v.at), v)
		b.standard = was
	case br.row.Kind == param.Group:
		b.bind(br, &node{shape: mapping, at: v.at}, v)
	default:
		b.complain(v, v.at, v.path+" is missing", short(br.row.Choices), "it has no default: "+br.row.Doc)
		b.standIn(v)
	}
}

// group binds the named inputs of a group, in the order of the rows.
func (b *binder) group(br *branch, n *node, v *Value) {
	for _, k := range n.keys {
		if br.kid(k.name) == nil {
			b.unknownKey(br, k, v)
		}
	}
	for _, kid := range br.kids {
		child := &Value{path: joinPath(v.path, kid.word), at: v.at}
		if i := n.find(kid.word); i >= 0 {
			child.at = place(n.keys[i].at, n.items[i])
		}
		b.bind(kid, n.get(kid.word), child)
		v.kids = append(v.kids, child)
	}
}

// items binds the items of a Map or List, in the order of the file.
func (b *binder) items(br *branch, n *node, v *Value) {
	folded := make(map[string]key)
	for i, item := range n.items {
		child := &Value{path: fmt.Sprintf("%s[%d]", v.path, i+1), at: item.at}
		if n.shape == mapping {
			child.path, child.at, child.named = joinPath(v.path, n.keys[i].name), place(n.keys[i].at, item), n.keys[i].at
			b.distinct(folded, n.keys[i], child)
			v.names = append(v.names, n.keys[i].name)
		}
		b.bind(br.item, item, child)
		v.kids = append(v.kids, child)
	}
	low, high := br.row.Limits()
	if count := float64(len(n.items)); count < low || count > high {
		allowed := rangeText(param.Count, low, high, "")
		if low == high {
			allowed = fmt.Sprintf("just %.0f: %s", low, br.row.Doc)
		}
		b.complain(v, v.at, fmt.Sprintf("%s has %d items", v.path, len(n.items)), allowed, "")
	}
}

// distinct complains about a name that an earlier one differs from only by case
// or spaces: such names cannot be told apart in changes.
func (b *binder) distinct(earlier map[string]key, k key, v *Value) {
	fold := guess.Fold(k.name)
	if e, again := earlier[fold]; again {
		b.complain(v, k.at, fmt.Sprintf("the name %q is too close to %q in line %d", k.name, e.name, e.at.line), "",
			"names must differ by more than case, spaces and dashes")
	}
	earlier[fold] = k
}

// unknownKey complains about a name that a group does not have.
func (b *binder) unknownKey(br *branch, k key, v *Value) {
	where := ""
	if v.path != "" {
		where = " in " + v.path
	} else if near := br.kid(guess.Near(k.name, br.words())); near != nil && near.row.Kind.Container() {
		b.lost = true // most of what the plant is made of may stand there
	}
	b.complain(v, k.at, fmt.Sprintf("unknown input %q%s", k.name, where), short(br.words()), didYouMean(k.name, br.words()))
}
