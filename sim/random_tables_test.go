package sim

import (
	"slices"

	"moldturn/sim/record"
)

// tables looks at the state at the end of an instant.
func (w *watcher) tables() {
	w.people()
	w.units()
	w.rotation()
	w.lines()
}

// people checks that what is counted as used is at work, and that beyond
// capacity there is only work that is finished in overtime.
func (w *watcher) people() {
	r := w.r
	used := make([]int32, len(r.plan.Crafts))
	bound := make([]int32, len(r.plan.Crafts))
	for j := range r.jobs {
		b := &r.jobs[j]
		if b.state != working && b.state != timed {
			if b.people != 0 && b.state != unused {
				w.fault("job %d in state %d keeps %d people", b.serial, b.state, b.people)
			}
			continue
		}
		s := r.step(b)
		if s.Craft == None {
			continue
		}
		if n := b.people + b.lent; n < s.Least || n > s.Want {
			w.fault("step %q has %d people, wants %d and at least %d", s.Name, n, s.Want, s.Least)
		}
		used[s.Craft] += int32(b.people)
		if s.End == Pause && b.state == working {
			bound[s.Craft] += int32(b.people)
		}
		if b.lent > 0 {
			used[b.lender] += int32(b.lent)
			if s.End == Pause && b.state == working {
				bound[b.lender] += int32(b.lent)
			}
		}
	}
	for c := range used {
		q := &r.pools[c]
		if q.used != used[c] || q.free != q.capacity-q.used {
			w.fault("craft %d: %d used and %d free of %d, %d at work", c, q.used, q.free, q.capacity, used[c])
		}
		if bound[c] > q.capacity {
			w.fault("craft %d: %d at work that pauses, %d present", c, bound[c], q.capacity)
		}
	}
}

// units checks that every unit in use has one holder, who knows it.
func (w *watcher) units() {
	r := w.r
	holds := 0
	for j := range r.jobs {
		if b := &r.jobs[j]; b.state != unused {
			for _, h := range b.held {
				if h.unit == None {
					continue
				}
				holds++
				if r.pools[r.place(h.place)].units[h.unit].holder != int32(j) {
					w.fault("job %d keeps unit %d of place %d, which is not its own", b.serial, h.unit, h.place)
				}
			}
		}
	}
	for p := range r.plan.Places {
		q := &r.pools[r.place(int16(p))]
		if q.endless {
			continue
		}
		up, free, held, running := int32(0), int32(0), int32(0), int32(0)
		for u := range q.units {
			x := &q.units[u]
			if x.holder != None {
				holds--
			}
			switch {
			case x.down:
			case x.holder == None:
				up, free = up+1, free+1
			default:
				up, held = up+1, held+1
			}
		}
		for j := range r.jobs {
			if b := &r.jobs[j]; b.state == working || b.state == timed {
				for _, k := range r.step(b).Use {
					if int(k) == p && (b.state == working || r.step(b).Craft != None) {
						running++
					}
				}
			}
		}
		if q.capacity != up || q.used != held+running || q.free != free-running || q.free < 0 {
			w.fault("place %d: %d used, %d free of %d; %d units in order, %d held, %d running", p, q.used, q.free, q.capacity, up, held, running)
		}
	}
	if holds != 0 {
		w.fault("%d more units are kept than have a holder", holds)
	}
}

// rotation checks that every mold is in one place and that no more are in
// rotation than planned.
func (w *watcher) rotation() {
	r := w.r
	with := make([]int, len(r.molds))
	for j := range r.jobs {
		if b := &r.jobs[j]; b.state != unused && b.mold != None {
			with[b.mold]++
		}
	}
	in := make([]int, len(r.parts))
	for i := range r.molds {
		m := &r.molds[i]
		p := &r.parts[m.part]
		inReady, inWait := slices.Contains(p.ready, int32(i)), slices.Contains(p.waitsBack, int32(i))
		sound := false
		switch m.state {
		case inUse:
			sound = with[i] == 1 && !inReady && !inWait
		case ready:
			sound = with[i] == 0 && inReady != inWait
		case resting, gone:
			sound = with[i] == 0 && !inReady && !inWait
		}
		if !sound {
			w.fault("mold %d in state %d: with %d jobs, ready %v, waits for rotation %v", i, m.state, with[i], inReady, inWait)
		}
		if m.state != resting && m.state != gone && !m.out {
			in[m.part]++
		}
	}
	for k := range in {
		if r.plan.Parts[k].Care != None && (in[k] != r.parts[k].inRotation || in[k] > r.plan.Parts[k].InUse) {
			w.fault("part %d: %d molds in rotation, counted %d, planned %d", k, in[k], r.parts[k].inRotation, r.plan.Parts[k].InUse)
		}
	}
}

// lines checks that what waits stands in one line, with the cause of it, and
// that nothing waits that could start.
func (w *watcher) lines() {
	r := w.r
	for j := range r.jobs {
		b := &r.jobs[j]
		switch b.state {
		case unused, working, timed, stored, gated:
			if b.queue != None && b.state != unused {
				w.fault("job %d in state %d stands in line %d", b.serial, b.state, b.queue)
			}
			continue
		}
		if b.queue == None && b.cause.Reason != record.Down && !(b.down && b.cause.Reason == record.NoGun) {
			w.fault("job %d waits in no line for %v", b.serial, b.cause)
		}
		if b.cause.Reason == record.NoReason {
			w.fault("job %d waits without reason for step %q", b.serial, r.step(b).Name)
		}
		if b.queue != None && w.couldStart(int32(j)) {
			w.fault("job %d waits for step %q (%v %d) and could start", b.serial, r.step(b).Name, b.cause.Reason, b.cause.Of)
		}
	}
	for p := range r.pools {
		before := int32(None)
		for j := r.pools[p].head; j != None; j = r.jobs[j].next {
			if r.jobs[j].queue != int32(p) || r.jobs[j].prev != before || before != None && r.earlier(j, before) {
				w.fault("line %d is out of order at job %d", p, r.jobs[j].serial)
			}
			before = j
		}
	}
}

// couldStart says that a waiting job surely could start: its people and places
// are there and nothing else is asked for. What is kept for protected claims
// is left out by asking only for steps while no claim is overdue.
func (w *watcher) couldStart(j int32) bool {
	r := w.r
	b := &r.jobs[j]
	s := r.step(b)
	if s.Gate != 0 || s.Opens || s.Spray != NoSpray || s.End != Pause && !b.resumed || s.Verb == SkinBegun {
		return false
	}
	for p := range r.pools {
		for g := r.pools[p].head; g != None; g = r.jobs[g].next {
			if r.overdue(g) && g != j {
				return false
			}
		}
	}
	for _, list := range [][]int16{s.Take, s.Use} {
		for _, p := range list {
			if q := &r.pools[r.place(p)]; !q.endless && q.free < 1 && !b.holds(p) {
				return false
			}
		}
	}
	for _, h := range b.held {
		if h.unit != None && r.pools[r.place(h.place)].units[h.unit].down {
			return false
		}
	}
	if s.Craft == None {
		return true
	}
	best := int32(0)
	for _, c := range r.helpers[s.Craft] {
		if q := &r.pools[c]; q.head == None {
			best = max(best, q.free)
		}
	}
	return max(r.pools[s.Craft].free, 0)+best >= int32(s.Least)
}
