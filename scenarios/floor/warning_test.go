package floor_test

import (
	"fmt"
	"strings"
	"testing"

	"moldturn/scenarios/floor"
)

// A floor of its own time needs no warning but that of molds nobody listed; one of
// another year says so with the rows in doubt, before and after.
func TestSheetsOfAnotherTime(t *testing.T) {
	var b strings.Builder
	b.WriteString(moldHeads)
	for i := range 10 {
		fmt.Fprintf(&b, "M%d,Sedge 20,%s,100,2,ready,2027-05-%02d\n", i, []string{"hull", "deck"}[i%2], i+1)
	}
	at := func(morning string) string {
		r := floor.Read(folder("molds.csv", b.String()), fenwater(t), floor.Options{Name: "test", Morning: mustMorning(morning)})
		for _, line := range r.Warnings() {
			if strings.Contains(line, "rows are in doubt") {
				return line
			}
		}
		return ""
	}
	for morning, want := range map[string]string{
		"2020-01-01": "The sheets are from 2027-05-01 to 2027-05-10, and the morning is 2020-01-01; 10 of 10 rows are in doubt.",
		"2027-05-02": "The sheets are from 2027-05-01 to 2027-05-10, and the morning is 2027-05-02; 8 of 10 rows are in doubt.",
		"2027-05-15": "The sheets are from 2027-05-01 to 2027-05-10, and the morning is 2027-05-15: what happened in the 5 days between is missing; 4 of 10 rows are in doubt.",
		"2030-01-01": "The sheets are from 2027-05-01 to 2027-05-10, and the morning is 2030-01-01: what happened in the 967 days between is missing; 4 of 10 rows are in doubt.",
	} {
		if got := at(morning); got != want {
			t.Errorf("%s: %q, want %q", morning, got, want)
		}
	}
	// four molds are more than the scenario has: in doubt on any morning
	for morning, want := range map[string]string{"2027-05-11": "4 of 10 rows are in doubt.", "2027-05-14": "4 of 10 rows are in doubt."} {
		if got := at(morning); got != want {
			t.Errorf("%s: %q, want %q", morning, got, want)
		}
	}
	if w := demo(t).Warnings(); w != nil {
		t.Errorf("the demo's floor: %q", w)
	}
}

// Molds that nobody listed, and a part in a mold of another part, are told to those
// who see the answer only.
func TestMoldsThatAreTakenAsReady(t *testing.T) {
	r := read(t, "molds.csv", moldHeads+"H1,Sedge 20,hull,100,2,occupied,2027-05-10\n",
		"work.csv", "serial,model,part,step,mold,started\nS1,Sedge 20,deck,hold,H1,2027-05-10\n")
	text := strings.Join(r.Warnings(), "\n")
	for _, want := range []string{
		"Taken as ready though not listed: 2 of the 2 molds that the scenario has for the Reed 26 deck",
		"and 4 more.",
		"mold H1 is for the Sedge 20 hull, and the part in it is the Sedge 20 deck",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
	if got := read(t, "orders.csv", "id,model\nA,Sedge 20\n").Warnings(); len(got) != 1 || !strings.HasPrefix(got[0], "No mold is listed") {
		t.Errorf("without molds: %q", got)
	}
}

// A price in other money than the scenario's, or than the first, is in doubt; that
// no answer uses prices is said once.
func TestPricesAreReadAndNotUsed(t *testing.T) {
	book := "id,model,price\nA,Sedge 20,\"$54,900\"\nB,Sedge 20,€ 60 000\nC,Sedge 20,61000\nD,Sedge 20,70 000 GBP\n"
	wants(t, read(t, "orders.csv", book), "another currency", "orders.csv:3:3", "orders.csv:5:3")
	wants(t, read(t, "orders.csv", book), "price not used", "orders.csv:1:3")
	euro := floor.Read(folder("orders.csv", book), fenwater(t), floor.Options{Morning: mustMorning("2027-05-11"), Currency: "€"})
	wants(t, euro, "another currency", "orders.csv:2:3", "orders.csv:5:3")
	wants(t, read(t, "orders.csv", "id,model,price\nA,Sedge 20,\n"), "price not used")
}

// Sheets of which the scenario knows no model are of another plant; with one model
// that is known they are not.
func TestTheFloorOfAnotherPlant(t *testing.T) {
	log := moldHeads + "H1,Dory 5,hull,100,2,ready,2027-05-10\nH2,Dory 6,hull,100,2,ready,2027-05-10\n"
	r := floor.Read(folder("molds.csv", log), fenwater(t), floor.Options{})
	if n := noticesOf(r, "another plant"); r.Floor != nil || len(n) != 1 || !strings.Contains(n[0].Hint, "another plant: its models are Dory 5, Dory 6, those of the scenario Sedge 20, Rush 23, Reed 26") {
		t.Errorf("%+v", r.Notices)
	}
	wants(t, r, "no morning")
	r = floor.Read(folder("molds.csv", log+"H3,Sedge 20,hull,100,2,ready,2027-05-10\n"), fenwater(t), floor.Options{})
	wants(t, r, "another plant")
	if r.Floor == nil {
		t.Errorf("one known model: %+v", r.Notices)
	}
}

// A mold that is being resurfaced is out, and comes back with a new surface; one
// that is cracked comes back with its old one.
func TestMoldsThatAreResurfaced(t *testing.T) {
	r := read(t, "molds.csv", "id,model,part,where,since,back\nH1,Sedge 20,hull,Resurfacing,2027-05-03,2027-05-17\nH2,Sedge 20,hull,cracked,2027-05-03,2027-05-17\n")
	for i, want := range []bool{true, false} {
		if m := r.Floor.Molds[i]; m.State != floor.OutOfUse || m.Renewed != want || m.Back.IsZero() {
			t.Errorf("%+v, want renewed %v", m, want)
		}
	}
}
