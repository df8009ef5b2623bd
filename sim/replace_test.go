package sim

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

// wearShop is a shop whose molds are replaced after every second turn; the new
// one comes after some hours.
func wearShop(days int, lead float64, molds ...Mold) *shop {
	s := moldShop(days, 6, molds...)
	s.p.Demand.Full = true
	s.p.Life = policy.Life{Limit: 2, Replacement: lead}
	s.p.BreakIn = policy.BreakIn{Coats: []int{1}}
	return s
}

// By hand: pulls at 6 and 13; the worn mold takes 30 h of labor, is away for the
// lead time, gets its coat of wax in an hour, and the next part lies for six.
func TestNewMoldComesAfterItsLeadTime(t *testing.T) {
	for _, c := range []struct{ lead, third, fifth float64 }{{0, 50, 94}, {100, 150, 294}, {168, 218, 430}} {
		d := wearShop(30, c.lead, Mold{Surface: 0.1}).run(t)
		d.pullsAt(t, 6, 13, c.third, c.third+7, c.fifth)
		if d.notes[record.Retired] == 0 || d.notes[record.Resurfaced] != 0 {
			t.Errorf("lead %v h: %v", c.lead, d.notes)
		}
	}
}

// away adds up the hours that a mold is out of use.
type away struct {
	record.Nothing
	hours clock.Time
}

func (a *away) Span(s *record.Span) {
	if s.Mold == 0 && s.Doing == record.OutOfUse {
		a.hours += s.To - s.From
	}
}

// The wait for a new mold is time out of use, to the hour.
func TestWaitForANewMoldIsOutOfUse(t *testing.T) {
	s, a := wearShop(7, 100, Mold{}), &away{}
	if err := Simulate(s.p, steadyAir(), 1, 0, a); err != nil {
		t.Fatal(err)
	}
	if a.hours != clock.FromHours(100) {
		t.Errorf("out of use for %v, want 100 h", a.hours.Hours())
	}
}

// A reserve mold works while the new one is on its way, and the rotation stays
// within its plan (the watcher of the run looks after every instant).
func TestReserveWorksUntilTheNewMoldComes(t *testing.T) {
	with := wearShop(20, 100, Mold{}, Mold{Reserve: true}).run(t)
	without := wearShop(20, 100, Mold{}).run(t)
	if len(with.pulls) <= len(without.pulls) || with.notes[record.ReserveIn] == 0 {
		t.Errorf("%d pulls with a reserve mold, %d without, %d calls", len(with.pulls), len(without.pulls), with.notes[record.ReserveIn])
	}
}

// A lead time changes nothing where no mold is replaced.
func TestLeadTimeIsNeutralWithoutReplacement(t *testing.T) {
	pulls := func(lead float64) []record.Pull {
		s := wearShop(20, lead, Mold{})
		s.p.Life.Resurfaces = 1000
		return s.run(t).pulls
	}
	a, b := pulls(0), pulls(1000)
	if len(a) != len(b) || len(a) < 10 {
		t.Fatalf("%d and %d pulls", len(a), len(b))
	}
	for i := range a {
		if a[i] != b[i] {
			t.Errorf("pull %d: %+v, %+v", i, a[i], b[i])
		}
	}
}
