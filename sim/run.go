package sim

import (
	"fmt"
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Kinds of events.
const (
	evDone clock.Kind = iota + 1
	evShift
	evOver
	evGate
	evBreak
	evRepair
	evOrder
	evDated
	evCancel
	evBackground
	evDay
	evMold
	evBack
	evDown
	evUp
)

// Run is the state of one run of a plant: tables by index, no closures, no
// pointers between rows.
type Run struct {
	plan *Plan
	air  *Air
	obs  record.Observer
	clk  *clock.Clock
	root draw.Key

	seed        uint64 // of root
	replication int
	from        clock.Time  // when it begins
	outs        []StartOut  // people who are out
	downs       []StartDown // units that are down, each for itself

	jobs       []job
	freeJobs   []int32
	serial     int32
	pools      []pool
	crews      []crewState
	steps      [][]Step          // by route
	verbs      *[verbCount]verb  // what ends of steps mean
	hours      []*shift.Calendar // by craft
	helpers    [][]int16         // by craft: who helps it
	fails      []failState
	backs      []backState
	perBoat    []int32
	molds      []mold
	parts      []partState
	models     []modelState
	orders     []order
	freeOrders []int32
	made       int32 // orders so far
	onFloor    int
	sprayed    int     // parts being sprayed, or with gel coat and no skin
	fullWindow []int32 // jobs that wait for a slot in the gel window
	hot        bool
	learning   bool        // some model is learned
	helping    bool        // some craft helps another
	steady     bool        // nobody is slower in the heat or new
	hires      []hireState // by craft; nil where nobody leaves
	watched    bool        // something can break down

	last     bool    // what is asked for now is the last thing of its event
	dirty    []int32 // pools to search in this instant
	toMatch  []int16 // parts to match in this instant
	blocked  []int16 // parts that wait for the limit on the floor
	reopened []int32 // jobs that the air, or a repair, let into line again in this instant
	shedding []int16 // crafts that lost people in this instant

	list          []int32
	waitingOrders []policy.Waiting
	ends          []ending
	fact          facts
}

// facts are the records handed to observers, used again for each fact.
type facts struct {
	span record.Span
	use  record.Use
	pull record.Pull
	ship record.Ship
	note record.Note
	held []record.Hold
	past defect.Part // what flaws are drawn from
}

// Simulate runs a plan from instant 0 to its length under the luck of one
// replication and hands every fact to obs. The same plan, air, seed and
// replication give the same facts in the same order.
func Simulate(p *Plan, air *Air, seed uint64, replication int, obs record.Observer) error {
	return Begin(p, air, seed, replication, obs).Finish()
}

// Begin sets a plan up at instant 0, as Simulate does, for a run that is to be
// stopped on the way; see Run.Until.
func Begin(p *Plan, air *Air, seed uint64, replication int, obs record.Observer) *Run {
	r := &Run{plan: p, air: air, obs: obs, clk: clock.New(), seed: seed, replication: replication, root: draw.Root(seed, replication), verbs: &verbs}
	r.start()
	return r
}

// Now is the instant up to which everything has happened.
func (r *Run) Now() clock.Time { return r.clk.Now() }

// Until lets time pass to an instant, at most to the length of the plan. What is
// due at that very instant has not happened then.
func (r *Run) Until(t clock.Time) error {
	if err := r.passUntil(r, t); err != nil {
		return fmt.Errorf("%s: %w", r.plan.Name, err)
	}
	return nil
}

// Finish lets time pass to the length of the plan and reports all that is still
// going on then. The run must not be used afterwards.
func (r *Run) Finish() error {
	if err := r.Until(r.plan.Length); err != nil {
		return err
	}
	r.close()
	return nil
}

// derive lays out what follows from the plan alone.
func (r *Run) derive() {
	p := r.plan
	for i := range p.Routes {
		r.steps = append(r.steps, p.Routes[i].Steps)
	}
	for c := range p.Crafts {
		r.hours = append(r.hours, hoursOf(&p.Crafts[c]))
	}
}

// start sets the plant up at instant 0.
func (r *Run) start() { r.startFrom(nil) }

// startFrom sets the plant up as it stands; from an empty floor with nil.
func (r *Run) startFrom(s *Start) {
	p := r.plan
	r.derive()
	r.pools = make([]pool, len(p.Crafts)+len(p.Places)+1)
	for i := range r.pools {
		r.pools[i] = newPool()
		r.pools[i].since = r.from
	}
	r.pools[r.anything()].endless = true
	for i := range p.Places {
		q := &r.pools[r.place(int16(i))]
		if p.Places[i].Count < 0 {
			q.endless = true
			continue
		}
		q.free, q.capacity = int32(p.Places[i].Count), int32(p.Places[i].Count)
		for u := range p.Places[i].Count {
			x := unit{holder: None}
			if u < len(p.Places[i].Guns) {
				for g := range p.Places[i].Guns[u] {
					x.guns = append(x.guns, gunState{color: p.Places[i].Guns[u][g].Color})
				}
			}
			q.units = append(q.units, x)
		}
	}
	r.helpers = make([][]int16, len(p.Crafts))
	r.steady = !slices.ContainsFunc(p.Crafts, func(c Craft) bool { return c.HotSlow > 0 || c.Hires != (Hires{}) })
	for c := range p.Crafts {
		for _, h := range p.Crafts[c].Helps {
			r.helpers[h] = append(r.helpers[h], int16(c))
			r.helping = true
		}
	}
	r.parts = make([]partState, len(p.Parts))
	for i := range r.parts {
		r.parts[i].last = None
	}
	r.models = make([]modelState, len(p.Models))
	r.seasonBefore()
	r.season(int(r.from / clock.Day))
	r.startHires()
	r.startCrews()
	r.startFailures()
	r.startBackground()
	if s == nil {
		r.startMolds()
	} else {
		r.stand(s)
	}
	r.startDemand()
}

// Handle implements clock.Handler.
func (r *Run) Handle(kind clock.Kind, id int32) {
	switch kind {
	case evDone:
		r.done(id)
	case evShift:
		r.crewChange(id)
	case evOver:
		r.over(id)
	case evGate:
		r.reopen(id)
	case evBreak:
		r.breakDown(id)
	case evRepair:
		r.repaired(id)
	case evOrder:
		r.orderComes(int16(id))
	case evDated:
		r.dated(id)
	case evCancel:
		r.cancel(id)
	case evBackground:
		r.background(id)
	case evDay:
		r.season(int(id))
	case evMold:
		r.moldComes(id)
	case evBack:
		r.moldBack(id)
	case evDown:
		r.goesDown(id)
	case evUp:
		r.comesUp(id)
	}
}

// Turn implements clock.Handler.
func (r *Run) Turn(class clock.Class) {
	switch class {
	case clock.Match:
		for len(r.shedding) > 0 {
			c := r.shedding[len(r.shedding)-1]
			r.shedding = r.shedding[:len(r.shedding)-1]
			r.shed(c)
		}
		r.match()
	case clock.Choose:
		r.choose()
	}
}

// seasonBefore finds the season on the day before a run that begins later.
func (r *Run) seasonBefore() {
	s := &r.plan.Season
	if s.Kind == policy.NoSeason {
		return
	}
	for day := range int(r.from / clock.Day) {
		r.hot = s.Hot(int(shift.MonthAt(r.plan.Start, clock.Time(day)*clock.Day)), r.air.peaks(0, day), r.hot)
	}
	if r.hot {
		r.note(record.Note{Kind: record.Season, Order: None, Mold: None, Part: None, Place: None, Value: 1})
	}
}

// season says each day whether it is the hot season.
func (r *Run) season(day int) {
	s := &r.plan.Season
	if s.Kind == policy.NoSeason {
		return
	}
	t := clock.Time(day) * clock.Day
	hot := s.Hot(int(shift.MonthAt(r.plan.Start, t)), r.air.peaks(0, day), r.hot)
	if hot != r.hot {
		r.hot = hot
		value := 0.0
		if hot {
			value = 1
		}
		r.note(record.Note{Kind: record.Season, Order: None, Mold: None, Part: None, Place: None, Value: value})
	}
	if day%7 == 0 {
		r.note(record.Note{Kind: record.HeatPeak, Order: None, Mold: None, Part: None, Place: None, Value: r.air.peaks(0, day)})
	}
	if next := t + clock.Day; next < r.plan.Length {
		r.clk.At(next, clock.Change, evDay, int32(day+1))
	}
}

// note reports a thing that happened now. An order is given by its row.
func (r *Run) note(n record.Note) {
	r.fact.note = n
	f := &r.fact.note
	f.At = r.clk.Now()
	if n.Order != None {
		f.Order = r.orders[n.Order].number
		f.Model = r.orders[n.Order].model
	} else if n.Part != None {
		f.Model = r.plan.Parts[n.Part].Model
	}
	r.obs.Note(f)
}

// close reports all that is still going on at the end of a run.
func (r *Run) close() {
	for p := range r.pools[:len(r.pools)-1] {
		r.use(int32(p))
	}
	for j := range r.jobs {
		b := &r.jobs[j]
		if b.state != unused {
			r.span(b, b.state == working || b.state == timed)
		}
	}
	for i := range r.molds {
		if r.molds[i].state != inUse {
			r.moldSpan(&r.molds[i])
		}
	}
	for i := range r.orders {
		if o := &r.orders[i]; !o.ended && !o.onFloor {
			r.orderWait(o)
		}
	}
}
