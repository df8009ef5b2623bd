package climate

import (
	"fmt"

	"moldturn/sim/shift"
)

// Weather is a year or more of measured or typical outdoor air from a file,
// with every day of the year at least once (a 29 February may be missing).
type Weather struct {
	Name    string   // of the file
	Repairs []Repair // gaps that were filled, in order

	days   []fileDay
	byDate [12][31][]int32 // indices of the days of each date, earliest year first
}

// fileDay is one complete day of a file.
type fileDay struct{ air, dew [hoursPerDay]float64 }

// Repair is a gap of a weather file that was filled in a straight line from
// the hour before it to the hour after.
type Repair struct {
	What  string     // "dry bulb" or "dew point"
	From  shift.Date // day of the first missing hour; a file of typical months has years 2000 or 2001
	Hour  int        // of the day, 0 … 23
	Hours int        // how many hours were missing
}

// String is "dry bulb: 3 hours filled from 02-11 14:00".
func (r Repair) String() string {
	hours := "hours"
	if r.Hours == 1 {
		hours = "hour"
	}
	return fmt.Sprintf("%s: %d %s filled from %02d-%02d %02d:00", r.What, r.Hours, hours, r.From.Month, r.From.Day, r.Hour)
}

// Years is how many years the file covers, counted by its best covered date.
func (w *Weather) Years() int {
	most := 0
	for _, month := range w.byDate {
		for _, days := range month {
			most = max(most, len(days))
		}
	}
	return most
}

// Outdoor lays the file along a run: every day of the run takes the file's day
// of the same date, one year of the file after the other and round again, the
// first one being number turn (any whole number). A 29 February that the file
// has not got takes the 28th; one that the run has not got is passed over.
func (w *Weather) Outdoor(start shift.Date, hours, turn int) *Outdoor {
	out := newOutdoor(start, hours)
	c := cursorAt(start)
	for h := 0; h < len(out.AirC); h += hoursPerDay {
		day := &w.days[w.pick(c, c.year-start.Year+turn)]
		copy(out.AirC[h:], day.air[:])
		copy(out.DewC[h:], day.dew[:])
		c = c.next()
	}
	return out
}

// pick is the index of the file's day for a date in the n-th year from the
// file's first.
func (w *Weather) pick(c cursor, n int) int32 {
	days := w.byDate[c.month-1][c.day-1]
	if len(days) == 0 { // only a 29 February can be without a day
		days = w.byDate[1][27]
	}
	n %= len(days)
	if n < 0 {
		n += len(days)
	}
	return days[n]
}
