package sim

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/finish/defect"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// factSum sums up all facts in their order, without those of crafts and places
// beyond the first ones.
type factSum struct {
	watcher
	crafts, places int // counted
	of             int // crafts of the plan
}

// Use implements record.Observer.
func (f *factSum) Use(u *record.Use) {
	pool := int(u.Pool)
	if pool >= f.of {
		if pool -= f.of; pool >= f.places {
			return
		}
		pool += f.crafts
	} else if pool >= f.crafts {
		return
	}
	f.add(2, int64(pool), int64(u.Used), int64(u.Capacity), int64(u.From), int64(u.To))
}

// Span implements record.Observer.
func (f *factSum) Span(s *record.Span) { f.addSpan(s) }

// Pull implements record.Observer.
func (f *factSum) Pull(p *record.Pull) { f.addPull(p) }

// Ship implements record.Observer.
func (f *factSum) Ship(s *record.Ship) { f.addShip(s) }

// Note implements record.Observer.
func (f *factSum) Note(n *record.Note) { f.addNote(n) }

func sumOf(t *testing.T, p *Plan, air *Air, seed uint64, crafts, places int) uint64 {
	t.Helper()
	f := &factSum{crafts: crafts, places: places, of: len(p.Crafts)}
	var circle *Deadlock
	if err := Simulate(p, air, seed, 0, f); errors.As(err, &circle) {
		f.add(int64(circle.At), int64(len(circle.Waits)))
	} else if err != nil {
		t.Error(err)
	}
	return f.sum
}

// neutral changes are those that must not move any fact by a bit.
var neutral = []struct {
	name   string
	change func(p *Plan)
}{
	{"the same plan", func(*Plan) {}},
	{"an unused booth", func(p *Plan) {
		p.Places = append(p.Places, Place{Name: "spare", Kind: Booth, Count: 1, Guns: [][]Gun{{{Name: "gun", Color: None, Flush: clock.Hour}}}})
	}},
	{"an unused hoist", func(p *Plan) {
		p.Places = append(p.Places, Place{Name: "spare", Kind: Hoist, Count: 1})
	}},
	{"an unused color", func(p *Plan) { p.Colors = append(p.Colors, Color{Name: "unheard of", Dark: true}) }},
	{"a craft nobody needs", func(p *Plan) {
		hours := must(shift.Compile(shift.Pattern{Shifts: []shift.Shift{{Days: shift.EveryDay, Hours: shift.Hours{From: 5 * clock.Hour, To: 9 * clock.Hour}}}}, p.Start, p.Length))
		p.Crafts = append(p.Crafts, Craft{Name: "spare", Crews: []Crew{{Hours: hours, People: 3, Absence: 0.3, AbsenceHot: 0.5}}})
	}},
	{"renamed labels", func(p *Plan) {
		p.Name = "another"
		for i := range p.Crafts {
			p.Crafts[i].Name = fmt.Sprint("c", i)
		}
		for i := range p.Places {
			p.Places[i].Name = fmt.Sprint("p", i)
		}
		for i := range p.Colors {
			p.Colors[i].Name = fmt.Sprint("k", i)
		}
		for i := range p.Models {
			p.Models[i].Name = fmt.Sprint("m", i)
		}
		for i := range p.Parts {
			p.Parts[i].Name = fmt.Sprint("t", i)
		}
		for i := range p.Molds {
			p.Molds[i].Name = fmt.Sprint("o", i)
		}
		for i := range p.Background {
			p.Background[i].Name = fmt.Sprint("b", i)
		}
		for i := range p.Routes {
			p.Routes[i].Name = fmt.Sprint("r", i)
			for k := range p.Routes[i].Steps {
				p.Routes[i].Steps[k].Name = fmt.Sprint("s", i, k)
			}
		}
	}},
	{"an effect with factor 1", func(p *Plan) {
		if p.Defects == nil {
			return
		}
		d := *p.Defects
		for i := range d.Each {
			for k := range d.Each[i].Effects {
				if d.Each[i].Effects[k] == (defect.Effect{}) {
					d.Each[i].Effects[k] = defect.Effect{Driver: defect.Humidity, Shape: defect.Step, From: 0.3, Gain: 1}
				}
			}
		}
		p.Defects = &d
	}},
	{"a slowness of steps that never have fewer people", func(p *Plan) {
		for i := range p.Routes {
			for k := range p.Routes[i].Steps {
				if s := &p.Routes[i].Steps[k]; s.Want == s.Least {
					s.Slow = 2.5
				}
			}
		}
	}},
	{"a condition that is never true", func(p *Plan) {
		never := Step{Name: "never", When: NeedHeat, Craft: moldCraft, Want: 3, Least: 3, Slow: 1, Take: []int16{boothPlace}, Urgent: 5}
		never.SetTime(must(draw.Constant(5)))
		for i := range p.Models {
			r := &p.Routes[p.Models[i].Boat]
			r.Steps = append(r.Steps, never)
		}
		for i := range p.Background {
			r := &p.Routes[p.Background[i].Route]
			r.Steps = append(r.Steps, never)
		}
	}},
	{"a failure that never comes", func(p *Plan) {
		if len(p.Failures) > 0 { // else the look at them itself is new
			return
		}
		for _, working := range []bool{false, true} {
			p.Failures = append(p.Failures, Failure{Place: boothPlace, Gun: None, Up: draw.Compile(constant(1e9)), Repair: draw.Compile(constant(5)), WhileWorking: working})
		}
	}},
	{"background work of no hours", func(p *Plan) {
		p.Background = append(p.Background, Background{Name: "none", Craft: moldCraft, Piece: 1, Place: None})
	}},
	{"a model nobody orders", func(p *Plan) {
		if p.Demand.Full {
			return
		}
		p.Models = append(p.Models, Model{Name: "drawing", Boat: p.Models[0].Boat, Parts: []int16{int16(len(p.Parts))}})
		p.Parts = append(p.Parts, Part{Name: "drawing", Model: int16(len(p.Models) - 1), Color: None, Care: None, Route: p.Models[0].Boat})
	}},
}

