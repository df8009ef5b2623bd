package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports/table"
	"moldturn/sim/param/guess"
)

// entry is one word that shows up in results, in scenario files or on screens.
// A word may have several meanings, each a term of its own.
type entry struct {
	Name  string   `json:"term"`
	Kind  string   `json:"kind"`
	Doc   string   `json:"meaning"`
	Notes []string `json:"notes,omitempty"` // unit, range, default, source: "unit: h"

	also []string // other ways to ask for it
}

// vocabulary is one source of terms.
type vocabulary struct {
	kind  string // of one term: "a figure of results"
	terms func() []entry
}

// vocabularies is the table of all sources, in the order in which meanings of
// one word are shown.
func vocabularies() []vocabulary {
	return []vocabulary{
		{"figure of results", figureTerms},
		{"input", inputTerms},
		{"choice of an input", choiceTerms},
		{"condition of a step", conditionTerms},
		{"meaning of a step", meaningTerms},
		{"extra hours of a step", extraTerms},
		{"reason to wait", reasonTerms},
		{"activity", activityTerms},
		{"column of a floor file", floorTerms},
		{"statistics", statisticsTerms},
		{"sweep or rule of enough", sweepTerms},
		{"mark of a default", markTerms},
		{"word of the trade", tradeTerms},
	}
}

func explainCommand() *command {
	asJSON, ledger := false, &ledgerFlags{common: common{Inputs: inputPaths}}
	return &command{
		name:     "explain",
		synopsis: "say what a figure, an input, a wait or any other word means",
		help:     explainHelp(),
		args: argSpec{names: "TERM", min: 1, max: -1, offer: func(_ *Context, done []string) offer {
			if len(done) > 0 {
				return offer{}
			}
			return offerWords(termNames(allTerms())...)
		}},
		flags: func(f *pflag.FlagSet) {
			f.BoolVar(&asJSON, "json", false, "print the meanings as JSON")
			ledger.add(f)
		},
		run: func(c *Context) error {
			if ledger.Scenario != "" {
				return explainLedger(c, ledger, strings.Join(c.Args, " "), asJSON)
			}
			return explain(c, strings.Join(c.Args, " "), asJSON)
		},
	}
}

func explainHelp() string {
	var b strings.Builder
	b.WriteString("TERM is a word as it stands in a result, on a screen or in a scenario file, with\nits unit, what it is a share of, and its source:\n")
	for _, v := range vocabularies() {
		fmt.Fprintf(&b, "  %-22s such as %s\n", v.kind, v.terms()[0].Name)
	}
	b.WriteString("A group of inputs, such as strip, lists what is in it.\n" +
		"With --ledger SCENARIO every amount of the plant's money is traced: TERM is\nthe beginning of the name of a line, such as labor.gel or warranty, or all.\nA line is what was counted times its price, with the inputs behind both and\ntheir marks.")
	return b.String()
}

func allTerms() []entry {
	var all []entry
	for _, v := range vocabularies() {
		for _, t := range v.terms() {
			t.Kind = v.kind
			all = append(all, t)
		}
	}
	return all
}

// termNames are the names of terms, each once.
func termNames(terms []entry) []string {
	var names []string
	for _, t := range terms {
		if !slices.Contains(names, t.Name) {
			names = append(names, t.Name)
		}
	}
	return names
}

func explain(c *Context, word string, asJSON bool) error {
	all := allTerms()
	found := meanings(all, word)
	members := group(all, word)
	switch {
	case len(found)+len(members) == 0:
		return unknownTerm(all, word)
	case asJSON:
		return writeJSON(c, append(found, members...))
	case len(found) == 0:
		return writeGroup(c.Stdout, members)
	}
	for i, t := range found {
		if i > 0 {
			fmt.Fprintln(c.Stdout)
		}
		if err := t.write(c.Stdout); err != nil {
			return err
		}
	}
	return nil
}

// meanings are the terms that a word asks for.
func meanings(all []entry, word string) []entry {
	var found []entry
	for _, t := range all {
		if t.answers(word) {
			found = append(found, t)
		}
	}
	return found
}

// group is the inputs below a word that is the beginning of their paths.
func group(all []entry, word string) []entry {
	var found []entry
	for _, t := range all {
		if strings.HasPrefix(guess.Fold(t.Name), guess.Fold(word)+".") {
			found = append(found, t)
		}
	}
	return found
}

// writeGroup lists inputs in short.
func writeGroup(w io.Writer, members []entry) error {
	for _, t := range members {
		if _, err := io.WriteString(w, table.Wrap(t.Name+": "+t.Doc, table.Style{})); err != nil {
			return err
		}
	}
	return nil
}

// answers tells whether a word asks for the term: by its name, however written,
// or as the path of an input with names of a scenario in it.
func (t *entry) answers(word string) bool {
	for _, name := range append([]string{t.Name}, t.also...) {
		if guess.Fold(name) == guess.Fold(word) {
			return true
		}
	}
	return strings.ContainsAny(t.Name, "*[") && fitsPath(t.Name, word)
}

// fitsPath tells whether a path such as models."Rush 23".orders is one of the
// row models.*.orders.
func fitsPath(row, path string) bool {
	want, got := strings.Split(row, "."), splitNames(path)
	if len(want) != len(got) {
		return false
	}
	for i, w := range want {
		word, isList := strings.CutSuffix(w, "[]")
		if isList {
			if cut := strings.IndexByte(got[i], '['); cut >= 0 {
				got[i] = got[i][:cut]
			} else {
				return false
			}
		}
		if word != "*" && word != got[i] || got[i] == "" {
			return false
		}
	}
	return true
}

// splitNames splits a path at its dots, those in quotes left alone.
func splitNames(path string) []string {
	quoted := false
	return strings.FieldsFunc(path, func(r rune) bool {
		if r == '"' {
			quoted = !quoted
		}
		return r == '.' && !quoted
	})
}

func (t *entry) write(w io.Writer) error {
	lines := append([]string{t.Doc}, t.Notes...)
	text := table.Wrap(fmt.Sprintf("%s (%s)", t.Name, t.Kind), table.Style{})
	for _, line := range lines {
		for wrapped := range strings.Lines(table.Wrap(line, table.Style{Width: table.DefaultWidth - 2})) {
			text += "  " + wrapped
		}
	}
	_, err := io.WriteString(w, text)
	return err
}

// unknownTerm complains of a word without a meaning, with the terms that have it
// in their name, or else the one that is spelled nearly like it.
func unknownTerm(all []entry, word string) error {
	hint := ""
	if within := holding(all, word); len(within) > 0 {
		hint = "terms with it: " + strings.Join(within, ", ")
	} else if near := guess.Near(word, termNames(all)); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	var kinds []string
	for _, v := range vocabularies() {
		kinds = append(kinds, v.kind)
	}
	return misuse(hint, "unknown term %q\n  allowed: %s", word, strings.Join(kinds, ", "))
}

// holding are the first few terms whose names hold a word of three letters or
// more.
func holding(all []entry, word string) []string {
	const most, shortest = 6, 3
	word = guess.Fold(word)
	if len(word) < shortest {
		return nil
	}
	var names []string
	for _, name := range termNames(all) {
		if strings.Contains(guess.Fold(name), word) {
			names = append(names, name)
		}
	}
	if len(names) > most {
		names = append(names[:most], "…")
	}
	return names
}
