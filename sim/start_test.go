package sim

import (
	"math"
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Timelines by hand; hours count from Monday midnight.

// from runs a shop from a start: for its diary, and under the watch of the
// identities.
func (s *shop) from(t *testing.T, start *Start) *diary {
	t.Helper()
	w, err := watchFrom(start.changed(s.p), steadyAir(), start, 1)
	for _, f := range w.faults {
		t.Error(f)
	}
	if err != nil {
		t.Fatal(err)
	}
	d := &diary{lines: map[int32][]string{}, notes: map[record.NoteKind]int{}}
	if err := SimulateFrom(s.p, steadyAir(), start, 1, 0, d); err != nil {
		t.Fatal(err)
	}
	return d
}

// at is an instant in hours.
func at(hours float64) clock.Time { return clock.FromHours(hours) }

// piece of work without dates.
func work(order int32, part int16, mold int32, step int16) StartWork {
	return StartWork{Order: order, Part: part, Mold: mold, Step: step, Begun: Unknown, Since: Unknown, Left: Unknown, Sprayed: Unknown, Skinned: Unknown, Laminated: Unknown}
}

func wanted(model int16) StartOrder {
	return StartOrder{Model: model, Color: None, Band: None, Arrived: Unknown, Began: Unknown, Due: clock.Never}
}

// At five in the morning one task is half done with 1.5 h left, one waits, and
// one is not begun: the crew of one takes up the half-done one first.
func TestHalfDoneTasksGoOnWithTheWorkLeft(t *testing.T) {
	s := newShop(4)
	c := s.craft(crewOf(1, s.daily(6, 14)))
	s.task(0, 0, labor(c, 1, 4, Pause))
	s.p.Demand.Dated = nil
	half, waits := work(0, 0, None, 0), work(1, 0, None, 0)
	half.Begun, half.Left = at(13), 1.5
	d := s.from(t, &Start{At: at(29), Orders: []StartOrder{wanted(0), wanted(0), wanted(0)}, Work: []StartWork{waits, half}})
	d.want(t, 0, "off shift 29:00-30:00, works 1 30:00-31:30")
	d.want(t, 1, "off shift 29:00-30:00, no free crew 30:00-31:30, works 1 31:30-35:30")
	d.want(t, 2, "off shift 29:00-30:00, no free crew 30:00-35:30, works 1 35:30-38:00, off shift 38:00-54:00, works 1 54:00-55:30")
}

// Without hours left they are worked out: of 4 h of work begun an hour before
// the end of the shift 3 h are left.
func TestWorkLeftIsWorkedOutFromItsBegin(t *testing.T) {
	s := newShop(4)
	c := s.craft(crewOf(1, s.daily(6, 14)))
	s.task(0, 0, labor(c, 1, 4, Pause))
	s.p.Demand.Dated = nil
	half := work(0, 0, None, 0)
	half.Begun = at(13)
	d := s.from(t, &Start{At: at(29), Orders: []StartOrder{wanted(0)}, Work: []StartWork{half}})
	d.want(t, 0, "off shift 29:00-30:00, works 1 30:00-33:00")
}

// A run may begin in the middle of a shift: people are there.
func TestStartInTheMiddleOfAShift(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14)))
	s.task(0, 0, labor(c, 1, 4, Pause))
	s.p.Demand.Dated = nil
	half := work(0, 0, None, 0)
	half.Begun, half.Left = at(6), 2
	d := s.from(t, &Start{At: at(9.5), Orders: []StartOrder{wanted(0)}, Work: []StartWork{half}})
	d.want(t, 0, "works 1 9:30-11:30")
}

// curingShop lays up 1 h, holds by the policy and pulls half an hour.
func curingShop(hold policy.Hold) (*shop, int16) {
	s := moldShop(8, 0, Mold{}, Mold{})
	c := s.craft(crewOf(1, s.daily(0, 24)))
	lay, cure, pull := labor(c, 1, 1, Pause), passing("hold", 0), labor(c, 1, 0.5, Pause)
	lay.Verb, cure.Pace, cure.Verb, cure.Doing, pull.Verb = LaborEnded, ByPolicy, Held, record.Curing, Pulled
	s.p.Routes[0].Steps = []Step{lay, cure, pull}
	s.p.Hold = hold
	s.p.Demand = Demand{CancelLate: clock.Never}
	return s, c
}

