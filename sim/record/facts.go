// Package record holds the facts that a run of the plant streams, and the
// observers that make results of them. Nothing is counted inside the engine:
// every figure is a function of facts. Facts are handed over by pointer and
// are only valid during the call.
package record

import "moldturn/sim/clock"

// Span is one stretch of time in which one job (a part, a mold in care, a
// boat, a piece of background work) was in one state: working, curing or
// waiting for one cause. The spans of a job follow each other without gap.
type Span struct {
	Job      int32  // the job's number in this run
	Order    int32  // index of the order, -1 for none
	Mold     int32  // the mold it is in or is, -1 for none
	Route    int16  // index of the route
	Step     int16  // index of the step in its route, -1 between routes
	Part     int16  // part type, -1 for boats and background
	Color    int16  // of the part or boat, -1 for none
	Doing    Doing  // what the step is
	Working  bool   // true while people work or something cures
	People   int16  // people at work in it
	Craft    int16  // their craft, -1 for none
	Place    int16  // the place it stands in, -1 for none
	Unit     int16  // which of that place
	Repeat   int32  // how often its job has gone back to an earlier step
	Lent     int16  // how many of People another craft lends
	Lender   int16  // that craft, while Lent is above 0
	Held     []Hold // every place it has, those of Step.Use included while it is Working; valid during the call
	Cause    Cause  // why it waits, when it is not Working
	From, To clock.Time
}

// Hold is a unit of a place that a job has. Unit is -1 for a place without limit
// and for places that are only used while work runs, such as hoists.
type Hold struct{ Place, Unit int16 }

// Use says how much of a craft or place was used for a stretch of time.
type Use struct {
	Pool     int32 // crafts first, then places
	Used     int32
	Capacity int32 // people on shift or places in order
	From, To clock.Time
}

// Pull is a part taken from its mold.
type Pull struct {
	At                       clock.Time
	Order, Mold              int32
	Model, Part              int16
	Color                    int16
	Turns                    int32 // parts from this mold since its strip, this one included
	Luster                   float64
	Green                    float64
	Stuck, Scrapped          bool
	Dark                     bool       // it shows haze fully: a dark color or a band
	Cycle                    clock.Time // since the mold's pull before; 0 for its first
	HeatIndex                float64    // mean from spray to last shot, °F
	BuildUp, Grown           float64    // of the mold before this part, and what the part added; pulls of a cool mold
	Sprayed, Laminated, Hold clock.Time // when sprayed, when the last labor ended, how long it was held
}

// Ship is a boat that left.
type Ship struct {
	At, Arrived, Released, Due clock.Time // Due is clock.Never without a date
	Order                      int32
	Model, Color               int16
	Luster                     float64 // of its worst part, as shipped
	Conceded                   bool    // under the target after the last round
	Shown                      float64 // luster of its worst part once all post-cure has come out
	Missed                     uint8   // bits by defect that inspection did not see
	Escaped                    bool    // Shown is under what is promised, or a defect was missed
}

// Note is any other thing that happened, counted by kind.
type Note struct {
	At                 clock.Time
	Kind               NoteKind
	Order, Mold        int32
	Model, Part, Place int16
	Of                 int16   // which defect, for flaws
	Value              float64 // in the unit of the kind
}

// NoteKind says what a Note is about.
type NoteKind uint8

// Kinds of notes.
const (
	OrderArrived   NoteKind = iota
	BoatBegun               // the first part of an order is started
	OrderCancelled          // a dated order given up
	LightStrip
	FullStrip
	WaxCoat
	Stuck      // Value: hours of mold repair
	Scrapped   // a part thrown away; its order goes back to the head
	Flushed    // Value: minutes
	WindowMiss // skin coat later than the gel window; Value: hours late
	Resprayed
	Buffed   // a rework round; Value: labor hours
	Conceded // shipped under target
	Resurfaced
	Retired
	MoldNew
	ReserveIn
	ReserveOut
	BrokeDown
	PulledGreen // after the longest hold
	Season      // the strip policy changed season; Value 1 hot, 0 cool
	FlawFound   // inspection sees a defect; Value: labor hours to put it right, 0 when the part is scrapped
	FlawMissed  // a part passes inspection with a defect
	TouchedUp   // flaws are put right; Value: labor hours
	Inspected   // a part is inspected for the first time; Value 1 when nothing is to be done
	Escaped     // shipped with less luster than promised, in the end, or with a missed defect; Value: points short
	HeatPeak    // a week of the run begins, in a plant with seasons; Value: mean of the last seven daily peaks of the heat index, °F
	NoteKinds
)

// Observer takes the facts of a run.
type Observer interface {
	Span(*Span)
	Use(*Use)
	Pull(*Pull)
	Ship(*Ship)
	Note(*Note)
}

// Nothing is an Observer that keeps nothing; embed it to take some facts only.
type Nothing struct{}

func (Nothing) Span(*Span) {}
func (Nothing) Use(*Use)   {}
func (Nothing) Pull(*Pull) {}
func (Nothing) Ship(*Ship) {}
func (Nothing) Note(*Note) {}
