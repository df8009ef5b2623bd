package scenarios

import (
	"strings"
	"testing"
)

const smallPermit = `version: 1
name: small
crafts:
  lamination: {people: {day: 4}}
  gel: {people: {day: 2}}
  mold: {people: {day: 2}}
  pull: {people: {day: 2}}
  finish: {people: {day: 2}}
  assembly: {people: {day: 2}}
models:
  skiff:
    orders: 1/week
    parts:
      hull: {area: 10 m2, molds: 1, work: {base: 2 x 0.75 h, skin: 2 x 1 h, shot 1: 2 x 3 h}}
demand: {book: orders}
`

// Without the group there is no permit ledger; with it empty the defaults hold,
// also those of materials that the money ledger has too.
func TestPermitDefaults(t *testing.T) {
	s, complaints := Load("small.yaml", []byte(smallPermit), Options{Years: 1})
	if complaints != nil {
		t.Fatal(complaints)
	}
	if s.Base.Permit() != nil {
		t.Fatal("a permit ledger nobody asked for")
	}
	change, complaints := PermitDefaults()
	if complaints != nil {
		t.Fatal(complaints)
	}
	s, complaints = Load("small.yaml", []byte(smallPermit), Options{Years: 1, Sets: []Change{change}})
	if complaints != nil {
		t.Fatal(complaints)
	}
	p := s.Base.Permit()
	if p == nil || len(p.Materials) != 6 || p.Amounts.Density != 1.2 || p.Amounts.Transfer != 0.78 || p.Plant.Parts[0].Thick != 6.5 || p.Cap != 0 {
		t.Fatalf("%+v", p)
	}
	if m := p.Materials[0]; m.Name != "gel coat" || m.HAP != 33 || m.Styrene != 33 || len(m.For) != 4 || m.Before != nil {
		t.Errorf("%+v", m)
	}
}

// What rows cannot say is found with its place.
func TestPermitFaults(t *testing.T) {
	for _, c := range []struct{ permit, place, want string }{
		{"materials: {resin: {operation: production resin, hap: 35 %, for: [gel coat]}}", "small.yaml:16", "production resin cannot serve as gel coat"},
		{"materials: {resin: {operation: production resin, hap: 35 %, share: 60 %, for: [laminate]}}", "small.yaml:16", "add up to 60 %, not 100 %"},
		{"materials: {resin: {operation: production resin, hap: 35 %, styrene: 40 %, for: [laminate]}}", "small.yaml:16", "more than all HAP"},
		{"materials: {white: {operation: pigmented gel coat, hap: 33 %, method: manual, for: [gel coat]}}", "small.yaml:16", "gel coat is atomized or nonatomized"},
		{"materials: {a: {operation: production resin, hap: 35 %, for: [laminate], last_year: [0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg, 0 kg]}, b: {operation: solvent, hap: 1 %, for: [gun flush]}}", "small.yaml:16", "last year's use is given for other materials"},
		{"materials: {resin: {operation: production resins, hap: 35 %, for: [laminate]}}", "small.yaml:16", "unknown operation"},
		{"materials: {resin: {operation: production resin, hap: 35 %, for: [laminat]}}", "small.yaml:16:76", "unknown for"},
	} {
		_, complaints := Load("small.yaml", []byte(smallPermit+"permit: {"+c.permit+"}\n"), Options{Years: 1})
		text := complaints.Error()
		if len(complaints) != 1 || !strings.Contains(text, c.want) || !strings.HasPrefix(text, c.place) {
			t.Errorf("%s\ngot  %s\nwant %s … %s", c.permit, text, c.place, c.want)
		}
	}
}
