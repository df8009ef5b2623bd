package clock

import (
	"errors"
	"runtime/debug"
	"slices"
	"testing"

	"github.com/fschuetz04/simgo"
	"pgregory.net/rapid"
)

// diary writes down what happened and runs an optional reaction.
type diary struct {
	c     *Clock
	seen  []int32
	react func(kind Kind, id int32)
	turns []Class
}

func (d *diary) Handle(kind Kind, id int32) {
	d.seen = append(d.seen, id)
	if d.react != nil {
		d.react(kind, id)
	}
}
func (d *diary) Turn(class Class) {
	d.turns = append(d.turns, class)
	d.seen = append(d.seen, -1-int32(class))
}

func TestEverythingAtOneInstant(t *testing.T) {
	c := New()
	d := &diary{c: c}
	d.react = func(kind Kind, id int32) {
		if id == 2 { // added during the instant, lower classes still come first
			c.Ask(Choose)
			c.Ask(Choose)
			c.Ask(Match)
			c.At(c.Now(), Choose, 0, 30)
			c.At(c.Now(), Finish, 0, 10)
			c.At(c.Now()-5, Finish, 0, 11)
		}
	}
	c.At(7, Choose, 0, 3)
	c.At(7, Change, 0, 2)
	c.At(7, Finish, 0, 1)
	c.At(9, Finish, 0, 9) // at the end of the run: stays pending
	if err := c.Run(9, d); err != nil {
		t.Fatal(err)
	}
	want := []int32{1, 2, 10, 11, -1 - int32(Match), 3, 30, -1 - int32(Choose)}
	if !slices.Equal(d.seen, want) {
		t.Errorf("order at one instant = %v, want %v", d.seen, want)
	}
	if c.Now() != 9 || c.Pending() != 1 || c.Peek() != 9 {
		t.Errorf("after the run: now %v, pending %d, peek %v", c.Now(), c.Pending(), c.Peek())
	}
	if err := c.Run(10, d); err != nil || d.seen[len(d.seen)-1] != 9 {
		t.Errorf("a second run goes on where the first ended: %v, %v", d.seen, err)
	}
}

func TestCancel(t *testing.T) {
	c := New()
	d := &diary{c: c}
	a := c.At(5, Finish, 0, 1)
	c.At(5, Finish, 0, 2)
	if !c.Cancel(a) || c.Cancel(a) || c.Cancel(0) {
		t.Error("cancel takes an event out once; the zero token names none")
	}
	if err := c.Run(6, d); err != nil || !slices.Equal(d.seen, []int32{2}) {
		t.Errorf("seen %v, %v", d.seen, err)
	}
}

func TestRunawayIsReported(t *testing.T) {
	c := New()
	c.Bound = 1000
	d := &diary{c: c}
	d.react = func(kind Kind, id int32) { c.At(c.Now(), Finish, kind, id) }
	c.At(Hour, Finish, 4, 7)
	var r *Runaway
	if err := c.Run(Day, d); !errors.As(err, &r) || r.At != Hour || r.Kind != 4 || r.ID != 7 {
		t.Errorf("got %v", err)
	}
}

// The queue against a sorted list: any mix of adding and cancelling.
func TestQueueAgainstSorting(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		type ref struct {
			at    Time
			class Class
			id    int32
		}
		c := New()
		var want []ref
		tokens := map[int32]Token{}
		for id := range int32(rapid.IntRange(1, 120).Draw(t, "events")) {
			r := ref{Time(rapid.IntRange(0, 9).Draw(t, "at")), Class(rapid.IntRange(0, 3).Draw(t, "class")), id}
			tokens[id] = c.At(r.at, r.class, 0, id)
			want = append(want, r)
			if rapid.IntRange(0, 3).Draw(t, "cancel") == 0 {
				i := rapid.IntRange(0, len(want)-1).Draw(t, "which")
				if !c.Cancel(tokens[want[i].id]) {
					t.Fatal("a pending event can be cancelled")
				}
				want = slices.Delete(want, i, i+1)
			}
		}
		slices.SortStableFunc(want, func(a, b ref) int {
			if a.at != b.at {
				return int(a.at - b.at)
			}
			return int(a.class) - int(b.class)
		})
		d := &diary{c: c}
		if err := c.Run(100, d); err != nil {
			t.Fatal(err)
		}
		if len(d.seen) != len(want) {
			t.Fatalf("%d events happened, want %d", len(d.seen), len(want))
		}
		for i := range want {
			if d.seen[i] != want[i].id {
				t.Fatalf("event %d: got %d, want %d", i, d.seen[i], want[i].id)
			}
		}
	})
}

// Facts of the event kernel this package stands on.
func TestKernelFacts(t *testing.T) {
	info, ok := debug.ReadBuildInfo()
	if ok {
		for _, m := range info.Deps {
			if m.Path == "github.com/fschuetz04/simgo" && m.Version != "v0.7.0" {
				t.Errorf("kernel version %s, want v0.7.0", m.Version)
			}
		}
	}
	s := simgo.NewSimulation()
	happened := 0
	ev := s.Event()
	ev.AddHandler(func(*simgo.Event) { happened++ })
	ev.TriggerDelayed(5)
	s.RunUntil(5)
	if happened != 0 || s.Now() != 5 {
		t.Error("RunUntil leaves events at exactly its target and moves time there")
	}
	if !s.Step() || happened != 1 || s.Step() {
		t.Error("Step then takes the one event")
	}
	gone := s.Timeout(3)
	gone.Abort()
	s.Run()
	if s.Now() != 8 {
		t.Error("an aborted timeout still moves the clock")
	}
}

type ping struct{ c *Clock }

func (p ping) Handle(kind Kind, id int32) {
	p.c.At(p.c.Now()+Time(id%7)+1, Finish, kind, id)
}
func (p ping) Turn(Class) {}

func BenchmarkEvent(b *testing.B) {
	for _, pending := range []int{16, 200} {
		b.Run(map[int]string{16: "16 pending", 200: "200 pending"}[pending], func(b *testing.B) {
			c := New()
			for i := range int32(pending) {
				c.At(Time(i), Finish, 0, i)
			}
			b.ReportAllocs()
			h := &counter{ping: ping{c}, left: b.N}
			for h.left > 0 {
				c.Run(c.Now()+1000, h)
			}
		})
	}
}

type counter struct {
	ping
	left int
}

func (p *counter) Handle(kind Kind, id int32) { p.left--; p.ping.Handle(kind, id) }

// The other way to let the kernel carry time: one kernel event per instant,
// made without a finalizer by copying a template. Kept beside BenchmarkEvent
// because the choice between them is a measured one.
func BenchmarkKernelEventPerInstant(b *testing.B) {
	s := simgo.NewSimulation()
	left := b.N
	var template simgo.Event
	first := s.Event()
	template = *first
	var two [2]simgo.Event
	i := 0
	var next func(*simgo.Event)
	next = func(*simgo.Event) {
		if left--; left <= 0 {
			return
		}
		i = 1 - i
		two[i] = template
		two[i].AddHandler(next)
		two[i].TriggerDelayed(1)
	}
	b.ReportAllocs()
	next(nil)
	s.Run()
}