// Remaining cure: a part laid up at 20:00 on Monday that is held for 24 h is
// pulled at 20:30 on Tuesday, whenever the run begins; one whose hold is over is
// pulled at once. A hold by equivalent hours counts those before the start too.
func TestRemainingCure(t *testing.T) {
	s, _ := curingShop(policy.Hold{Clock: 24})
	cures := work(0, 0, 0, 1)
	cures.Begun, cures.Laminated = at(20), at(20)
	ready := work(1, 0, 1, 1)
	ready.Begun, ready.Laminated = at(1), at(1)
	start := &Start{At: at(29), Orders: []StartOrder{wanted(0), wanted(0)}, Work: []StartWork{cures, ready}}
	d := s.from(t, start)
	d.want(t, 0, "works 0 29:00-44:00, works 1 44:00-44:30")
	d.want(t, 1, "works 1 29:00-29:30")
	d.pullsAt(t, 29.5, 44.5)
	if h := d.pulls[1].Hold; h != at(24.5) {
		t.Errorf("held for %v", h)
	}

	s, _ = curingShop(policy.Hold{Equivalent: 30})
	want := steadyAir().cure[0].Ready(at(20), 30)
	d = s.from(t, start)
	if got := d.pulls[1].At; got != want+at(0.5) {
		t.Errorf("pulled at %v, cured at %v", got, want)
	}
}

// A cure that somebody has set a time for ends at that time.
func TestCureLeftAsWritten(t *testing.T) {
	s, _ := curingShop(policy.Hold{Clock: 24})
	cures := work(0, 0, 0, 1)
	cures.Begun, cures.Left = at(20), 3
	s.from(t, &Start{At: at(29), Orders: []StartOrder{wanted(0)}, Work: []StartWork{cures}}).pullsAt(t, 32.5)
}

// Gel windows that run already: gel coat sprayed at 22:00 with a window of 4 h
// and no wash-out before 8 h is late when the laminators come at 5:00 with 7 h on
// it, and washed out when it has 9.
func TestGelWindowsRunAlready(t *testing.T) {
	for _, test := range []struct {
		sprayed           float64
		missed, resprayed int
	}{{26, 0, 0}, {22, 1, 0}, {20, 0, 1}} {
		s, _, _ := windowShop(4, Crew{}, Crew{}, Mold{})
		s.p.Window.Craft = None
		s.p.Crafts[0].Crews = []Crew{crewOf(1, s.daily(0, 24))}
		s.p.Crafts[1].Crews = []Crew{crewOf(1, s.daily(5, 22))}
		gelled := work(0, 0, 0, 3)
		gelled.Sprayed = at(test.sprayed)
		d := s.from(t, &Start{At: at(28), Orders: []StartOrder{wanted(0)}, Work: []StartWork{gelled}})
		if d.notes[record.WindowMiss] != test.missed || d.notes[record.Resprayed] != test.resprayed {
			t.Errorf("sprayed at %v: %d missed, %d sprayed again", test.sprayed, d.notes[record.WindowMiss], d.notes[record.Resprayed])
		}
	}
}

// One of two people is out on Tuesday and Wednesday.
func TestPeopleOut(t *testing.T) {
	s := newShop(4)
	c := s.craft(crewOf(2, s.daily(6, 14)))
	s.task(0, 0, labor(c, 1, 6, Pause))
	s.p.Demand.Dated = nil
	start := &Start{At: at(24), Orders: []StartOrder{wanted(0), wanted(0)}, Out: []StartOut{{Craft: c, People: 1, From: 1, To: 1}}}
	d := s.from(t, start)
	d.want(t, 0, "off shift 24:00-30:00, works 1 30:00-36:00")
	d.want(t, 1, "off shift 24:00-30:00, no free crew 30:00-36:00, works 1 36:00-38:00, off shift 38:00-54:00, works 1 54:00-58:00")
}

