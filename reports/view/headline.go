package view

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// same is a difference in luster, in points of 100, that is not worth a
// sentence. Assumption of this report, no source.
const same = 0.1

// rival is an alternative held against another, as findings judge it.
type rival struct {
	name          string
	boats, luster stats.Difference
}

// Headline is the answer in one or two sentences.
func (s *Study) Headline() string {
	ships := metric("boats_per_week")
	base := s.Base()
	if len(s.Alternatives) == 1 {
		return plain(base.Name, alone(ships, base.summary(ships)), s.finish(base))
	}
	best := s.Best()
	if best == 0 {
		return none(base.Name, s.rivals(0))
	}
	near, open := s.Near(best)
	against := s.rivals(best)
	var matches []rival
	for _, i := range near {
		matches = append(matches, against[i])
	}
	return gain(base.Name, s.rivals(0)[best], matches, s.Names(open))
}

// finish is the luster of an alternative in words; empty without one.
func (s *Study) finish(a *Alternative) string {
	m := metric("luster_p10")
	x, ok := a.Summary(m)
	if !ok {
		return ""
	}
	return mean(m, x)
}

// plain is the headline of a plant without alternatives.
func plain(name, boats, luster string) string {
	text := fmt.Sprintf("%s ships %s boats a week when orders always wait", quoted(name), boats)
	if luster != "" {
		text += fmt.Sprintf("; 9 parts in 10 leave the mold with a luster of %s or more", luster)
	}
	return text + "."
}

// none is the headline where no alternative clearly ships more.
func none(base string, rivals []rival) string {
	text := fmt.Sprintf("No alternative clearly ships more boats than %s", quoted(base))
	fewer := 0
	for _, r := range rivals {
		if r.boats.Clear && r.boats.Mean < 0 {
			fewer++
		}
	}
	switch n := len(rivals) - 1; {
	case fewer == n && n > 1:
		return text + fmt.Sprintf("; all %d ship fewer.", n)
	case fewer == n:
		return text + "; it ships fewer."
	case fewer > 0:
		return text + fmt.Sprintf("; %d of %d ship fewer.", fewer, n)
	}
	return text + "."
}

// gain is the headline where an alternative clearly ships more. matches are the
// others that clearly ship more too and cannot be told apart from it, with their
// differences from it; open are those that can be told apart from neither.
func gain(base string, best rival, matches []rival, open []string) string {
	m := metric("boats_per_week")
	text := fmt.Sprintf("%s ships %s more boats a week than %s, and %s.", quoted(best.name),
		strings.TrimPrefix(change(m, best.boats, decimals(best.boats.Half, most(m))), "+"), quoted(base), lusterChange(best.luster))
	var names []string
	for _, r := range matches {
		digits := decimals(r.boats.Half, most(m))
		names = append(names, fmt.Sprintf("%s (%s%s)", quoted(r.name), signed(r.boats.Mean, digits), plusMinus(r.boats.Half, digits)))
	}
	if len(names) > 0 {
		text += fmt.Sprintf(" In boats, %s cannot be told apart from it.", and(names))
	}
	if len(open) > 0 {
		text += fmt.Sprintf(" %s %s too close to both to say.", and(open), isAre(len(open)))
	}
	return text
}

// lusterChange says what happens to the luster that 9 parts in 10 reach.
func lusterChange(d stats.Difference) string {
	m := metric("luster_p10")
	size := strings.TrimLeft(change(m, d, decimals(d.Half, most(m))), "+−")
	switch {
	case d.N == 0:
		return "luster was not measured"
	case d.Known() && d.Low > -same && d.High < same:
		return fmt.Sprintf("luster stays within %s point", fixed(same, 1))
	case d.Clear && d.Mean > 0:
		return "luster rises by " + size + " points"
	case d.Clear:
		return "luster falls by " + size + " points"
	}
	return "no change in luster is clear"
}

// Best is the alternative that ships most of those that clearly ship more than
// the base, unless another of them is clearly better: not clearly fewer boats
// and clearly more luster. 0, the base, where none ships more.
func (s *Study) Best() int {
	m := metric("boats_per_week")
	var more []int
	for i, r := range s.rivals(0) {
		if i != 0 && verdict(r.boats) > 0 {
			more = append(more, i)
		}
	}
	slices.SortStableFunc(more, func(a, b int) int {
		return cmp.Compare(s.Alternatives[b].summary(m).Mean, s.Alternatives[a].summary(m).Mean)
	})
	for _, i := range more {
		rivals := s.rivals(i)
		if !slices.ContainsFunc(more, func(k int) bool { return k != i && better(rivals[k]) }) {
			return i
		}
	}
	if len(more) > 0 {
		return more[0]
	}
	return 0
}

// rivals are all alternatives held against one of them.
func (s *Study) rivals(against int) []rival {
	out := make([]rival, len(s.Alternatives))
	for i := range s.Alternatives {
		out[i] = rival{s.Alternatives[i].Name, s.between(i, against, metric("boats_per_week")), s.between(i, against, metric("luster_p10"))}
	}
	return out
}

// between is a figure of alternative i less that of k; the zero Difference
// where one of them does not have it.
func (s *Study) between(i, k int, m *study.Metric) stats.Difference {
	d, _ := s.Alternatives[i].Together(&s.Alternatives[k].Runs, m, s.several())
	return d
}

// Near are the alternatives that clearly ship more than the base and of which it
// is not clear that they ship fewer than the best; open those that are clear on
// neither side. What the comparison shows as not clear is so never put beside
// the best.
func (s *Study) Near(best int) (near, open []int) {
	base := s.rivals(0)
	for i, r := range s.rivals(best) {
		switch {
		case i == 0 || i == best || r.boats.Clear:
		case verdict(base[i].boats) > 0:
			near = append(near, i)
		case verdict(base[i].boats) == 0:
			open = append(open, i)
		}
	}
	return near, open
}

// quoted is a name of the user inside a sentence.
func quoted(name string) string { return "“" + name + "”" }

// and joins names for a sentence.
func and(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}
