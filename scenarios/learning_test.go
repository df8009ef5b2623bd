package scenarios

import (
	"fmt"
	"hash/fnv"
	"strings"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// prints is a fingerprint of all facts of a run, and some counts.
type prints struct {
	h       uint64
	ships   []int
	boats   []record.Ship
	molds   []record.Note
	working map[string]clock.Time
}

func (p *prints) add(format string, args ...any) {
	f := fnv.New64a()
	fmt.Fprintf(f, "%x", p.h)
	fmt.Fprintf(f, format, args...)
	p.h = f.Sum64()
}
func (p *prints) Span(s *record.Span) {
	p.add("s%+v", *s)
	if s.Working && s.People > 0 {
		p.working[s.Doing.String()] += clock.Time(s.People) * (s.To - s.From)
	}
}
func (p *prints) Use(u *record.Use)   { p.add("u%+v", *u) }
func (p *prints) Pull(x *record.Pull) { p.add("p%+v", *x) }
func (p *prints) Ship(s *record.Ship) {
	p.add("b%+v", *s)
	p.ships[s.Model]++
	p.boats = append(p.boats, *s)
}
func (p *prints) Note(n *record.Note) {
	p.add("n%+v", *n)
	if n.Kind == record.MoldNew {
		p.molds = append(p.molds, *n)
	}
}

// simulated runs the capacity plan of fenwater's first year with changes.
func simulated(t *testing.T, changes ...string) *prints {
	t.Helper()
	data, _ := BundledFile("fenwater")
	o := Options{Years: 1}
	for _, text := range append([]string{"run.warm_up=0", "demand.book=full"}, changes...) {
		c, complaints := ParseChange("--set", text)
		if complaints != nil {
			t.Fatal(complaints)
		}
		o.Sets = append(o.Sets, c)
	}
	s, complaints := Load("fenwater.yaml", data, o)
	if complaints != nil {
		t.Fatal(complaints)
	}
	air, err := s.Base.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	p := &prints{ships: make([]int, len(s.Base.Plan().Models)), working: map[string]clock.Time{}}
	if err := sim.Simulate(s.Base.Plan(), air, 1, 0, p); err != nil {
		t.Fatal(err)
	}
	return p
}

// What is off changes nothing, bit for bit: a ramp without turnover, a standard
// boat without a curve, a curve that is passed already.
func TestLearningIsNeutralWhenOff(t *testing.T) {
	base := simulated(t)
	for _, c := range [][]string{
		{"learning.standard=1000", "learning.most=10"},
		{"crafts.lamination.ramp=30 wk", "crafts.lamination.ramp_start=10 %", "crafts.gel.ramp_flaws=10"},
		{`models."Rush 23".learning.assembly=80 %`, `models."Rush 23".learning.built=100`},
		{`models."Rush 23".learning.assembly=80 %`, "learning.standard=1"},
		{`models."Rush 23".orders_from=2027-06-01`}, // orders always wait
	} {
		if p := simulated(t, c...); p.h != base.h {
			t.Errorf("%v: facts differ", c)
		}
	}
}

// A new model takes longer where it has a curve, and only there; turnover slows
// its craft.
func TestLearningAndTurnoverTakeHours(t *testing.T) {
	base := simulated(t)
	perBoat := func(p *prints, doing record.Doing) float64 {
		n := 0
		for _, x := range p.ships {
			n += x
		}
		return p.working[doing.String()].Hours() / float64(n)
	}
	learn := simulated(t, `models."Rush 23".learning.assembly=85 %`)
	if a, b := perBoat(learn, record.Assembling), perBoat(base, record.Assembling); a < 1.02*b {
		t.Errorf("assembly takes %.1f h a boat after %.1f", a, b)
	}
	leave := simulated(t, "crafts.lamination.turnover=150 %") // new people are 16 % of the craft on average, at 3/4 of the speed
	if a, b := perBoat(leave, record.Laminating), perBoat(base, record.Laminating); a < 1.04*b || a > 1.16*b {
		t.Errorf("lamination takes %.1f h a boat after %.1f", a, b)
	}
}

// A new mold comes on its day, is broken in, and raises what its model ships.
func TestMoldsComeOnTheirDay(t *testing.T) {
	base := simulated(t)
	more := simulated(t, `models."Sedge 20".parts.hull.mold_dates=[2027-03-01]`, `models."Sedge 20".parts.deck.on_master={count: 2, from: 2027-03-01, time: 3 wk}`)
	if len(base.molds) != 0 || len(more.molds) != 3 {
		t.Fatalf("%d molds came, want 3", len(more.molds))
	}
	for i, day := range []clock.Time{56, 77, 98} { // days after Monday 4 January
		if more.molds[i].At != day*clock.Day {
			t.Errorf("mold %d came at day %v, want %v", i, float64(more.molds[i].At)/float64(clock.Day), day)
		}
	}
	if before := func(p *prints) (n int) {
		for _, b := range p.boats {
			if b.At < 56*clock.Day {
				n++
			}
		}
		return n
	}; before(base) != before(more) {
		t.Errorf("%d boats before the molds came, %d without them", before(more), before(base))
	}
}

// A model without molds ships nothing until they come.
func TestLaunchOfAModel(t *testing.T) {
	late := `{molds: 0, mold_dates: [2027-07-12, 2027-07-12], area: 20 m2, work: {base: 2 x 0.75 h, skin: 3 x 1.25 h, shot 1: 3 x 3.5 h}}`
	p := simulated(t, "alternatives=", `models={Sedge 20: {work: {assembly: 4 (2) x 13.75 h}, parts: {hull: {area: 23 m2, molds: 3, work: {base: 2 x 0.75 h, skin: 3 x 1.25 h, shot 1: 4 x 2.5 h}}}}, Tern 18: {work: {assembly: 4 (2) x 10 h}, parts: {hull: `+late+`}}}`)
	first := clock.Never
	for _, b := range p.boats {
		if b.Model == 1 {
			first = min(first, b.At)
		}
	}
	if p.ships[1] == 0 || first < 189*clock.Day {
		t.Errorf("%d boats of the new model, the first at day %v; its molds come on day 189", p.ships[1], float64(first)/float64(clock.Day))
	}
}

func TestLaunchFaults(t *testing.T) {
	for _, c := range []struct{ hull, want string }{
		{"{area: 10 m2, molds: 0, work: {base: 1 x 1 h, skin: 1 x 1 h}}", "has no mold"},
		{"{area: 10 m2, molds: 1, on_master: {count: 1}, work: {base: 1 x 1 h, skin: 1 x 1 h}}", "need the day"},
		{"{area: 10 m2, molds: 1, mold_dates: [2026-12-01], work: {base: 1 x 1 h, skin: 1 x 1 h}}", "must come after the first day, 2027-01-04"},
		{"{area: 10 m2, molds: 1, mold_dates: [soon], work: {base: 1 x 1 h, skin: 1 x 1 h}}", "mold_dates"},
	} {
		text := strings.Replace(smallPermit, "{area: 10 m2, molds: 1, work: {base: 2 x 0.75 h, skin: 2 x 1 h, shot 1: 2 x 3 h}}", c.hull, 1)
		_, complaints := Load("small.yaml", []byte(text), Options{Years: 1})
		if len(complaints) != 1 || !strings.Contains(complaints.Error(), c.want) || !strings.HasPrefix(complaints.Error(), "small.yaml:14") {
			t.Errorf("%s\ngot %v, want %q", c.hull, complaints, c.want)
		}
	}
}
