package scenarios

import (
	"strings"
	"testing"
)

// One more and one less of the gun sets that spray any color; those kept for a
// color or for bands are left alone, and the last one for any color stays.
func TestGunSetsMove(t *testing.T) {
	data, _ := BundledFile("fenwater")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	var guns *Lever
	for _, l := range s.Levers() {
		if l.Kind == GunSets {
			guns = &l
		}
	}
	if guns == nil || guns.Key != "guns.booth" || guns.Now != 1 {
		t.Fatalf("fenwater has one set for any color in each booth: %+v", guns)
	}
	if want := 2 * s.Base.Value.At("size.guns").Dollars(); guns.Price() != want {
		t.Errorf("one more in each of two booths costs %v, want %v", guns.Price(), want)
	}
	if _, ok := guns.By(-1); ok {
		t.Error("the last set for any color can be taken away")
	}
	sets := func(s *Scenario, steps int) []string {
		changes, ok := guns.By(steps)
		if !ok {
			t.Fatalf("cannot move by %d", steps)
		}
		a, complaints := s.With("more", changes...)
		if len(complaints) > 0 {
			t.Fatal(complaints.Error())
		}
		var names []string
		for _, g := range a.Plant.Plan().Places[0].Guns[1] {
			names = append(names, g.Name)
		}
		return names
	}
	if got := strings.Join(sets(s, 2), ", "); got != "white pump, color pump, accent pot, gun set 4, gun set 5" {
		t.Errorf("two more: %s", got)
	}
	if got := strings.Join(sets(s, 0), ", "); got != "white pump, color pump, accent pot" {
		t.Errorf("none more: %s", got)
	}
	three := strings.Replace(string(data), "- {name: color pump}", "- {name: color pump}\n      - {name: third pump, pot: false}", 1)
	s, complaints = Load("fenwater.yaml", []byte(three), Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	for _, l := range s.Levers() {
		if l.Kind == GunSets {
			guns = &l
		}
	}
	if got := strings.Join(sets(s, -1), ", "); got != "white pump, color pump, accent pot" {
		t.Errorf("one less of two: %s", got)
	}
}
