package scenarios

import (
	"context"
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// several hands every fact to several tallies.
type several []*record.Tally

func (s several) Span(x *record.Span) { each(s, x, (*record.Tally).Span) }
func (s several) Use(x *record.Use)   { each(s, x, (*record.Tally).Use) }
func (s several) Pull(x *record.Pull) { each(s, x, (*record.Tally).Pull) }
func (s several) Ship(x *record.Ship) { each(s, x, (*record.Tally).Ship) }
func (s several) Note(x *record.Note) { each(s, x, (*record.Tally).Note) }

func each[T any](s several, x *T, tell func(*record.Tally, *T)) {
	for _, t := range s {
		copied := *x
		tell(t, &copied)
	}
}

// sums are figures that add up over parts of a run.
type sums struct {
	Models    []record.Model
	Pulls     []int
	Hold      []clock.Time
	Load      [][12]record.Load
	MoldHours [][12][record.States]clock.Time
	Waits     [12][]clock.Time
	Lusters   int
	Notes     [record.NoteKinds]int
}

func sumsOf(rs ...*record.Result) sums {
	var s sums
	for _, r := range rs {
		if s.Models == nil {
			s.Models, s.Load = make([]record.Model, len(r.Models)), make([][12]record.Load, len(r.Load))
			s.Pulls, s.Hold = make([]int, len(r.Parts)), make([]clock.Time, len(r.Parts))
			s.MoldHours = make([][12][record.States]clock.Time, len(r.MoldHours))
			for m := range s.Waits {
				s.Waits[m] = make([]clock.Time, len(r.Waits[m]))
			}
		}
		s.add(r)
	}
	return s
}

func (s *sums) add(r *record.Result) {
	for i, m := range r.Models {
		x := &s.Models[i]
		x.Shipped, x.Dated, x.OnTime, x.AtTarget = x.Shipped+m.Shipped, x.Dated+m.Dated, x.OnTime+m.OnTime, x.AtTarget+m.AtTarget
		x.Conceded, x.LeadSum, x.LateSum = x.Conceded+m.Conceded, x.LeadSum+m.LeadSum, x.LateSum+m.LateSum
	}
	for i, p := range r.Parts {
		s.Pulls[i], s.Hold[i] = s.Pulls[i]+p.Pulls, s.Hold[i]+p.HoldSum
	}
	for i := range r.Load {
		for m, l := range r.Load[i] {
			x := &s.Load[i][m]
			x.Used, x.Over, x.Capacity = x.Used+l.Used, x.Over+l.Over, x.Capacity+l.Capacity
		}
	}
	for i := range r.MoldHours {
		for m := range r.MoldHours[i] {
			for k, h := range r.MoldHours[i][m] {
				s.MoldHours[i][m][k] += h
			}
		}
	}
	for m := range r.Waits {
		for i, w := range r.Waits[m] {
			s.Waits[m][i] += w
		}
	}
	s.Lusters += len(r.Lusters)
	for k, n := range r.Notes {
		s.Notes[k] += n
	}
}

// What straddles the end of the warm-up is counted once: boats by when they
// ship, parts by when they are pulled, hours on the side on which they fall. So
// the warm-up and the rest add up to the whole run, whatever instant cuts it.
func TestWhatStraddlesTheCutIsCountedOnce(t *testing.T) {
	s := warmed(t, 1, 1)
	plant := s.Base
	air, err := plant.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	for _, cut := range []clock.Time{plant.Frame.From, plant.Frame.From + 3*clock.Day + 9*clock.Hour + 17*clock.Minute} {
		whole, before, after := plant.Frame, plant.Frame, plant.Frame
		whole.From, before.From, before.To, after.From = 0, 0, cut, cut
		all := several{record.NewTally(whole), record.NewTally(before), record.NewTally(after)}
		if err := sim.Simulate(plant.Plan(), air, 3, 0, all); err != nil {
			t.Fatal(err)
		}
		w, b, a := all[0].Result(), all[1].Result(), all[2].Result()
		if diff := cmp.Diff(sumsOf(w), sumsOf(b, a)); diff != "" {
			t.Errorf("cut at %v: the parts differ from the whole:\n%s", cut, diff)
		}
		if b.Models[0].Shipped == 0 || a.Models[0].Shipped == 0 || len(b.Lusters) == 0 {
			t.Fatal("nothing was shipped on one side of the cut")
		}
		spent := clock.Time(0)
		for _, months := range a.MoldHours {
			for _, states := range months {
				for _, h := range states {
					spent += h
				}
			}
		}
		if want := clock.Time(after.Molds) * (after.To - cut); spent != want {
			t.Errorf("cut at %v: %v of mold hours after it, want %v", cut, spent, want)
		}
	}
}

// The warm-up only chooses what is counted: with the same years in all, the
// same weeks ship the same boats.
func TestWarmUpChangesNothingButTheCount(t *testing.T) {
	var weeks [2][]int
	for i, warm := range []int{1, 0} {
		plant := warmed(t, 2-warm, warm).Base
		setup := &study.Setup{Alternatives: []study.Alternative{{Capacity: plant.Capacity, Frame: plant.Frame, Climate: plant.Climate, Air: plant.Air}}, Replications: 1, Seed: 2}
		runs, err := study.Compare(context.Background(), setup)
		if err != nil {
			t.Fatal(err)
		}
		r := runs[0].Outcomes[0].Capacity
		weeks[i] = r.RunShips
		first := plant.Frame.Counted()
		for k, n := range r.WeekShips {
			if r.RunShips[first+k] != n {
				t.Errorf("warm-up of %d years, week %d: %d boats by week of the run, %d by week of the frame", warm, first+k, r.RunShips[first+k], n)
			}
		}
	}
	if diff := cmp.Diff(weeks[0], weeks[1]); diff != "" {
		t.Error(diff)
	}
}

// A plant that starts without parts on the floor needs a warm-up, and the year
// that is left out by default is enough.
func TestWarmUpOfTheDemo(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates 70 years")
	}
	for _, test := range []struct {
		warm  int
		short bool
	}{{1, false}, {0, true}} {
		s := warmed(t, 3, test.warm)
		a := s.Study()[0]
		a.Dated = nil
		runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: []study.Alternative{a}, Replications: 10, Seed: 1, Workers: 2})
		if err != nil {
			t.Fatal(err)
		}
		w := runs[0].WarmUp(1)
		if !w.Known || w.Short != test.short {
			t.Errorf("%d years cut: known %v, too short %v, settled in week %d, %.2f ± %.2f", test.warm, w.Known, w.Short, w.Settle, w.Late.Mean, w.Late.Half)
		}
	}
}

func warmed(t *testing.T, years, warm int) *Scenario {
	t.Helper()
	data, _ := BundledFile("fenwater")
	ch, complaints := ParseChange("--set", fmt.Sprintf("run.warm_up=%d", warm))
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	s, complaints := Load("fenwater.yaml", data, Options{Years: years, Sets: []Change{ch}})
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	return s
}
