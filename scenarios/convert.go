package scenarios

import (
	"fmt"
	"strconv"
	"strings"

	"go.yaml.in/yaml/v4"
)

// converter turns nodes of the YAML parser into ours and complains about the
// parts of YAML that scenario files leave out.
type converter struct {
	source     *source
	complaints Complaints
}

// complain adds a complaint and its hint.
func (c *converter) complain(at position, message, hint string) {
	one := at.complaint(message)
	one.Hint = hint
	c.complaints = append(c.complaints, one)
}

// at is the position of a node.
func (c *converter) at(n *yaml.Node) position { return c.source.at(n.Line, n.Column) }

// node converts n and everything in it.
func (c *converter) node(n *yaml.Node) *node {
	at := c.at(n)
	if !c.plain(n, at) {
		return &node{shape: refused, at: at}
	}
	switch n.Kind {
	case yaml.MappingNode:
		return c.mapping(n, at)
	case yaml.SequenceNode:
		l := &node{shape: list, at: at}
		for _, item := range n.Content {
			l.items = append(l.items, c.node(item))
		}
		return l
	}
	if n.Tag == "!!null" {
		return &node{shape: empty, at: at}
	}
	return &node{shape: scalar, text: n.Value, at: at}
}

// plain refuses aliases, anchors and tags.
func (c *converter) plain(n *yaml.Node, at position) bool {
	switch {
	case n.Kind == yaml.AliasNode:
		c.complain(at, "alias *"+n.Value+": aliases are not read", "write the value out, or change it in an alternative")
	case n.Anchor != "":
		c.complain(at, "anchor &"+n.Anchor+": anchors are not read", "remove it; write repeated values out")
	case n.Style&yaml.TaggedStyle != 0:
		c.complain(at, "tag "+n.Tag+": tags are not read", "remove it; kinds of values are known from their names")
	default:
		return true
	}
	return false
}

// mapping converts the pairs of n, leaving out keys that cannot be names and
// repetitions.
func (c *converter) mapping(n *yaml.Node, at position) *node {
	m := &node{shape: mapping, at: at}
	seen := make(map[string]int)
	for i := 0; i+1 < len(n.Content); i += 2 {
		k := key{name: n.Content[i].Value, at: c.at(n.Content[i])}
		if !c.name(n.Content[i], k) {
			continue
		}
		if line, again := seen[k.name]; again {
			c.complain(k.at, strconv.Quote(k.name)+" is given twice", fmt.Sprintf("the first is in line %d", line))
			continue
		}
		seen[k.name] = k.at.line
		m.keys, m.items = append(m.keys, k), append(m.items, c.node(n.Content[i+1]))
	}
	return m
}

// name reports whether a key can be a name, and complains if not.
func (c *converter) name(n *yaml.Node, k key) bool {
	switch {
	case n.Tag == "!!merge":
		c.complain(k.at, "merge key <<: merging is not read", "write the values out")
	case n.Kind != yaml.ScalarNode && n.Kind != yaml.AliasNode:
		c.complain(k.at, "a list or map cannot be a name", "")
	case !c.plain(n, k.at):
	case n.Tag == "!!null" || k.name == "":
		c.complain(k.at, "a name is missing before the colon", "")
	case hidden(k.name):
		c.complain(k.at, "the name "+strconv.Quote(k.name)+" has control characters", "")
	case strings.TrimSpace(k.name) != k.name:
		c.complain(k.at, "the name "+strconv.Quote(k.name)+" begins or ends with a space", "")
	default:
		return true
	}
	return false
}
