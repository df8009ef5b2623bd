// Package assume ranks the inputs of a report by what each is worth checking,
// and shows them. It knows no effects: a comparison varies alternatives, not
// inputs. The order follows what can be seen without that: whether a value is a
// guess, whether the alternatives turn on it, and whether it is about what
// limits the plant.
package assume

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"moldturn/reports/view"
)

// Check is what an input is worth checking.
type Check int

// From the most to the least.
const (
	First  Check = iota // a guess that a difference between the alternatives turns on
	Limit               // a guess about what limits the plant
	Count               // the plant's own number about that: look again
	Some                // a guess that the scenario sets away from the default
	Open                // a guess at its default
	Little              // a source, common practice, or the plant's own
)

// Item is an input with its rank and the reason.
type Item struct {
	view.Input
	Check Check
	Why   string
}

// turns are the inputs that a difference between alternatives rests on, by a
// part of what they change. Judgment of this report, no source.
var turns = []struct{ change, inputs, why string }{
	{"strip", "finish.build_up", "how luster falls by turns decides between strip intervals"},
	{"strip", "finish.haze", "how luster falls by turns decides between strip intervals"},
	{"strip", "strip.", "what a strip leaves decides between strip intervals"},
	{"hold", "cure.", "how cure goes on decides what a shorter hold costs"},
	{"hold", "finish.postcure", "cure after the pull decides what a shorter hold costs"},
	{".molds", "life.", "how long molds last decides what another one brings"},
	{"crafts", "crafts.", "hours and absence decide what people bring"},
	{"climate", "climate.", "the air of the plant decides what heating and cooling bring"},
}

// Rank gives every input with a value, those most worth checking first, in the
// order of the scenario otherwise. best is the alternative that is recommended.
func Rank(s *view.Study, best int) []Item {
	limits := Limiting(s, best)
	var out []Item
	for _, in := range s.Inputs {
		if in.Value != "" {
			check, why := judge(s, in, limits)
			out = append(out, Item{in, check, why})
		}
	}
	slices.SortStableFunc(out, func(a, b Item) int { return int(a.Check) - int(b.Check) })
	return out
}

// Scarce is a craft or place that limits the plant, and in which month.
type Scarce struct{ Name, Month string }

// Limiting is what work waits for longest in January and July, in the base and
// in the best alternative; each once.
func Limiting(s *view.Study, best int) []Scarce {
	var out []Scarce
	for _, i := range []int{0, best} {
		a := &s.Alternatives[i]
		for _, month := range []time.Month{time.January, time.July} {
			ranked := a.Limits(int(month) - 1)
			if len(ranked) == 0 || ranked[0].Wait < view.WaitWorthNaming {
				continue
			}
			l := Scarce{view.PoolName(a.Plan, ranked[0].Pool), month.String()}
			if !slices.ContainsFunc(out, func(x Scarce) bool { return x.Name == l.Name }) {
				out = append(out, l)
			}
		}
	}
	return out
}

// guess tells whether nothing but judgment stands behind a value.
func guess(mark string) bool { return mark == "A" || mark == "M" }

func judge(s *view.Study, in view.Input, limits []Scarce) (Check, string) {
	at := slices.IndexFunc(limits, func(l Scarce) bool { return about(in.Path, l.Name) })
	if guess(in.Mark) {
		if why := turned(in.Path, s.Alternatives); why != "" {
			return First, why
		}
		if at >= 0 {
			return Limit, fmt.Sprintf("about %s, which limits %s", view.Quoted(limits[at].Name), limits[at].Month)
		}
		if in.Changed || in.Place != "" {
			return Some, "a guess that this plant's file sets"
		}
		return Open, "a guess at its default; not varied here"
	}
	if at >= 0 && own(in.Mark) {
		return Count, fmt.Sprintf("the plant's own; look again, for %s limits %s", view.Quoted(limits[at].Name), limits[at].Month)
	}
	if own(in.Mark) {
		return Little, "the plant's own"
	}
	return Little, "not a guess; not varied here"
}

func own(mark string) bool { return mark != "S" && mark != "CP" && !guess(mark) }

// about tells whether an input is about a craft or place of that name.
func about(path, name string) bool {
	for _, root := range []string{"crafts.", "places."} {
		if rest, ok := strings.CutPrefix(path, root); ok {
			return strings.HasPrefix(rest, name+".") || strings.HasPrefix(rest, `"`+name+`".`)
		}
	}
	return false
}

// Turns says why a difference of an alternative from the base rests on a guess;
// empty where it does not.
func (x Item) Turns(a *view.Alternative) string { return turned(x.Path, []view.Alternative{*a}) }

func turned(path string, all []view.Alternative) string {
	for _, t := range turns {
		if strings.HasPrefix(path, t.inputs) && changes(all, t.change) {
			return t.why
		}
	}
	return ""
}

// changes tells whether an alternative changes an input of that root, or, for a
// change that begins with a dot, one that ends so.
func changes(all []view.Alternative, what string) bool {
	for i := range all {
		for _, c := range all[i].Changes {
			path, _, _ := strings.Cut(c, " = ")
			if what[0] == '.' && strings.HasSuffix(path, what) || what[0] != '.' && strings.HasPrefix(path, what+".") {
				return true
			}
		}
	}
	return false
}
