package floor

// Unknown stands for a number that the files do not say, wherever 0 would be a
// value: turns, luster, hours left.
const Unknown = -1

// Floor is a plant as it stands at one moment: what a mold log, a traveler and
// an order book say, each name resolved to an index into the plan that it was
// read for (sim.None for none), each row with the place it came from. Every row
// in it can be used; what could not be is told by the Reading that holds it.
// Slices are in the order of the files: first by file name, then by row. A Floor
// is not changed by those who read it.
type Floor struct {
	Name    string // of the folder, as the user named it
	Morning Moment // the moment that the floor is of: the start of a run from it

	Molds    []Mold
	Work     []Work
	Orders   []Order // those on the floor already too; see Order.Begun
	Out      []Absent
	Down     []Downtime
	Calendar []Change
}

// Mold is one row of the mold log: the newest one of its mold.
type Mold struct {
	Place Place
	ID    string // as the shop calls it today, old names replaced
	Part  int16  // index into Plan.Parts, which says the model too
	Plan  int16  // index into Plan.Molds: the mold of the plan that this one is; sim.None: the plan has fewer

	Turns int // since new; Unknown
	Since int // turns since strip; Unknown

	State State
	Step  int16  // for InCare: index into the steps of its part's care route; sim.None else
	When  Moment // since when it is in State; zero: not known
	Back  Moment // for OutOfUse: when it comes back; zero: not known

	Renewed bool // for OutOfUse: it comes back with a new surface, to be broken in

	Work   int     // for Occupied: index into Floor.Work of the part in it; Unknown: none is listed
	Luster float64 // of the last part pulled, 0 to 100; Unknown
}

// State is what a mold does.
type State uint8

// States of a mold. The zero value is for molds of which nothing is said: the
// run may take them as ready.
const (
	NotSaid  State = iota
	Ready          // waxed and free
	Pulled         // empty, its check not begun
	InCare         // in Step of its care, or waiting for it when When is zero
	Occupied       // a part is in it
	Reserve        // kept in reserve
	OutOfUse       // stuck, cracked, at the pattern shop: not to be had until Back
)

// Work is one row of the work on the floor: a part from its first step to its
// last, or a boat in assembly.
type Work struct {
	Place  Place
	Serial string // of the boat; hull, deck and liner of one boat share it
	Model  int16  // index into Plan.Models
	Part   int16  // index into Plan.Parts; sim.None: the whole boat, in assembly
	Color  int16  // of the boat, index into Plan.Colors; sim.None: not said
	Band   int16  // accent; sim.None: none, or not said

	Route, Step int16   // index into Plan.Routes and into its steps
	Started     Moment  // when work or the wait of Step began; zero: it has not begun, the piece waits for it
	Left        float64 // hours that Step still takes with the people it wants; Unknown
	Done        float64 // share of Step that is done, 0 to 1; Unknown

	Mold int // index into Floor.Molds of the mold it is in; Unknown: in none, or not said

	Sprayed   Moment // when the gel coat of the base was sprayed; zero: not said or not yet, like those below
	Skinned   Moment
	Laminated Moment
	Unmolded  Moment // when it was pulled

	Order int // index into Floor.Orders of its order; Unknown: none is listed
}

// LeftHours is how many clock hours of Step are left with the people it wants,
// of hours in all: from Left, else from Done, else ok is false and the reader
// has to work it out from Started.
func (w *Work) LeftHours(hours float64) (left float64, ok bool) {
	switch {
	case w.Left >= 0:
		return w.Left, true
	case w.Done >= 0:
		return hours * (1 - w.Done), true
	}
	return 0, false
}

// Order is one boat of the order book. A row for several boats gives as many
// orders, numbered from 1.
type Order struct {
	Place    Place
	ID       string // serial or order number; "" where the book has none
	Number   int    // of the boats of its row, from 1
	Model    int16
	Color    int16   // sim.None: not said
	Band     int16   // sim.None: none, or not said
	Arrived  Moment  // when it was taken; zero: before the morning
	Due      Moment  // zero: no date promised
	Priority int8    // 0 to 100, higher first; 0 where nothing is said
	Price    float64 // as written, in whatever money; 0 where nothing is said. No answer uses it
	Begun    bool    // a part of it is in Floor.Work
}

// Absent is people who are out.
type Absent struct {
	Place    Place
	From, To Moment // whole days, the last one included
	Craft    int16  // index into Plan.Crafts
	Number   int    // people, at least 1
}

// Downtime is a place that cannot be used.
type Downtime struct {
	Place    Place
	At       int16  // index into Plan.Places
	Unit     int16  // of that place, from 0; sim.None: all of them
	From, To Moment // To zero: nobody knows until when
	Note     string
}

// Change is a day that is not worked though the calendar says so, or the other
// way round.
type Change struct {
	Place    Place
	From, To Moment // whole days, the last one included
	Extra    bool   // an extra day; otherwise a day off
	Craft    int16  // for this craft only; sim.None: for all
	Note     string
}
