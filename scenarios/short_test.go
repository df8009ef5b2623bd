package scenarios

import (
	"strings"
	"testing"
)

func TestShortNames(t *testing.T) {
	data, _ := BundledFile("fenwater")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	for _, row := range []struct{ text, want string }{
		{"hold=16h", "hold.clock = 16h"},
		{"strip=4", "strip.policy = every; strip.every = 4"},
		{"molds.Rush 23=3", `models."Rush 23".parts.hull.molds = 3; models."Rush 23".parts.deck.molds = 3`},
		{`molds."Rush 23"=3`, `models."Rush 23".parts.hull.molds = 3; models."Rush 23".parts.deck.molds = 3`},
		{"booths=3", "places.booth.count = 3"},
		{"booth=3", "places.booth.count = 3"},
		{"crew.gel=5", "crafts.gel.people.day = 5"},
		{"crew.lamination.evening=10", "crafts.lamination.people.evening = 10"},
		{"hold.clock=20 h", "hold.clock = 20 h"},
	} {
		changes, complaints := s.Changes("--over", row.text)
		if len(complaints) > 0 {
			t.Errorf("%s: %v", row.text, complaints)
			continue
		}
		var got []string
		for _, c := range changes {
			got = append(got, c.String())
		}
		if text := strings.Join(got, "; "); text != row.want {
			t.Errorf("%s is %s, want %s", row.text, text, row.want)
		}
		if _, complaints := s.With(row.text, changes...); len(complaints) > 0 {
			t.Errorf("%s: %v", row.text, complaints)
		}
	}
	changes, complaints := s.Changes("--over", "crew.lamination=5") // on two shifts: which?
	if len(complaints) == 0 {
		if _, complaints = s.With("x", changes...); len(complaints) == 0 {
			t.Error("crew.lamination is taken, though it is on two shifts")
		}
	}
	names, docs := s.Shorts()
	for i, name := range names {
		if docs[i] == "" || s.behind(name) == nil {
			t.Errorf("%s stands for nothing", name)
		}
	}
}
