package sim

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// protectAfter is how long a claim waits until later claims must leave it what
// it needs.
const protectAfter = clock.Hour

// ask has the present step of a job wait for all it needs. What can start is
// chosen later in the same instant, after everything that ends now has ended.
func (r *Run) ask(j int32) {
	b := &r.jobs[j]
	now := r.clk.Now()
	b.state, b.asked, b.since = waiting, now, now
	b.urgent = r.step(b).Urgent
	if b.order != None {
		b.urgent += r.orders[b.order].urgent
	}
	p := r.firstNeed(b)
	b.cause = r.causeIn(p)
	if r.last && r.pools[p].head == None && r.clk.Quiet() { // nobody to compare with
		r.try(j)
		if b = &r.jobs[j]; b.state == waiting && b.queue == None {
			r.line(p, j)
		}
		return
	}
	r.line(p, j)
	r.touch(p)
}

// firstNeed is the pool in whose line a job first waits.
func (r *Run) firstNeed(b *job) int32 {
	s := r.step(b)
	for _, p := range s.Take {
		if !b.holds(p) {
			return r.place(p)
		}
	}
	if s.Craft != None {
		return int32(s.Craft)
	}
	if len(s.Use) > 0 {
		return r.place(s.Use[0])
	}
	return r.anything()
}

// anything is the endless pool in whose line steps wait that need only air.
func (r *Run) anything() int32 { return int32(len(r.pools) - 1) }

func (b *job) holds(p int16) bool {
	for i := range b.held {
		if b.held[i].place == p {
			return true
		}
	}
	return false
}

// choose starts what can start, over all pools that changed, in the total
// order of claims, and says of what stays why it waits now.
func (r *Run) choose() {
	r.search()
	for _, j := range r.reopened {
		if b := &r.jobs[j]; b.state == waiting && b.queue != None && r.empty(b.queue) {
			r.park(j, b.queue, r.causeIn(b.queue))
		}
	}
	r.reopened = r.reopened[:0]
}

// search goes through the lines of the pools that changed. A pool is searched
// until nothing of it is left.
func (r *Run) search() {
	for {
		if len(r.dirty) == 1 && r.chooseAlone(r.dirty[0]) {
			return
		}
		best := int32(None)
		for i := 0; i < len(r.dirty); {
			q := &r.pools[r.dirty[i]]
			if q.cursor == None || r.empty(r.dirty[i]) {
				q.dirty = false
				q.cursor = None
				r.dirty = slices.Delete(r.dirty, i, i+1)
				continue
			}
			if best == None || r.earlier(q.cursor, best) {
				best = q.cursor
			}
			i++
		}
		if best == None {
			return
		}
		r.pools[r.jobs[best].queue].cursor = r.jobs[best].next
		r.try(best)
	}
}

// chooseAlone is choose while one pool alone has changed; false when starting
// work has changed another.
func (r *Run) chooseAlone(p int32) bool {
	q := &r.pools[p]
	for q.cursor != None && !r.empty(p) {
		j := q.cursor
		q.cursor = r.jobs[j].next
		r.try(j)
		if len(r.dirty) > 1 {
			return false
		}
	}
	q.dirty, q.cursor = false, None
	r.dirty = r.dirty[:0]
	return true
}

// empty says that nothing can be had of a pool, so its line need not be read.
func (r *Run) empty(p int32) bool {
	q := &r.pools[p]
	if q.endless || q.free > 0 {
		return false
	}
	if int(p) < len(r.plan.Crafts) {
		return len(r.helpers[p]) == 0
	}
	return true
}

