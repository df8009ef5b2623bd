package scenarios

import (
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// turnWatch adds up the turns of molds: from the first gel coat to the pull, in
// hours of the days from Monday to Friday.
type turnWatch struct {
	record.Nothing
	monday clock.Time // midnight before a Monday
	from   clock.Time
	begun  map[int32]clock.Time // by mold
	hours  float64
	turns  int
}

func (w *turnWatch) Span(s *record.Span) {
	if s.Mold < 0 || !s.Working {
		return
	}
	if _, in := w.begun[s.Mold]; !in && s.Part >= 0 && s.Order >= 0 {
		w.begun[s.Mold] = s.From
	}
}

func (w *turnWatch) Pull(p *record.Pull) {
	if b, in := w.begun[p.Mold]; in && p.At >= w.from {
		w.turns++
		w.hours += w.weekdays(b, p.At)
	}
	delete(w.begun, p.Mold)
}

// weekdays is the hours between two instants without Saturdays and Sundays.
func (w *turnWatch) weekdays(from, to clock.Time) float64 {
	sum := clock.Time(0)
	for day := from - (from-w.monday)%clock.Day; day < to; day += clock.Day {
		if (day-w.monday)/clock.Day%7 < 5 {
			sum += min(to, day+clock.Day) - max(from, day)
		}
	}
	return sum.Hours()
}

// A part of the demo is in its mold for two to three working days, from the
// first gel coat to the pull, waits for people and places included.
func TestFenwaterTurns(t *testing.T) {
	s, faults := loaded(t, "fenwater")
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	for replication := range 2 {
		air, err := s.Base.Air(1, replication)
		if err != nil {
			t.Fatal(err)
		}
		w := &turnWatch{from: s.Base.Frame.From, begun: map[int32]clock.Time{}}
		if err := sim.Simulate(s.Base.Capacity, air, 1, replication, w); err != nil {
			t.Fatal(err)
		}
		if hours := w.hours / float64(w.turns); w.turns < 1000 || hours < 48 || hours > 72 {
			t.Errorf("%d turns of %.1f h on working days, want 48 to 72", w.turns, hours)
		}
	}
}
