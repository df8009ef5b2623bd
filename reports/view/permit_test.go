package view

import (
	"strings"
	"testing"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/exposure"
	measures "moldturn/sim/param/unit"
	"moldturn/sim/permit"
	"moldturn/sim/shift"
	"moldturn/sim/study"
)

// samplePermit is a ledger of two replications, of 10 and 20 boats a month; a
// boat takes 8 kg of gel coat and nothing else, but for more materials.
func samplePermit(limit float64, more ...permit.Material) *Permit {
	start := shift.DateOf(2027, 1, 4)
	s := &permit.Setup{Cap: limit,
		Plant:     permit.Plant{Start: start, To: shift.Midnight(start, shift.DateOf(2029, 1, 4)), Parts: []permit.Part{{Area: 10, Film: 0.5}}, Models: []string{"skiff"}},
		Amounts:   permit.Amounts{Density: 1.2, Transfer: 0.75, SmallGel: []float64{0}, SmallResin: []float64{0}},
		Materials: []permit.Material{{Name: "gel coat", Operation: permit.PigmentedGel, HAP: 33, Styrene: 33, Averaged: true, For: []permit.Use{permit.GelCoat}, Share: 1}},
		Steps:     permit.Steps{Film: 0.0254, GelHAP: 3},
	}
	s.Materials = append(s.Materials, more...)
	var counts []*permit.Counts
	for rep := range 2 {
		c := &permit.Counts{}
		for range 24 {
			m := permit.MonthCounts{Parts: make([][permit.Laminate + 1]int64, 1), New: []int64{0}, Resurfaced: []int64{0}, Shipped: []int64{int64(10 * (rep + 1))}}
			m.Parts[0][permit.GelCoat] = int64(10*(rep+1)) * permit.Whole
			c.Months = append(c.Months, m)
		}
		counts = append(counts, c)
	}
	plan := &sim.Plan{Background: []sim.Background{{Name: "small parts"}}}
	return &Permit{Orders: true, Units: measures.US, Ledger: study.NewPermits(s, counts),
		Study: &Study{Scenario: "Sample", Replications: 2, Years: 2, Alternatives: []Alternative{{Runs: study.Runs{Name: "as it is"}, Plan: plan}}}}
}

// A boat emits 8 kg at (1.03646·0.33 − 0.195) · 2000 lb/ton: 1.1764 kg or 2.59
// lb; 15 boats a month are 212 kg or 0.233 short tons a year; the averaging is at
// 155.55 of 159.
func TestPermitHeadline(t *testing.T) {
	per := 8 * (1.03646*0.33 - 0.195)
	for _, c := range []struct {
		limit float64
		want  []string
	}{
		{0, []string{"0.233 short tons of organic HAP", "2.59 lb a boat", "at most 98 % of the limit"}},
		{200 * per, []string{"passed in 1 of 2 repeats, first at the end of December of year 1", "Most room comes from gel coat with 3 points less HAP"}},
		{300 * per, []string{"is kept", "room for 120 boats more"}},
		{100 * per, []string{"passed in 2 of 2 repeats", "80 boats too many"}},
	} {
		text := strings.ReplaceAll(samplePermit(c.limit).Headline(), nb, " ")
		for _, want := range c.want {
			if !strings.Contains(text, want) {
				t.Errorf("cap %.0f kg: %s\nlacks %q", c.limit, text, want)
			}
		}
	}
}

// Every table fits its columns, the caution is on the page, and what is left out
// is said.
func TestPermitPage(t *testing.T) {
	p := samplePermit(200)
	x, err := p.Page()
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	if err := page.Write(&b, x); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{PermitCaution[:30], "small parts", "cap of the permit", "Dec"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("the page lacks %q", want)
		}
	}
	for _, table := range p.Tables() {
		if err := table.Check(); err != nil {
			t.Error(err)
		}
	}
}