// try starts the step of a job that waits, if all it needs is there together.
// Otherwise the job waits for the first need that is not met, in this order:
// the air, the gel window, places, guns, hoists, people, the end of the shift.
func (r *Run) try(j int32) {
	b := &r.jobs[j]
	s := r.step(b)
	if r.watched && r.standsDown(j) {
		return
	}
	if !b.resumed {
		if s.Verb == SkinBegun && r.washOut(j) && r.backToWash(j) {
			return
		}
		if s.Gate != 0 && r.gateShut(j, s) || s.Opens && r.windowShut(j, s) {
			return
		}
		for _, p := range s.Take {
			if !b.holds(p) && !r.room(p, j, s.Spray) {
				return
			}
		}
		if s.Spray != NoSpray && r.gunless(j, s) {
			return
		}
	}
	for _, p := range s.Use {
		if q := r.place(p); !r.pools[q].endless && r.pools[q].free < 1 {
			r.park(j, q, r.causeOf(p))
			return
		}
	}
	if s.Craft == None {
		r.begin(j, 0, None, 0)
		return
	}
	n, lender, lent := r.hands(j, s)
	if n+lent < s.Least {
		r.park(j, int32(s.Craft), record.Cause{Reason: record.NoCrew, Of: s.Craft})
		return
	}
	if s.End != Pause && !b.resumed && !r.fits(j, s, n+lent) {
		r.park(j, int32(s.Craft), record.Cause{Reason: record.ShiftEnds, Of: s.Craft})
		return
	}
	r.begin(j, n, lender, lent)
}

// park has a job wait in the line of one pool for one cause.
func (r *Run) park(j, p int32, cause record.Cause) {
	b := &r.jobs[j]
	if b.cause != cause {
		r.span(b, false)
		b.cause = cause
	}
	if b.queue != p {
		r.unline(j)
		r.line(p, j)
	}
}

// room says whether a job can have a unit of a place, and parks it otherwise.
func (r *Run) room(p int16, j int32, spray Spray) bool {
	q := &r.pools[r.place(p)]
	if q.endless {
		return true
	}
	if q.free-r.keptPlaces(p, j) < 1 {
		r.park(j, r.place(p), r.causeOf(p))
		return false
	}
	if spray != NoSpray && r.pickUnit(p, j, spray) == None {
		r.park(j, r.place(p), record.Cause{Reason: record.NoGun, Of: p})
		return false
	}
	return true
}

// keptPlaces is how many units of a place are kept for older claims that only
// wait for people now and are protected.
func (r *Run) keptPlaces(p int16, j int32) int32 {
	kept := int32(0)
	for c := range r.plan.Crafts {
		if g := r.pools[c].head; g != None && g != j && r.protected(g, int16(c), j) && slices.Contains(r.step(&r.jobs[g]).Take, p) && !r.jobs[g].holds(p) {
			kept++
		}
	}
	return kept
}

// hands says how many people of its craft a step can have now, and how many of
// a craft that helps.
func (r *Run) hands(j int32, s *Step) (n int16, lender, lent int16) {
	free := r.spare(int32(s.Craft), j)
	n = min(s.Want, int16(max(free, 0)))
	lender = None
	if n == s.Want {
		return n, None, 0
	}
	for _, c := range r.helpers[s.Craft] {
		q := &r.pools[c]
		if q.head == None && int16(q.free) > lent {
			lender, lent = c, min(int16(q.free), s.Want-n)
		}
	}
	return n, lender, lent
}

// spare is how many people of a craft a job can have without taking what an
// older, protected claim needs.
func (r *Run) spare(c int32, j int32) int32 {
	q := &r.pools[c]
	if q.free <= 0 || q.head == None || q.head == j {
		return q.free
	}
	for g := q.head; g != None && g != j && r.earlier(g, j); g = r.jobs[g].next {
		if !r.overdue(g) {
			break
		}
		if !r.protected(g, int16(c), j) {
			continue
		}
		if r.endsBefore(j, r.couldStart(g, c)) {
			return q.free
		}
		return q.free - int32(r.step(&r.jobs[g]).Want)
	}
	return q.free
}

func (r *Run) overdue(g int32) bool { return r.clk.Now()-r.jobs[g].asked >= protectAfter }

