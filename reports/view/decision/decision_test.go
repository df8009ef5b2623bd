package decision

import (
	"testing"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/reports/view/saying"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

func TestYearly(t *testing.T) {
	saying.Check(t, yearly("third set", saying.Judged(0.52, 0.07), 50), "In a year of 50 open weeks “third set” makes 26 boats more, with 95 % confidence between 22 and 30.")
	saying.Check(t, yearly("third set", stats.Difference{Summary: stats.Summary{N: 1, Mean: 0.02}}, 50), "In a year of 50 open weeks “third set” makes 1 boat more; one run does not show how sure that is.")
}

func TestEarns(t *testing.T) {
	saying.Check(t, earns(saying.Judged(100, 10), "$100 ± 10"), "Contribution rises by $100 ± 10 a week if every boat is sold, before what the change itself costs to buy.")
	saying.Check(t, earns(saying.Judged(-100, 10), "$100 ± 10"), "Contribution falls by $100 ± 10 a week if every boat is sold, before what the change itself costs to buy.")
	saying.Check(t, earns(saying.Judged(100, 200), ""), "Whether contribution rises is not clear.")
}

func TestRivalsAndWhatTheyCost(t *testing.T) {
	saying.Check(t, rival("a", saying.Judged(0.02, 0.05), true, ""), "“a” ships as many: take it if it is easier to do; its luster is the same.")
	saying.Check(t, rival("a", saying.Judged(-0.2, 0.05), true, "0.20 ± 0.05"), "“a” ships as many: take it if it is easier to do and a luster 0.20 ± 0.05 points lower is accepted.")
	saying.Check(t, rival("a", saying.Judged(0.2, 0.05), true, "0.20 ± 0.05"), "“a” ships as many: take it if it is easier to do; its luster is 0.20 ± 0.05 points higher.")
	saying.Check(t, rival("a", saying.Judged(0.2, 0.5), true, ""), "“a” ships as many: take it if it is easier to do; a difference in luster is not clear.")
	saying.Check(t, rival("a", stats.Difference{}, false, ""), "“a” ships as many: take it if it is easier to do.")
}

func TestUndecided(t *testing.T) {
	saying.Check(t, undecided(nil), "")
	saying.Check(t, undecided([]string{"“a”"}), "More simulated years: for “a” they would show whether it ships more than today.")
	saying.Check(t, undecided([]string{"“a”", "“b”"}), "More simulated years: for “a” and “b” they would show whether they ship more than today.")
}

func TestOrders(t *testing.T) {
	saying.Check(t, orderly(saying.Judged(0.6, 0.1).Summary, "8.8"), "Orders: they come in for 8.8 a week, so about 0.6 boats a week of what it could ship have no buyer yet.")
	saying.Check(t, orderly(saying.Judged(-0.6, 0.1).Summary, "8.8"), "Orders: they come in for 8.8 a week, more than it ships; demand would have to fall before it matters.")
	saying.Check(t, orderly(saying.Judged(0.1, 0.2).Summary, "8.8"), "Orders: they come in for 8.8 a week, about what it ships; fewer orders would leave boats without a buyer.")
}

func TestTarget(t *testing.T) {
	at := func(mean float64) stats.Summary { return stats.Summary{N: 10, Mean: mean} }
	saying.Check(t, reaches(at(96.4), 97), "Luster: fewer than 9 parts in 10 leave the mold at the target of 97.0; a lower target would accept them.")
	saying.Check(t, reaches(at(97.3), 97), "Luster: 9 parts in 10 are only 0.3 points above the target of 97.0; a higher target would decide by luster instead.")
	saying.Check(t, reaches(at(97.8), 97), "")
	saying.Check(t, reaches(at(97.8), 0), "")
}

// of is an alternative that shipped so many boats, one number a replication.
func of(name string, boats ...int) view.Alternative {
	a := view.Alternative{Runs: study.Runs{Name: name}, Plan: &sim.Plan{}}
	for i, n := range boats {
		r := &record.Result{Frame: record.Frame{Start: shift.DateOf(2027, 1, 4), To: clock.Week}, Shipped: n, Lusters: []float64{97 + 0.001*float64(i%2)},
			WeekShips: []int{n}, WeekOpen: []bool{true}}
		a.Outcomes = append(a.Outcomes, study.Outcome{Capacity: r})
	}
	return a
}

func TestTableTellsBetterAndWorseInWords(t *testing.T) {
	s := &view.Study{Replications: 6, Years: 1, Alternatives: []view.Alternative{of("base", 80, 81, 80, 81, 80, 81), of("more", 90, 91, 90, 91, 90, 92), of("fewer", 70, 71, 70, 71, 70, 72), of("same", 80, 81, 81, 80, 81, 80)}}
	c, ok := Table(s, s.Best())
	if !ok || len(c.Rows) != 4 {
		t.Fatalf("%v, %d rows", ok, len(c.Rows))
	}
	for i, want := range []page.Sense{page.Silent, page.Better, page.Worse, page.Unclear} {
		if got := c.Rows[i].Cells[0].Sense; got != want {
			t.Errorf("%s: %v, want %v", c.Rows[i].Name, got, want)
		}
	}
	if c.Rows[1].Mark != "the answer" || c.Rows[0].Mark != "" {
		t.Errorf("marks %q and %q", c.Rows[0].Mark, c.Rows[1].Mark)
	}
	if _, ok := Table(&view.Study{Alternatives: s.Alternatives[:1]}, 0); ok {
		t.Error("one way is nothing to choose from")
	}
}

func TestSheetHoldsSixWays(t *testing.T) {
	s := &view.Study{Replications: 6, Years: 1, Alternatives: []view.Alternative{of("base", 80, 81, 80, 81)}}
	for i := range 9 {
		s.Alternatives = append(s.Alternatives, of(string(rune('a'+i)), 60+i, 61+i, 60+i, 61+i))
	}
	ways := shown(s, 0)
	if len(ways) != mostWays || ways[0] != 0 || ways[5] != 9 {
		t.Errorf("ways %v", ways)
	}
}

func TestNineWeeksInTen(t *testing.T) {
	a := of("x", 5, 7, 7, 8, 8, 8, 9, 9, 9, 9) // nine of ten ship 7 or more
	if n, ok := nineInTen(&a); !ok || n != 7 {
		t.Errorf("%d, %v", n, ok)
	}
	if _, ok := nineInTen(&view.Alternative{}); ok {
		t.Error("no weeks, and yet a number")
	}
}
