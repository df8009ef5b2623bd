package view

import (
	"strings"
	"testing"

	"moldturn/sim/study"
)

// What a size costs more is in the scenario's currency, in the sentence and in
// the head of the table; dollars where none is said.
func TestSizesAreInTheCurrency(t *testing.T) {
	for currency, want := range map[string][2]string{"": {"$42k a year more", "$k a year"}, "€": {"€42k a year more", "€k a year"}, "EUR": {"EUR 42k a year more", "EUR k a year"}} {
		s := &Sized{Found: &study.Sized{Price: 142_000}, Before: 100_000, Money: Money{Currency: currency}}
		if got := s.costs(); !strings.HasPrefix(got, want[0]) {
			t.Errorf("%q: %q, want %q", currency, got, want[0])
		}
		if got := s.Tables()[0].Columns[4].Head; got != want[1] {
			t.Errorf("%q: column %q, want %q", currency, got, want[1])
		}
	}
}
