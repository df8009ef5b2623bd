package sim

import (
	"testing"

	"moldturn/sim/clock"
)

// stream orders one-person tasks of an hour every quarter of an hour, so that
// four people are never free together unless they are kept.
func (s *shop) stream(c int16, from, to float64, urgent int8, more func(at float64)) {
	for at := from; at < to; at += 0.25 {
		s.task(at, urgent, labor(c, 1, 1, Pause))
		if more != nil {
			more(at)
		}
	}
}

// A claim for four people waits an hour, then later claims leave it what it
// needs: the last of them began within the hour and ends within the next.
func TestProtectionAfterOneHour(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(4, s.daily(0, 24)))
	big := int32(-1)
	s.stream(c, 0, 20, 0, func(at float64) {
		if at == 3 {
			big = s.task(3.1, 0, labor(c, 4, 1, Pause))
		}
	})
	d := s.run(t)
	d.want(t, big, "no free crew 3:06-5:00, works 4 5:00-6:00")
}

// While it waits, a short task that surely ends before the last of the four is
// free may slip in; a longer one may not.
func TestShortClaimsSlipIn(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(2, s.daily(0, 24)))
	s.task(0, 0, labor(c, 1, 4, Pause))
	big := s.task(0.5, 0, labor(c, 2, 1, Pause))
	long := s.task(2, 0, labor(c, 1, 2.5, Pause))
	short := s.task(2.5, 0, labor(c, 1, 1.5, Pause)) // ends with the first
	d := s.run(t)
	d.want(t, big, "no free crew 0:30-4:00, works 2 4:00-5:00")
	d.want(t, short, "works 1 2:30-4:00")
	d.want(t, long, "no free crew 2:00-5:00, works 1 5:00-7:30")
}

// A task that would be slow with the people left does not slip in, though it
// would be short enough with all the people it wants.
func TestSlowClaimsDoNotSlipIn(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(4, s.daily(0, 24)))
	s.task(0, 0, labor(c, 3, 4, Pause))
	big := s.task(0.5, 0, labor(c, 4, 1, Pause))
	slow := labor(c, 3, 1, Pause) // three hours for the one person there
	slow.Least = 1
	late := s.task(2, 0, slow)
	d := s.run(t)
	d.want(t, big, "no free crew 0:30-4:00, works 4 4:00-5:00")
	d.want(t, late, "no free crew 2:00-5:00, works 3 5:00-6:00")
}

// An urgent claim that waits for another reason at the head of the line does
// not take the protection from the claim behind it.
func TestProtectionBehindAnUrgentClaim(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(4, s.daily(0, 24)))
	big := int32(-1)
	s.stream(c, 0, 20, 0, func(at float64) {
		if at == 3 {
			big = s.task(3.1, 0, labor(c, 4, 1, Pause))
		}
		if at >= 4 && at < 8 {
			s.task(at+0.1, 1, labor(c, 2, 0.1, Pause)) // urgent and short, always one in line
		}
	})
	if at := s.run(t).shipped(big); at > 10*clock.Hour {
		t.Errorf("four people came together at %v only", at)
	}
}

// Protection needs no free person to have been looked at first.
func TestProtectionWhileNobodyIsFree(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)), crewOf(1, s.daily(3, 24)))
	s.task(0, 0, labor(c, 1, 3.5, Pause))
	big := s.task(0.5, 0, labor(c, 2, 1, Pause))
	late := s.task(1, 0, labor(c, 1, 2, Pause))
	d := s.run(t)
	d.want(t, big, "no free crew 0:30-3:30, works 2 3:30-4:30")
	d.want(t, late, "no free crew 1:00-4:30, works 1 4:30-6:30")
}

// Steps that need a place and people together take neither alone.
func TestClaimsAreAllOrNothing(t *testing.T) {
	s := newShop(1)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	bay := s.place("bay", 1)
	both := labor(c, 1, 1, Pause)
	both.Take, both.Free = []int16{bay}, []int16{bay}
	bayOnly := Step{Name: "rest", Craft: None, Pace: ByClock, Take: []int16{bay}, Free: []int16{bay}}
	bayOnly.SetTime(constant(2))
	a := s.task(0, 0, labor(c, 1, 1.5, Pause))
	b := s.task(0.25, 0, both)
	e := s.task(0.5, 0, bayOnly) // the bay is free, and b has no hold on it before an hour
	d := s.run(t)
	d.want(t, a, "works 1 0:00-1:30")
	d.want(t, e, "works 0 0:30-2:30")
	d.want(t, b, "no free crew 0:15-1:30, no free place 1:30-2:30, works 1 2:30-3:30")
}
