package sim

import (
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/state"
)

// scribe writes every fact down as a line, all of it.
type scribe struct{ lines []string }

func (s *scribe) add(kind string, fact any) {
	s.lines = append(s.lines, fmt.Sprintf("%s %+v", kind, fact))
}
func (s *scribe) Span(f *record.Span) { s.add("span", *f) }
func (s *scribe) Use(f *record.Use)   { s.add("use", *f) }
func (s *scribe) Pull(f *record.Pull) { s.add("pull", *f) }
func (s *scribe) Ship(f *record.Ship) { s.add("ship", *f) }
func (s *scribe) Note(f *record.Note) { s.add("note", *f) }

// reopened saves a run, writes and reads the snapshot as a file would hold it,
// and resumes it.
func reopened(t *testing.T, r *Run, air *Air, obs record.Observer) *Run {
	t.Helper()
	s, err := r.Snapshot()
	if err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(s)
	if err != nil {
		t.Fatal(err)
	}
	var back Snapshot
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	next, err := Resume(r.plan, air, &back, obs)
	if err != nil {
		t.Fatal(err)
	}
	return next
}

// splitRun runs a plan in pieces, each from the snapshot of the one before.
func splitRun(t *testing.T, p *Plan, air *Air, seed uint64, at []clock.Time) ([]string, *Run, error) {
	s := &scribe{}
	r := Begin(p, air, seed, 0, s)
	for _, moment := range at {
		if err := r.Until(moment); err != nil {
			return s.lines, r, err
		}
		next := &scribe{}
		r = reopened(t, r, air, next)
		next.lines = s.lines
		s = next
	}
	err := r.Until(p.Length)
	if err == nil {
		end := *r // the state at the end, before the books are closed
		r.close()
		return s.lines, &end, nil
	}
	return s.lines, r, err
}

// A run that is split at random moments, each piece resumed from the snapshot of
// the one before, has the facts of the run that is not split, one for one, the
// same end or the same circle, and the same state at its end.
func TestSplitRunsEqualWholeOnes(t *testing.T) {
	const plants = 120
	airs := randomAirs()
	facts, blocked := 0, 0
	for n := range plants {
		m := randomPlan(n)
		key := draw.Root(77, n)
		grow(m.p, n)
		whole, atEnd, err := splitRun(t, m.p, airs[m.air], uint64(n), nil)
		var at []clock.Time
		for i := range 1 + n%3 {
			moment := clock.Time(key.U(uint64(i)) * float64(m.p.Length))
			if i == 1 { // events lie at full hours
				moment = moment / clock.Hour * clock.Hour
			}
			at = append(at, moment)
		}
		slices.Sort(at)
		pieces, atEnd2, err2 := splitRun(t, m.p, airs[m.air], uint64(n), at)
		if fmt.Sprint(err) != fmt.Sprint(err2) {
			t.Errorf("plant %d split at %v: %v, whole: %v", n, at, err2, err)
		}
		for i := range max(len(whole), len(pieces)) {
			if i >= len(whole) || i >= len(pieces) || whole[i] != pieces[i] {
				t.Errorf("plant %d split at %v: fact %d of %d differs from the whole run's %d:\n%s\n%s", n, at, i, len(pieces), len(whole), line(pieces, i), line(whole, i))
				break
			}
		}
		facts += len(whole)
		var circle *Deadlock
		if errors.As(err, &circle) {
			blocked++
			continue
		}
		a, errA := atEnd.Snapshot()
		b, errB := atEnd2.Snapshot()
		if errA != nil || errB != nil || !reflect.DeepEqual(a, b) {
			t.Errorf("plant %d split at %v: the state at the end is another", n, at)
		}
		if t.Failed() {
			break
		}
	}
	t.Logf("%d plants, %d facts, %d blocked themselves", plants, facts, blocked)
	if facts < 1000*plants {
		t.Errorf("only %d facts", facts)
	}
}

// grow gives some plants what random plants have not: people who leave, models
// that are learned, molds that come later, boats that take any mate.
func grow(p *Plan, n int) {
	if n%3 == 0 {
		p.Crafts[layCraft].Hires = Hires{Turnover: 5, Ramp: 20, Start: 0.6, Flaws: 2}
		p.Learning = Learning{Standard: 30, Most: 3}
		p.Models[0].Curve = Curve{Gel: 0.9, Lamination: 0.85, Assembly: 0.9, Built: 2}
	}
	if last := len(p.Molds) - 1; n%4 == 1 && last >= 0 {
		p.Molds[last].Arrives, p.Molds[last].New = 9*clock.Day, true
	}
	p.Demand.AnyMate = n%5 == 2
	if n%6 == 4 {
		p.Strip.Kind, p.Strip.Limit = policy.StripByLuster, 97
	}
}

