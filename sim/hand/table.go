package hand

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/record"
)

// Table is the whole paper of one plant. Hours are hours, weeks are open weeks.
type Table struct {
	Models []Model
	Molds  []Mold
	Crafts []Craft
	Places []Place
	Limits []Limit // of boats a week, the tightest first; empty when nothing limits

	StripShare float64 // strips per pull
	HotShare   float64 // share of the year in the hot season
	CureSpeed  float64 // mean speed of cure in the plant against 25 °C
}

// Model is one boat of the mix.
type Model struct {
	Name  string
	Share float64 // of the boats, 0 … 1
	Molds float64 // boats a week that its molds allow; 0 for a model without molds
}

// Mold is the cycle of the molds of one part, from a pull to the next.
type Mold struct {
	Model, Part string
	Count       int     // molds in rotation
	Work        float64 // hours of work and short waits of one turn, care included
	Hold        float64 // hours from the last labor to the pull
	Craft       string  // whose shifts are counted: the one with most labor on the mold; "" for none
	ShiftHours  float64 // worked in one of its shifts
	Slot        float64 // clock hours from one of its shifts to the next of the same day
	WorkShifts  int     // Work, rounded up to shifts
	HoldShifts  int     // Hold, rounded up to shifts
	WeekShifts  float64 // shifts a week
	Turns       float64 // of one mold a week
	Boats       float64 // a week: Count · Turns
}

// Cycle is hours from one pull to the next, of a day that is worked.
func (m Mold) Cycle() float64 { return float64(m.WorkShifts+m.HoldShifts) * m.Slot }

// Craft is the people of one craft.
type Craft struct {
	Name       string
	Crews      []Crew
	Planned    float64 // people hours a week
	Absence    float64 // share, mean over the seasons
	Background float64 // hours a week that are not for the boats followed
	Available  float64 // hours a week for the boats
	PerModel   []float64
	PerBoat    float64 // hours of the mean boat
	Boats      float64 // a week
}

// Crew is the people on one shift.
type Crew struct {
	People int
	Hours  float64 // of one of them a week
}

// Place is a booth, a bay, a stall, a hoist: places without limit are left out.
type Place struct {
	Name       string
	Count      int
	Hours      float64 // that one of them is open a week
	Background float64 // hours a week taken by other work
	Held       bool    // stands full through nights: counted in whole shifts
	PerModel   []float64
	PerBoat    float64 // hours the mean boat stands in it
	Boats      float64 // a week
}

// LimitKind says what a limit is about.
type LimitKind uint8

// Kinds of limits, in the order of reports.
const (
	ByMolds LimitKind = iota
	ByCraft
	ByPlace
)

// Limit is one bound of boats a week.
type Limit struct {
	Kind  LimitKind
	Name  string // craft or place; "molds"
	Boats float64
}

// Work fills in the paper of a plan under the conditions of one replication,
// over the counted time of the frame; over the whole run if it counts nothing.
func Work(p *sim.Plan, air climate.Conditions, f record.Frame) Table {
	if f.From >= f.To {
		f.From, f.To = 0, p.Length
	}
	h := &paper{plan: p, weeks: max(float64(f.Open()), 1), frame: f}
	h.year(air)
	var t Table
	t.StripShare, t.HotShare, t.CureSpeed = h.strips, h.hot, h.speed[0]
	h.molds(&t)
	h.mix(&t)
	h.crafts(&t)
	h.places(&t)
	t.limits()
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
