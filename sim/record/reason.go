package record

// Reason says why a mold, a part or an order waits: the first need that was
// not met, in the order of this list, when the claim was last judged.
type Reason uint8

// The reasons. Their sum over a wait is the whole wait.
const (
	NoReason     Reason = iota
	NoOrder             // a mold is ready, no order needs it
	NoPlain             // a mold in break-in waits for an order in one solid color
	FloorLimit          // the limit of work on the floor is reached
	MateLimit           // the part type is as far ahead of its mates as allowed
	RotationFull        // a mold is ready, but its place in rotation is taken by a reserve mold
	NoMold              // an order waits for a mold
	MateMissing         // a finished part waits for the other parts of its boat
	DewPoint            // too close to dew point for wax or spray
	TooHumid            // above the humidity limit
	TooCold             // too cold for gel coat
	GelWindow           // spraying now would leave no time for the skin coat
	NoPlace             // no free place of a kind: booth, bay, stall, store
	NoGun               // no gun set of the booth works
	NoHoist             // no free hoist
	Down                // the place it stands in is down
	NoCrew              // too few free people of a craft
	OffShift            // the craft needed is not at work
	ShiftEnds           // the task would not end within the shift
	NeedsHeat           // too cold to ever reach the wanted hardness
	Reasons             // how many there are
)

var reasonNames = [Reasons]string{
	"", "no order", "no plain order", "limit of work on the floor", "ahead of its mates", "rotation full",
	"no mold", "mate missing", "too close to dew point", "too humid", "too cold", "gel window", "no free place",
	"no gun set", "no hoist", "place down", "no free crew", "off shift", "shift too short", "needs heat",
}

// String is the reason in the words of the floor.
func (r Reason) String() string { return reasonNames[r] }

// Cause is a Reason with the craft or place it is about; Of is an index into
// the plan's crafts or places, -1 where there is none.
type Cause struct {
	Reason Reason
	Of     int16
}

// Doing groups what a mold, part or boat does while it does not wait.
type Doing uint8

// What is done. Waxing to Pulling are the ways a mold spends its hours.
const (
	Idle Doing = iota
	Waxing
	Stripping
	Checking
	Repairing
	Masking
	Spraying
	Gelling
	Laminating
	SkinCure
	Curing
	Pulling
	OutOfUse
	Trimming
	Finishing
	Assembling
	Background
	Other
	Doings
)

var doingNames = [Doings]string{
	"idle", "waxing", "stripping", "mold check", "mold repair", "masking", "spraying", "gelling", "laminating",
	"cure between shots", "cure hold", "pulling", "out of rotation", "trimming", "finishing", "assembly", "small parts and care", "other work",
}

// String is the activity in the words of the floor.
func (d Doing) String() string { return doingNames[d] }

// DoingNamed finds an activity by its name.
func DoingNamed(name string) (Doing, bool) {
	for d, n := range doingNames {
		if n == name {
			return Doing(d), true
		}
	}
	return Idle, false
}