func line(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "none"
}

// Everything a run knows is either saved or named as derived, and what is saved
// is plain data: a table that gets a closure, or a pointer into another table by
// way of an interface, fails here.
func TestWholeStateIsSaved(t *testing.T) {
	if _, err := layout(); err != nil {
		t.Fatal(err)
	}
	if l, err := state.Layout(&Run{}, nil); err == nil {
		t.Errorf("the state without its derived fields has the layout %s", l)
	}
	for _, name := range derivedFields {
		if !strings.HasPrefix(name, "Run.") {
			t.Errorf("%s: a row of a table must be saved whole", name)
		}
	}
	var pointers func(reflect.Type, string)
	seen := map[reflect.Type]bool{}
	pointers = func(x reflect.Type, where string) {
		switch x.Kind() {
		case reflect.Pointer, reflect.Map:
			t.Errorf("%s is a %v; tables refer to each other by index", where, x.Kind())
		case reflect.Slice, reflect.Array:
			pointers(x.Elem(), where)
		case reflect.Struct:
			for i := range x.NumField() {
				name := x.Name() + "." + x.Field(i).Name
				if !seen[x] && !slices.Contains(derivedFields, name) {
					pointers(x.Field(i).Type, name)
				}
			}
			seen[x] = true
		}
	}
	pointers(reflect.TypeFor[Run](), "Run")
}

// The room for lists that is not saved is empty in between: nothing is left in
// it that a later instant reads.
func TestRestoredWithoutScratch(t *testing.T) {
	airs := randomAirs()
	m := randomPlan(3)
	r := Begin(m.p, airs[m.air], 3, 0, record.Nothing{})
	if err := r.Until(m.p.Length / 2); err != nil {
		t.Fatal(err)
	}
	if len(r.dirty)+len(r.toMatch)+len(r.reopened)+len(r.shedding) > 0 || r.last {
		t.Error("something of an instant is left over after it")
	}
}

func TestSnapshotOfSomethingElse(t *testing.T) {
	airs := randomAirs()
	m := randomPlan(1)
	r := Begin(m.p, airs[m.air], 1, 0, record.Nothing{})
	if err := r.Until(clock.Week); err != nil {
		t.Fatal(err)
	}
	good, err := r.Snapshot()
	if err != nil {
		t.Fatal(err)
	}
	other := randomPlan(1).p
	other.Molds[0].Surface += 0.01
	same := randomPlan(1).p
	for _, test := range []struct {
		change func(s *Snapshot)
		plan   *Plan
		air    *Air
		want   string
	}{
		{func(s *Snapshot) {}, same, airs[m.air], ""},
		{func(s *Snapshot) { s.Version = 9 }, m.p, airs[m.air], "of version 9 of its form; this program reads version 1"},
		{func(s *Snapshot) { s.Layout = "x" }, m.p, airs[m.air], "of another version of the program"},
		{func(s *Snapshot) {}, other, airs[m.air], "of another plant, or of this one with other inputs"},
		{func(s *Snapshot) {}, m.p, airs[(m.air+1)%len(airs)], "of other weather"},
		{func(s *Snapshot) { s.Seed = 8 }, m.p, airs[m.air], "damaged"},
		{func(s *Snapshot) { s.At++ }, m.p, airs[m.air], "damaged"},
		{func(s *Snapshot) { s.Tables = s.Tables[:len(s.Tables)-1] }, m.p, airs[m.air], "unexpected EOF"},
		{func(s *Snapshot) { s.Tables = json.RawMessage(`{"jobs":true}`) }, m.p, airs[m.air], "Run.jobs: found \"true\""},
	} {
		s := *good
		test.change(&s)
		_, err := Resume(test.plan, test.air, &s, record.Nothing{})
		if test.want == "" && err != nil || test.want != "" && (err == nil || !strings.Contains(err.Error(), test.want)) {
			t.Errorf("got %v, want %q", err, test.want)
		}
	}
}
