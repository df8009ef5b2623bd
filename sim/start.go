package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// Unknown stands in a Start for an instant or a number that nobody wrote down.
const Unknown = -1

// Start is a plant as it stands at one moment, for a run that begins there
// instead of with an empty floor. Instants are on the clock of the plan, whose
// start date must lie before all that has happened: they are Unknown or from 0
// to At. Molds that are not listed stand as the plan says.
type Start struct {
	At     clock.Time // the moment; nothing before it is in the facts
	Molds  []StartMold
	Orders []StartOrder // order k has number k in the facts
	Work   []StartWork  // of two pieces that wait as long for the same, the first listed goes first
	Out    []StartOut
	Down   []StartDown
	Days   []StartDay
	Pieces []int // of background work that wait, by kind; shorter, or nil: none
}

// StartMold is a mold of the plan, listed once at most.
type StartMold struct {
	Mold    int32 // index into Plan.Molds
	Stands  Stands
	Turns   int        // since new; Unknown: as the plan says
	Since   int        // turns since strip; Unknown: as the plan says
	Surface float64    // lasting loss of luster, points; Unknown: as the plan says
	Reading float64    // luster of its last part, for strips by luster; 0: not known
	When    clock.Time // since when it stands so; Unknown: since At
	Step    int16      // InCare: index into the steps of its part's care route
	Begun   clock.Time // InCare: when Step was begun; Unknown: it waits for it
	Left    float64    // InCare: hours that a begun Step still takes; Unknown
	Back    clock.Time // Away: when it comes back; Unknown: not in this run
	Renewed bool       // Away: it comes back with a new surface, to be broken in
}

// Stands is what a mold does at the start.
type Stands uint8

// What a mold does.
const (
	MoldReady  Stands = iota // waxed, waits for a part
	MoldPulled               // empty, its care has not begun
	MoldInCare
	MoldWithPart // a row of Start.Work names it
	MoldInReserve
	MoldAway // at the pattern shop, cracked, stuck
)

// StartOrder is a boat that is wanted and not shipped, on the floor or not.
type StartOrder struct {
	Model       int16
	Color, Band int16      // None for none; a color of None is drawn from the model's mix
	Arrived     clock.Time // Unknown: at the start
	Began       clock.Time // its first part; Unknown: by the earliest that is known of its work
	Due         clock.Time // clock.Never without a date
	Urgent      int8       // higher goes first
}

// StartWork is a part of an order on the floor, or a boat in assembly.
type StartWork struct {
	Order int32 // index into Start.Orders
	Part  int16 // index into Plan.Parts; None: the whole boat
	Mold  int32 // index into Plan.Molds that it is in; None: out of its mold, or without one
	Step  int16 // of its route; the number of steps: finished, it waits for its mates

	Begun clock.Time // when Step was begun; Unknown: it waits for it
	Since clock.Time // since when it waits for a Step that is not begun; Unknown: since At
	Left  float64    // hours that a begun Step still takes with the people it wants; Unknown: worked out from Begun

	Sprayed   clock.Time // end of the base coat: from here the gel window runs; Unknown, like those below, also for what is still to come
	Skinned   clock.Time // start of the skin coat
	Laminated clock.Time // end of the last labor in the mold: from here it cures
}

// StartOut is people who are out on days.
type StartOut struct {
	Craft    int16
	People   int
	From, To int // days from Plan.Start, both out
}

// StartDown is a place that is down. Unit None means all units.
type StartDown struct {
	Place, Unit int16
	From, To    clock.Time // To clock.Never: nobody knows until when
}

// StartDay is days that are not worked as the plan says.
type StartDay struct {
	From, To int   // days from Plan.Start, both included
	Extra    bool  // worked as the nearest working day is; otherwise off
	Craft    int16 // None: all crafts
}

// BeginFrom sets a plan up as it stands at a moment. The run goes from there to
// the length of the plan; its luck is that of the seed and the replication, so
// runs of several replications differ in what is still to come and in what
// nobody wrote down. The error is of type StartFaults.
func BeginFrom(p *Plan, air *Air, s *Start, seed uint64, replication int, obs record.Observer) (*Run, error) {
	if faults := s.Check(p); len(faults) > 0 {
		return nil, faults
	}
	r := &Run{plan: s.changed(p), air: air, obs: obs, clk: clock.NewAt(s.At), from: s.At, seed: seed, replication: replication,
		root: draw.Root(seed, replication), verbs: &verbs}
	r.startFrom(s)
	return r, nil
}

// Plan is what the run follows: for one that began from a Start the plan with
// its changed days, which Resume must be given.
func (r *Run) Plan() *Plan { return r.plan }

// stand puts everything where a Start says. Molds come first, since work stands
// in them, and what is down last, so that what stands there still does.
func (r *Run) stand(s *Start) {
	r.outs = s.Out
	r.standGuns()
	r.standMolds(s)
	for i := range s.Orders {
		r.standOrder(&s.Orders[i])
	}
	for i := range s.Work {
		r.standWork(s, &s.Work[i])
	}
	r.standCare(s)
	for k := range min(len(s.Pieces), len(r.plan.Background)) {
		for range s.Pieces[k] {
			r.backgroundPiece(int32(k))
		}
	}
	r.standDown(s.Down)
}

// known is t where somebody wrote it down, else what is assumed; never 0, which
// stands for "not yet".
func known(t, assumed clock.Time) clock.Time {
	if t == Unknown {
		t = assumed
	}
	return max(t, 1)
}

// SimulateFrom is Simulate for a run that begins from a Start.
func SimulateFrom(p *Plan, air *Air, s *Start, seed uint64, replication int, obs record.Observer) error {
	r, err := BeginFrom(p, air, s, seed, replication, obs)
	if err != nil {
		return err
	}
	return r.Finish()
}
