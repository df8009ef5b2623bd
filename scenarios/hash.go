package scenarios

import (
	"crypto/sha256"
	"encoding/hex"
	"io"
	"strconv"

	"moldturn/sim/param"
)

// Hash is the fingerprint of everything bound below v, in hexadecimal: SHA-256
// of one line per value with its path and its value in base units. Two files
// have the same hash exactly when they say the same: units, spacing, comments,
// the order of inputs in a group, and defaults written out do not matter; names
// and the order of named items and lists do.
func (v *Value) Hash() string {
	h := sha256.New()
	v.canonical(h)
	return hex.EncodeToString(h.Sum(nil))
}

// canonical writes the lines of the hash.
func (v *Value) canonical(w io.Writer) {
	io.WriteString(w, v.path+" ")
	switch k := v.branch.row.Kind; {
	case !v.given:
		io.WriteString(w, "-\n")
	case k.Container():
		io.WriteString(w, strconv.Itoa(len(v.kids))+"\n")
		for _, kid := range v.kids {
			kid.canonical(w)
		}
	case k == param.Changes:
		v.node.canonical(w)
		io.WriteString(w, "\n")
	case v.dist != nil:
		io.WriteString(w, v.dist.String()+"\n")
	case isNumber(k):
		io.WriteString(w, strconv.FormatFloat(v.number, 'g', -1, 64)+"\n")
	default:
		io.WriteString(w, strconv.Quote(v.text)+"\n")
	}
}

// canonical writes a node as it stands, without places.
func (n *node) canonical(w io.Writer) {
	io.WriteString(w, strconv.Itoa(int(n.shape))+strconv.Quote(n.text)+"(")
	for i, item := range n.items {
		if n.shape == mapping {
			io.WriteString(w, strconv.Quote(n.keys[i].name)+":")
		}
		item.canonical(w)
	}
	io.WriteString(w, ")")
}
