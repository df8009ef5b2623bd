package scenarios

import (
	"slices"
	"strconv"
	"strings"
	"testing"
)

// A fault of an alternative does not hide those that only the plant as a whole
// shows.
func TestFaultsOfPlantAndAlternativesTogether(t *testing.T) {
	text := strings.Replace(roomyPlant, "gel: {people: {day: 6}}", "gel: {people: {dya: 6}}", 1) + "  one: {crafts.laminaton.people.day: 6}\n"
	_, complaints := Load("roomy.yaml", []byte(text), Options{Years: -1})
	all := complaints.Error()
	for _, want := range []string{`unknown shift "dya"`, "laminaton"} {
		if !strings.Contains(all, want) {
			t.Errorf("no complaint about %s in\n%s", want, all)
		}
	}
	if len(complaints) != 2 {
		t.Errorf("%d complaints, want 2", len(complaints))
	}
}

// Faults of every kind come together, each at its own place, and nothing that
// only follows from them: values that cannot be read, names that lead nowhere,
// and a change of an alternative.
func TestEveryFaultAtOnce(t *testing.T) {
	faults := []struct{ right, wrong, told string }{
		{"gel: {people: {day: 6}}", "gel: {people: {dya: 6}}", `unknown shift "dya"`},
		{"lamination: {people: {day: ", "lamination: {people: {day: many", "not a whole number"},
		{"area: ", "area: big", "big"},
		{"floor_limit", "flor_limit", `unknown input "flor_limit"`},
		{"look: ", "look: drak", `unknown look "drak`},
	}
	text := roomyPlant + "  one: {crafts.laminaton.people.day: 6}\n"
	var places []string
	for _, f := range faults {
		before, after, found := strings.Cut(text, f.right)
		if !found {
			t.Fatalf("the plant has no %q", f.right)
		}
		text = before + f.wrong + after
	}
	for _, f := range faults {
		before, _, _ := strings.Cut(text, f.wrong)
		places = append(places, "roomy.yaml:"+strconv.Itoa(strings.Count(before, "\n")+1)+":")
	}
	_, complaints := Load("roomy.yaml", []byte(text), Options{Years: -1})
	all := complaints.Error()
	for i, f := range faults {
		if !slices.ContainsFunc(complaints, func(c Complaint) bool {
			return strings.Contains(c.Message, f.told) && strings.HasPrefix(c.Place(), places[i])
		}) {
			t.Errorf("no complaint with %q at %s", f.told, places[i])
		}
	}
	if len(complaints) != len(faults)+1 || !strings.Contains(all, "laminaton") {
		t.Errorf("%d complaints, want %d:\n%s", len(complaints), len(faults)+1, all)
	}
}
