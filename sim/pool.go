package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// pool is something limited that steps need: the people of a craft, or the
// units of a place. Crafts come first in the table of pools, then places.
type pool struct {
	endless  bool  // a place without limit
	free     int32 // may be below 0 while people work over
	used     int32
	capacity int32
	head     int32 // line of jobs that wait for it, in their total order
	tail     int32
	runHead  int32 // people: running work in the order of its start
	runTail  int32
	guard    int32 // the job it is kept for, None
	cursor   int32 // where this instant's search stands
	dirty    bool
	since    clock.Time // of the present use
	units    []unit
}

// unit is one booth, bay or stall.
type unit struct {
	holder int32 // job, None
	down   bool
	downs  int8 // failures not yet repaired
	guns   []gunState
	gun    int16 // the one its holder sprays with, or did last
}

// gunState is what is in a gun set.
type gunState struct {
	color int16 // None: clean
	down  bool
	downs int8
	used  clock.Time
}

func newPool() pool { return pool{head: None, tail: None, runHead: None, runTail: None, guard: None} }

// place gives the pool of a place.
func (r *Run) place(p int16) int32 { return int32(len(r.plan.Crafts)) + int32(p) }

// use reports the use of a pool until now, before it changes.
func (r *Run) use(p int32) {
	q := &r.pools[p]
	now := r.clk.Now()
	if now > q.since {
		f := &r.fact.use
		f.Pool, f.Used, f.Capacity, f.From, f.To = p, q.used, q.capacity, q.since, now
		r.obs.Use(f)
		q.since = now
	}
}

// take and give change what is used; give has the line looked at again.
func (r *Run) take(p int32, n int32) {
	r.use(p)
	r.pools[p].used += n
	r.pools[p].free -= n
}

func (r *Run) give(p int32, n int32) {
	r.use(p)
	r.pools[p].used -= n
	r.pools[p].free += n
	r.touch(p)
}

// touch has the jobs that wait for a pool looked at in this instant.
func (r *Run) touch(p int32) {
	q := &r.pools[p]
	q.cursor = q.head
	if !q.dirty && q.head != None {
		q.dirty = true
		r.dirty = append(r.dirty, p)
		r.clk.Ask(clock.Choose)
	}
	if r.helping {
		r.touchHelped(p)
	}
}

// touchHelped has the jobs looked at that people of a craft could help with.
func (r *Run) touchHelped(p int32) {
	if int(p) >= len(r.plan.Crafts) {
		return
	}
	for _, c := range r.plan.Crafts[p].Helps {
		h := &r.pools[c]
		if h.dirty {
			h.cursor = h.head
		} else if h.head != None {
			r.touch(int32(c))
		}
	}
}

// line puts a job into the line of a pool at the place its order gives it.
func (r *Run) line(p, j int32) {
	q := &r.pools[p]
	b := &r.jobs[j]
	b.queue = p
	after := q.tail
	for after != None && r.earlier(j, after) {
		after = r.jobs[after].prev
	}
	b.prev = after
	if after == None {
		b.next, q.head = q.head, j
	} else {
		b.next = r.jobs[after].next
		r.jobs[after].next = j
	}
	if b.next == None {
		q.tail = j
	} else {
		r.jobs[b.next].prev = j
	}
}

// unline takes a job out of the line it waits in.
func (r *Run) unline(j int32) {
	b := &r.jobs[j]
	if b.queue == None {
		return
	}
	q := &r.pools[b.queue]
	if q.cursor == j {
		q.cursor = b.next
	}
	if b.prev == None {
		q.head = b.next
	} else {
		r.jobs[b.prev].next = b.next
	}
	if b.next == None {
		q.tail = b.prev
	} else {
		r.jobs[b.next].prev = b.prev
	}
	if r.helping && q.head == None && q.free > 0 { // nothing of its own waits now
		r.touchHelped(b.queue)
	}
	b.queue, b.next, b.prev = None, None, None
}

// run puts a job at the end of its craft's list of running work, and unrun
// takes it out.
func (r *Run) enlist(c int16, j int32) {
	q := &r.pools[c]
	b := &r.jobs[j]
	b.runPrev, b.runNext = q.runTail, None
	if q.runTail == None {
		q.runHead = j
	} else {
		r.jobs[q.runTail].runNext = j
	}
	q.runTail = j
}

func (r *Run) delist(c int16, j int32) {
	q := &r.pools[c]
	b := &r.jobs[j]
	if b.runPrev == None {
		q.runHead = b.runNext
	} else {
		r.jobs[b.runPrev].runNext = b.runNext
	}
	if b.runNext == None {
		q.runTail = b.runPrev
	} else {
		r.jobs[b.runNext].runPrev = b.runPrev
	}
	b.runNext, b.runPrev = None, None
}

// causeIn names the reason of a wait in the line of a pool of which nothing is
// left, so that nobody has looked what else is missing.
func (r *Run) causeIn(p int32) record.Cause {
	if crafts := int32(len(r.plan.Crafts)); p >= crafts && p < r.anything() {
		return r.causeOf(int16(p - crafts))
	} else if p < crafts {
		return record.Cause{Reason: record.NoCrew, Of: int16(p)}
	}
	return record.Cause{Of: None}
}

// causeOf names the reason of a wait for a place.
func (r *Run) causeOf(p int16) record.Cause {
	if r.plan.Places[p].Kind == Hoist {
		return record.Cause{Reason: record.NoHoist, Of: p}
	}
	return record.Cause{Reason: record.NoPlace, Of: p}
}
