package record

// reasonDocs says of each reason what had to come before the wait could end.
var reasonDocs = [Reasons]string{
	NoOrder:      "a waxed mold is ready and no open order needs its part",
	NoPlain:      "a mold in break-in is ready and no order in one solid color without a band is open",
	FloorLimit:   "as many boats are on the floor as demand.floor_limit, or the model's own limit, allows",
	MateLimit:    "the part type is demand.mate_lead starts ahead of the slowest part of its boat",
	RotationFull: "the mold is ready and a reserve mold has its place in rotation",
	NoMold:       "an order with a date waits for the first of its molds",
	MateMissing:  "a finished part waits for the other parts of its boat",
	DewPoint:     "the mold is less than air.dew_margin above the dew point of the air; wax and gel coat wait",
	TooHumid:     "relative humidity is above air.most_humidity; wax and gel coat wait",
	TooCold:      "the mold is colder than air.least_temperature; gel coat waits",
	GelWindow:    "spraying now would leave no skin coat within window.limit",
	NoPlace:      "every place of a kind it needs is taken: booth, bay, cure position, stall, store",
	NoGun:        "no gun set of the booth works for its color",
	NoHoist:      "every hoist is in use",
	Down:         "the place it stands in has broken down",
	NoCrew:       "the craft is at work, and too few of its people are free for the least the step can run with",
	OffShift:     "the craft is not at work: night, weekend, break, holiday",
	ShiftEnds:    "the step would not end within the shift, or too long after the last one of the day",
	NeedsHeat:    "the shop is too cold for the part ever to reach what the hold policy asks",
}

// Doc is one sentence: what the wait is for. Empty for NoReason.
func (r Reason) Doc() string { return reasonDocs[r] }

// doingDocs says of each activity what counts as it.
var doingDocs = [Doings]string{
	Waxing:     "coats of wax, and the haze time between coats",
	Stripping:  "taking wax and build-up off a mold, light or full, with the coats that follow",
	Checking:   "the look over a mold after a pull, at which strip, wax and repair are decided",
	Repairing:  "chips, damage by a part that stuck, resurfacing; labor and cure of the repair",
	Masking:    "taping off and spraying an accent band",
	Spraying:   "gel coat of the base color, barrier coat, washing out old gel coat",
	Gelling:    "waiting until gel coat is hard enough for the next layer",
	Laminating: "skin coat and every shot of laminate",
	SkinCure:   "waiting for a skin coat or a shot before the next",
	Curing:     "the hold in the mold after the last labor, as the hold policy says",
	Pulling:    "taking the part off its mold",
	OutOfUse:   "a mold in reserve, or retired",
	Trimming:   "cutting and drilling the pulled part",
	Finishing:  "finish work, inspection, buffing and mending",
	Assembling: "putting the parts of a boat together and fitting it out",
	Background: "work that loads people without being followed part by part",
	Other:      "any step that names nothing else",
}

// Doc is one sentence: what counts as the activity. Empty for Idle.
func (d Doing) Doc() string { return doingDocs[d] }
