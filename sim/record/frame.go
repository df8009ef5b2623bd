package record

import (
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Frame is what a Tally must know of the run it counts.
type Frame struct {
	Start    shift.Date // day of instant 0
	From, To clock.Time // what is counted; before From is warm-up
	Shut     []bool     // by week from the Monday on or before Start: shut down, not counted as a week
	Pools    int        // crafts and places
	Crafts   int        // how many of the pools are crafts
	Parts    int
	Models   int
	Molds    int
	InUse    []int   // by part type: molds in rotation at most; nil: not known
	Target   float64 // luster
}

// monthsOf splits [from, to) at midnights of month starts.
type months struct {
	start shift.Date
	at    clock.Time // start of the month found last
	until clock.Time
	month time.Month
}

// of gives the month of t and when it ends; it remembers the last month, since
// facts come nearly in order of time.
func (m *months) of(t clock.Time) (int, clock.Time) {
	if t < m.at || t >= m.until {
		d := shift.DateAt(m.start, t)
		m.month = d.Month
		m.at = shift.Midnight(m.start, shift.DateOf(d.Year, d.Month, 1))
		m.until = shift.Midnight(m.start, shift.DateOf(d.Year, d.Month+1, 1))
	}
	return int(m.month) - 1, m.until
}

// Open is the number of weeks of the frame that lie wholly in it and are not
// shut down.
func (f *Frame) Open() int {
	n := 0
	for w, last := f.firstWeek(), f.lastWeek(); w < last; w++ {
		if !f.shut(w) {
			n++
		}
	}
	return n
}

// WholeWeeks is the weeks [first, end) that lie wholly in the run, counted from
// the Monday on or before Start, warm-up included.
func (f *Frame) WholeWeeks() (first, end int) {
	whole := Frame{Start: f.Start, To: f.To}
	return whole.firstWeek(), whole.lastWeek()
}

// Counted is the first week that lies wholly in the frame, as WholeWeeks counts.
func (f *Frame) Counted() int { return f.firstWeek() }

// IsShut is true for a week in which the plant is shut down.
func (f *Frame) IsShut(w int) bool { return f.shut(w) }

// WeekYear is the week of the year of week w, 0 … 52, counted from the first
// Thursday of the year.
func (f *Frame) WeekYear(w int) int {
	thursday := shift.DateAt(f.Start, shift.WeekStart(f.Start, w)).AddDays(3)
	return thursday.DaysSince(shift.DateOf(thursday.Year, time.January, 1)) / 7
}

func (f *Frame) shut(w int) bool { return w >= 0 && w < len(f.Shut) && f.Shut[w] }

// firstWeek and lastWeek bound the whole weeks of the frame.
func (f *Frame) firstWeek() int {
	w := shift.WeekAt(f.Start, f.From)
	if shift.WeekStart(f.Start, w) < f.From {
		w++
	}
	return w
}

func (f *Frame) lastWeek() int { return shift.WeekAt(f.Start, f.To) }
