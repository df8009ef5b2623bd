package scenarios

import (
	"math"
	"testing"

	"moldturn/sim/param"
)

// sampleRows resemble the inputs of a small boat plant; all invented.
func sampleRows() []param.Row {
	rows := []param.Row{
		{Path: "name", Kind: param.Text},
		{Path: "start", Kind: param.Date},
		{Path: "hold", Kind: param.Group},
		{Path: "hold.clock", Kind: param.Duration, Low: 0.5, High: 120, Default: "24 h"},
		{Path: "hold.rule", Kind: param.Choice, Choices: []string{"clock", "equivalent", "degree"}, Default: "clock"},
		{Path: "hold.limit", Kind: param.Temperature, Low: -20, High: 60, Default: "60 F"},
		{Path: "strip.every", Kind: param.Count, Low: 1, High: 40, Default: "6"},
		{Path: "strip.hot_months", Kind: param.Months, Default: "May-Sep"},
		{Path: "crafts", Kind: param.Map, Low: 1, High: math.Inf(1)},
		{Path: "crafts.*.people", Kind: param.Count},
		{Path: "crafts.*.absence", Kind: param.Share, Default: "6 %"},
		{Path: "crafts.*.days", Kind: param.Weekdays, Default: "Mon-Fri"},
		{Path: "crafts.*.from", Kind: param.ClockTime, Default: "06:00"},
		{Path: "colors", Kind: param.List, Default: "[white, navy]"},
		{Path: "colors[]", Kind: param.Text},
		{Path: "models", Kind: param.Map, Low: 1, High: 20},
		{Path: "models.*.length", Kind: param.Length},
		{Path: "models.*.price", Kind: param.Money, Optional: true},
		{Path: "models.*.rate", Kind: param.Rate, Default: "2/week"},
		{Path: "models.*.parts", Kind: param.Map},
		{Path: "models.*.parts.*.area", Kind: param.Area},
		{Path: "models.*.parts.*.color", Kind: param.Ref, RefTo: "colors[]", Choices: []string{"primer"}, Optional: true},
		{Path: "models.*.parts.*.mate", Kind: param.Ref, RefTo: "models.*.parts", Optional: true},
		{Path: "models.*.parts.*.steps", Kind: param.List},
		{Path: "models.*.parts.*.steps[].craft", Kind: param.Ref, RefTo: "crafts"},
		{Path: "models.*.parts.*.steps[].work", Kind: param.Dist, High: 100},
		{Path: "models.*.parts.*.steps[].speed", Kind: param.NumberDist, Default: "1"},
		{Path: "heat", Kind: param.Group, Optional: true},
		{Path: "heat.set_point", Kind: param.Temperature},
		{Path: "heat.night", Kind: param.Flag, Default: "true"},
		{Path: "calendar.shutdowns", Kind: param.List, Optional: true},
		{Path: "calendar.shutdowns[].from", Kind: param.DayMonth},
		{Path: "calendar.shutdowns[].length", Kind: param.Duration, Default: "1 wk"},
		{Path: "alternatives", Kind: param.Map, Optional: true},
		{Path: "alternatives.*", Kind: param.Changes},
	}
	for i := range rows {
		rows[i].Doc, rows[i].Mark = "invented for a test", param.Assumption
	}
	return rows
}

const sampleFile = `# invented
version: 1
name: Small plant
start: 2027-01-04
hold: {clock: 90 min}
crafts:
  gel:
    people: 4
    absence: 0.05
  lamination:
    people: 12
    days: Mon-Thu
    from: 3:30 pm
models:
  Rush 23:
    length: 23 ft 6 in
    price: $1.2M
    parts:
      hull:
        area: 365 ft2
        color: navy
        mate: deck
        steps:
          - craft: gel
            work: 45 min
          - craft: lamination
            work: 8 - 10 - 16 h
      deck:
        area: 28 m2
        steps: []
calendar:
  shutdowns:
    - from: Jul 4
      length: 2 wk
alternatives:
  short hold:
    hold.clock: 16 h
  more gel:
    crafts.gel.people: 6
    models.rush23.parts.hull.color: white
`

// sampleTree is the tree of the sample rows.
func sampleTree(t testing.TB) *Tree {
	t.Helper()
	tree, err := NewTree(sampleRows())
	if err != nil {
		t.Fatal(err)
	}
	return tree
}

// sample reads and binds text, which must have no fault.
func sample(t testing.TB, text string) (*Tree, *Document, *Value) {
	t.Helper()
	tree := sampleTree(t)
	doc, complaints := Read("plant.yaml", []byte(text))
	if complaints != nil {
		t.Fatal(complaints)
	}
	root, complaints := tree.Bind(doc)
	if complaints != nil {
		t.Fatal(complaints)
	}
	return tree, doc, root
}
