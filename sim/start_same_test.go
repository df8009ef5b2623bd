package sim

import (
	"fmt"
	"slices"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// shipBook keeps when which mold was pulled and which color left.
type shipBook struct {
	record.Nothing
	from  clock.Time
	lines []string
}

func (b *shipBook) Pull(p *record.Pull) {
	if p.At >= b.from {
		b.lines = append(b.lines, fmt.Sprintf("%v mold %d turn %d", p.At, p.Mold, p.Turns))
	}
}

func (b *shipBook) Ship(s *record.Ship) {
	if s.At >= b.from {
		b.lines = append(b.lines, fmt.Sprintf("%v ships, begun %v", s.At, s.Released))
	}
}

// Where nothing is left to luck, a floor that is written down at any moment and
// begun from has the one future that the plant has: the same pulls of the same
// molds and the same boats at the same milliseconds. Lengths of work are odd, so
// that no two claims are made at one instant: which came first is not written.
func TestStockOfAPlantWithoutLuck(t *testing.T) {
	p := loopPlan(6, []station{{"wax", 2.013, 2, constant}, {"gel", 3.117, 2, constant}, {"laminate", 10.291, 3, constant},
		{"cure", 24, 0, constant}, {"pull", 2.071, 1, constant}, {"strip", 6.133, 1, constant}}, 4, 3)
	p.Length = 6 * clock.Week
	week := weekdays(&shop{p})
	for c := range p.Crafts {
		if c != 0 {
			p.Crafts[c].Crews[0].Hours = week
		}
	}
	steps := p.Routes[2].Steps
	steps = append(steps, labor(3, 1, 1.537, Pause), passing("dry", 5.029))
	p.Routes[2].Steps = steps
	air := steadyAir()
	lines := 0
	for n := range 60 {
		moment := clock.Time(float64(p.Length) * (0.1 + 0.8*draw.Root(3, n).U(0)))
		whole := &shipBook{from: moment}
		r := Begin(p, air, 1, 0, whole)
		if err := r.Until(moment); err != nil {
			t.Fatal(err)
		}
		s := r.TakeStock()
		if err := r.Finish(); err != nil {
			t.Fatal(err)
		}
		began := &shipBook{}
		if err := SimulateFrom(p, air, s, 7, 2, began); err != nil {
			t.Fatal(err)
		}
		lines += len(whole.lines)
		if slices.Equal(whole.lines, began.lines) {
			continue
		}
		for i := range max(len(whole.lines), len(began.lines)) {
			if line(whole.lines, i) != line(began.lines, i) {
				t.Errorf("from %v: event %d is %q, in the plant itself %q", moment, i, line(began.lines, i), line(whole.lines, i))
				break
			}
		}
	}
	t.Logf("%d pulls and shipments agree", lines)
}

// A run that began from a floor can be saved and resumed like any other, with
// its changed days, people out and places down.
func TestRunsFromAFloorAreSaved(t *testing.T) {
	airs := randomAirs()
	for n := range 12 {
		m := randomPlan(n)
		air := airs[m.air]
		r := Begin(m.p, air, 1, 0, record.Nothing{})
		if r.Until(m.p.Length/3) != nil {
			continue
		}
		s := r.TakeStock()
		day := int(s.At / clock.Day)
		s.Days = []StartDay{{From: day + 2, To: day + 2, Craft: None}}
		s.Out = []StartOut{{Craft: 0, People: 1, From: day + 3, To: day + 5}}
		s.Down = append(s.Down, StartDown{Place: boothPlace, Unit: 0, From: s.At + 30*clock.Hour, To: s.At + 70*clock.Hour})
		whole, first, rest := &scribe{}, &scribe{}, &scribe{}
		errWhole := SimulateFrom(m.p, air, s, 3, 0, whole)
		a, err := BeginFrom(m.p, air, s, 3, 0, first)
		if err != nil {
			t.Fatal(err)
		}
		if a.Until(s.At+50*clock.Hour) != nil {
			continue
		}
		b := reopened(t, a, air, rest)
		errRest := b.Finish()
		if got := append(first.lines, rest.lines...); !slices.Equal(got, whole.lines) || fmt.Sprint(errWhole) != fmt.Sprint(errRest) {
			t.Errorf("plant %d: %d facts, %d unsplit; %v, %v", n, len(got), len(whole.lines), errRest, errWhole)
		}
	}
}