// protected says whether waiting job g holds back the later job j at craft c:
// it has waited long, only people are missing, and the shift has enough.
func (r *Run) protected(g int32, c int16, j int32) bool {
	b := &r.jobs[g]
	return r.overdue(g) && b.cause.Reason == record.NoCrew && b.cause.Of == c &&
		int32(r.step(b).Least) <= r.pools[c].capacity && r.earlier(g, j)
}

// couldStart is when enough people of a craft will be free for job g if
// nothing else is begun.
func (r *Run) couldStart(g, c int32) clock.Time {
	free := r.pools[c].free
	least := int32(r.step(&r.jobs[g]).Least)
	r.ends = r.ends[:0]
	for j := r.pools[c].runHead; j != None; j = r.jobs[j].runNext {
		r.ends = append(r.ends, ending{r.jobs[j].ends, int32(r.jobs[j].people)})
	}
	slices.SortFunc(r.ends, func(a, b ending) int { return int(a.at - b.at) })
	for _, e := range r.ends {
		if free >= least {
			break
		}
		free += e.people
		if free >= least {
			return e.at
		}
	}
	return r.clk.Now()
}

// ending is when some people will be free.
type ending struct {
	at     clock.Time
	people int32
}

// endsBefore says whether a job, begun now with the people who are free, surely
// ends by t.
func (r *Run) endsBefore(j int32, t clock.Time) bool {
	b := &r.jobs[j]
	s := r.step(b)
	left := b.left
	if !b.resumed {
		if s.Add != NoExtra || s.Scale != NoScale || s.Spray != NoSpray {
			return false
		}
		left = clock.FromHours(s.Longest * r.learned(b, s))
	}
	if left >= clock.Never {
		return false
	}
	if slow := r.slowness(s, min(s.Want, int16(r.pools[s.Craft].free))); slow > 1 {
		left = clock.FromHours(left.Hours() * slow)
	}
	return r.clk.Now()+left <= t
}

// fits says whether a step that people would begin now may begin, given how
// long it takes on average and what its end rule asks for.
func (r *Run) fits(j int32, s *Step, people int16) bool {
	b := &r.jobs[j]
	if s.End == Pause {
		return true
	}
	hours := r.hours[s.Craft]
	if hours.RoundTheClock() {
		return true
	}
	now := r.clk.Now()
	ends := now + clock.FromHours(r.meanHours(b, s)*r.slowness(s, people))
	if s.End == Fit {
		end, ok := hours.ShiftEnd(now)
		return ok && r.chainEnds(j, ends) <= end
	}
	c := &r.plan.Crafts[s.Craft]
	if c.Late >= clock.Never {
		return true
	}
	end, ok := hours.DayEnd(now)
	return ok && ends <= end+c.Late
}

// chainEnds is when the spraying that follows a step in the same place should
// be over, if the step ends at t: a booth is not taken for a band in the
// afternoon whose base coat would have to wait for the morning.
func (r *Run) chainEnds(j int32, t clock.Time) clock.Time {
	b := &r.jobs[j]
	steps := r.plan.Routes[b.route].Steps
	s := &steps[b.step]
	if s.Spray == NoSpray || len(s.Free) > 0 {
		return t
	}
	last := t
	for i := int(b.step) + 1; i < len(steps); i++ {
		next := &steps[i]
		if next.Pace == Labor && (next.End != Fit || next.Craft != s.Craft) || next.Loop {
			break
		}
		if next.When != Always && !r.holds(next.When, j) {
			continue
		}
		switch next.Pace {
		case Labor:
			t += clock.FromHours(next.Mean * r.learned(b, next))
			last = t
		case ByCure:
			t = r.air.cure[next.Area].Ready(t, next.Mean)
		default:
			t += clock.FromHours(next.Mean)
		}
		if len(next.Free) > 0 {
			break
		}
	}
	return last
}
