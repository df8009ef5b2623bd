package scenarios

import (
	"fmt"
	"strings"
	"testing"
	"time"
)

func TestBoundValues(t *testing.T) {
	_, _, root := sample(t, sampleFile)
	hull, _ := root.At("models").Item("Rush 23")
	hull, _ = hull.At("parts").Item("hull")
	var steps []string
	for _, s := range hull.Each("steps") {
		steps = append(steps, s.At("craft").Text()+" "+s.At("work").Dist().String())
	}
	lamination, _ := root.At("crafts").Item("lamination")
	month, day := root.At("calendar.shutdowns").kids[0].At("from").MonthDay()
	for what, is := range map[string]bool{
		"clock":       root.At("hold.clock").Hours() == 1.5 && !root.At("hold.clock").IsDefault(),
		"limit":       root.At("hold.limit").IsDefault() && root.At("hold.limit").Base() == root.At("hold.limit").Celsius(),
		"rule":        root.At("hold.rule").Text() == "clock",
		"start":       root.At("start").Date().Equal(time.Date(2027, 1, 4, 0, 0, 0, 0, time.UTC)),
		"months":      root.At("strip.hot_months").HasMonth(time.May) && !root.At("strip.hot_months").HasMonth(time.October),
		"days":        lamination.At("days").HasWeekday(time.Thursday) && !lamination.At("days").HasWeekday(time.Sunday),
		"from":        lamination.At("from").Minutes() == 930,
		"absence":     lamination.At("absence").Share() == 0.06,
		"area":        hull.At("area").SquareMeters() == 33.9096096,
		"no heat":     !root.At("heat").Given() && !root.At("heat.set_point").Given(),
		"colors":      root.At("colors").Len() == 2 && root.At("colors").kids[1].Text() == "navy",
		"shutdown":    month == time.July && day == 4,
		"steps":       fmt.Sprint(steps) == "[gel constant(0.75) lamination pert(8, 10, 16)]" || fmt.Sprint(steps) == "[gel 0.75 lamination pert(8, 10, 16)]",
		"path":        hull.At("area").Path() == `models."Rush 23".parts.hull.area`,
		"place":       hull.At("area").Place() == "plant.yaml:20:15",
		"not in file": func() bool { _, ok := root.At("crafts").Item("pull"); return !ok }(),
	} {
		if !is {
			t.Errorf("%s is wrong; steps %v", what, steps)
		}
	}
	var order []string
	for name := range root.Each("crafts") {
		order = append(order, name)
	}
	if fmt.Sprint(order) != "[gel lamination]" {
		t.Errorf("crafts in the order %v", order)
	}
}

// Reading a value as what it is not, or one that was left out, is a fault of the
// program.
func TestWrongGettersPanic(t *testing.T) {
	_, _, root := sample(t, sampleFile)
	for name, f := range map[string]func(){
		"kind":     func() { root.At("hold.clock").Celsius() },
		"path":     func() { root.At("hold.clok") },
		"left out": func() { root.At("heat.set_point").Celsius() },
		"each":     func() { root.Each("hold") },
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s: no panic", name)
				}
			}()
			f()
		}()
	}
}

const twelveMistakes = `version: 1
name: Small plant
start: 2027-02-30
hold:
  clok: 24 h
  clock: 24
  rule: clocks
strip: [3, 5]
crafts:
  gel: {people: 4.5, absence: 6}
  lamination:
    days: Mon-Fry
models:
  "Rush 23":
    length: 23 fot
    parts:
      hull:
        area: 34 m2
        steps:
        - craft: laminatoin
          work: 8 - 10 - 160 h
`

func TestTwelveMistakes(t *testing.T) {
	doc, complaints := Read("plant.yaml", []byte(twelveMistakes))
	if complaints != nil {
		t.Fatal(complaints)
	}
	_, complaints = sampleTree(t).Bind(doc)
	want := []string{
		`plant.yaml:3:8: start: "2027-02-30" is not a date||write year-month-day, 2027-01-04`,
		`plant.yaml:5:3: unknown input "clok" in hold|clock, rule, limit|did you mean "clock"?`,
		`plant.yaml:6:10: hold.clock: 24 has no unit|h, min, s, d, wk, ms|write 24 h`,
		`plant.yaml:7:9: unknown rule "clocks"|clock, equivalent, degree|did you mean "clock"?`,
		`plant.yaml:8:8: strip cannot be a list|named inputs, each on its own line with a colon|`,
		`plant.yaml:10:17: crafts.gel.people: "4.5" is not a whole number||`,
		`plant.yaml:10:31: crafts.gel.absence: 6 is out of range|0 % to 100 %|write 6 %`,
		`plant.yaml:11:3: crafts.lamination.people is missing||it has no default: invented for a test`,
		`plant.yaml:12:11: crafts.lamination.days: "Mon-Fry" is not one of the days of the week|Mon, Tue, Wed, Thu, Fri, Sat, Sun|write for example Mon-Fri or Mon, Wed`,
		`plant.yaml:15:13: models."Rush 23".length: unknown unit "fot"|mm, m, cm, µm, ft, in, mil|did you mean 23 ft?`,
		`plant.yaml:20:18: unknown craft "laminatoin"|gel, lamination|did you mean "lamination"?`,
		`plant.yaml:21:17: models."Rush 23".parts.hull.steps[1].work: "8 - 10 - 160 h": value 3, "160 h": 160 h is out of range|0 h to 100 h|`,
	}
	compare(t, complaints, want)
}

// compare holds complaints against "place: message|allowed|hint".
func compare(t *testing.T, complaints Complaints, want []string) {
	t.Helper()
	var got []string
	for _, c := range complaints {
		got = append(got, c.Place()+": "+c.Message+"|"+c.Allowed+"|"+c.Hint)
	}
	for i := range max(len(got), len(want)) {
		g, w := "(none)", "(none)"
		if i < len(got) {
			g = got[i]
		}
		if i < len(want) {
			w = want[i]
		}
		if g != w {
			t.Errorf("complaint %d\n got %s\nwant %s", i+1, g, w)
		}
	}
}

// A file near the size limit is bound in seconds, in block and in flow style,
// with and without faults; a fault per line gives a complaint per line.
func TestLargeFiles(t *testing.T) {
	tree := sampleTree(t)
	for name, style := range map[string]struct{ open, item, end string }{
		"block": {"crafts:\n", "  c%d:\n    people: x\n", ""},
		"flow":  {"crafts: {", "c%d: {people: x}, ", "}\n"},
	} {
		var text strings.Builder
		text.WriteString(style.open)
		for i := range 60_000 {
			fmt.Fprintf(&text, style.item, i)
		}
		text.WriteString(style.end)
		doc, complaints := Read("f.yaml", []byte(text.String()))
		if complaints != nil {
			t.Fatal(complaints)
		}
		begin := time.Now()
		_, complaints = tree.Bind(doc)
		if took := time.Since(begin); len(complaints) != 60_004 || took > 20*time.Second {
			t.Errorf("%s: %d complaints in %v", name, len(complaints), took)
		}
	}
}
