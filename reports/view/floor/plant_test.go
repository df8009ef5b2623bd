package floor_test

import (
	"bytes"
	"testing"

	"moldturn/reports/page"
	"moldturn/reports/view/floor"
	"moldturn/reports/view/weekly"
	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/study"
)

// shown is a scenario of the library with three runs of a year of it.
type shown struct {
	plan    *sim.Plan
	runs    *study.Runs
	typical *study.Typical
}

// run simulates a scenario; change may rename what is in the plan before.
func run(t *testing.T, name string, change func(*sim.Plan)) shown {
	t.Helper()
	data, ok := scenarios.BundledFile(name)
	if !ok {
		t.Fatalf("no scenario %s", name)
	}
	s, complaints := scenarios.Load(name, data, scenarios.Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	a := s.Study()[:1]
	a[0].Dated = nil
	if change != nil {
		change(a[0].Capacity)
	}
	runs, err := study.Compare(t.Context(), &study.Setup{Alternatives: a, Replications: 3, Seed: 1, Workers: 1})
	if err != nil {
		t.Fatal(err)
	}
	again, err := study.TypicalOf(&a[0], &runs[0], 1, 4)
	if err != nil || again == nil {
		t.Fatalf("no typical run: %v", err)
	}
	return shown{a[0].Capacity, &runs[0], again}
}

// sections are those that the report makes of it.
func (x shown) sections(t *testing.T) []page.Section {
	t.Helper()
	var out []page.Section
	add := func(s page.Section, ok bool, err error) {
		if err != nil || !ok {
			t.Fatalf("%q: there %v, %v", s.Heading, ok, err)
		}
		out = append(out, s)
	}
	add(floor.Molds(x.typical, x.runs.Name))
	add(weekly.Limits(x.runs, x.plan, 3))
	add(weekly.Waits(x.runs, x.plan, 3))
	add(floor.Diary(x.typical, x.runs.Name))
	return out
}

// diary is the block of the floor diary.
func (x shown) diary(t *testing.T) page.Diary {
	t.Helper()
	s := x.sections(t)
	for _, b := range s[len(s)-1].Blocks {
		if d, ok := b.(page.Diary); ok {
			return d
		}
	}
	t.Fatal("no diary")
	return page.Diary{}
}

func written(t *testing.T, sections ...page.Section) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := page.Write(&b, page.Page{Title: "From near", Sections: sections}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// rename gives every name of a plan another.
func rename(p *sim.Plan, to func(string) string) {
	for i := range p.Crafts {
		p.Crafts[i].Name = to(p.Crafts[i].Name)
	}
	for i := range p.Places {
		p.Places[i].Name = to(p.Places[i].Name)
	}
	for i := range p.Models {
		p.Models[i].Name = to(p.Models[i].Name)
	}
	for i := range p.Parts {
		p.Parts[i].Name = to(p.Parts[i].Name)
	}
	for i := range p.Molds {
		p.Molds[i].Name = to(p.Molds[i].Name)
	}
	for i := range p.Routes {
		p.Routes[i].Name = to(p.Routes[i].Name)
		for k := range p.Routes[i].Steps {
			p.Routes[i].Steps[k].Name = to(p.Routes[i].Steps[k].Name)
		}
	}
}

// The diary of the demo, with its tables and its part of the script, takes less
// than 300 KB of the page.
func TestDiaryIsSmall(t *testing.T) {
	s := run(t, "fenwater", nil).sections(t)
	without, with := len(written(t, s[:3]...)), len(written(t, s...))
	if n := with - without; n > 300_000-6_000 || n < 20_000 { // the script is in both and has less than 6,000 bytes
		t.Errorf("the diary takes %d bytes of the page", n)
	}
	if again := run(t, "fenwater", nil); !bytes.Equal(written(t, s...), written(t, again.sections(t)...)) {
		t.Error("the same run shown twice gives two pages")
	}
}
