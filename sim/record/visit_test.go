package record

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"moldturn/sim/clock"
)

// Two jobs at once: waits by cause in the order they came, a pause between work,
// a step gone back to, and a stretch that cuts spans at its ends.
func TestVisits(t *testing.T) {
	const h = clock.Hour
	r := NewRecorder(2*h, 20*h)
	crew, night := Cause{NoCrew, 1}, Cause{OffShift, 1}
	span := func(job int32, step int16, repeat int32, people int16, c Cause, from, to clock.Time) {
		craft := int16(-1)
		if people > 0 {
			craft = 1
		}
		r.Span(&Span{Job: job, Order: job, Mold: -1, Step: step, Repeat: repeat, Working: people > 0, People: people, Craft: craft, Place: -1, Unit: -1, Cause: c, From: from, To: to})
	}
	span(1, 0, 0, 0, crew, 0, 3*h)
	span(2, 0, 0, 2, Cause{}, 1*h, 2*h) // over before the stretch
	span(1, 0, 0, 0, night, 3*h, 4*h)
	span(1, 0, 0, 0, crew, 4*h, 6*h)
	span(2, 1, 0, 1, Cause{}, 2*h, 7*h)
	span(1, 0, 0, 2, Cause{}, 6*h, 7*h)
	span(1, 0, 0, 0, night, 7*h, 9*h)
	span(1, 0, 0, 3, Cause{}, 9*h, 10*h)
	span(1, 0, 1, 1, Cause{}, 10*h, 30*h) // the same step once more
	want := []Visit{
		{Job: 1, Order: 1, Mold: -1, Asked: 2 * h, Began: 6 * h, End: 10 * h, Worked: 2 * h, People: 3, Craft: 1, Place: -1, Unit: -1,
			Waits: []Wait{{crew, 3 * h}, {night, 3 * h}}},
		{Job: 2, Order: 2, Mold: -1, Step: 1, Asked: 2 * h, Began: 2 * h, End: 7 * h, Worked: 5 * h, People: 1, Craft: 1, Place: -1, Unit: -1},
		{Job: 1, Order: 1, Mold: -1, Asked: 10 * h, Began: 10 * h, End: 20 * h, Worked: 10 * h, People: 1, Craft: 1, Place: -1, Unit: -1},
	}
	got := r.Visits()
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	for i := range got {
		if v := &got[i]; v.Waited() != v.End-v.Asked-v.Worked {
			t.Errorf("visit %d: waits %v of %v", i, v.Waited(), v.End-v.Asked-v.Worked)
		}
	}
}

// Facts beyond the most are counted, and what a span held is its own copy.
func TestRecorderIsBounded(t *testing.T) {
	r := NewRecorder(0, clock.Day)
	r.Most = 2
	held := []Hold{{3, 1}}
	for i := range 5 {
		r.Span(&Span{From: clock.Time(i), To: clock.Time(i + 1), Held: held})
	}
	held[0] = Hold{9, 9}
	if len(r.Spans) != 2 || r.Dropped != 3 || r.Spans[1].Held[0] != (Hold{3, 1}) {
		t.Errorf("%d kept, %d dropped, held %v", len(r.Spans), r.Dropped, r.Spans[1].Held)
	}
}
