package scenarios

import (
	"context"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// demoAhead is the bundled floor with some weeks and futures to look at.
func demoAhead(t *testing.T, weeks, futures int) *ahead.Setup {
	t.Helper()
	s, f := demoFloor(t)
	st, complaints := s.StartFrom(f, FloorOptions{Weeks: weeks})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	return &ahead.Setup{Plan: st.Plant.Plan(), Start: st.Start, Air: st.Plant.Air, Seed: 3, Futures: futures, Workers: 2}
}

func runAhead(t *testing.T, s *ahead.Setup) []ahead.Future {
	t.Helper()
	futures, err := s.Run(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	return futures
}

// What stands on a board is in the futures: chances are counts of days, every
// pull of a future is one thing, strips keep to the turns of the policy, a slot
// is never worse than the likely day, and no list flushes longer than its parts
// do as they come.
func TestBoardIsWhatTheFuturesDo(t *testing.T) {
	s := demoAhead(t, 3, 30)
	futures := runAhead(t, s)
	b := ahead.BoardOf(s, futures, 14)
	pulls, strips, sprays := 0, 0, 0
	for i := range b.Days {
		d := &b.Days[i]
		for _, x := range d.Pulls {
			pulls++
			n := 0
			for f, task := range x.In {
				if task == nil {
					continue
				}
				if got := nthPull(&futures[f], x.Mold, x.Nth); got != task.Began {
					t.Fatalf("day %d: pull %d of mold %d begins at %v in future %d, on the board at %v", i, x.Nth, x.Mold, got, f, task.Began)
				}
				if int((task.Began-s.Morning())/clock.Day) == i {
					n++
				}
			}
			if got := float64(n) / 30; got < ahead.Least || got != x.Chance {
				t.Errorf("day %d: pull of mold %d has chance %v, counted %v", i, x.Mold, x.Chance, got)
			}
		}
		for _, x := range d.Strips {
			strips++
			if hot, cool := s.Plan.Strip.Hot, s.Plan.Strip.Cool; x.Turns < hot || x.Turns > cool {
				t.Errorf("day %d: strip of mold %d after %d turns, allowed %d to %d", i, x.Mold, x.Turns, hot, cool)
			}
			if x.FreeDay < x.FreeNow {
				t.Errorf("day %d: the slot of mold %d has %v free, the likely day %v", i, x.Mold, x.FreeDay, x.FreeNow)
			}
		}
		for _, x := range d.Booths {
			for _, list := range x.Lists {
				sprays += len(list)
			}
			if x.Flushing > x.AsRunTime {
				t.Errorf("day %d: %v of flushes in the order of colors, %v as they come", i, x.Flushing, x.AsRunTime)
			}
		}
	}
	if pulls < 20 || strips < 5 || sprays < 20 {
		t.Errorf("only %d pulls, %d strips, %d sprayings in two weeks", pulls, strips, sprays)
	}
}

// nthPull is when the n-th pull of a mold begins.
func nthPull(f *ahead.Future, mold int32, n int) clock.Time {
	var at []clock.Time
	for i := range f.Tasks {
		if task := &f.Tasks[i]; task.Doing == record.Pulling && task.Mold == mold && task.Began != clock.Never {
			at = append(at, task.Began)
		}
	}
	if n > len(at) {
		return clock.Never
	}
	return at[n-1]
}

// Without a change the futures are the same, task for task, and the setup is not
// touched by one. A booth that is down sprays nothing, an idle Saturday that is
// worked is worked, people who are out are not there, a mold that is stuck is not
// used.
func TestChangesReachTheFloor(t *testing.T) {
	s := demoAhead(t, 2, 4)
	before := fmt.Sprint(s.Start.Molds, s.Start.Down, s.Start.Out, s.Start.Days, s.Start.Work)
	plain := runAhead(t, s)
	if same := runAhead(t, s.With()); !reflect.DeepEqual(plain, same) {
		t.Error("no change changes something")
	}
	first := int(s.Morning() / clock.Day)
	end := s.Morning() + 4*clock.Day
	const booth, gel, mold = 0, 1, 6
	changes := []ahead.Change{
		{Down: []sim.StartDown{{Place: booth, Unit: 1, From: 0, To: end}}},
		{Out: []sim.StartOut{{Craft: gel, People: 1, From: first + 1, To: first + 1}}},
		{Days: []sim.StartDay{{From: first + 4, To: first + 4, Extra: true, Craft: sim.None}}},
		{Stuck: []ahead.Stuck{{Mold: mold, Until: end}}},
	}
	if s.Plan.Places[booth].Name != "booth" || s.Plan.Crafts[gel].Name != "gel" {
		t.Fatalf("the demo has another order: %s, %s", s.Plan.Places[booth].Name, s.Plan.Crafts[gel].Name)
	}
	changed := runAhead(t, s.With(changes...))
	fewer := clock.Time(0) // one who is out may be one who would have been absent
	for f := range changed {
		for i := range changed[f].Tasks {
			x := &changed[f].Tasks[i]
			if x.Place == booth && x.Unit == 1 && x.Began > s.Start.At && x.Began < end {
				t.Errorf("future %d: booth 2 is used at %v", f, x.Began)
			}
			if x.Mold == mold && x.Began != clock.Never && x.Began < end {
				t.Errorf("future %d: the mold that is stuck is used at %v", f, x.Began)
			}
		}
		if a, b := plain[f].There[gel][1], changed[f].There[gel][1]; b > a {
			t.Errorf("future %d: gel has %v at work with one out, %v without", f, b, a)
		} else {
			fewer += a - b
		}
		if plain[f].There[2][4] != 0 || changed[f].There[2][4] == 0 {
			t.Errorf("future %d: Saturday %v, worked %v", f, plain[f].There[2][4], changed[f].There[2][4])
		}
	}
	if fewer < 4*clock.Hour*clock.Time(len(changed)) {
		t.Errorf("one of gel is out, %v of work less in %d futures", fewer, len(changed))
	}
	if after := fmt.Sprint(s.Start.Molds, s.Start.Down, s.Start.Out, s.Start.Days, s.Start.Work); after != before {
		t.Error("a change is left in the setup")
	}
}

// A worked Saturday costs no more than the people of the plant for its hours, and
// hours at work are counted once. An event that costs nothing gets no recovery.
func TestWaysToRecoverAreWeighed(t *testing.T) {
	s := demoAhead(t, 4, 12)
	first := int(s.Morning() / clock.Day)
	away := s.Morning() + 7*clock.Day
	e, _, _, err := ahead.Weigh(context.Background(), s, []ahead.Change{{Words: "mold", Stuck: []ahead.Stuck{{Mold: 6, Until: away}}}})
	if err != nil {
		t.Fatal(err)
	}
	if !e.Costs() || len(e.Options) < 3 || len(e.Hurt) == 0 {
		t.Fatalf("a mold that is stuck for a week costs %v to %v days, with %d ways", e.Lost.Low, e.Lost.High, len(e.Options))
	}
	for i := range e.Options {
		o := &e.Options[i]
		if o.Back > e.Lost.Mean || o.Least > o.Back || o.Back > o.Most {
			t.Errorf("%s wins back %v (%v to %v) of %v", o.Words, o.Back, o.Least, o.Most, e.Lost.Mean)
		}
		if strings.HasPrefix(o.Words, "Saturday") {
			if people := staff(s.Plan); o.Hours < 4*people || o.Hours > 12*people {
				t.Errorf("%s takes %v people-hours of %v people", o.Words, o.Hours, people)
			}
		}
	}
	e, _, _, err = ahead.Weigh(context.Background(), s, []ahead.Change{{Words: "Saturday", Days: []sim.StartDay{{From: first + 4, To: first + 4, Extra: true, Craft: sim.None}}}})
	if err != nil {
		t.Fatal(err)
	}
	if e.Costs() || !e.Gains() || e.Options != nil {
		t.Errorf("a worked Saturday: later by %v to %v days, %d ways to recover", e.Net.Low, e.Net.High, len(e.Options))
	}
}

// staff is how many people a plant has.
func staff(p *sim.Plan) float64 {
	n := 0
	for i := range p.Crafts {
		for _, c := range p.Crafts[i].Crews {
			n += c.People
		}
	}
	return float64(n)
}