// The one bay is down from Tuesday 8:00 to 11:00, with work in it.
func TestPlaceDown(t *testing.T) {
	s := newShop(4)
	c := s.craft(crewOf(1, s.daily(6, 22)))
	bay := s.place("bay", 1)
	step := labor(c, 1, 4, Pause)
	step.Take = []int16{bay}
	s.task(0, 0, step)
	s.p.Demand.Dated = nil
	start := &Start{At: at(24), Orders: []StartOrder{wanted(0)}, Down: []StartDown{{Place: bay, Unit: None, From: at(32), To: at(35)}}}
	d := s.from(t, start)
	d.want(t, 0, "off shift 24:00-30:00, works 1 30:00-32:00, place down 32:00-35:00, works 1 35:00-37:00")

	in := work(0, 0, None, 0)
	in.Begun, in.Left = at(21), 3
	start.Work, start.Down[0].From = []StartWork{in}, at(20)
	if d = s.from(t, start); d.shipped(0) != at(38) {
		t.Errorf("shipped at %v: %q", d.shipped(0), d.lines[0])
	}
}

// weekdays is Monday to Friday from 6 to 14.
func weekdays(s *shop) *shift.Calendar {
	p := shift.Pattern{Shifts: []shift.Shift{{Days: shift.MonToFri, Hours: shift.Hours{From: 6 * clock.Hour, To: 14 * clock.Hour}}}}
	return must(shift.Compile(p, s.p.Start, s.p.Length+10*clock.Day))
}

// Tuesday is off; Saturday is worked like Friday.
func TestChangedDays(t *testing.T) {
	s := newShop(8)
	c := s.craft(Crew{})
	s.p.Crafts[c].Crews = []Crew{crewOf(1, weekdays(s))}
	s.task(0, 0, labor(c, 1, 40, Pause))
	s.p.Demand.Dated = nil
	d := s.from(t, &Start{At: at(0), Orders: []StartOrder{wanted(0)}, Days: []StartDay{{From: 1, To: 1, Craft: None}, {From: 5, To: 5, Extra: true, Craft: c}}})
	if d.shipped(0) != at(5*24+14) { // Monday, Wednesday to Saturday at 8 h
		t.Errorf("shipped at %v", d.shipped(0))
	}
	if s.p.Crafts[c].Crews[0].Hours.On(at(5*24 + 8)) {
		t.Error("the plan itself has changed")
	}
}

// A mold in its strip with two hours left, one away until Wednesday noon, one in
// reserve, and one that is ready since long.
func TestMoldsWhereTheyStand(t *testing.T) {
	s := moldShop(6, 2, Mold{}, Mold{}, Mold{}, Mold{Reserve: true})
	s.p.Demand = Demand{CancelLate: clock.Never}
	molds := []StartMold{
		{Mold: 0, Stands: MoldInCare, Step: 1, Begun: at(10), Left: 2, Since: 9, Turns: 90, Surface: Unknown, When: Unknown, Back: Unknown},
		{Mold: 1, Stands: MoldAway, Back: at(60), Since: 2, Turns: 40, Surface: 1, When: Unknown},
		{Mold: 2, Stands: MoldReady, When: at(3), Since: 4, Turns: 44, Surface: Unknown, Back: Unknown},
	}
	start := &Start{At: at(24), Molds: molds, Orders: []StartOrder{wanted(0), wanted(0), wanted(0), wanted(0)}}
	d := s.from(t, start)
	d.pullsAt(t, 26, 27, 28, 29) // ready; the reserve mold, waxed for an hour; stripped, with the coats of its strip; waxed again
	for i, want := range []struct{ mold, turns int32 }{{2, 5}, {3, 1}, {0, 1}} {
		if p := d.pulls[i]; p.Mold != want.mold || p.Turns != want.turns {
			t.Errorf("pull %d is turn %d of mold %d, want %+v", i, p.Turns, p.Mold, want)
		}
	}
}

