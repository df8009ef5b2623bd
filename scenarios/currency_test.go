package scenarios

import (
	"strings"
	"testing"
)

// priced is a scenario with a margin and a wage, written as given.
func priced(currency, margin, wage string) []byte {
	return []byte(`version: 1
name: Plant
currency: ` + currency + `
crafts: {gel: {people: {day: 2}}, lamination: {people: {day: 4}}, mold: {people: {day: 2}}, pull: {people: {day: 2}}, finish: {people: {day: 2}}, assembly: {people: {day: 4}}}
models:
  Skiff:
    margin: ` + margin + `
    parts:
      hull: {area: 15 m2, molds: 1}
money:
  wage: ` + wage + `
`)
}

// Amounts of one scenario are in one currency: its own, or all in dollars.
func TestMixedCurrencies(t *testing.T) {
	for _, c := range []struct {
		currency, margin, wage string
		want                   []string // places and words of the complaints
	}{
		{"€", "€6k", "€19", nil},
		{"€", "$6k", "$19", nil},
		{"EUR", "EUR 6k", "EUR 19", nil},
		{"$", "$6k", "$19", nil},
		{"€", "€6k", "0", nil},
		{"€", "€6k", "$19", []string{"p.yaml:11:9", "in dollars, and other amounts are in €"}},
		{"€", "$6k", "€19", []string{"p.yaml:7:13", "in dollars"}},
		{"€", "€6k", "£19", []string{"p.yaml:11:9", "is in £, and the currency of the scenario is €"}},
		{"$", "€6k", "$19", []string{"p.yaml:7:13", "is in €, and the currency of the scenario is $", "currency: €"}},
		{"$", "€6k", "€19", []string{"p.yaml:7:13", "p.yaml:11:9"}},
	} {
		_, complaints := Load("p.yaml", priced(c.currency, c.margin, c.wage), Options{Years: -1})
		text := complaints.Error()
		if (len(complaints) == 0) != (c.want == nil) {
			t.Errorf("%s, %s, %s: %s", c.currency, c.margin, c.wage, text)
		}
		for _, want := range c.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s, %s, %s: no %q in:\n%s", c.currency, c.margin, c.wage, want, text)
			}
		}
	}
}

// A change is held to the currency of the file that it changes, and so are
// alternatives.
func TestMixedCurrencyInAChange(t *testing.T) {
	set, complaints := ParseChange("--set", "money.wage=$20")
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	data := priced("€", "€6k", "€19")
	if _, c := Load("p.yaml", data, Options{Years: -1, Sets: []Change{set}}); len(c) != 1 || !strings.Contains(c.Error(), "in dollars") {
		t.Errorf("--set: %v", c)
	}
	data = append(data, "alternatives:\n  dear: {money.wage: $25}\n"...)
	if _, c := Load("p.yaml", data, Options{Years: -1}); len(c) != 1 || c[0].Line != 13 {
		t.Errorf("alternative: %v", c)
	}
}
