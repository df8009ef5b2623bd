package heat

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/param/unit"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// way is an alternative whose molds are stripped after so many turns, with the
// same pulls in three replications; a summer week leaves half as much again.
func way(name string, turns int) view.Alternative {
	a := view.Alternative{Runs: study.Runs{Name: name}, Plan: &sim.Plan{}}
	a.Plan.Season = policy.Season{Kind: policy.ByHeatPeak, On: 90, Off: 85}
	a.Plan.Strip.Kind = policy.StripSeasonal
	for rep := range 3 {
		r := &record.Result{Frame: record.Frame{Target: 97}}
		for season := range 2 {
			for turn := 1; turn <= turns; turn++ {
				r.ByTurn[season][turn] = record.Lusters{N: 20, Sum: 20 * (98.2 - 0.1*float64(turn*(season+1)))}
			}
		}
		for w := range 50 {
			h := record.Heat{Pulls: 10, BuildUp: 20, Grown: 10, HeatIndex: 700, Strips: 2, Looks: 1, Peak: 75}
			if w >= 20 && w < 40 {
				h.Grown, h.HeatIndex, h.Strips, h.Hot, h.Peak = 15+0.01*float64(rep-1), 980, 3, 1, 104
			}
			r.Heat[w] = h
		}
		a.Outcomes = append(a.Outcomes, study.Outcome{Capacity: r})
	}
	return a
}

func studied(all ...view.Alternative) *view.Study {
	return &view.Study{Replications: 3, Years: 1, Alternatives: all}
}

// Luster by turns is that of the base, or of the first alternative whose molds
// run two turns farther.
func TestTurnsOfTheFarthest(t *testing.T) {
	for _, c := range []struct {
		all   []view.Alternative
		whose string
		turns int
	}{
		{[]view.Alternative{way("base", 6)}, "“base”, the base", 6},
		{[]view.Alternative{way("base", 6), way("seven", 7)}, "“base”, the base", 6},
		{[]view.Alternative{way("base", 6), way("eight", 8), way("nine", 9)}, "“eight”, whose molds run farthest", 8},
	} {
		lines, ok := Turns(studied(c.all...))
		if !ok || len(lines.X) != c.turns || !strings.Contains(lines.Caption, c.whose) || len(lines.Series) != 2 || len(lines.Goals) != 1 {
			t.Errorf("%v, %d turns, %q", ok, len(lines.X), lines.Caption)
		}
		if _, err := lines.Build(); err != nil {
			t.Error(err)
		}
	}
	if _, ok := Turns(studied(way("base", 1))); ok {
		t.Error("one turn makes no line")
	}
}

func TestYearMarksTheSeason(t *testing.T) {
	s := studied(way("base", 5))
	s.Money.Units = unit.US
	buildUp, heat, ok := Year(s)
	if !ok {
		t.Fatal("no year")
	}
	says(t, buildUp.Finding, "1.50 times")
	says(t, heat.Finding, "begins about May 21 and ends about Oct 8")
	if heat.X[20] != "May 21" || buildUp.X[0] != "Jan 1" {
		t.Errorf("weeks are named %q and %q", heat.X[20], buildUp.X[0])
	}
	for _, lines := range [][]float64{buildUp.Series[0].Values, buildUp.Series[1].Values, heat.Series[0].Values, heat.Series[1].Values} {
		if len(lines) != 50 {
			t.Errorf("%d weeks", len(lines))
		}
	}
	// 10 pulls a week and 2 strips, 3 in the hot weeks 21 to 40: over five weeks
	// around week 21 it is 50 pulls over 13 strips.
	if b := buildUp.Series[1].Values; b[0] != 5 || b[30] != 10.0/3 || b[17] != 5 || b[20] != 50.0/13 || b[49] != 5 {
		t.Errorf("pulls between strips %v, %v, %v, %v and %v", b[0], b[30], b[17], b[20], b[49])
	}
	if got := pullsPerStrip(&[record.WeeksOfYear]record.Heat{{Pulls: 4}}, 0); !math.IsNaN(got) {
		t.Errorf("pulls between strips without one: %v", got)
	}
	if len(heat.Goals) != 2 || heat.Goals[0].Value != 90 || len(buildUp.Stretches) != 1 || buildUp.Stretches[0].From != 20 {
		t.Errorf("marks %+v, %+v", heat.Goals, buildUp.Stretches)
	}
	out, ok, err := YearSection(s)
	if err != nil || !ok || len(out.Blocks) != 2 {
		t.Errorf("%v, %v, %d blocks", err, ok, len(out.Blocks))
	}
	s.Air = []string{"area \"plant\" is damp"}
	if out, _, _ = YearSection(s); len(out.Blocks) != 3 || out.Blocks[0] != page.Remark("Area \"plant\" is damp.") {
		t.Errorf("%v", out.Blocks[0])
	}
	s.Alternatives[0].Outcomes = nil // no weeks, and the warning is shown all the same
	if out, ok, _ = YearSection(s); !ok || len(out.Blocks) != 1 {
		t.Errorf("%v, %d blocks", ok, len(out.Blocks))
	}
}