// A mold that is away until noon of Wednesday comes back. With an old surface it is
// ready at once; resurfaced, or new, it is waxed first as its break-in asks, two
// coats of an hour, then one before its second part. Lay-up takes 2 h.
func TestMoldsThatComeBackAreBrokenIn(t *testing.T) {
	for _, c := range []struct {
		name  string
		mold  StartMold
		pulls []float64
	}{
		{"old", StartMold{Turns: 40, Since: 2}, []float64{62, 65, 68}},
		{"resurfaced", StartMold{Turns: 40, Since: 2, Renewed: true}, []float64{64, 67, 70}},
		{"new", StartMold{Turns: 0, Since: 0}, []float64{64, 67, 70}},
	} {
		s := moldShop(6, 2, Mold{})
		s.p.BreakIn = policy.BreakIn{Coats: []int{2, 1}}
		s.p.Demand = Demand{CancelLate: clock.Never}
		c.mold.Stands, c.mold.Back, c.mold.When, c.mold.Surface = MoldAway, at(60), Unknown, Unknown
		d := s.from(t, &Start{At: at(24), Molds: []StartMold{c.mold}, Orders: []StartOrder{wanted(0), wanted(0), wanted(0)}})
		t.Log(c.name)
		d.pullsAt(t, c.pulls...)
	}
}

// What is left of a time of which some has passed, against textbooks: an
// exponential time has no memory (Ross, Introduction to Probability Models, ch.
// 5), of a uniform one the rest is uniform, of a constant one the difference.
func TestResidual(t *testing.T) {
	step := func(d draw.Dist) *Step {
		s := &Step{}
		s.SetTime(d)
		return s
	}
	e := step(exponential(5))
	u := step(must(draw.Uniform(2, 10)))
	c := step(constant(7))
	for _, q := range []float64{0.1, 0.5, 0.9} {
		if got, want := residual(e, 11, q), e.Time.Quantile(q); math.Abs(got-want) > 1e-6*want {
			t.Errorf("exponential after 11 h at %v: %v, want %v", q, got, want)
		}
		if got, want := residual(u, 6, q), 4*q; math.Abs(got-want) > 1e-6 {
			t.Errorf("uniform after 6 h at %v: %v, want %v", q, got, want)
		}
		if got := residual(c, 3, q); math.Abs(got-4) > 1e-9 {
			t.Errorf("constant after 3 h: %v", got)
		}
		if got := residual(c, 8, q); math.Abs(got-0.35) > 1e-9 {
			t.Errorf("constant that should be over: %v", got)
		}
	}
}

// All that cannot be is told together, by list and row.
func TestStartFaults(t *testing.T) {
	s := moldShop(6, 2, Mold{Name: "A"}, Mold{Name: "B"})
	bad := &Start{At: at(24),
		Molds:  []StartMold{{Mold: 7}, {Mold: 0, Stands: MoldWithPart}, {Mold: 0, Stands: MoldInCare, Step: 9}},
		Orders: []StartOrder{wanted(3), wanted(0)},
		Work:   []StartWork{work(1, 0, None, 0), work(1, 0, 1, 0), work(5, 0, 1, 0), work(1, None, None, 0)},
		Out:    []StartOut{{Craft: 2, People: 1}},
		Down:   []StartDown{{Place: 4, To: 1}},
		Days:   []StartDay{{From: 3, To: 2, Craft: None}},
	}
	_, err := BeginFrom(s.p, steadyAir(), bad, 1, 0, record.Nothing{})
	if err == nil {
		t.Fatal("begun")
	}
	for _, want := range []string{
		"molds, row 1: there is no mold 7", `molds, row 2: mold "A" has a part in it, and no work is in it`, `molds, row 3: mold "A" stands there twice`,
		"molds, row 3: there is no step of care 9", "orders, row 1: there is no model 3", "work, row 1: it is in no mold before its pull",
		"work, row 2: the same piece of order 1 is there twice", "work, row 3: there is no order 5", "work, row 4: parts of order 1 are not joined",
		"out, row 1: there is no craft 2", "down, row 1: there is no place 4", "days, row 1: days 3 to 2",
	} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("%q is not told", want)
		}
	}
	if _, err := BeginFrom(s.p, steadyAir(), &Start{At: s.p.Length}, 1, 0, record.Nothing{}); err == nil {
		t.Error("begun at the end")
	}
}
