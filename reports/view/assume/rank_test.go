package assume

import (
	"testing"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// plant has one craft that work waits for all year, and an alternative with a
// shorter hold.
func plant() *view.Study {
	r := &record.Result{Load: make([][12]record.Load, 1)}
	for m := range r.Waits {
		r.Waits[m] = []clock.Time{100 * clock.Hour}
		r.MonthOpen[m] = 4
		r.Load[0][m] = record.Load{Used: 90, Capacity: 100}
	}
	p := &sim.Plan{Crafts: []sim.Craft{{Name: "finish"}}}
	runs := func(name string, changes ...string) view.Alternative {
		return view.Alternative{Runs: study.Runs{Name: name, Changes: changes, Outcomes: []study.Outcome{{Capacity: r}}}, Plan: p}
	}
	return &view.Study{Alternatives: []view.Alternative{runs("base"), runs("short", "hold.clock = 16 h")}}
}

func TestRank(t *testing.T) {
	s := plant()
	s.Inputs = []view.Input{
		{Path: "money.resin.price", Value: "$3", Mark: "S"},
		{Path: "finish.haze", Value: "1", Mark: "A"},
		{Path: "hold.most", Value: "9 h", Mark: "A", Place: "a.yaml:1:1"},
		{Path: "crafts.finish.people.day", Value: "5", Mark: "U"},
		{Path: "crafts.finish.late", Value: "0.5 h", Mark: "M"},
		{Path: "crafts.mold.late", Value: "0.5 h", Mark: "CP"},
		{Path: "cure.done_at", Value: "21 C", Mark: "A"},
		{Path: "note", Value: ""},
	}
	want := []struct {
		path  string
		check Check
	}{
		{"cure.done_at", First}, {"crafts.finish.late", Limit}, {"crafts.finish.people.day", Count}, {"hold.most", Some},
		{"finish.haze", Open}, {"money.resin.price", Little}, {"crafts.mold.late", Little},
	}
	got := Rank(s, 0)
	if len(got) != len(want) {
		t.Fatalf("%d items, want %d", len(got), len(want))
	}
	for i, w := range want {
		if got[i].Path != w.path || got[i].Check != w.check || got[i].Why == "" {
			t.Errorf("place %d: %s, %d, %q; want %s, %d", i+1, got[i].Path, got[i].Check, got[i].Why, w.path, w.check)
		}
	}
	if got[0].Turns(&s.Alternatives[1]) == "" || got[0].Turns(&s.Alternatives[0]) != "" {
		t.Error("what the shorter hold turns on")
	}
	if text := Marks(got); text != "Behind this report stand 7 values: 1 are the plant's own, 1 come from published sources, 1 are common practice, 4 are assumptions or from memory." {
		t.Error(text)
	}
}

// Every value stands in the section once, and what is at its default is folded.
func TestSectionHasEveryValueOnce(t *testing.T) {
	s := plant()
	for _, path := range []string{"crafts.finish.late", "cure.done_at", "defects.sag.hours", "odd.thing", "models.a.area", "hold.clock"} {
		s.Inputs = append(s.Inputs, view.Input{Path: path, Value: "1", Mark: "A", Changed: path == "hold.clock"})
	}
	section, ok, err := Section(s)
	if err != nil || !ok {
		t.Fatal(ok, err)
	}
	seen, folded := map[string]int{}, map[string]bool{}
	var walk func(list []page.Block, inside bool)
	walk = func(list []page.Block, inside bool) {
		for _, b := range list {
			switch b := b.(type) {
			case page.Table:
				for _, r := range b.Rows {
					seen[r.Cells[0].Text]++
					folded[r.Cells[0].Text] = inside
				}
			case page.Fold:
				walk(b.Blocks, true)
			}
		}
	}
	walk(section.Blocks, false)
	for _, in := range s.Inputs {
		if seen[in.Path] != 1 {
			t.Errorf("%s stands there %d times", in.Path, seen[in.Path])
		}
	}
	if folded["hold.clock"] || folded["cure.done_at"] || !folded["odd.thing"] || !folded["defects.sag.hours"] {
		t.Errorf("folded: %v", folded)
	}
	if _, ok, _ := Section(plant()); ok {
		t.Error("a section without a value")
	}
}
