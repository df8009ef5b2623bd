package sim

import "testing"

// Every word of a route has a meaning, and the lists of names and of meanings
// agree.
func TestTerms(t *testing.T) {
	for what, list := range map[string]struct {
		names []string
		terms []Term
	}{
		"condition": {CondNames(), CondTerms()},
		"meaning":   {VerbNames(), VerbTerms()},
		"extra":     {ExtraNames(), ExtraTerms()},
	} {
		if len(list.names) != len(list.terms) {
			t.Errorf("%s: %d names, %d meanings", what, len(list.names), len(list.terms))
			continue
		}
		for i, term := range list.terms {
			if term.Name != list.names[i] || term.Doc == "" {
				t.Errorf("%s %q means %q", what, list.names[i], term.Doc)
			}
		}
	}
}
