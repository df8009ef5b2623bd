package floor

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/sim"
	"moldturn/sim/param/guess"
)

// names finds what the cells of the files mean in a plan.
type names struct {
	plan    *sim.Plan
	aliases map[string]string // key of a written name → the name that is meant
	used    map[string]bool   // aliases that were
}

// meant is the name that a written one stands for: itself, unless the file of
// aliases says otherwise. Chains of renamings are followed to their end.
func (n *names) meant(s string) string {
	for range len(n.aliases) {
		other, ok := n.aliases[idKey(s)]
		if !ok || idKey(other) == idKey(s) {
			break
		}
		n.used[idKey(s)] = true
		s = other
	}
	return s
}

// find is the place of a written name in a list, -1 for none.
func find[T any](n *names, written string, list []T, name func(*T) string) int {
	k := key(n.meant(written))
	if k == "" {
		return -1
	}
	return slices.IndexFunc(list, func(x T) bool { return key(name(&x)) == k })
}

func namesIn[T any](list []T, name func(*T) string) []string {
	var out []string
	for i := range list {
		out = append(out, name(&list[i]))
	}
	return out
}

func modelName(m *sim.Model) string { return m.Name }
func colorName(c *sim.Color) string { return c.Name }
func craftName(c *sim.Craft) string { return c.Name }
func placeName(p *sim.Place) string { return p.Name }

// model finds a model; rest is what follows its name in the cell: "Rush 23
// hull" may carry a part.
func (n *names) model(written string) (index int, rest string) {
	if i := find(n, written, n.plan.Models, modelName); i >= 0 {
		return i, ""
	}
	k := key(n.meant(written))
	best := -1
	for i := range n.plan.Models {
		m := key(n.plan.Models[i].Name)
		if strings.HasPrefix(k, m) && (best < 0 || len(m) > len(key(n.plan.Models[best].Name))) {
			best = i
		}
	}
	if best >= 0 {
		rest = strings.TrimPrefix(k, key(n.plan.Models[best].Name))
		if _, ok := n.part(best, rest); ok {
			return best, rest
		}
	}
	return -1, ""
}

// part finds a part of a model: "hull", "hulls".
func (n *names) part(model int, written string) (int16, bool) {
	k := key(n.meant(written))
	for _, p := range n.plan.Models[model].Parts {
		name := key(n.plan.Parts[p].Name)
		if k == name || k == name+"s" {
			return p, true
		}
	}
	return sim.None, false
}

// partNames lists the parts of a model.
func (n *names) partNames(model int) []string {
	var out []string
	for _, p := range n.plan.Models[model].Parts {
		out = append(out, n.plan.Parts[p].Name)
	}
	return out
}

func (n *names) color(written string) int { return find(n, written, n.plan.Colors, colorName) }

// people are words for crafts that lists of people use.
var people = [][]string{
	{"lamination", "laminator", "laminators", "lam", "layup", "glass"},
	{"gel", "gelcoat", "gelcoater", "gelcoaters", "sprayer", "sprayers", "gunner", "gunners", "spray"},
	{"mold", "moldtech", "moldtechs", "molds", "moldshop", "mould"},
	{"pull", "puller", "pullers", "trim", "trimmers", "pullandtrim"},
	{"finish", "finisher", "finishers", "finishing", "gloss"},
	{"assembly", "assembler", "assemblers", "rigging", "riggers"},
}

func (n *names) craft(written string) int {
	if i := find(n, written, n.plan.Crafts, craftName); i >= 0 {
		return i
	}
	k := key(n.meant(written))
	for _, words := range people {
		if slices.Contains(words, k) {
			return find(n, words[0], n.plan.Crafts, craftName)
		}
	}
	return -1
}

// place finds a place and the unit of it that a number behind its name means,
// "booth 2"; sim.None is all of them. A number alone means a booth, if there is
// one kind of booth with so many.
func (n *names) place(written string) (index int, unit int16) {
	if i := find(n, written, n.plan.Places, placeName); i >= 0 {
		return i, sim.None
	}
	k := key(n.meant(written))
	digits := len(k)
	for digits > 0 && k[digits-1] >= '0' && k[digits-1] <= '9' {
		digits--
	}
	number := 0
	if _, err := fmt.Sscanf(k[digits:], "%d", &number); err != nil {
		return -1, sim.None
	}
	name := strings.TrimSuffix(k[:digits], "no")
	for i := range n.plan.Places {
		p := &n.plan.Places[i]
		named := key(p.Name) == name || key(p.Name) == k[:digits] || name == "" && p.Kind == sim.Booth
		if named && number >= 1 && number <= p.Count && number < 1<<15 {
			return i, int16(number - 1)
		}
	}
	return -1, sim.None
}

// placeNames lists the places, those with several units as "booth 1, booth 2".
func (n *names) placeNames() []string {
	var out []string
	for i := range n.plan.Places {
		p := &n.plan.Places[i]
		if p.Count < 2 {
			out = append(out, p.Name)
			continue
		}
		for u := range min(p.Count, 4) {
			out = append(out, fmt.Sprintf("%s %d", p.Name, u+1))
		}
	}
	return out
}

// hintFor guesses a name and says how to teach it.
func hintFor(written string, list []string) string {
	near := guess.Near(written, list)
	if near == "" {
		k := key(written)
		for _, name := range list {
			if len(key(name)) >= 3 && strings.Contains(k, key(name)) {
				near = name
				break
			}
		}
	}
	if near == "" {
		return "a line \"" + written + ",…\" in aliases.csv says what it means"
	}
	return fmt.Sprintf("did you mean %q? a line \"%s,%s\" in aliases.csv says so for all files", near, written, near)
}

// listed joins names if they are few.
func listed(names []string) string {
	if len(names) > 24 {
		return ""
	}
	return strings.Join(names, ", ")
}
