package record

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// yearFrame starts on Monday, 4 January 2027, and counts its weeks 2 to 5; week
// 3 is shut down.
func yearFrame() Frame {
	return Frame{Start: shift.DateOf(2027, 1, 4), From: 2 * clock.Week, To: 6*clock.Week + clock.Day, Shut: []bool{3: true},
		Pools: 2, Crafts: 1, Parts: 1, Models: 1, Molds: 1, InUse: []int{1}}
}

// Use and waits that reach over the ends of weeks, worked out by hand.
func TestByWeek(t *testing.T) {
	f := yearFrame()
	x := NewTally(f)
	x.Use(&Use{Pool: 0, Used: 3, Capacity: 2, From: 0, To: 2*clock.Week + 5*clock.Hour})
	x.Use(&Use{Pool: 0, Used: 1, Capacity: 4, From: 3*clock.Week - 7*clock.Hour, To: 4*clock.Week + 9*clock.Hour})
	x.Use(&Use{Pool: 1, Used: 1, Capacity: 1, From: 6*clock.Week - clock.Hour, To: 7 * clock.Week})
	wait := Span{Job: 4, Order: 1, Mold: 0, Doing: Laminating, Cause: Cause{NoCrew, 0}, From: 3*clock.Week - clock.Hour, To: 5*clock.Week + 2*clock.Hour}
	x.Span(&wait)
	wait.Job, wait.Cause = -1, Cause{NoPlace, 0} // a mold without a job: no work waits
	x.Span(&wait)
	wait.Job, wait.Order, wait.Mold = 5, -1, -1 // background work is not followed
	x.Span(&wait)
	r := x.Result()
	want := map[[2]int]PoolWeek{
		{0, 2}: {Load{2*5*clock.Hour + 7*clock.Hour, 5 * clock.Hour, 2*5*clock.Hour + 4*7*clock.Hour}, clock.Hour},
		{0, 4}: {Load{9 * clock.Hour, 0, 36 * clock.Hour}, clock.Week},
		{0, 5}: {Load{}, 2 * clock.Hour},
		{1, 5}: {Load{clock.Hour, 0, clock.Hour}, 0},
	}
	for p := range r.ByWeek {
		for w, got := range r.ByWeek[p] {
			if got != want[[2]int{p, w}] {
				t.Errorf("pool %d, week %d: %+v, want %+v", p, w, got, want[[2]int{p, w}])
			}
		}
	}
	open := r.OpenWeeks()
	for w, n := range open {
		if counted := w == 2 || w == 4 || w == 5; counted != (n == 1) {
			t.Errorf("week %d: %d open weeks", w, n)
		}
	}
	lost := 2*clock.Week + 3*clock.Hour
	if r.MoldWaits[0] != lost || r.MoldWaits[1] != lost {
		t.Errorf("molds waited %v and %v, want %v each", r.MoldWaits[0], r.MoldWaits[1], lost)
	}
}

// What molds wait for is what their hours say they wait, whatever the cause.
func TestMoldWaitsAreMoldHours(t *testing.T) {
	x := NewTally(yearFrame())
	at := clock.Time(0)
	for i := range 400 {
		s := Span{Job: int32(i%3) - 1, Order: 1, Mold: 0, Working: i%4 == 0, Doing: Curing, From: at, To: at + clock.Time(i%17)*clock.Hour}
		if s.Cause.Of = -1; !s.Working {
			s.Cause = Cause{Reason(1 + i%int(Reasons-1)), 0}
		}
		x.Span(&s)
		at = s.To
	}
	r := x.Result()
	var waits, hours clock.Time
	for _, d := range r.MoldWaits {
		waits += d
	}
	for month := range r.MoldHours[0] {
		for _, d := range r.MoldHours[0][month][Doings:] {
			hours += d
		}
	}
	if waits != hours || waits == 0 {
		t.Errorf("molds waited %v by cause and %v by reason", waits, hours)
	}
}