// The heat index and the lines at which the season changes are in the units of
// the scenario: 104 °F is 40 °C, 90 °F 32.2 °C and 85 °F 29.4 °C.
func TestHeatIndexInUnitsOfTheScenario(t *testing.T) {
	for _, c := range []struct {
		system              unit.System
		sign, on, off       string
		making, peak, above float64
	}{
		{unit.US, "°F", "the hot season begins above 90\u00a0°F", "and ends below 85\u00a0°F", 98, 104, 90},
		{unit.Metric, "°C", "the hot season begins above 32\u00a0°C", "and ends below 29\u00a0°C", 66 / 1.8, 40, 58 / 1.8},
	} {
		s := studied(way("base", 5))
		s.Money.Units = c.system
		_, heat, ok := Year(s)
		if !ok || heat.Y.Unit != c.sign || len(heat.Goals) != 2 || heat.Goals[0].Label != c.on || heat.Goals[1].Label != c.off {
			t.Fatalf("%v, unit %q, marks %+v", ok, heat.Y.Unit, heat.Goals)
		}
		for _, x := range []struct{ got, want float64 }{{heat.Series[0].Values[30], c.making}, {heat.Series[1].Values[30], c.peak}, {heat.Goals[0].Value, c.above}} {
			if math.Abs(x.got-x.want) > 1e-9 {
				t.Errorf("%s: found %v, want %v", c.sign, x.got, x.want)
			}
		}
	}
}

func TestHoldSections(t *testing.T) {
	s := studied(way("base", 5))
	if _, ok, _ := HoldSection(s); ok {
		t.Error("a staircase without runs")
	}
	s.Holds = held(0.001, 9, 9.5, 9.4, 8.9, 8.8, 8.7, 8.6, 8.4, 8.2)
	boats, luster, ok := Holds(s)
	if !ok || len(boats.X) != 9 || len(luster.X) != 9 || len(boats.Stretches) != 1 || boats.Stretches[0].From != 8 {
		t.Errorf("%v, %v, %+v", ok, boats.X, boats.Stretches)
	}
	says(t, boats.Caption, "5 runs of 1 year each")
	if out, ok, err := HoldSection(s); err != nil || !ok || len(out.Blocks) != 2 {
		t.Error(err)
	}
}

// The card in the report is the card of "moldturn hold", cautions included.
func TestCardSection(t *testing.T) {
	s := studied(way("base", 5))
	if _, ok, _ := CardSection(s); ok {
		t.Error("a card without a plant")
	}
	s.Card = &cure.Hold{Resin: cure.NewTable(cure.Default()), Barcol: cure.DefaultBarcol(), Hardness: 35, Clock: 24 * clock.Hour, Most: 72 * clock.Hour}
	out, ok, err := CardSection(s)
	if err != nil || !ok {
		t.Fatal(err)
	}
	if table := out.Blocks[0].(page.Table); !reflect.DeepEqual(table.Table, view.HoldCard(s.Card, unit.Style{})) {
		t.Errorf("%+v", table)
	}
	text := strings.Join(out.Blocks[1].(page.List), " ")
	for _, word := range []string{"exotherm", "peroxide", "Styrene vapor", "deep molds", "data sheet", "Local codes", "licensed"} {
		if !strings.Contains(text, word) {
			t.Errorf("no caution about %q", word)
		}
	}
}

// A mean of luster is drawn from 30 parts on: three years with ten each are
// enough, with one part fewer in one year they are not.
func TestFewestParts(t *testing.T) {
	a := way("base", 4)
	for i := range a.Outcomes {
		a.Outcomes[i].Capacity.ByTurn[1][4] = record.Lusters{N: 10, Sum: 970}
	}
	if pair := seasons(&a.Runs); pair[1].last() != 4 || pair[1][4] != 97 {
		t.Errorf("30 parts: %v", pair[1][:6])
	}
	a.Outcomes[0].Capacity.ByTurn[1][4] = record.Lusters{N: 9, Sum: 873}
	if pair := seasons(&a.Runs); pair[1].last() != 3 || !math.IsNaN(pair[1][4]) {
		t.Errorf("29 parts: %v", pair[1][:6])
	}
}

// The year is drawn from 26 weeks with pulls on, two quarters.
func TestFewestWeeks(t *testing.T) {
	for weeks, want := range map[int]bool{25: false, 26: true} {
		a := way("base", 4)
		for i := range a.Outcomes {
			for w := weeks; w < 50; w++ {
				a.Outcomes[i].Capacity.Heat[w] = record.Heat{}
			}
		}
		if _, _, ok := Year(studied(a)); ok != want {
			t.Errorf("%d weeks: drawn %v", weeks, ok)
		}
	}
}
