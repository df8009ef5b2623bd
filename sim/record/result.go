package record

import "moldturn/sim/clock"

// States is the number of ways a mold's hour can be spent: each Doing, then
// each Reason to wait.
const States = int(Doings) + int(Reasons)

// StateName names state s of a mold's hour.
func StateName(s int) string {
	if s < int(Doings) {
		return Doing(s).String()
	}
	return Reason(s - int(Doings)).String()
}

// Load is how much of a craft or place was used, in unit-milliseconds.
type Load struct {
	Used, Over, Capacity clock.Time // Over is use beyond capacity: overtime
}

// Lusters is a group of lusters.
type Lusters struct {
	N, AtTarget int
	Sum         float64
}

func (l *Lusters) add(luster, target float64) {
	l.N++
	l.Sum += luster
	if luster >= target {
		l.AtTarget++
	}
}

// Mean is the mean luster of the group, 0 for an empty one.
func (l Lusters) Mean() float64 {
	if l.N == 0 {
		return 0
	}
	return l.Sum / float64(l.N)
}

// MostTurns is the last group of lusters by turns since strip: that many or more.
const MostTurns = 20

// Part is what one part type did.
type Part struct {
	Pulls, Molds int
	Cycles       int        // pulls with one before, in the same mold
	CycleSum     clock.Time // between them
	HoldSum      clock.Time
	Luster       Lusters
}

// Model is what one model did.
type Model struct {
	Shipped, Dated, OnTime, AtTarget, Conceded int
	LeadSum                                    clock.Time // from first part to shipping
	LateSum                                    clock.Time // of late boats
}

// MostFlaws is the largest number of kinds of defects that are told apart.
const MostFlaws = 8

// Flaws is what came of one kind of defect at inspection.
type Flaws struct {
	Found, Missed int
	Hours         float64 // labor to put right those found
}

// Result is what one run of the plant gave, after the warm-up. Everything in
// it is a sum over facts, so results of several runs can be added up.
type Result struct {
	Frame Frame

	WeekShips []int                     // boats shipped by whole week of the frame
	WeekOpen  []bool                    // by the same weeks: not shut down
	WeekYear  []int                     // by the same weeks: week of the year, 0 … 52
	RunShips  []int                     // boats shipped by week of the whole run, warm-up included, as Frame.Shut counts weeks
	MonthOpen [12]int                   // open weeks by month of their Thursday
	MonthShip [12]int                   // boats shipped in those weeks
	Shipped   int                       // in open weeks
	Models    []Model                   // shipped in the frame
	Parts     []Part                    // pulled in the frame
	Load      [][12]Load                // by pool and month
	MoldHours [][12][States]clock.Time  // by part type and month
	Waits     [12][]clock.Time          // by month: waits of boats, parts and molds in work for each pool, then for each Reason
	Heat      [WeeksOfYear]Heat         // by week of the year: heat, build-up and strips
	ByWeek    []ByWeek                  // by pool; none in results kept by a program that did not count it
	MoldWaits []clock.Time              // what molds waited for, with a part or without: for each pool, then for each Reason; may be missing like ByWeek
	Lusters   []float64                 // as pulled, sorted
	ByTurn    [2][MostTurns + 1]Lusters // cool and hot season, by turns since strip
	ByMonth   [12]Lusters
	Boats     Lusters          // as shipped
	Dark      Lusters          // as pulled, parts that show haze fully
	Flaws     [MostFlaws]Flaws // by defect
	Notes     [NoteKinds]int
	Values    [NoteKinds]float64
	OnFloor   int // boats on the floor at the end
}

// ReasonWait is the index in Waits of a reason that is about no pool.
func (r *Result) ReasonWait(x Reason) int { return r.Frame.Pools + int(x) }
