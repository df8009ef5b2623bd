package floor

import (
	"strings"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Both sides of each switch of the rule.
func TestMoldsFinding(t *testing.T) {
	for _, c := range []struct {
		s    share
		want string
	}{
		{share{waits: 0.10, idle: 0.10, reason: "the gel crew"}, "While people are at work, molds wait for 10 % of the time, most for the gel crew"},
		{share{waits: 0.0999, idle: 0.0999, reason: "the gel crew"}, "No wait stands out"},
		{share{waits: 0.20, idle: 0.21, reason: "the gel crew"}, "nothing is begun in molds that are ready for 21 % of the time"},
		{share{waits: 0.0999, idle: 0.10}, "nothing is begun in molds that are ready for 10 % of the time"},
		{share{}, "No wait stands out"},
	} {
		if got := moldsFinding(c.s); !strings.Contains(got, c.want) {
			t.Errorf("%+v: %q, want %q", c.s, got, c.want)
		}
	}
}

// floorOf is a plan with two molds, and what they do in a day.
func floorOf() (*sim.Plan, *record.Recorder) {
	p := &sim.Plan{Start: shift.DateOf(2027, 1, 4), Crafts: []sim.Craft{{Name: "gel"}, {Name: "lay-up crew"}}, Places: []sim.Place{{Name: "booth", Kind: sim.Booth, Count: 2}},
		Models: []sim.Model{{Name: "Sedge 20"}}, Parts: []sim.Part{{Name: "hull"}}, Molds: []sim.Mold{{Name: "A"}, {Name: "B"}},
		Routes: []sim.Route{{Name: "hull", Steps: []sim.Step{{Name: "base"}}}}}
	const h = clock.Hour
	r := record.NewRecorder(0, clock.Day)
	span := func(mold int32, doing record.Doing, c record.Cause, from, to clock.Time) {
		r.Span(&record.Span{Job: mold + 1, Order: mold, Mold: mold, Working: c.Reason == record.NoReason, Doing: doing, People: 2, Cause: c, From: from, To: to, Held: []record.Hold{{Place: 0, Unit: int16(mold)}}})
	}
	span(0, record.Spraying, record.Cause{}, -2*h, 1*h)
	span(0, record.Masking, record.Cause{Reason: record.NoCrew, Of: 0}, 1*h, 2*h)
	span(0, record.Spraying, record.Cause{Reason: record.NoCrew, Of: 0}, 2*h, 5*h)
	span(0, record.Curing, record.Cause{}, 5*h, 9*h)
	span(0, record.Pulling, record.Cause{Reason: record.OffShift, Of: 1}, 9*h, 30*h)
	span(1, record.OutOfUse, record.Cause{}, 0, 12*h)
	span(1, record.Idle, record.Cause{Reason: record.NoOrder, Of: -1}, 12*h, 24*h)
	return p, r
}

func TestStretches(t *testing.T) {
	p, r := floorOf()
	got := stretches(p, r)
	want := []string{"sprayed", "waits for the gel crew", "curing", "ready to pull, waits for the next shift of the lay-up crew", "in reserve or retired", "waits for an order"}
	if len(got) != len(want) {
		t.Fatalf("%d stretches, want %d", len(got), len(want))
	}
	for i, s := range got {
		if s.label != want[i] {
			t.Errorf("stretch %d: %q, want %q", i, s.label, want[i])
		}
	}
	if got[0].from != 0 || got[1].to-got[1].from != 4*clock.Hour || got[3].to != clock.Day {
		t.Errorf("not cut and joined: %+v", got)
	}
	x := shares(got, nil) // of 24 h of A and 12 h of B in rotation
	if x.waits != 4.0/36 || x.idle != 12.0/36 || x.reason != "the gel crew" || x.most != x.waits {
		t.Errorf("shares %+v", x)
	}
}

// Every way to work has a word and every reason ends the sentence.
func TestWordsAreThere(t *testing.T) {
	p, _ := floorOf()
	for r := record.NoOrder; r < record.Reasons; r++ {
		if words := waitsFor(p, record.Cause{Reason: r, Of: 0}); words == "" {
			t.Errorf("%s: no words", r)
		}
	}
	for d := record.Waxing; d < record.Trimming; d++ {
		if doingWords[d] == "" {
			t.Errorf("%s: no word", d)
		}
	}
}

// Nights are shaded, breaks are not, and waits are cut at nights.
func TestNights(t *testing.T) {
	const h = clock.Hour
	day, err := shift.Custom([]shift.Interval{{From: 7 * h, To: 11 * h}, {From: 12 * h, To: 16 * h}}, clock.Day)
	if err != nil {
		t.Fatal(err)
	}
	p := &sim.Plan{Start: shift.DateOf(2027, 1, 4), Crafts: []sim.Craft{{Crews: []sim.Crew{{Hours: day}}}}}
	got := nights(p, 0, clock.Day)
	if len(got) != 2 || got[0].to != 7*h || got[1].from != 16*h {
		t.Errorf("%v", got)
	}
	wait := stretch{from: 5 * h, to: 30 * h, state: state{thin: true, what: "an order"}}
	cut := cutAtNights([]stretch{wait, {from: 0, to: clock.Day}}, got)
	ends := [][2]clock.Time{{5 * h, 7 * h}, {7 * h, 16 * h}, {16 * h, 24 * h}, {24 * h, 30 * h}, {0, 24 * h}}
	for i, s := range cut {
		if s.from != ends[i][0] || s.to != ends[i][1] || s.night != (i == 0 || i == 2) {
			t.Errorf("piece %d: %+v", i, s)
		}
	}
	if d := awake(wait, got); len(cut) != len(ends) || d != 15*h {
		t.Errorf("%d pieces, %v outside nights", len(cut), d)
	}
	if got := nights(&sim.Plan{}, 0, clock.Day); got != nil {
		t.Errorf("without crafts: %v", got)
	}
}
