package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/shift"
)

// None stands for "no craft", "no place", "no mold" wherever an index is meant.
const None = -1

// Plan is a plant and its policies, ready to run: names resolved to indices,
// units to hours and °C, calendars laid out over the whole run. A Plan is not
// changed by a run and may be shared by runs on several goroutines.
//
// Indices are positions in the plan's slices. Luck is keyed to them and never
// to names, so renaming changes no result.
type Plan struct {
	Name   string
	Start  shift.Date // day of instant 0
	Length clock.Time // of the run, warm-up included
	Areas  []string   // climate areas; at least one

	Crafts     []Craft
	Places     []Place
	Colors     []Color
	Models     []Model
	Parts      []Part
	Molds      []Mold
	Routes     []Route
	Background []Background
	Failures   []Failure

	Demand  Demand
	Strip   policy.Strip
	Wax     policy.Wax
	Hold    policy.Hold
	Release policy.Release
	BreakIn policy.BreakIn
	Life    policy.Life
	Season  policy.Season
	Chip    draw.Sampler // labor hours of a chip repair
	Window  Window
	Limits  Limits
	Rework  Rework

	Learning Learning

	Cure    cure.Params
	Finish  finish.Params
	Defects *defect.Params // nil: parts have no flaws beside a loss of luster, and none sticks
	Film    float64        // mm of wet gel coat, for Defects
}

// Craft is people of one trade: laminators, gel coaters, mold techs.
type Craft struct {
	Name     string
	Crews    []Crew
	Helps    []int16    // crafts it helps once nothing of its own waits
	Late     clock.Time // a `finish` task may be predicted to end this long after the day's last shift
	Overtime clock.Time // the most a task runs on after the shift; clock.Never: until it is done
	HotSlow  float64    // share of speed lost on a hot day (heat index 109 °F), 0 for none
	Hires    Hires      // who leaves, and how fast those are who come
	Area     int        // where it works, for the heat
}

// Crew is the people of a craft on one shift.
type Crew struct {
	Hours      *shift.Calendar
	People     int
	Absence    float64 // chance that a person is absent on a day
	AbsenceHot float64 // the same in the hot season
}

// PlaceKind groups places for the reasons of waits.
type PlaceKind uint8

// Kinds of places.
const (
	Bay PlaceKind = iota // any place a mold, part or boat stands in
	Booth
	Hoist
)

// Place is a number of like places: booths, bays, cure positions, stalls,
// stores, hoists.
type Place struct {
	Name  string
	Kind  PlaceKind
	Count int     // units; below 0: without limit
	Guns  [][]Gun // per unit, for booths
	Area  int
}

// Gun is a gun set of a booth.
type Gun struct {
	Name  string
	Pot   bool       // for accents; otherwise a pumped set for base colors
	Color int16      // the only color it is used for, None for any
	Flush clock.Time // to change its color
}

// Failure says how one unit, or one gun set in it, breaks down.
type Failure struct {
	Place        int16
	Unit         int16
	Gun          int16        // None for the place itself
	Up, Repair   draw.Sampler // hours
	WhileWorking bool         // its time to failure runs only while it is used
}

// Color is what the eye sees of haze and how much it heats.
type Color struct {
	Name string
	Look int  // index into Finish.Colors
	Dark bool // for the release by color
}

// Model is a boat.
type Model struct {
	Name   string
	Parts  []int16 // its part types
	Boat   int16   // route of the boat once its parts are there
	Colors []Share // of the hull
	Bands  []Share // accent colors; empty: none
	Curve  Curve   // how it is learned
}

// Share is a color with its weight.
type Share struct {
	Color  int16
	Weight float64
}

// Part is a kind of part: the hull of one model.
type Part struct {
	Name     string
	Model    int16
	Index    int16   // position among the parts of its model
	Area     float64 // m²
	Color    int16   // None: the boat's color
	Band     float64 // chance of an accent band on a boat that may have one
	Zone     float64 // how fast build-up grows: hull 1, liner 1.2, textured deck 1.5
	Route    int16   // from the waxed mold to the finished part
	Care     int16   // of the mold after a pull; None: the part needs no mold
	InUse    int     // the most molds in rotation at once
	Visible  bool    // counts for the boat's luster
	Grade    int     // gel coat grade, index into Finish.Grades
	BandLook int     // how a banded part shows haze: index into Finish.Colors
	Chips    float64 // chance of a chip repair per pull
}

// Mold is one mold at the start of a run.
type Mold struct {
	Name    string
	Part    int16
	Reserve bool
	New     bool // starts with its break-in
	Turns   int  // since new; below 0: spread over its life
	Since   int  // turns since strip; below 0: spread over the strip interval
	Surface float64
	Master  bool // kept on the master when in reserve

	Arrives clock.Time // when it comes into rotation, on top of Part.InUse; 0: there from the start
}

// Background is work that loads people without being followed part by part:
// small parts, care of small molds, trimming.
type Background struct {
	Name    string
	Craft   int16
	PerWeek float64 // labor hours a week
	PerBoat float64 // labor hours a shipped boat, on top
	Piece   float64 // labor hours of one piece of it
	Place   int16   // None for none
	Route   int16
}

// Window is the gel window.
type Window struct {
	Limit   float64 // hours from spray to skin coat
	Wash    float64 // hours after which the gel coat is washed out and sprayed again
	Scuff   float64 // hours of work per m² between Limit and Wash
	Respray float64 // hours of work to wash out and spray again
	Slots   int     // sprayed parts without skin that laminators can take in one window; 0: no look-ahead by count
	Craft   int16   // who lays the skin coat; None: no look-ahead
}

// Rework is the finish inspection.
type Rework struct {
	Target float64 // luster
	Slack  float64 // points below Target that a customer does not mind
	Rounds int     // of buffing
}

// Demand is where orders come from.
type Demand struct {
	Full       bool // orders always waiting; otherwise a dated book
	FloorLimit int  // boats on the floor at most; 0: no limit
	AnyMate    bool // a boat takes the parts finished first, whichever order they were begun for
	MateLead   int  // a part type starts at most this far ahead of its slowest mate; 0: no limit
	Models     []ModelDemand
	Dated      []DatedOrder // an order book from a file, sorted by arrival
	CancelLate clock.Time   // dated orders not started this long after their due date are lost; Never: kept
}

// ModelDemand is the generated demand of one model.
type ModelDemand struct {
	PerWeek float64      // mean of the year
	Monthly [12]float64  // weights; mean 1
	Due     draw.Sampler // hours from order to due date
	Even    bool         // evenly spaced; otherwise Poisson
	Floor   int          // boats of this model on the floor at most; 0: no limit of its own
	From    clock.Time   // no order comes before
}

// DatedOrder is a row of an order book.
type DatedOrder struct {
	Model, Color, Band int16 // Band None for none
	Arrives, Due       clock.Time
	Urgent             int8
}
