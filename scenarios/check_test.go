package scenarios

import (
	"math"
	"strings"
	"testing"

	"moldturn/sim/param"
)

func TestRowsAreChecked(t *testing.T) {
	good := func(r param.Row) param.Row {
		r.Doc, r.Mark = "d", param.Assumption
		return r
	}
	for want, rows := range map[string][]param.Row{
		"there are two rows":          {good(param.Row{Path: "a"}), good(param.Row{Path: "a"})},
		"is not a word":               {good(param.Row{Path: "a.B"})},
		"input version: there are":    {good(param.Row{Path: "version"})},
		"neither a map nor a text":    {good(param.Row{Path: "a", Kind: param.Ref, RefTo: "crafts"})},
		"RefTo goes with":             {good(param.Row{Path: "a", Kind: param.Ref})},
		`its default: a: "soon" is`:   {good(param.Row{Path: "a", Kind: param.Duration, Default: "soon"})},
		"its default: a: 24 has no":   {good(param.Row{Path: "a", Kind: param.Duration, Default: "24"})},
		"200 h is out of range":       {good(param.Row{Path: "a", Kind: param.Duration, High: 100, Default: "200 h"})},
		`unknown a "x"`:               {good(param.Row{Path: "a", Kind: param.Choice, Choices: []string{"y"}, Default: "x"})},
		"choices go with":             {good(param.Row{Path: "a", Kind: param.Choice})},
		"low bound is not under":      {good(param.Row{Path: "a", Kind: param.Number, Low: 1})},
		"a bound is not a number":     {good(param.Row{Path: "a", Kind: param.Number, Low: math.NaN()})},
		"cannot be optional":          {good(param.Row{Path: "a", Kind: param.Number, Default: "1", Optional: true})},
		"has no row for its items":    {good(param.Row{Path: "a", Kind: param.Map})},
		"has items \"*\" but is a g":  {good(param.Row{Path: "a.*", Kind: param.Number})},
		"has named inputs but is":     {good(param.Row{Path: "a", Kind: param.Number}), good(param.Row{Path: "a.b", Kind: param.Number})},
		"is a group without inputs":   {good(param.Row{Path: "a", Kind: param.Group})},
		"has no Doc":                  {{Path: "a", Mark: param.User}},
		"its mark \"X\" is unknown":   {{Path: "a", Doc: "d", Mark: "X"}},
		"and names no source":         {{Path: "a", Doc: "d", Mark: param.Published}},
		"defaults belong to its":      {good(param.Row{Path: "a", Kind: param.Group, Default: "x"}), good(param.Row{Path: "a.b"})},
		"its default: a[2]: \"x\" is": {good(param.Row{Path: "a", Kind: param.List, Default: "[1, x]"}), good(param.Row{Path: "a[]", Kind: param.Number})},
		"a cannot be the single":      {good(param.Row{Path: "a", Kind: param.List, Default: "[1"}), good(param.Row{Path: "a[]", Kind: param.Number})},
	} {
		if _, err := NewTree(rows); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("want %q, got %v", want, err)
		}
	}
}
