package study

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// yearOf is a run over a year of 8 weeks, of which week 3 is shut, in which as
// many boats are shipped and work waits for a craft as given, by week.
func yearOf(boats int, waits ...clock.Time) Outcome {
	f := record.Frame{Start: shift.DateOf(2027, 1, 4), To: 8 * clock.Week, Shut: []bool{3: true}, Pools: 2, Crafts: 1, Models: 1}
	t := record.NewTally(f)
	for w := range clock.Time(8) {
		t.Use(&record.Use{Pool: 0, Used: 1, Capacity: 2, From: w * clock.Week, To: w*clock.Week + clock.Day})
		if int(w) < len(waits) {
			t.Span(&record.Span{Job: 1, Order: 0, Mold: -1, Cause: record.Cause{Reason: record.NoCrew, Of: 0}, From: w * clock.Week, To: w*clock.Week + waits[w]})
		}
	}
	for range boats {
		t.Ship(&record.Ship{At: clock.Day, Due: clock.Never})
	}
	return Outcome{Capacity: t.Result()}
}

// The replication nearest the median is typical, the first of several.
func TestMiddle(t *testing.T) {
	for want, boats := range [][]int{{5}, {9, 7, 2}, {1, 9, 5, 6}, {6, 1, 5, 9}} {
		r := Runs{}
		for _, n := range boats {
			r.Outcomes = append(r.Outcomes, yearOf(n))
		}
		at := [...]int{0, 1, 2, 0}[want]
		if got := r.middle(); got.Replication != at || got.Boats != float64(boats[at])/7 {
			t.Errorf("%v: replication %d with %v a week", boats, got.Replication, got.Boats)
		}
	}
}

// The weeks in which work waits longest, never across a week that is shut; the
// first weeks when nothing waits; none when no row is open.
func TestTightest(t *testing.T) {
	const h = clock.Hour
	for _, c := range []struct {
		waits []clock.Time
		weeks int
		from  clock.Time
		tight bool
		ok    bool
	}{
		{[]clock.Time{h, 3 * h, 2 * h}, 2, 1 * clock.Week, true, true},
		{[]clock.Time{h, h, 9 * h, 0, 9 * h, h, h}, 2, 1 * clock.Week, true, true}, // 1 and 2 as long as 4 and 5
		{[]clock.Time{h, 0, h, 0, h, h, h, h}, 4, 4 * clock.Week, true, true},
		{nil, 3, 0, false, true},
		{[]clock.Time{h}, 5, 0, false, false},
	} {
		r := Runs{Outcomes: []Outcome{yearOf(1, c.waits...), yearOf(1, c.waits...)}}
		if from, tight, ok := r.tightest(0, c.weeks); from != c.from || tight != c.tight || ok != c.ok {
			t.Errorf("%v: %d weeks from %v, tight %v, ok %v", c.waits, c.weeks, from, tight, ok)
		}
	}
}

// Means of open weeks over replications, worked out by hand; a place without
// capacity is left out.
func TestPoolWeeks(t *testing.T) {
	r := Runs{Outcomes: []Outcome{yearOf(1, 4*clock.Hour), yearOf(1, 8*clock.Hour)}}
	got := r.PoolWeeks()
	if len(got) != 1 || got[0].Pool != 0 {
		t.Fatalf("%d crafts and places", len(got))
	}
	if w := got[0].Weeks[0]; w != (WeekUse{Open: 2, Load: 0.5, Wait: 6, Has: true}) {
		t.Errorf("first week: %+v", w)
	}
	if w := got[0].Weeks[3]; w != (WeekUse{}) {
		t.Errorf("a week that is shut: %+v", w)
	}
	if week, hours := got[0].Peak(); week != 0 || hours != 6 {
		t.Errorf("peak of %v h in week %d", hours, week)
	}
	if hours := r.WaitByWeek(); hours[0] != 6 || hours[1] != 0 {
		t.Errorf("waits by week: %v", hours)
	}
	if old := (&Runs{Outcomes: []Outcome{{Capacity: &record.Result{}}}}).PoolWeeks(); old != nil {
		t.Errorf("runs that do not know their weeks: %v", old)
	}
}
