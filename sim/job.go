package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/record"
)

// jobState is what a job is doing.
type jobState uint8

const (
	unused  jobState = iota // the row is free
	waiting                 // for something its step needs
	gated                   // for the air, or the gel window
	working                 // people, or a place, work on it
	paused                  // work was begun and waits for people again
	timed                   // it cures, or waits for a fixed time
	stored                  // it has no step: a finished part that waits for its mates
)

// jobKind is what a job is.
type jobKind uint8

const (
	partJob jobKind = iota
	careJob         // a mold in care after its pull
	boatJob
	backgroundJob
)

// hold is a place that a job keeps across steps.
type hold struct{ place, unit int16 }

// job is one traveler on a route with what is known of the part, or boat, that it
// is about; a mold in care has none. It is plain data: everything it refers to is
// named by index, so the state of a run can be written down and read back.
type job struct {
	traveler
	piece piece
}

// traveler is where a job stands and what it does there.
type traveler struct {
	kind    jobKind
	state   jobState
	resumed bool // paused work goes before new work
	urgent  int8
	down    bool // the place it stands in is down
	serial  int32
	order   int32 // row
	number  int32 // of the order, for facts
	unit    int32 // number of the part or boat among those of its model, for learning; 0: none
	mold    int32
	part    int16
	route   int16
	step    int16
	people  int16
	lender  int16 // craft that helps out, None
	lent    int16 // people of it
	repeat  int32 // how often it has gone back, so that repeats have their own luck
	queue   int32 // pool it waits for, None
	next    int32 // in that pool's line
	prev    int32
	runNext int32 // in its craft's list of running work
	runPrev int32
	cause   record.Cause
	asked   clock.Time // when its step was asked for
	since   clock.Time // when its present state began
	left    clock.Time // work left, at the wanted number of people
	full    clock.Time // the same when it began
	pace    float64    // clock time per unit of left
	begun   clock.Time // when its step was first begun
	ends    clock.Time // when it will end, if nothing comes between
	event   clock.Token
	over    clock.Token // end of its overtime
	key     draw.Key
	held    []hold
}

// piece is what is known of the part, or boat, that a job is about.
type piece struct {
	color, band int16
	banded      bool       // this part carries a band
	opened      bool       // it counts among the sprayed parts without skin
	rounds      int8       // of rework done
	attempt     int16      // 0, or how often the part was thrown away before
	sprayed     clock.Time // end of spraying; 0 before
	sprayBegan  clock.Time
	laborEnded  clock.Time
	late        float64 // hours from spraying to skin coat
	heat        float64 // sum of heat index readings from spray to last shot, °F
	heats       float64 // and how many
	fin         finish.Part
	luster      float64 // as pulled
	reading     float64
	stuckHours  float64
	stuck       bool
	conceded    bool
	made        made
}

// newJob gives a free row of the table of jobs.
func (r *Run) newJob(kind jobKind, route int16, key draw.Key) int32 {
	var j int32
	if n := len(r.freeJobs); n > 0 {
		j = r.freeJobs[n-1]
		r.freeJobs = r.freeJobs[:n-1]
	} else {
		j = int32(len(r.jobs))
		r.jobs = append(r.jobs, job{})
	}
	b := &r.jobs[j]
	held := b.held[:0]
	r.serial++
	if kind != careJob {
		b.piece = piece{}
	}
	b.traveler = traveler{} // in place: a literal would be made elsewhere and copied
	b.kind, b.state, b.serial, b.route, b.key, b.held = kind, waiting, r.serial, route, key, held
	b.order, b.number, b.mold, b.part, b.lender = None, None, None, None, None
	b.queue, b.next, b.prev, b.runNext, b.runPrev = None, None, None, None, None
	b.since = r.clk.Now()
	return j
}

// endJob frees the row of a job that is done; it must hold nothing.
func (r *Run) endJob(j int32) {
	r.jobs[j].state = unused
	r.freeJobs = append(r.freeJobs, j)
}

// step gives the step a job is at.
func (r *Run) step(b *job) *Step { return &r.steps[b.route][b.step] }

// time draws how many hours the present step s of a job, or its repeat, takes.
func (b *job) time(s *Step) float64 { return s.Time.At(b.key, b.draw(s)) }

// luck draws the uniform of the present step s of a job, or of its repeat.
func (b *job) luck(s *Step) float64 { return b.key.U(b.draw(s)) }

// draw is that of the present step s among the draws of its job. A step's
// number stays when other steps of the route are left out.
func (b *job) draw(s *Step) uint64 {
	n := uint64(s.Number)
	if n == 0 {
		n = uint64(b.step)
	}
	return n<<16 | uint64(uint16(b.repeat))
}

// earlier says whether job a goes before job b when both wait: paused work
// first, then the urgent, then who asked first, then the older job.
func (r *Run) earlier(a, b int32) bool {
	x, y := &r.jobs[a], &r.jobs[b]
	if x.resumed != y.resumed {
		return x.resumed
	}
	if x.urgent != y.urgent {
		return x.urgent > y.urgent
	}
	if x.asked != y.asked {
		return x.asked < y.asked
	}
	return x.serial < y.serial
}

// span reports the state of a job from since until now and begins a new one.
func (r *Run) span(b *job, isWork bool) {
	now := r.clk.Now()
	if now > b.since {
		if !isWork && b.cause.Reason == record.NoCrew {
			r.spanOffShift(b, now)
		} else {
			r.emit(b, isWork, b.cause, b.since, now)
		}
	}
	b.since = now
}

// spanOffShift tells the hours without a free person from those in which the
// craft was not at work, by calendar arithmetic when the wait closes.
func (r *Run) spanOffShift(b *job, now clock.Time) {
	hours := r.hours[b.cause.Of]
	for t := b.since; t < now; {
		until := min(hours.NextChange(t), now)
		cause := b.cause
		if !hours.On(t) {
			cause.Reason = record.OffShift
		}
		r.emit(b, false, cause, t, until)
		t = until
	}
}

// colorOf is the color of the part or boat a job is about.
func (r *Run) colorOf(b *job) int16 {
	switch b.kind {
	case partJob:
		return b.piece.color
	case boatJob:
		return r.orders[b.order].color
	}
	return None
}

func (r *Run) emit(b *job, isWork bool, cause record.Cause, from, to clock.Time) {
	f := &r.fact.span
	f.Job, f.Order, f.Mold, f.Route, f.Step, f.Part = b.serial, b.number, b.mold, b.route, b.step, b.part
	f.Working, f.Cause, f.From, f.To = isWork, cause, from, to
	f.Doing, f.People, f.Craft, f.Place, f.Unit = record.Idle, 0, None, None, None
	f.Color = r.colorOf(b)
	f.Repeat, f.Lent, f.Lender = b.repeat, 0, None
	held := r.fact.held[:0]
	for _, h := range b.held {
		held = append(held, record.Hold{Place: h.place, Unit: h.unit})
	}
	if int(b.step) < len(r.steps[b.route]) {
		s := r.step(b)
		f.Doing = s.Doing
		if isWork {
			f.People, f.Craft, f.Lent, f.Lender = b.people+b.lent, s.Craft, b.lent, b.lender
			for _, p := range s.Use {
				held = append(held, record.Hold{Place: p, Unit: None})
			}
		}
	} else {
		f.Step = None
	}
	if n := len(b.held); n > 0 {
		f.Place, f.Unit = b.held[n-1].place, b.held[n-1].unit
	}
	if len(held)+len(f.Held) > 0 {
		r.fact.held, f.Held = held, held
	}
	r.obs.Span(f)
}
