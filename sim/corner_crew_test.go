package sim

import (
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Timelines by hand; hours count from Monday midnight.

func TestTaskEndsExactlyAtShiftEnd(t *testing.T) {
	for _, end := range []EndRule{Pause, Finish, Fit} {
		s := newShop(3)
		c := s.craft(crewOf(1, s.daily(6, 14)))
		a := s.task(5, 0, labor(c, 1, 8, end))
		b := s.task(5, 0, labor(c, 1, 8, end))
		d := s.run(t)
		d.want(t, a, "off shift 5:00-6:00, works 1 6:00-14:00")
		d.want(t, b, "off shift 5:00-6:00, no free crew 6:00-14:00, off shift 14:00-30:00, works 1 30:00-38:00")
	}
}

func TestCapacityChangeUnfinishedWorkAndClaimsForSeveral(t *testing.T) {
	s := newShop(4)
	c := s.craft(crewOf(3, s.daily(6, 14)), crewOf(1, s.daily(14, 22)))
	a := s.task(6, 0, labor(c, 3, 10, Pause)) // 2 h are left at 14:00, when one person comes
	b := s.task(7, 0, labor(c, 1, 2, Pause))
	e := s.task(8, 0, labor(c, 2, 4, Pause))
	d := s.run(t)
	d.want(t, a, "works 3 6:00-14:00, no free crew 14:00-22:00, off shift 22:00-30:00, works 3 30:00-32:00")
	d.want(t, b, "no free crew 7:00-14:00, works 1 14:00-16:00")
	d.want(t, e, "no free crew 8:00-22:00, off shift 22:00-30:00, no free crew 30:00-32:00, works 2 32:00-36:00")
}

func TestHandOverFromDayToEveningWithoutLoss(t *testing.T) {
	for _, end := range []EndRule{Pause, Finish} {
		s := newShop(3)
		c := s.craft(crewOf(2, s.daily(6, 14)), crewOf(2, s.daily(14, 22)))
		a := s.task(12, 0, labor(c, 2, 9, end))
		s.run(t).want(t, a, "works 2 12:00-21:00")
	}
}

// One crew with two shifts that touch: what does not fit into the first begins
// with the second, although no head count changes between them.
func TestTouchingShiftsOfOneCrewBeginAgain(t *testing.T) {
	s := newShop(2)
	day := shift.Shift{Days: shift.EveryDay, Hours: shift.Hours{From: 6 * clock.Hour, To: 14 * clock.Hour}}
	evening := shift.Shift{Days: shift.EveryDay, Hours: shift.Hours{From: 14 * clock.Hour, To: 22 * clock.Hour}}
	c := s.craft(crewOf(1, must(shift.Compile(shift.Pattern{Shifts: []shift.Shift{day, evening}}, s.p.Start, s.p.Length))))
	a := s.task(10, 0, labor(c, 1, 5, Fit))
	s.run(t).want(t, a, "shift too short 10:00-14:00, works 1 14:00-19:00")
}

func TestOvertimeCap(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14)))
	s.p.Crafts[c].Overtime = clock.Hour / 2
	a := s.task(12, 0, labor(c, 1, 4, Finish))
	s.run(t).want(t, a, "works 1 12:00-14:30, off shift 14:30-30:00, works 1 30:00-31:30")
}

// People go in two groups while a task is in overtime: the cap counts from the
// first and is met once.
func TestOvertimeCapIsCountedOnce(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(2, s.daily(6, 14)), crewOf(1, s.daily(6, 14.25)))
	s.p.Crafts[c].Overtime = clock.Hour
	a := s.task(12, 0, labor(c, 3, 5, Finish))
	s.run(t).want(t, a, "works 3 12:00-15:00, off shift 15:00-30:00, works 3 30:00-32:00")
}

// The next shift comes within the overtime and takes the work over.
func TestOvertimeEndsWithTheNextShift(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14)), crewOf(1, s.daily(14.5, 22)))
	s.p.Crafts[c].Overtime = clock.Hour
	a := s.task(12, 0, labor(c, 1, 6, Finish))
	s.run(t).want(t, a, "works 1 12:00-18:00")
}

// Finish begins only if it should end at most so long after the day's last
// shift (here 30 min), and a break pauses it.
func TestFinishBeginsOnlyIfItEndsWithTheDay(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14, shift.Break{From: 10 * clock.Hour, To: 10*clock.Hour + clock.Hour/2})))
	s.p.Crafts[c].Late = clock.Hour / 2
	a := s.task(9, 0, labor(c, 1, 2, Finish))
	b := s.task(12, 0, labor(c, 1, 2.5, Finish))
	e := s.task(12, 0, labor(c, 1, 2.6, Finish))
	d := s.run(t)
	d.want(t, a, "works 1 9:00-10:00, off shift 10:00-10:30, works 1 10:30-11:30")
	d.want(t, b, "works 1 12:00-14:30")
	d.want(t, e, "no free crew 12:00-14:00, off shift 14:00-30:00, works 1 30:00-32:36")
}

