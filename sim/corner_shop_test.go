package sim

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// shop is a plant of single tasks for tests by hand: each task is a boat of
// one part without a mold, ordered for a given hour. It starts on a Monday.
type shop struct {
	p *Plan
}

func newShop(days int) *shop {
	return &shop{&Plan{Name: "shop", Start: shift.DateOf(2027, 1, 4), Length: clock.Time(days) * clock.Day, Areas: []string{"plant"},
		Cure: cure.Default(), Finish: finish.Default(), Demand: Demand{CancelLate: clock.Never}, Window: Window{Craft: None}}}
}

// daily is a shift of every day between two clock hours; to may pass 24.
func (s *shop) daily(from, to float64, breaks ...shift.Break) *shift.Calendar {
	end := clock.FromHours(to)
	if end > clock.Day {
		end -= clock.Day
	}
	return must(shift.Compile(shift.Pattern{Shifts: []shift.Shift{{Days: shift.EveryDay, Hours: shift.Hours{From: clock.FromHours(from), To: end, Breaks: breaks}}}}, s.p.Start, s.p.Length+10*clock.Day))
}

func crewOf(n int, hours *shift.Calendar) Crew { return Crew{Hours: hours, People: n} }

// craft adds a craft whose overtime is not limited.
func (s *shop) craft(crews ...Crew) int16 {
	s.p.Crafts = append(s.p.Crafts, Craft{Name: fmt.Sprintf("craft %d", len(s.p.Crafts)), Crews: crews, Late: clock.Never, Overtime: clock.Never})
	return int16(len(s.p.Crafts) - 1)
}

func (s *shop) place(name string, count int) int16 {
	s.p.Places = append(s.p.Places, Place{Name: name, Count: count})
	return int16(len(s.p.Places) - 1)
}

// labor is a step that wants and needs n people for some hours.
func labor(craft int16, n int16, hours float64, end EndRule) Step {
	s := Step{Name: "work", Craft: craft, Want: n, Least: n, Slow: 1, End: end}
	s.SetTime(must(draw.Constant(hours)))
	return s
}

// task orders a boat with this route for an hour; orders must be added by time.
func (s *shop) task(at float64, urgent int8, steps ...Step) int32 {
	p := s.p
	n := int16(len(p.Models))
	p.Routes = append(p.Routes, Route{Name: fmt.Sprintf("task %d", n), Steps: steps}, Route{Name: "boat"})
	p.Parts = append(p.Parts, Part{Name: fmt.Sprintf("part %d", n), Model: n, Area: 10, Color: None, Route: int16(len(p.Routes) - 2), Care: None})
	p.Models = append(p.Models, Model{Name: fmt.Sprintf("model %d", n), Parts: []int16{n}, Boat: int16(len(p.Routes) - 1)})
	p.Demand.Dated = append(p.Demand.Dated, DatedOrder{Model: n, Color: None, Band: None, Arrives: clock.FromHours(at), Due: clock.Never, Urgent: urgent})
	return int32(len(p.Demand.Dated) - 1)
}

// diary keeps what happened to each order, in words.
type diary struct {
	record.Nothing
	lines map[int32][]string
	notes map[record.NoteKind]int
	uses  []record.Use
	pulls []record.Pull
	ships []record.Ship
}

func (d *diary) Span(s *record.Span) {
	if s.Order < 0 || s.Job < 0 {
		return
	}
	what := s.Cause.Reason.String()
	if s.Working {
		what = fmt.Sprintf("works %d", s.People)
	}
	lines := d.lines[s.Order]
	from, to := span(s.From), span(s.To)
	if n := len(lines); n > 0 && strings.HasPrefix(lines[n-1], what+" ") && strings.HasSuffix(lines[n-1], "-"+from) {
		lines[n-1] = strings.TrimSuffix(lines[n-1], from) + to
	} else {
		lines = append(lines, what+" "+from+"-"+to)
	}
	d.lines[s.Order] = lines
}

// span writes an instant as hours from the start, "14:30".
func span(t clock.Time) string {
	text := fmt.Sprintf("%d:%02d", t/clock.Hour, t%clock.Hour/clock.Minute)
	if t%clock.Minute != 0 {
		text += fmt.Sprintf("+%dms", t%clock.Minute)
	}
	return text
}

func (d *diary) Use(u *record.Use)   { d.uses = append(d.uses, *u) }
func (d *diary) Pull(p *record.Pull) { d.pulls = append(d.pulls, *p) }
func (d *diary) Ship(s *record.Ship) { d.ships = append(d.ships, *s) }
func (d *diary) Note(n *record.Note) { d.notes[n.Kind]++ }

// run runs the shop twice: for its diary, and under the watch of the identities.
func (s *shop) run(t *testing.T) *diary {
	t.Helper()
	w, err := watch(s.p, steadyAir(), 1)
	for _, f := range w.faults {
		t.Error(f)
	}
	if err != nil {
		t.Fatal(err)
	}
	d := &diary{lines: map[int32][]string{}, notes: map[record.NoteKind]int{}}
	if err := Simulate(s.p, steadyAir(), 1, 0, d); err != nil {
		t.Fatal(err)
	}
	return d
}

// want compares the diary of an order with what is expected, joined by commas.
func (d *diary) want(t *testing.T, order int32, want string) {
	t.Helper()
	if got := strings.Join(d.lines[order], ", "); got != want {
		t.Errorf("order %d:\n got %s\nwant %s", order, got, want)
	}
}

// shipped gives when an order left, or Never.
func (d *diary) shipped(order int32) clock.Time {
	if i := slices.IndexFunc(d.ships, func(s record.Ship) bool { return s.Order == order }); i >= 0 {
		return d.ships[i].At
	}
	return clock.Never
}

// breakAt is a break of some hours.
func breakAt(from, hours float64) shift.Break {
	return shift.Break{From: clock.FromHours(from), To: clock.FromHours(from + hours)}
}
