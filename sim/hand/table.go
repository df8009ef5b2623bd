package hand

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/record"
)

// Table is the whole paper of one plant. Hours are hours, weeks are open weeks.
type Table struct {
	Models []Model `json:"models"`
	Molds  []Mold  `json:"molds"`
	Crafts []Craft `json:"crafts"`
	Places []Place `json:"places"`
	Limits []Limit `json:"limits"` // of boats a week, the tightest first; empty when nothing limits

	Queueing float64 `json:"with_queueing_boats_per_week"` // about what is left when molds and boats wait for people; 0: not worked out
	Narrow   Narrow  `json:"narrowest_of_the_molds_loop"`

	StripShare float64 `json:"strips_per_pull"` // strips per pull
	HotShare   float64 `json:"hot_share"`       // share of the year in the hot season
	CureSpeed  float64 `json:"cure_speed"`      // mean speed of cure in the plant against 25 °C
}

// Model is one boat of the mix.
type Model struct {
	Name  string  `json:"name"`
	Share float64 `json:"share"`                // of the boats, 0 … 1
	Molds float64 `json:"molds_boats_per_week"` // boats a week that its molds allow; 0 for a model without molds
}

// Mold is the cycle of the molds of one part, from a pull to the next, worked
// out in two ways: walked through the calendar, and rounded to whole shifts.
type Mold struct {
	Model string  `json:"model"`
	Part  string  `json:"part"`
	Count int     `json:"count"`       // molds in rotation
	Labor float64 `json:"labor_hours"` // of one turn with the people wanted, care included
	Waits float64 `json:"wait_hours"`  // gel, cure between shots, haze, cure of repairs
	Hold  float64 `json:"hold_hours"`  // from the last labor to the pull
	Off   float64 `json:"off_hours"`   // nights, weekends and breaks that labor waits for

	Turns float64 `json:"turns_per_week"` // of one mold that never waits for people or places
	Boats float64 `json:"boats_per_week"` // Count · Turns

	Craft      string  `json:"craft"`                       // whose shifts are counted: the one with most labor on the mold; "" for none
	ShiftHours float64 `json:"shift_hours"`                 // worked in one of its shifts
	Slot       float64 `json:"slot_hours"`                  // clock hours from one of its shifts to the next of the same day
	WeekShifts float64 `json:"shifts_per_week"`             // shifts a week
	WorkShifts int     `json:"work_shifts"`                 // labor and waits, rounded up to shifts
	HoldShifts int     `json:"hold_shifts"`                 // Hold, rounded up to shifts
	WholeTurns float64 `json:"turns_per_week_whole_shifts"` // turns a week by whole shifts
}

// Cycle is hours from one pull to the next as walked through the calendar.
func (m Mold) Cycle() float64 { return m.Labor + m.Waits + m.Hold + m.Off }

// Craft is the people of one craft.
type Craft struct {
	Name       string    `json:"name"`
	Crews      []Crew    `json:"crews"`
	Planned    float64   `json:"planned_hours_per_week"`    // people hours a week
	Absence    float64   `json:"absence"`                   // share, mean over the seasons
	Background float64   `json:"background_hours_per_week"` // hours a week that are not for the boats followed
	Available  float64   `json:"available_hours_per_week"`  // hours a week for the boats
	PerModel   []float64 `json:"hours_per_boat_by_model"`
	PerBoat    float64   `json:"hours_per_boat"` // hours of the mean boat
	Helpers    []string  `json:"helpers"`        // crafts that help it, counted where that gives more boats
	Boats      float64   `json:"boats_per_week"` // a week
}

// Crew is the people on one shift.
type Crew struct {
	People int     `json:"people"`
	Hours  float64 `json:"hours_per_week"` // of one of them a week
}

// Place is a booth, a bay, a stall, a hoist: places without limit are left out.
type Place struct {
	Name       string    `json:"name"`
	Count      int       `json:"count"`
	Hours      float64   `json:"hours_per_week"`            // that one of them is open a week
	Background float64   `json:"background_hours_per_week"` // hours a week taken by other work
	Held       bool      `json:"held"`                      // stands full through nights: counted in whole shifts
	PerModel   []float64 `json:"hours_per_boat_by_model"`
	PerBoat    float64   `json:"hours_per_boat"` // hours the mean boat stands in it
	Boats      float64   `json:"boats_per_week"` // a week
}

// LimitKind says what a limit is about.
type LimitKind uint8

// Kinds of limits, in the order of reports.
const (
	ByMolds LimitKind = iota
	ByCraft
	ByPlace
)

// String is "molds", "people" or "place".
func (k LimitKind) String() string { return [...]string{"molds", "people", "place"}[k] }

// MarshalText writes the kind as String does.
func (k LimitKind) MarshalText() ([]byte, error) { return []byte(k.String()), nil }

// Limit is one bound of boats a week.
type Limit struct {
	Kind  LimitKind `json:"kind"`
	Name  string    `json:"name"` // craft or place; "molds"
	Boats float64   `json:"boats_per_week"`
}

// Words names what limits within a sentence: "the people of finish", "the place
// booth", "molds".
func (l Limit) Words() string {
	switch l.Kind {
	case ByCraft:
		return "the people of " + l.Name
	case ByPlace:
		return "the place " + l.Name
	}
	return "molds"
}

// Work fills in the paper of a plan under some weather, best the one to be
// expected, over the counted time of the frame; over the whole run if the frame
// counts nothing.
func Work(p *sim.Plan, air *sim.Air, f record.Frame) Table {
	if f.From >= f.To {
		f.From, f.To = 0, p.Length
	}
	h := &paper{plan: p, air: air, weeks: max(float64(f.Open()), 1), frame: f}
	h.year()
	var t Table
	t.StripShare, t.HotShare, t.CureSpeed = h.strips, h.hot, h.speed[0]
	h.molds(&t)
	h.mix(&t)
	h.crafts(&t)
	h.places(&t)
	t.limits()
	t.Queueing, t.Narrow = h.queueing(&t)
	return t
}

// limits ranks what bounds the plant.
func (t *Table) limits() {
	sum := 0.0
	for _, m := range t.Models {
		if m.Molds == 0 && m.Share > 0 { // a model without molds is not bound by them
			sum = 0
			break
		}
		sum += m.Molds
	}
	if sum > 0 {
		t.Limits = append(t.Limits, Limit{ByMolds, "molds", sum})
	}
	for _, c := range t.Crafts {
		if c.PerBoat > 0 {
			t.Limits = append(t.Limits, Limit{ByCraft, c.Name, c.Boats})
		}
	}
	for _, p := range t.Places {
		if p.PerBoat > 0 {
			t.Limits = append(t.Limits, Limit{ByPlace, p.Name, p.Boats})
		}
	}
	slices.SortStableFunc(t.Limits, func(a, b Limit) int { return cmp.Compare(a.Boats, b.Boats) })
}
