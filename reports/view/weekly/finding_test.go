package weekly

import (
	"strings"
	"testing"
	"time"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
	"moldturn/sim/study"
)

// Both sides of each switch of the rule.
func TestLimitsFinding(t *testing.T) {
	for _, c := range []struct {
		s    season
		want string
	}{
		{season{}, "No crew and no place holds work back in any month"},
		{season{year: "hoist", yearWait: 1, worst: "hoist", worstWait: 1.99, usual: 1, month: time.July}, "No crew and no place"},
		{season{year: "hoist", yearWait: 1, worst: "hoist", worstWait: 2, usual: 1, month: time.July}, "July's limit is the hoist: work waits 2 h a week for it, over the year 1 h"},
		{season{year: "booth", yearWait: 40, worst: "booth", worstWait: 49.9, usual: 40, month: time.May}, "Work waits longest for the booth, about 40 h a week all year; no month stands out"},
		{season{year: "booth", yearWait: 40, worst: "booth", worstWait: 50, usual: 40, month: time.May}, "May's limit is the booth"},
		{season{year: "booth", yearWait: 40, worst: "gel crew", worstWait: 90, usual: 30, month: time.August}, "Over the year work waits longest for the booth, 40 h a week; in August for the gel crew, 90 h"},
	} {
		if got := limitsFinding(c.s); !strings.Contains(got, c.want) {
			t.Errorf("%+v: %q, want %q", c.s, got, c.want)
		}
	}
}

func lossesOf(boats float64, of ...float64) *Lost {
	l := &Lost{Boats: boats}
	for i, b := range of {
		l.Causes = append(l.Causes, Loss{Name: string(rune('a' + i)), Boats: b})
	}
	return l
}

func TestLostFinding(t *testing.T) {
	for _, c := range []struct {
		l    *Lost
		want string
	}{
		{lossesOf(400, 12, 7.9), "No wait of molds is worth naming: all together 19.9 boats a year of 400"},
		{lossesOf(400, 12, 8), "Two waits make 100 %"},
		{lossesOf(100, 67, 33), "One wait makes 67 % of the mold-hours that waiting costs, worth 67 boats a year: a"},
		{lossesOf(100, 66, 34), "Two waits make 100 %"},
		{lossesOf(100, 34, 33, 33), "Two waits make 67 % of the mold-hours that waiting costs, worth 67 boats a year: a; b"},
		{lossesOf(100, 30, 20, 17, 17, 16), "Three waits make 67 %"},
		{lossesOf(100, 30, 20, 16, 17, 17), "No few waits of molds stand out: the largest, a, makes 30 % of 100 boats a year"},
	} {
		if got := lostFinding(c.l); !strings.HasPrefix(got, c.want) {
			t.Errorf("%v: %q, want %q", c.l.Causes, got, c.want)
		}
	}
}

// A year in which one mold is worked on or waits, worked out by hand: it ships 10
// boats in 8,760 h, of which it waits 876 h for the gel crew and 1,752 h for a
// booth; a second mold stands in reserve.
func yearOfOne() (*study.Runs, *sim.Plan) {
	const h = clock.Hour
	p := &sim.Plan{Crafts: []sim.Craft{{Name: "gel"}}, Places: []sim.Place{{Name: "booth"}}}
	x := record.NewTally(record.Frame{Start: shift.DateOf(2027, 1, 4), To: year, Pools: 2, Crafts: 1, Parts: 1, Models: 1, Molds: 2})
	span := func(mold int32, s record.Span, from, to clock.Time) {
		s.Job, s.Order, s.Mold, s.From, s.To = mold+1, 0, mold, from, to
		x.Span(&s)
	}
	span(0, record.Span{Cause: record.Cause{Reason: record.NoCrew, Of: 0}}, 0, 876*h)
	span(0, record.Span{Cause: record.Cause{Reason: record.NoPlace, Of: 0}}, 876*h, 3*876*h)
	span(0, record.Span{Working: true, Doing: record.Curing}, 3*876*h, year)
	span(1, record.Span{Working: true, Doing: record.OutOfUse}, 0, 4000*h)
	span(1, record.Span{Cause: record.Cause{Reason: record.RotationFull, Of: -1}}, 4000*h, year)
	x.Use(&record.Use{Pool: 0, Used: 1, Capacity: 2, To: year})
	x.Use(&record.Use{Pool: 1, Used: 1, Capacity: 1, To: year})
	for range 10 {
		x.Ship(&record.Ship{At: h, Due: clock.Never})
	}
	return &study.Runs{Name: "base", Outcomes: []study.Outcome{{Capacity: x.Result()}}}, p
}

