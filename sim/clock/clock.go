package clock

import (
	"fmt"
	"math/bits"
	"runtime"

	"github.com/fschuetz04/simgo"
)

// Handler is the plant behind a clock.
type Handler interface {
	// Handle does what a pending event asked for.
	Handle(kind Kind, id int32)
	// Turn is called once for a class that was asked for with Ask, after the
	// pending events of this instant up to and including that class.
	Turn(class Class)
}

// Clock holds pending events and lets time pass from one to the next. Time
// itself is kept by the event kernel, which also ends a run; the order of
// events at one instant is the queue's (see Class). The zero Clock is not
// ready; use New.
type Clock struct {
	queue
	kernel *simgo.Simulation
	now    Time
	asked  uint8 // one bit per class
	ended  bool
	Bound  int // the most events allowed at one instant
}

// DefaultBound is the most events that one instant may hold before Run reports
// a runaway: steps of no length that follow each other without end.
const DefaultBound = 1_000_000

// New gives a clock at time 0 with nothing pending.
func New() *Clock {
	return &Clock{kernel: simgo.NewSimulation(), Bound: DefaultBound}
}

// Now is the current instant.
func (c *Clock) Now() Time { return c.now }

// Pending is the number of events that wait for their time.
func (c *Clock) Pending() int { return len(c.line) }

// Peek gives the time of the next pending event, or Never.
func (c *Clock) Peek() Time {
	if len(c.line) == 0 {
		return Never
	}
	return c.first().at
}

// At adds an event at instant t; a t in the past means now.
func (c *Clock) At(t Time, class Class, kind Kind, id int32) Token {
	return c.push(max(t, c.now), class, kind, id)
}

// Cancel takes a pending event out; false when it is not pending any more.
// A token must not be kept after its event has happened or been cancelled,
// because its slot is used again.
func (c *Clock) Cancel(tok Token) bool {
	s := int32(tok) - 1
	if s < 0 || int(s) >= len(c.slots) || !c.slots[s].used {
		return false
	}
	c.drop(s)
	return true
}

// Ask has Handler.Turn called once for this class in the current instant,
// however often it is asked for before its turn comes.
func (c *Clock) Ask(class Class) { c.asked |= 1 << class }

// Quiet says that nothing else is due in the current instant.
func (c *Clock) Quiet() bool {
	return c.asked == 0 && (len(c.line) == 0 || c.first().at > c.now)
}

// Runaway is the error of an instant that does not end.
type Runaway struct {
	At     Time
	Kind   Kind
	ID     int32
	Events int
}

func (r *Runaway) Error() string {
	return fmt.Sprintf("time stands still at %v: %d events at one instant, the last of kind %d for %d", r.At, r.Events, r.Kind, r.ID)
}

// Run lets time pass until the instant end: everything before end happens,
// what is due at end stays pending, and Now is end afterwards. It returns a
// *Runaway when an instant does not end, with the clock standing there.
func (c *Clock) Run(end Time, h Handler) error {
	c.endAt(end)
	n := 0
	for {
		if c.asked != 0 {
			class := Class(bits.TrailingZeros8(c.asked))
			if len(c.line) == 0 || c.first().at > c.now || Class(c.first().key>>classShift) > class {
				c.asked &^= 1 << class
				if n++; n > c.Bound {
					return &Runaway{At: c.now, Events: n}
				}
				h.Turn(class)
				continue
			}
		} else if len(c.line) == 0 || c.first().at >= end {
			break
		} else if c.first().at > c.now {
			c.pass(c.first().at)
			n = 0
		}
		e := c.next()
		if n++; n > c.Bound {
			return &Runaway{c.now, e.kind, e.id, n}
		}
		h.Handle(e.kind, e.id)
	}
	for !c.ended && c.kernel.Step() {
	}
	c.now = Time(c.kernel.Now())
	return nil
}

// pass moves time forward to t, which is before the end of the run.
func (c *Clock) pass(t Time) {
	c.kernel.RunUntil(float64(t))
	c.now = t
}

// endAt has the kernel end the run at t. One kernel event per run, without the
// finalizer the kernel puts on each: a run that is given up must be freed, and
// must not be touched by the collector.
func (c *Clock) endAt(t Time) {
	c.ended = false
	ev := c.kernel.Event()
	runtime.SetFinalizer(ev, nil)
	ev.AddHandler(func(*simgo.Event) { c.ended = true })
	ev.TriggerDelayed(float64(max(t, c.now) - c.now))
}
