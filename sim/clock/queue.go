package clock

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

// entry is one pending event. key holds the class above the sequence number.
type entry struct {
	at   Time
	key  uint64
	slot int32
	id   int32
	kind Kind
}

const classShift = 56

func (a *entry) before(b *entry) bool {
	return a.at < b.at || a.at == b.at && a.key < b.key
}

// queue is a 4-ary heap ordered by (time, class, sequence). pos[slot] is where
// the event of a slot stands in the heap, so that it can be taken out.
type queue struct {
	heap []entry
	pos  []int32
	free []int32
	seq  uint64
}

func (q *queue) push(at Time, class Class, kind Kind, id int32) Token {
	var slot int32
	if n := len(q.free); n > 0 {
		slot = q.free[n-1]
		q.free = q.free[:n-1]
	} else {
		slot = int32(len(q.pos))
		q.pos = append(q.pos, 0)
	}
	q.seq++
	q.heap = append(q.heap, entry{at, uint64(class)<<classShift | q.seq, slot, id, kind})
	q.up(len(q.heap) - 1)
	return Token(slot + 1)
}

// remove takes the entry at heap index i out and frees its slot.
func (q *queue) remove(i int) entry {
	e := q.heap[i]
	q.free = append(q.free, e.slot)
	q.pos[e.slot] = -1
	last := len(q.heap) - 1
	moved := q.heap[last]
	q.heap = q.heap[:last]
	if i < last {
		q.heap[i] = moved
		if i > 0 && moved.before(&q.heap[(i-1)/4]) {
			q.up(i)
		} else {
			q.down(i)
		}
	}
	return e
}

func (q *queue) up(i int) {
	e := q.heap[i]
	for i > 0 {
		parent := (i - 1) / 4
		if !e.before(&q.heap[parent]) {
			break
		}
		q.heap[i] = q.heap[parent]
		q.pos[q.heap[i].slot] = int32(i)
		i = parent
	}
	q.heap[i] = e
	q.pos[e.slot] = int32(i)
}

func (q *queue) down(i int) {
	e := q.heap[i]
	n := len(q.heap)
	for {
		first := 4*i + 1
		if first >= n {
			break
		}
		least := first
		for c := first + 1; c < min(first+4, n); c++ {
			if q.heap[c].before(&q.heap[least]) {
				least = c
			}
		}
		if !q.heap[least].before(&e) {
			break
		}
		q.heap[i] = q.heap[least]
		q.pos[q.heap[i].slot] = int32(i)
		i = least
	}
	q.heap[i] = e
	q.pos[e.slot] = int32(i)
}
