package main

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/param"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

func figureTerms() []entry {
	var out []entry
	for _, m := range study.Metrics() {
		row := metricRowOf(m)
		t := entry{Name: row.Name, Doc: row.Doc, Notes: []string{"unit: " + row.Unit}, also: []string{row.Label}}
		if row.Better != "" {
			t.Notes = append(t.Notes, row.Better+" is better")
		}
		t.Notes = append(t.Notes, "source: counted in the facts of each run after the warm-up, then averaged over replications")
		out = append(out, t)
	}
	return out
}

func inputTerms() []entry {
	tree, err := scenarios.Inputs()
	if err != nil {
		return nil
	}
	var out []entry
	for _, in := range tree.Inputs() {
		t := entry{Name: in.Path, Doc: in.Doc, Notes: []string{"written as: " + in.Kind}}
		for _, note := range [][2]string{{"allowed", in.Range}, {"default", in.Default}, {"source", sourceOf(in)}} {
			if note[1] != "" {
				t.Notes = append(t.Notes, note[0]+": "+note[1])
			}
		}
		out = append(out, t)
	}
	return out
}

// sourceOf is where a default comes from, with its mark in words.
func sourceOf(in scenarios.Input) string {
	for _, m := range marks() {
		if m.mark == in.Mark && m.mark != param.Published && m.mark != param.User {
			return fmt.Sprintf("%s [%s, %s]", in.Source, in.Mark, m.doc)
		}
	}
	return fmt.Sprintf("%s [%s]", in.Source, in.Mark)
}

// choiceTerms are the words of inputs that take one of a few, policies above
// all. Words of steps with a vocabulary of their own are left to it.
func choiceTerms() []entry {
	own := slices.Concat(sim.CondNames(), sim.VerbNames(), sim.ExtraNames(), activityNames())
	var out []entry
	for _, row := range scenarios.Rows() {
		if row.Kind != param.Choice {
			continue
		}
		var beside []string
		group := row.Path[:strings.LastIndex(row.Path, ".")+1]
		for _, other := range scenarios.Rows() {
			if group != "" && strings.HasPrefix(other.Path, group) && other.Path != row.Path && !strings.Contains(group, "*") {
				beside = append(beside, other.Path)
			}
		}
		for _, word := range row.Choices {
			if slices.Contains(own, word) {
				continue
			}
			t := entry{Name: word, Doc: fmt.Sprintf("a value of %s: %s", row.Path, row.Doc), Notes: []string{"other values: " + strings.Join(row.Choices, ", ")}}
			if len(beside) > 0 {
				t.Notes = append(t.Notes, "see also: "+strings.Join(beside, ", "))
			}
			out = append(out, t)
		}
	}
	return out
}

func conditionTerms() []entry { return termsOf(sim.CondTerms(), "used as when: or while: of a step") }

func meaningTerms() []entry { return termsOf(sim.VerbTerms(), "used as means: of a step") }

func extraTerms() []entry { return termsOf(sim.ExtraTerms(), "used as extra: of a step") }

func termsOf(list []sim.Term, note string) []entry {
	var out []entry
	for _, t := range list {
		out = append(out, entry{Name: t.Name, Doc: t.Doc, Notes: []string{note}})
	}
	return out
}

func reasonTerms() []entry {
	var out []entry
	for r := record.NoReason + 1; r < record.Reasons; r++ {
		out = append(out, entry{Name: r.String(), Doc: r.Doc(), Notes: []string{
			"counted in hours; reasons are judged in this order: the first need that is not met is the reason, and all waits add up to the whole"}})
	}
	return out
}

func activityNames() []string {
	var names []string
	for d := record.Idle + 1; d < record.Doings; d++ {
		names = append(names, d.String())
	}
	return names
}

func activityTerms() []entry {
	var out []entry
	for d := record.Idle + 1; d < record.Doings; d++ {
		out = append(out, entry{Name: d.String(), Doc: d.Doc(), Notes: []string{
			"used as does: of a step; hours of a mold by activity and reason add up to 168 a week"}})
	}
	return out
}

func markTerms() []entry {
	var out []entry
	for _, m := range marks() {
		out = append(out, entry{Name: "[" + string(m.mark) + "]", Doc: m.doc, also: []string{string(m.mark)}})
	}
	return out
}
