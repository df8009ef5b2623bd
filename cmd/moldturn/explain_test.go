package main

import (
	"strings"
	"testing"

	"moldturn/scenarios"
)

// Every term is found by its name, has a meaning, and fits a terminal.
func TestEveryTermIsExplained(t *testing.T) {
	all := allTerms()
	kinds := map[string]int{}
	for _, x := range all {
		kinds[x.Kind]++
		if strings.TrimSpace(x.Name) == "" || strings.TrimSpace(x.Doc) == "" {
			t.Errorf("%s %q means %q", x.Kind, x.Name, x.Doc)
		}
		found := false
		for _, y := range meanings(all, x.Name) {
			found = found || y.Kind == x.Kind && y.Doc == x.Doc
		}
		if !found {
			t.Errorf("%s %q is not found by its name", x.Kind, x.Name)
		}
	}
	for _, v := range vocabularies() {
		if kinds[v.kind] == 0 {
			t.Errorf("there is no %s", v.kind)
		}
	}
	var shown strings.Builder
	for _, x := range all {
		if err := x.write(&shown); err != nil {
			t.Fatal(err)
		}
	}
	fits(t, "explain", shown.String())
}

// Paths with names of a scenario are those of its inputs, and no others.
func TestPathsOfScenariosAreInputs(t *testing.T) {
	s, err := loadScenario("fenwater", &common{})
	if err != nil {
		t.Fatal(err)
	}
	all := allTerms()
	for _, in := range s.Base.Value.Assumptions(0) {
		if in.Path != "version" && len(meanings(all, in.Path)) == 0 {
			t.Errorf("%s is not explained", in.Path)
		}
	}
	for _, path := range []string{"models.Sedge", "models..orders", "shifts.day.breaks.from", "calendar.holidays"} {
		for _, x := range meanings(all, path) {
			if strings.ContainsAny(x.Name, "*[") {
				t.Errorf("%s is taken for %s", path, x.Name)
			}
		}
	}
}

// What the table of distributions says of each form is there for all of them.
func TestEveryFormOfALawIsExplained(t *testing.T) {
	for _, row := range listForms().rows.([]formRow) {
		if row.Doc == "" {
			t.Errorf("%s means nothing", row.Form)
		}
	}
}

func TestCheckFitsTheTerminal(t *testing.T) {
	for _, name := range scenarios.Bundled() {
		fitsTerminal(t, "check", name)
	}
}

func TestHelpOfNewCommandsFits(t *testing.T) {
	for _, name := range []string{"check", "new", "list", "explain", "schema"} {
		fitsTerminal(t, "help", name)
	}
}

// What "see also" names can be asked for.
func TestSeeAlsoLeadsSomewhere(t *testing.T) {
	all, seen := allTerms(), 0
	for _, x := range tradeTerms() {
		for _, note := range x.Notes {
			words, is := strings.CutPrefix(note, "see also: ")
			if !is {
				continue
			}
			for word := range strings.SplitSeq(words, ", ") {
				seen++
				if len(meanings(all, word))+len(group(all, word)) == 0 {
					t.Errorf("%s: nothing explains %q", x.Name, word)
				}
			}
		}
	}
	if seen < 20 {
		t.Errorf("only %d words are named", seen)
	}
}

func TestWordWithinTermsIsAHint(t *testing.T) {
	for word, want := range map[string]string{
		"aircraft": "unknown term", "transf": "money.gel_coat.transfer", "lustr": `did you mean "luster"?`, "loss": "terms with it",
	} {
		err := unknownTerm(allTerms(), word).(*problem)
		if !strings.Contains(err.text+err.hint, want) {
			t.Errorf("%s: %s, hint %s", word, err.text, err.hint)
		}
	}
}