func TestPausedTaskResumesFirstWithOtherPeople(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14)), crewOf(1, s.daily(16, 20)))
	a := s.task(12, 0, labor(c, 1, 4, Pause))
	b := s.task(13, 5, labor(c, 1, 1, Pause)) // more urgent, but new
	d := s.run(t)
	d.want(t, a, "works 1 12:00-14:00, off shift 14:00-16:00, works 1 16:00-18:00")
	d.want(t, b, "no free crew 13:00-14:00, off shift 14:00-16:00, no free crew 16:00-18:00, works 1 18:00-19:00")
}

func TestHelperIsLentAndTakenBack(t *testing.T) {
	s := newShop(3)
	g := s.craft(crewOf(1, s.daily(8, 16)))
	h := s.craft(crewOf(1, s.daily(6, 10)))
	s.p.Crafts[h].Helps = []int16{g}
	a := s.task(6, 0, labor(g, 1, 6, Pause))
	b := s.task(7, 0, labor(h, 1, 1, Pause)) // its own people are lent and not called back
	d := s.run(t)
	d.want(t, a, "works 1 6:00-12:00") // the helper goes at 10:00, its own person goes on
	d.want(t, b, "no free crew 7:00-10:00, off shift 10:00-30:00, works 1 30:00-31:00")
}

func TestHelperHelpsOnlyWhenNothingOfItsOwnWaits(t *testing.T) {
	s := newShop(2)
	g := s.craft(crewOf(1, s.daily(6, 22)))
	h := s.craft(crewOf(2, s.daily(6, 22)))
	s.p.Crafts[h].Helps = []int16{g}
	s.task(6, 0, labor(g, 1, 8, Pause))
	own := s.task(6, 0, labor(h, 2, 2, Pause))
	own2 := s.task(6, 0, labor(h, 2, 2, Pause))
	a := s.task(7, 0, labor(g, 1, 1, Pause))
	d := s.run(t)
	d.want(t, own, "works 2 6:00-8:00")
	d.want(t, own2, "no free crew 6:00-8:00, works 2 8:00-10:00")
	d.want(t, a, "no free crew 7:00-10:00, works 1 10:00-11:00")
}

func TestFewerPeopleAreSlowerByTheExponent(t *testing.T) {
	s := newShop(2)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	step := labor(c, 4, 1, Pause)
	step.Least, step.Slow = 1, 0.5 // (4/1)^0.5 = 2
	a := s.task(1, 0, step)
	s.run(t).want(t, a, "works 1 1:00-3:00")
}

func TestEverythingAtOneInstantWithZeroDurations(t *testing.T) {
	s := newShop(2)
	c := s.craft(crewOf(1, s.daily(0, 24)))
	bay := s.place("bay", 1)
	zero := labor(c, 1, 0, Pause)
	zero.Take, zero.Free = []int16{bay}, []int16{bay}
	wait := Step{Name: "wait", Craft: None, Pace: ByClock, Longest: 0}
	for _, at := range []float64{0, 10} {
		for range 30 {
			s.task(at, 0, zero, wait, zero, zero)
		}
	}
	d := s.run(t)
	for i := range int32(60) {
		if at := d.shipped(i); at != clock.FromHours([]float64{0, 10}[i/30]) {
			t.Errorf("order %d shipped at %v", i, at)
		}
	}
}

func TestCrewOfZeroIsToldAndDoesNotHang(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(0, s.daily(6, 14)))
	a := s.task(1, 0, labor(c, 1, 1, Pause))
	if faults := s.p.Check(); len(faults) != 1 || !strings.Contains(faults[0], "needs at least 1") {
		t.Errorf("Check: %q", faults)
	}
	s.run(t).want(t, a, "off shift 1:00-6:00, no free crew 6:00-14:00, off shift 14:00-30:00, no free crew 30:00-38:00, off shift 38:00-54:00, no free crew 54:00-62:00, off shift 62:00-72:00")
}

func TestFitLongerThanAnyShiftIsToldAndDoesNotHang(t *testing.T) {
	s := newShop(2)
	c := s.craft(crewOf(1, s.daily(6, 14)))
	a := s.task(7, 0, labor(c, 1, 9, Fit))
	if faults := s.p.Check(); len(faults) != 1 || !strings.Contains(faults[0], "must fit into a shift") {
		t.Errorf("Check: %q", faults)
	}
	if d := s.run(t); d.shipped(a) != clock.Never {
		t.Error("it was done")
	}
}

// Time that only passes does not stop when the people who stand by go home.
func TestTimedStepWithPeopleRunsOn(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14)))
	step := labor(c, 1, 3, Pause)
	step.Pace = ByClock
	a := s.task(13, 0, step)
	s.run(t).want(t, a, "works 1 13:00-16:00")
}

// Labor that needs no people and no place still takes its extra hours.
func TestLaborWithoutPeopleTakesItsExtraHours(t *testing.T) {
	s := newShop(2)
	step := labor(None, 1, 1, Pause)
	s.p.Rework = Rework{Target: 101, Rounds: 1}
	step.Add = BuffHours
	a := s.task(1, 0, step)
	if at := s.run(t).shipped(a); at <= 2*clock.Hour+clock.Minute || at == clock.Never {
		t.Errorf("done at %v", at)
	}
}