// One repeat has no range of repeats.
func TestPermitOfOneRepeat(t *testing.T) {
	p := samplePermit(200)
	if rows := p.MonthEnds().Rows; rows[len(rows)-1].Cells[4].Text == "–" {
		t.Error("two repeats have no range")
	}
	p.Ledger.Ledgers = p.Ledger.Ledgers[:1]
	for _, table := range []cells.Table{p.MonthEnds(), p.Materials(), p.Contents(), p.Thresholds()} {
		for _, r := range table.Rows {
			for _, c := range r.Cells {
				if strings.TrimSpace(c.Text) == "" || strings.Contains(c.Text, "NaN") || strings.Contains(c.Text, "Inf") {
					t.Errorf("%s: a cell of %q is %q", table.Title, r.Cells[0].Text, c.Text)
				}
			}
		}
	}
	if rows := p.MonthEnds().Rows; rows[len(rows)-1].Cells[4].Text != "–" {
		t.Error("one repeat has a range")
	}
}

// The screening says what it is, in both systems of units, and never prints
// what has no end.
func TestExposureTables(t *testing.T) {
	for _, units := range []measures.System{measures.US, measures.Metric} {
		e := &Exposure{Units: units, Screen: exposure.Screen{Booth: exposure.Booth{Face: 22.3, KgPerHour: 2, Peak: 2, LEL: exposure.LEL, Crossdraft: 120},
			Shop: exposure.Shop{KgPerHour: 1, Mixing: 5}, SolventGravity: 0.79, SolventMole: 58, SolventLEL: 2.5, Flush: 7}}
		for _, table := range e.Tables() {
			if err := table.Check(); err != nil {
				t.Error(err)
			}
			for _, r := range table.Rows {
				for _, c := range r.Cells {
					if strings.Contains(c.Text, "Inf") || strings.Contains(c.Text, "NaN") {
						t.Errorf("%s: %q", table.Title, c.Text)
					}
				}
			}
		}
		if got := e.Booth().Rows[1].Cells[3].Text; got != "no" {
			t.Errorf("a crossdraft of 120 ft/min is %q", got)
		}
	}
}

// A launch says which models change, clearly or not.
func TestLaunchTables(t *testing.T) {
	start := shift.DateOf(2027, 1, 4)
	p := &sim.Plan{Start: start, Length: 52 * clock.Week, Models: []sim.Model{{Name: "a"}, {Name: "b"}}, Parts: []sim.Part{{Model: 0}, {Model: 1}},
		Molds: []sim.Mold{{Part: 0}, {Part: 1, New: true, Arrives: 10 * clock.Week}}}
	book := func(a, b int) *study.WeekBook {
		x := study.NewWeekBook(p)
		for w := range x.Boats {
			x.Boats[w][0], x.Boats[w][1] = a, b
		}
		return x
	}
	l := &Launch{Study: &Study{Scenario: "Sample", Alternatives: []Alternative{{Plan: p}}}, Launch: &study.Launch{Plan: p, Models: []int{1}, First: 10, Weeks: 52,
		With: []*study.WeekBook{book(3, 2), book(3, 3), book(3, 2), book(3, 3), book(2, 2)}, Without: []*study.WeekBook{book(4, 0), book(4, 0), book(4, 0), book(4, 0), book(4, 0)}}}
	text := strings.ReplaceAll(l.Headline(), nb, " ")
	for _, want := range []string{"New molds for b come from the week of 2027-03-15", "a ships 1.2 ± 0.6 boats a week fewer"} {
		if !strings.Contains(text, want) {
			t.Errorf("%s\nlacks %q", text, want)
		}
	}
	for _, table := range l.Tables() {
		if err := table.Check(); err != nil {
			t.Error(err)
		}
	}
	if _, err := l.Page(); err != nil {
		t.Error(err)
	}
}

func TestSignificant(t *testing.T) {
	for _, c := range []struct {
		v    float64
		want string
	}{{0, "0"}, {0.9996, "1.00"}, {0.99949, "0.999"}, {12.345, "12.3"}, {-0.01234, "−0.0123"}, {98765, "98765"}, {99.96, "100"}} {
		if got := significant(c.v, 3); got != c.want {
			t.Errorf("%v: %s, want %s", c.v, got, c.want)
		}
	}
}
