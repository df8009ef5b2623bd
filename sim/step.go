package sim

import (
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// Route is the life of a part, of a mold in care, of a boat, or of a piece of
// background work, as a list of steps. One interpreter walks all of them.
type Route struct {
	Name  string
	Steps []Step
}

// Pace says how the time of a step runs.
type Pace uint8

// Paces.
const (
	Labor    Pace = iota // hours of work by people (or of a place alone)
	ByClock              // a wait in clock hours
	ByCure               // a wait in equivalent hours at 25 °C
	ByPolicy             // the hold in the mold, as the hold policy says
)

// EndRule says what happens at the end of a shift.
type EndRule uint8

// End rules.
const (
	Pause  EndRule = iota // goes on next shift with the work left
	Finish                // starts only if it should end about with the day, then runs over
	Fit                   // starts only if it should end within the shift; never pauses
)

// Gate is a set of conditions of the air that a step waits for.
type Gate uint8

// Gates, to be combined.
const (
	Dry  Gate = 1 << iota // far enough above dew point, not too humid
	Warm                  // warm enough for gel coat
)

// Step is one step of a route. It starts when all it needs is free together.
type Step struct {
	Number  int16 // names its luck: its place in the route as written, from 1; 0: its place in the plan
	Name    string
	Doing   record.Doing
	When    Cond         // skipped unless true
	Pace    Pace         // how its time runs
	Time    draw.Sampler // hours, at Want people
	Mean    float64      // of Time, hours; see SetTime
	Longest float64      // the most Time can be, hours; +Inf without bound
	Add     Extra        // hours that depend on the state of things
	Scale   Scale        // a factor on Time that depends on the state of things
	Verb    Verb         // what its end means to the plant

	Craft  int16   // None: no people
	Want   int16   // people
	Least  int16   // it can run with
	Slow   float64 // time goes with (Want/people)^Slow; 1 keeps the labor hours
	End    EndRule
	Urgent int8 // higher goes first

	Take  []int16 // places it takes and keeps
	Swap  []int16 // places given back when it starts
	Use   []int16 // places it needs while it runs: hoists
	Free  []int16 // places given back when it ends
	Spray Spray   // needs a gun set of the booth
	Gate  Gate
	Opens bool // opens the gel window: waits until a skin coat can follow
	Area  int  // climate area
	Loop  bool // at the end, goes back to step Back while Again holds
	Back  int16
	Again Cond
}

// Spray says which kind of gun set a step needs.
type Spray uint8

// Kinds of spraying.
const (
	NoSpray Spray = iota
	SprayBand
	SprayBase
)

// SetTime gives a step its time, in hours.
func (s *Step) SetTime(d draw.Dist) {
	s.Time = draw.Compile(d)
	s.Mean = d.Mean()
	_, s.Longest = d.Bounds()
}
