package view

import (
	"math"
	"testing"

	"moldturn/reports/view/saying"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

func TestLusterChange(t *testing.T) {
	saying.Check(t, lusterChange(stats.Difference{}), "luster was not measured")
	saying.Check(t, lusterChange(saying.Judged(0.05, 0.02)), "luster stays within 0.1 point")
	saying.Check(t, lusterChange(saying.Judged(0.09, 0.02)), "luster rises by 0.09 ± 0.02 points")
	saying.Check(t, lusterChange(saying.Judged(-2, 0.05)), "luster falls by 2.00 ± 0.05 points")
	saying.Check(t, lusterChange(saying.Judged(-0.2, 0.4)), "no change in luster is clear")
}

func TestHeadlines(t *testing.T) {
	saying.Check(t, plain("as it is", "8.73 ± 0.08", "96.9"), "“as it is” ships 8.73 ± 0.08 boats a week when orders always wait; 9 parts in 10 leave the mold with a luster of 96.9 or more.")
	saying.Check(t, plain("as it is", "8.73", ""), "“as it is” ships 8.73 boats a week when orders always wait.")
	more := rival{name: "hold 16 h", boats: saying.Judged(0.52, 0.05), luster: saying.Judged(-0.03, 0.01)}
	saying.Check(t, gain("base", more, nil, nil), "“hold 16 h” ships 0.52 ± 0.05 more boats a week than “base”, and luster stays within 0.1 point.")
	near := []rival{{name: "a", boats: saying.Judged(-0.01, 0.13)}, {name: "b", boats: saying.Judged(0.2, 0.3)}}
	saying.Check(t, gain("base", more, near, nil), "“hold 16 h” ships 0.52 ± 0.05 more boats a week than “base”, and luster stays within 0.1 point. In boats, “a” (−0.01 ± 0.13) and “b” (+0.20 ± 0.30) cannot be told apart from it.")
	saying.Check(t, gain("base", more, near[:1], []string{"“c”", "“d”"}), "“hold 16 h” ships 0.52 ± 0.05 more boats a week than “base”, and luster stays within 0.1 point. In boats, “a” (−0.01 ± 0.13) cannot be told apart from it. “c” and “d” are too close to both to say.")
	fewer, same := rival{boats: saying.Judged(-1, 0.1)}, rival{boats: saying.Judged(-1, 2)}
	saying.Check(t, none("base", []rival{{}, fewer, fewer}), "No alternative clearly ships more boats than “base”; all 2 ship fewer.")
	saying.Check(t, none("base", []rival{{}, fewer}), "No alternative clearly ships more boats than “base”; it ships fewer.")
	saying.Check(t, none("base", []rival{{}, fewer, same}), "No alternative clearly ships more boats than “base”; 1 of 2 ship fewer.")
	saying.Check(t, none("base", []rival{{}, same, same}), "No alternative clearly ships more boats than “base”.")
}

func TestTradeoff(t *testing.T) {
	saying.Check(t, best("a", true, true), "“a” ships the most boats and has the best luster")
	saying.Check(t, best("a", true, false), "“a” ships the most boats, and none has clearly better luster")
	saying.Check(t, best("a", false, true), "“a” has the best luster, and none clearly ships more boats")
	saying.Check(t, best("a", false, false), "None clearly ships more boats than “a”, and none has clearly better luster")
	saying.Check(t, tradeoff(rival{name: "a", boats: saying.Judged(1, 0.5), luster: saying.Judged(-0.05, 0.04)}, "b"), "The most boats cost no luster to speak of: “a” stays within 0.1 point of the best")
	saying.Check(t, tradeoff(rival{name: "a", boats: saying.Judged(1, 0.5), luster: saying.Judged(-0.5, 0.2)}, "b"), "The most boats cost luster: “a” is 0.50 points below “b”")
	saying.Check(t, tradeoff(rival{name: "a", boats: saying.Judged(1, 0.5), luster: saying.Judged(-0.09, 0.02)}, "b"), "The most boats cost hardly any luster: “a” is 0.09 points below “b”")
	saying.Check(t, tradeoff(rival{name: "a", boats: saying.Judged(1, 2), luster: saying.Judged(-0.5, 0.2)}, "b"), "“b” has the best luster, and it is not clear that any ships more boats")
	saying.Check(t, tradeoff(rival{name: "a", boats: saying.Judged(1, 0.5), luster: saying.Judged(-0.5, 0.6)}, "b"), "It is not clear that more boats cost luster: “a” ships the most")
}

func TestBetterNeedsAClearGainAndNoClearLoss(t *testing.T) {
	up, down, open, tiny := saying.Judged(1, 0.5), saying.Judged(-1, 0.5), saying.Judged(1, 2), saying.Judged(-0.05, 0.01)
	for _, test := range []struct {
		boats, luster stats.Difference
		want          bool
	}{{up, up, true}, {up, open, true}, {up, down, false}, {open, up, true}, {open, open, false}, {down, up, false}, {up, tiny, true}, {open, tiny, false}} {
		if got := better(rival{boats: test.boats, luster: test.luster}); got != test.want {
			t.Errorf("boats %+v, luster %+v: %t", test.boats.Mean, test.luster.Mean, got)
		}
	}
}

func TestSeason(t *testing.T) {
	even := []float64{9, 9.1, 8.9, 9}
	saying.Check(t, season("x", [4][]float64{even, even, even, even}), "x: no season is clearly slower than another")
	saying.Check(t, season("x", [4][]float64{even, {8, 8.1, 8, 8.1}, even, {10, 10.3, 10, 10.1}}), "x: from April to June an open week ships 2.05 fewer boats than from October to December")
	saying.Check(t, season("x", [4][]float64{even, {9.1, 8.9, 9, 9}, nil, {9, 9.2, 8.8, 9}}), "x: no season is clearly slower than another")
	saying.Check(t, season("x", [4][]float64{}), "x: no season is clearly slower than another")
}

func TestLimit(t *testing.T) {
	p := &sim.Plan{Crafts: []sim.Craft{{Name: "lamination"}}, Places: []sim.Place{{Name: "booth"}}}
	saying.Check(t, limit(p, nil), "no craft and no place holds work back: molds do, or the limit of the floor.")
	saying.Check(t, limit(p, []study.Limit{{Pool: 0, Wait: 1.9}}), "no craft and no place holds work back: molds do, or the limit of the floor.")
	saying.Check(t, limit(p, []study.Limit{{Pool: 0, Wait: 67, Load: 0.76}, {Pool: 1, Wait: 33}}), "lamination; work waits 67 h a week for its people, busy 76 % of the hours there are.")
	saying.Check(t, limit(p, []study.Limit{{Pool: 0, Wait: 67, Load: 0.74}}), "lamination; work waits 67 h a week for its people, busy 74 % of the hours there are. With that many hours to spare, molds hold boats back more, or the limit of the floor.")
	saying.Check(t, limit(p, []study.Limit{{Pool: 1, Wait: 66, Load: 0.3}, {Pool: 0, Wait: 33}}), "booth; work waits 66 h a week for a free one, busy 30 % of all hours, nights and weekends counted. Next: lamination, 33 h.")
}

func TestFull(t *testing.T) {
	p := &sim.Plan{Crafts: []sim.Craft{{Name: "lamination"}}, Places: []sim.Place{{Name: "booth"}}}
	saying.Check(t, full(p, []study.Limit{{Pool: 0, Load: 0.98}}), "")
	saying.Check(t, full(p, []study.Limit{{Pool: 0, Load: 0.98}, {Pool: 1, Load: 0.996}}), "“booth” has more to do all year than its hours allow: work for it piles up.")
	saying.Check(t, full(p, []study.Limit{{Pool: 0, Load: 1}, {Pool: 1, Load: 1}}), "“lamination” and “booth” have more to do all year than their hours allow: work for them piles up.")
}

func TestDemand(t *testing.T) {
	frame := record.Frame{To: 1, Shut: nil}
	saying.Check(t, binds("8.7", "8.8", saying.Judged(0.5, 0.1).Summary), "8.7 boats a week could be shipped, orders come in for 8.8: demand binds.")
	saying.Check(t, binds("8.7", "8.8", saying.Judged(-0.5, 0.1).Summary), "8.7 boats a week could be shipped, orders come in for 8.8: the plant binds, and the backlog grows.")
	saying.Check(t, binds("8.7", "8.8", saying.Judged(-0.5, 0.6).Summary), "8.7 boats a week could be shipped, orders come in for 8.8: too close to say whether demand or the plant binds.")
	saying.Check(t, binds("8.7", "8.8", stats.Summary{N: 1, Mean: 1, Low: 1, High: 1}), "8.7 boats a week could be shipped, orders come in for 8.8: too close to say whether demand or the plant binds.")
	one := &Study{Alternatives: []Alternative{{Runs: study.Runs{Outcomes: []study.Outcome{{Capacity: &record.Result{Frame: frame}}}}}}}
	saying.Check(t, one.Demand(), "")
}

func TestLongestNamesTheLargestRest(t *testing.T) {
	for u := setting; u < uses; u++ {
		var mean [uses]float64
		mean[worked], mean[u] = 20, 90
		saying.Check(t, longest(mean), "A mold is worked on 20 of its 168 hours a week; most of the rest, 90 hours, "+phrases[u])
	}
}

// Every state of a mold is one use or out of rotation, and every use has a
// name and a phrase.
func TestEveryStateHasAUse(t *testing.T) {
	seen := map[use]bool{}
	for state := range record.States {
		u, ok := useOf(state)
		switch out := record.StateName(state) == record.OutOfUse.String() || record.StateName(state) == record.RotationFull.String(); {
		case ok == out:
			t.Errorf("%q is counted: %t", record.StateName(state), ok)
		case ok:
			seen[u] = true
		}
	}
	for u := range uses {
		if !seen[u] || useNames[u] == "" || phrases[u] == "" {
			t.Errorf("use %d: seen %t, name %q, phrase %q", u, seen[u], useNames[u], phrases[u])
		}
	}
}

func TestMoldHoursSumToTheWeek(t *testing.T) {
	r := &record.Result{MoldHours: make([][12][record.States]clock.Time, 2)}
	r.MoldHours[0][3][record.Curing] = 3000
	r.MoldHours[0][4][record.Laminating] = 1000
	r.MoldHours[0][4][record.OutOfUse] = 9999
	a := &Alternative{Runs: study.Runs{Outcomes: []study.Outcome{{Capacity: r}, {Capacity: r}}},
		Plan: &sim.Plan{Models: []sim.Model{{Name: "Rush 23"}}, Parts: []sim.Part{{Name: "hull"}, {Name: "seat"}}}}
	rows := moldHours(a)
	if len(rows) != 1 || rows[0].Name != "Rush 23 hull" {
		t.Fatalf("rows %+v", rows)
	}
	sum := 0.0
	for _, h := range rows[0].Values {
		sum += h
	}
	if math.Abs(sum-168) > 1e-9 || math.Abs(rows[0].Values[worked]-42) > 1e-9 || math.Abs(rows[0].Values[held]-126) > 1e-9 {
		t.Errorf("hours %v, sum %v", rows[0].Values, sum)
	}
}

// runs of boats and luster, one pair a replication.
func alternativeOf(name string, boats []int, luster float64) Alternative {
	a := Alternative{Runs: study.Runs{Name: name}, Plan: &sim.Plan{}}
	for i, n := range boats {
		r := &record.Result{Frame: record.Frame{Start: shift.DateOf(2027, 1, 4), To: clock.Week}, Shipped: n, Lusters: []float64{luster + 0.001*float64(i*len(name)%3)}}
		a.Outcomes = append(a.Outcomes, study.Outcome{Capacity: r})
	}
	return a
}

func TestBestIsNotBeaten(t *testing.T) {
	base := alternativeOf("base", []int{80, 81, 80, 81}, 97)
	most := alternativeOf("most", []int{95, 91, 95, 91}, 96)
	finer := alternativeOf("finer", []int{92, 93, 92, 94}, 97)
	fewer := alternativeOf("fewer", []int{70, 71, 70, 72}, 99)
	for _, test := range []struct {
		want string
		all  []Alternative
	}{
		{"most", []Alternative{base, most, fewer}},
		{"finer", []Alternative{base, most, finer, fewer}},
		{"base", []Alternative{base, fewer}},
		{"base", []Alternative{base}},
	} {
		s := &Study{Replications: 4, Years: 1, Alternatives: test.all}
		if got := s.Alternatives[s.Best()].Name; got != test.want {
			t.Errorf("%d alternatives: %s, want %s", len(test.all), got, test.want)
		}
	}
}