func TestLostOf(t *testing.T) {
	r, p := yearOfOne()
	l, ok := LostOf(r, p)
	if !ok || l.Boats != 10 || l.PerBoat != 876 || len(l.Causes) != 2 {
		t.Fatalf("%+v, %v", l, ok)
	}
	if l.Causes[0] != (Loss{"a free booth", 1752, 2}) || l.Causes[1] != (Loss{"gel crew", 876, 1}) {
		t.Errorf("%+v", l.Causes)
	}
	if _, ok := LostOf(&study.Runs{Outcomes: []study.Outcome{{Capacity: &record.Result{}}}}, p); ok {
		t.Error("runs that do not know the causes have losses")
	}
}

func TestFewCauses(t *testing.T) {
	l := lossesOf(100, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3)
	if n := len(l.few()); n != 10 {
		t.Errorf("%d bars for 10 causes", n)
	}
	l = lossesOf(100, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2)
	if few := l.few(); len(few) != 10 || few[9].Name != "2 others" || few[9].Boats != 5 {
		t.Errorf("%+v", few)
	}
}

// The worst month and the year, from weeks that are given.
func TestSeasonOf(t *testing.T) {
	p := &sim.Plan{Crafts: []sim.Craft{{Name: "gel"}}, Places: []sim.Place{{Name: "booth"}}}
	pools := []study.PoolWeeks{{Pool: 0}, {Pool: 1}}
	for w := range 52 {
		pools[0].Weeks[w] = study.WeekUse{Open: 3, Wait: 10, Has: true}
		pools[1].Weeks[w] = study.WeekUse{Open: 3, Wait: 2, Has: true}
		if study.WeekThursday(w).Month() == time.July {
			pools[1].Weeks[w].Wait = 50
		}
	}
	s := seasonOf(pools, p)
	usual := (48*2 + 4*50) / 52.0
	if s.year != "gel crew" || s.yearWait != 10 || s.worst != "booth" || s.worstWait != 50 || s.month != time.July || s.usual != usual {
		t.Errorf("%+v", s)
	}
}

// The second is named only where it is worth it, a month that is shut has no row.
func TestByMonth(t *testing.T) {
	p := &sim.Plan{Crafts: []sim.Craft{{Name: "gel"}}, Places: []sim.Place{{Name: "booth"}}}
	pools := []study.PoolWeeks{{Pool: 0}, {Pool: 1}}
	for w := range 9 { // to the first of March
		pools[0].Weeks[w] = study.WeekUse{Open: 2, Wait: 1.9, Has: true}
		pools[1].Weeks[w] = study.WeekUse{Open: 2, Wait: 30, Has: true}
		if study.WeekThursday(w).Month() == time.February {
			pools[0].Weeks[w].Wait = 31
		}
	}
	got := ""
	for _, r := range byMonth(pools, p).Rows {
		for _, c := range r.Cells {
			got += c.Text + "|"
		}
	}
	if want := "January|booth|30|–|–|February|gel crew|31|booth|30|March|booth|30|–|–|"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestSections(t *testing.T) {
	r, p := yearOfOne()
	for blocks, of := range map[int]func(*study.Runs, *sim.Plan, int) (n int){
		2: func(r *study.Runs, p *sim.Plan, y int) int { s, _, _ := Limits(r, p, y); return len(s.Blocks) },
		1: func(r *study.Runs, p *sim.Plan, y int) int { s, _, _ := Waits(r, p, y); return len(s.Blocks) },
	} {
		if of(r, p, 1) != blocks {
			t.Error("no figure")
		}
		if of(&study.Runs{Outcomes: []study.Outcome{{Capacity: &record.Result{}}}}, p, 1) != 0 {
			t.Error("a figure of runs that do not know their weeks")
		}
	}
}
