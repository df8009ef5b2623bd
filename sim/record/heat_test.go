package record

import (
	"testing"
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Pulls, strips and looks at the air are counted in the week of the year they
// happen in, over all years, and only while the frame counts.
func TestHeat(t *testing.T) {
	start := shift.DateOf(2027, time.January, 4) // a Monday, of week 0
	year := 364 * clock.Day
	f := Frame{Start: start, From: clock.Week, To: 3 * year, Parts: 1, Pools: 1, Crafts: 1, Target: 97}
	tally := NewTally(f)
	tally.Pull(&Pull{At: clock.Day, BuildUp: 99, Grown: 99}) // before counting
	for _, at := range []clock.Time{20 * clock.Week, 20*clock.Week + year} {
		tally.Note(&Note{At: at, Kind: Season, Value: 1})
		tally.Note(&Note{At: at, Kind: HeatPeak, Value: 91})
		tally.Pull(&Pull{At: at + clock.Hour, Turns: 1, BuildUp: 2, Grown: 1.5, HeatIndex: 88})
		tally.Pull(&Pull{At: at + clock.Day, Turns: 1, BuildUp: 0, Grown: 1, HeatIndex: 86})
		tally.Note(&Note{At: at + clock.Day, Kind: FullStrip})
	}
	tally.Note(&Note{At: 40 * clock.Week, Kind: Season, Value: 0})
	tally.Note(&Note{At: 40 * clock.Week, Kind: HeatPeak, Value: 70})
	tally.Note(&Note{At: 40 * clock.Week, Kind: LightStrip})
	r := tally.Result()
	for w, got := range r.Heat {
		var want Heat
		switch w {
		case 20:
			want = Heat{Pulls: 4, BuildUp: 4, Grown: 5, HeatIndex: 348, Strips: 2, Looks: 2, Hot: 2, Peak: 182}
		case 40:
			want = Heat{Strips: 1, Looks: 1, Peak: 70}
		}
		if got != want {
			t.Errorf("week %d: %+v, want %+v", w, got, want)
		}
	}
	if a, b := r.Heat[20], r.Heat[40]; a.Plus(b) != b.Plus(a) || a.Plus(b).Strips != 3 || a.Plus(b).Peak != 252 || a.Plus(b).Hot != 2 {
		t.Errorf("%+v", a.Plus(b))
	}
}
