package clock

import "math/bits"

// Class orders what happens at one instant: all events of a lower class come
// before any event of a higher one, also when they are added during the
// instant. Within a class, events come in the order in which they were added.
type Class uint8

// The classes of one instant, in their order: end work, change what is there
// (shifts, repairs, arrivals), match orders with molds, choose what starts.
const (
	Finish Class = iota
	Change
	Match
	Choose
	classes
)

// Kind says what an event is about; its values belong to the user of the
// package. Together with an id it is all an event carries: no closures, so a
// queue can be written to a file and read back.
type Kind uint8

// Token names a pending event for Cancel. The zero Token names none.
type Token int32

// entry is where one pending event stands in the order: its time, then its key,
// which holds the class above the sequence number above the slot.
type entry struct {
	at  Time
	key uint64
}

// A key has 2 bits of class, 38 of sequence (enough for years of computing) and
// 24 of slot.
const (
	classShift = 62
	seqShift   = 24
	slotMask   = 1<<seqShift - 1
)

// after is 1 if a comes after b, without a branch: which of two events comes
// first is anybody's guess, a processor's too.
func (a *entry) after(b *entry) uint64 {
	_, borrow := bits.Sub64(b.key, a.key, 0)
	_, borrow = bits.Sub64(uint64(b.at), uint64(a.at), borrow)
	return borrow
}

// queue holds pending events in their order, the next one last, so that taking
// it is cutting the end off, and adding an event moves only those that come
// before it. Most events are added for a time soon, behind few others; those far
// off, such as a thousand due dates, are never moved again. slots holds what an
// event is about; a slot is used again when its event has happened.
type queue struct {
	line  []entry
	slots []slot
	free  []int32
	seq   uint64
}

type slot struct {
	entry
	id   int32
	kind Kind
	used bool
}

func (q *queue) push(at Time, class Class, kind Kind, id int32) Token {
	var s int32
	if n := len(q.free); n > 0 {
		s = q.free[n-1]
		q.free = q.free[:n-1]
	} else {
		s = int32(len(q.slots))
		if s > slotMask {
			panic("clock: more than 16 million pending events")
		}
		q.slots = append(q.slots, slot{})
	}
	q.seq++
	e := entry{at, uint64(class)<<classShift | q.seq<<seqShift | uint64(s)}
	q.slots[s] = slot{e, id, kind, true}
	q.insert(e)
	return Token(s + 1)
}

// near is how many events are passed one by one before the rest is searched.
const near = 8

// insert puts an event where it belongs in the line.
func (q *queue) insert(e entry) {
	i := len(q.line)
	q.line = append(q.line, e)
	line := q.line
	for stop := max(i-near, 0); i > stop; i-- {
		if e.after(&line[i-1]) == 0 {
			line[i] = e
			return
		}
		line[i] = line[i-1]
	}
	at := q.find(&e, i)
	copy(line[at+1:i+1], line[at:i])
	line[at] = e
}

// find is how many of the first n of the line, the last to happen, come after e.
func (q *queue) find(e *entry, n int) int {
	base := 0
	for n > 0 {
		half := (n + 1) / 2
		base += half & -int(q.line[base+half-1].after(e))
		n -= half
	}
	return base
}

// next takes out the event that comes first.
func (q *queue) next() *slot {
	n := len(q.line) - 1
	s := int32(q.line[n].key & slotMask)
	q.line = q.line[:n]
	return q.release(s)
}

// drop takes the event of a slot out of the line.
func (q *queue) drop(s int32) {
	i := q.find(&q.slots[s].entry, len(q.line))
	q.line = append(q.line[:i], q.line[i+1:]...)
	q.release(s)
}

// release frees a slot. What it says stays readable until the next push.
func (q *queue) release(s int32) *slot {
	q.free = append(q.free, s)
	x := &q.slots[s]
	x.used = false
	return x
}

// first is the event that comes first; there must be one.
func (q *queue) first() *entry { return &q.line[len(q.line)-1] }
