package scenarios

import (
	"moldturn/sim/param"
	"moldturn/sim/param/unit"

	"go.yaml.in/yaml/v4"
)

// YAML writes a bound scenario out in full, every default included, in the
// units of sys. Reading it again gives a Value with the same Hash. Behind each
// default stands its mark.
func (v *Value) YAML(sys unit.System) (string, error) {
	out, err := yaml.Dump(v.yaml(sys))
	return string(out), err
}

// yaml is v as a node of the YAML writer, which knows when to quote.
func (v *Value) yaml(sys unit.System) *yaml.Node {
	switch k := v.branch.row.Kind; {
	case k == param.List:
		n := &yaml.Node{Kind: yaml.SequenceNode, Tag: "!!seq"}
		for _, kid := range v.kids {
			n.Content = append(n.Content, kid.yaml(sys))
		}
		return n
	case k.Container():
		return v.yamlMap(sys)
	case k == param.Changes:
		return v.node.yaml()
	}
	n := yamlValue(v.branch.row.Kind, v.Format(sys))
	if v.standard {
		n.LineComment = "default, " + string(v.branch.row.Mark)
	}
	return n
}

// yamlMap is a group or map with everything in it that was given.
func (v *Value) yamlMap(sys unit.System) *yaml.Node {
	n := &yaml.Node{Kind: yaml.MappingNode, Tag: "!!map"}
	for i, kid := range v.kids {
		name := kid.branch.word
		if v.names != nil {
			name = v.names[i]
		}
		if kid.given {
			n.Content = append(n.Content, yamlText(name), kid.yaml(sys))
		}
	}
	return n
}

// yaml is a node of ours as it stands.
func (n *node) yaml() *yaml.Node {
	switch n.shape {
	case scalar:
		return yamlText(n.text)
	case empty, refused:
		return &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!null", Value: "null"}
	}
	out := &yaml.Node{Kind: yaml.SequenceNode, Tag: "!!seq"}
	if n.shape == mapping {
		out.Kind, out.Tag = yaml.MappingNode, "!!map"
	}
	for i, item := range n.items {
		if n.shape == mapping {
			out.Content = append(out.Content, yamlText(n.keys[i].name))
		}
		out.Content = append(out.Content, item.yaml())
	}
	return out
}

// yamlText is a text, quoted where YAML would read something else.
func yamlText(s string) *yaml.Node {
	return &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: s}
}

// yamlValue is a text that Format wrote, without quotes around numbers, dates
// and words of our own.
func yamlValue(k param.Kind, s string) *yaml.Node {
	if isNumber(k) || k == param.Choice || k == param.NumberDist {
		return &yaml.Node{Kind: yaml.ScalarNode, Value: s}
	}
	return yamlText(s)
}