// Neutral additions change nothing, bit for bit.
func TestNeutralAdditions(t *testing.T) {
	airs := randomAirs()
	for _, x := range neutral {
		moved := 0
		for n := range 60 {
			m := randomPlan(n)
			p := m.p
			crafts, places := len(p.Crafts), len(p.Places)
			before := sumOf(t, p, airs[m.air], uint64(n), crafts, places)
			x.change(p)
			if after := sumOf(t, p, airs[m.air], uint64(n), crafts, places); after != before {
				if moved++; moved == 1 {
					t.Errorf("%s: plant %d has other facts", x.name, n)
				}
			}
		}
	}
}

// A step left out in the middle of a route moves nothing where all times are
// constant.
func TestNeverTrueStepInTheMiddle(t *testing.T) {
	base := configC(6, constant, constant)
	base.Length = 60 * clock.Day
	longer := configC(6, constant, constant)
	longer.Length = base.Length
	never := Step{Name: "never", When: Banded, Craft: 0, Want: 1, Least: 1, Slow: 1}
	never.SetTime(constant(3))
	s := longer.Routes[0].Steps
	longer.Routes[0].Steps = append(append(append([]Step{}, s[:2]...), never), s[2:]...)
	a, b := &pullTimes{}, &pullTimes{}
	for _, x := range []struct {
		p *Plan
		o *pullTimes
	}{{base, a}, {longer, b}} {
		if err := Simulate(x.p, steadyAir(), 3, 0, x.o); err != nil {
			t.Fatal(err)
		}
	}
	if len(a.at) < 100 || fmt.Sprint(a.at) != fmt.Sprint(b.at) {
		t.Errorf("%d pulls, then %d", len(a.at), len(b.at))
	}
}

type pullTimes struct {
	record.Nothing
	at []clock.Time
}

func (p *pullTimes) Pull(x *record.Pull) { p.at = append(p.at, x.At) }

// All times three times as long: everything happens three times as late, up to
// the milliseconds that each step is rounded to.
func TestTimesScale(t *testing.T) {
	const c = 3
	run := func(factor float64) []clock.Time {
		law := func(mean float64) draw.Dist { return exponential(mean * factor) }
		p := configC(7, law, law)
		p.Length = clock.FromHours(3000 * factor)
		o := &pullTimes{}
		if err := Simulate(p, steadyAir(), 9, 0, o); err != nil {
			t.Fatal(err)
		}
		return o.at
	}
	one, three := run(1), run(c)
	if len(one) < 300 || len(one) != len(three) {
		t.Fatalf("%d pulls, then %d", len(one), len(three))
	}
	for i := range one {
		if diff := math.Abs(float64(three[i] - c*one[i])); diff > 5000 {
			t.Fatalf("pull %d at %v, then at %v", i, one[i], three[i])
		}
	}
}

// luckOf keeps how long each step of each order's parts took, and the colors.
type luckOf struct {
	record.Nothing
	took  map[[4]int32]clock.Time
	color map[int32]int16
}

func (l *luckOf) Span(s *record.Span) {
	if s.Working && s.Order >= 0 && s.Step >= 0 {
		l.took[[4]int32{s.Order, int32(s.Part), int32(s.Route), int32(s.Step)}] += s.To - s.From
	}
}

func (l *luckOf) Pull(p *record.Pull) { l.color[p.Order] = p.Color }

// A third mold adds luck of its own and moves none: the same orders have the
// same colors and the same times in each step.
func TestThirdMoldMovesNoLuck(t *testing.T) {
	run := func(molds int) *luckOf {
		p := loopPlan(molds, []station{{"gel", 3, 2, exponential}, {"laminate", 10, 3, exponential}, {"cure", 24, 0, exponential}, {"pull", 2, 1, exponential}}, 3, 0)
		p.Length = 300 * clock.Day
		p.Colors = []Color{{Name: "white"}, {Name: "blue"}, {Name: "red"}}
		p.Models[0].Colors = []Share{{0, 3}, {1, 2}, {2, 1}}
		l := &luckOf{took: map[[4]int32]clock.Time{}, color: map[int32]int16{}}
		if err := Simulate(p, steadyAir(), 4, 0, l); err != nil {
			t.Fatal(err)
		}
		return l
	}
	two, three := run(2), run(3)
	if len(two.color) < 200 || len(three.color) < len(two.color)*5/4 {
		t.Fatalf("%d parts from two molds, %d from three", len(two.color), len(three.color))
	}
	for n, color := range two.color {
		if three.color[n] != color {
			t.Errorf("order %d: color %d, then %d", n, color, three.color[n])
		}
		for step := range int32(4) {
			k := [4]int32{n, 0, 0, step}
			if two.took[k] != three.took[k] {
				t.Errorf("order %d, step %d: %v, then %v", n, step, two.took[k], three.took[k])
			}
		}
	}
}
