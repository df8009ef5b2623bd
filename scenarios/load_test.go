package scenarios

import (
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
