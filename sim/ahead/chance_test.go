package ahead

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

func TestWhen(t *testing.T) {
	w := When{5, 1, clock.Never, 3, 2, 4, 9, 8, 7, 6}
	for _, c := range []struct {
		share float64
		want  clock.Time
	}{{0.5, 6}, {0.8, 9}, {0.82, clock.Never}, {1, clock.Never}, {0.1, 2}, {0, 1}} {
		if got := w.Surely(c.share); got != c.want {
			t.Errorf("surely %v: %v, want %v", c.share, got, c.want)
		}
	}
	if w.By(6) != 0.5 || w.Ever() != 0.9 || (When{}).Surely(0.5) != clock.Never || (When{}).By(1) != 0 {
		t.Errorf("by 6: %v, ever: %v", w.By(6), w.Ever())
	}
}

// Spans of one step make one task: ready when it first waits, begun when people
// begin, over when the next step begins. A step done again is another task.
func TestTasks(t *testing.T) {
	var f Future
	k := newKeeper(&f, 0, 1, 2)
	span := func(step int16, doing record.Doing, working bool, repeat int32, from, to clock.Time) {
		k.Span(&record.Span{Job: 1, Step: step, Doing: doing, Working: working, Repeat: repeat, People: 2, Cause: record.Cause{Reason: record.NoCrew, Of: 0}, From: from, To: to})
	}
	span(0, record.Masking, true, 0, 0, 1*clock.Hour)
	span(1, record.Spraying, false, 0, 1*clock.Hour, 3*clock.Hour)
	span(1, record.Spraying, true, 0, 3*clock.Hour, 4*clock.Hour)
	span(1, record.Spraying, false, 0, 4*clock.Hour, 25*clock.Hour)
	span(1, record.Spraying, true, 0, 25*clock.Hour, 26*clock.Hour)
	span(1, record.Spraying, true, 1, 26*clock.Hour, 27*clock.Hour)
	if len(f.Tasks) != 3 {
		t.Fatalf("%d tasks, want 3", len(f.Tasks))
	}
	if x := f.Tasks[1]; x.Ready != clock.Hour || x.Began != 3*clock.Hour || x.End != 26*clock.Hour || !x.Over || x.People != 2 {
		t.Errorf("first task %+v", x)
	}
	if x := f.Tasks[2]; x.Began != 26*clock.Hour || x.Over {
		t.Errorf("second task %+v", x)
	}
	if f.Short[0][0] != 22*clock.Hour || f.Short[0][1] != clock.Hour {
		t.Errorf("waits by day %v, want 22 h and 1 h", f.Short[0])
	}
}
