package climate

import (
	"fmt"
	"math"
	"strings"

	"moldturn/sim/shift"
)

// fileHour is one hour of a weather file; NaN is a missing value.
type fileHour struct {
	year, month, day, hour int
	line                   int
	air, dew               float64
}

// date is the day that an hour lies in.
func (f fileHour) date() shift.Date { return shift.DateOf(f.year, monthOf(f.month), f.day) }

// mostYears is the longest file that is taken.
const mostYears = 100

// assembler makes Weather of the hours of a file, in the order of time.
type assembler struct {
	name     string
	maxGap   int // longest gap that is filled, hours
	first    shift.Date
	air, dew []float64 // from the midnight of first on
	lines    []int     // line each hour was read from; 0 for none
	faults   *Complaints
	weather  *Weather
}

// assemble fills short gaps, complains of long ones, and files the days. The
// hours must rise in time; complaints made before are kept in faults.
func assemble(name string, hours []fileHour, maxGap int, faults *Complaints) (*Weather, error) {
	if len(hours) == 0 {
		if faults.err() == nil {
			faults.add(Complaint{File: name, Found: "no hours of weather", Allowed: "rows of weather under a head: " + csvHeadAllowed + "; or an EPW file"})
		}
		return nil, faults
	}
	a := &assembler{name: name, maxGap: maxGap, first: hours[0].date(), faults: faults, weather: &Weather{Name: name}}
	if !a.spread(hours) {
		return nil, faults
	}
	a.fill("dry bulb", a.air)
	a.fill("dew point", a.dew)
	a.fileDays()
	if faults.err() == nil {
		a.checkCover()
	}
	if err := faults.err(); err != nil {
		return nil, err
	}
	return a.weather, nil
}

// spread lays the hours out on an unbroken row of whole days.
func (a *assembler) spread(hours []fileHour) bool {
	last := hours[len(hours)-1]
	days := last.date().DaysSince(a.first) + 1
	if days > mostYears*366 {
		a.faults.add(Complaint{File: a.name, Line: last.line, Found: fmt.Sprintf("the file spans %d years", days/365),
			Allowed: fmt.Sprintf("at most %d years", mostYears)})
		return false
	}
	n := days * hoursPerDay
	a.air, a.dew, a.lines = make([]float64, n), make([]float64, n), make([]int, n)
	for i := range n {
		a.air[i], a.dew[i] = math.NaN(), math.NaN()
	}
	for _, h := range hours {
		i := h.date().DaysSince(a.first)*hoursPerDay + h.hour
		a.air[i], a.dew[i], a.lines[i] = h.air, h.dew, h.line
	}
	return true
}

// fill draws straight lines across the short gaps of a series and complains of
// the others. Gaps at either end, of less than a day, are left as they are.
func (a *assembler) fill(what string, x []float64) {
	for from := 0; from < len(x); from++ {
		if !math.IsNaN(x[from]) {
			continue
		}
		to := from
		for to < len(x) && math.IsNaN(x[to]) {
			to++
		}
		switch {
		case (from == 0 || to == len(x)) && to-from < hoursPerDay:
		case a.leapDay(from, to):
		case from == 0 || to == len(x) || to-from > a.maxGap:
			a.complainOfGap(what, from, to)
		default:
			bridge(x, from, to)
			a.weather.Repairs = append(a.weather.Repairs, Repair{what, a.dayOf(from), from % hoursPerDay, to - from})
		}
		from = to
	}
}

// bridge fills x[from:to] in a straight line between its neighbors.
func bridge(x []float64, from, to int) {
	before, after := x[from-1], x[to]
	for i := from; i < to; i++ {
		x[i] = blend(before, after, float64(i-from+1)/float64(to-from+1))
	}
}

// leapDay reports whether a gap is just a 29 February, which many files leave out.
func (a *assembler) leapDay(from, to int) bool {
	d := a.dayOf(from)
	return from%hoursPerDay == 0 && to-from == hoursPerDay && int(d.Month) == 2 && d.Day == 29
}

// dayOf is the date of an hour of the row.
func (a *assembler) dayOf(i int) shift.Date { return a.first.AddDays(i / hoursPerDay) }

// complainOfGap names the first missing hour and the line it should be on.
func (a *assembler) complainOfGap(what string, from, to int) {
	line := 0
	for i := from; i < len(a.lines) && line == 0; i++ {
		line = a.lines[i]
	}
	d := a.dayOf(from)
	a.faults.add(Complaint{File: a.name, Line: line,
		Found:   fmt.Sprintf("no %s for %d hours from %02d-%02d %02d:00", what, to-from, d.Month, d.Day, from%hoursPerDay),
		Allowed: fmt.Sprintf("gaps of up to %d hours, which are filled in a straight line", a.maxGap)})
}

// fileDays keeps the complete days, each under its date. Dew points above the
// temperature are brought down to it.
func (a *assembler) fileDays() {
	w := a.weather
	for i := 0; i < len(a.air); i += hoursPerDay {
		var day fileDay
		whole := true
		for h := range hoursPerDay {
			t, dew := a.air[i+h], a.dew[i+h]
			whole = whole && !math.IsNaN(t) && !math.IsNaN(dew)
			day.air[h], day.dew[h] = t, min(dew, t)
		}
		if !whole {
			continue
		}
		d := a.dayOf(i)
		at := &w.byDate[d.Month-1][d.Day-1]
		*at = append(*at, int32(len(w.days)))
		w.days = append(w.days, day)
	}
}

// checkCover complains of dates that no complete day was found for.
func (a *assembler) checkCover() {
	var missing []string
	c := cursor{2001, 1, 1}
	for ; c.year == 2001; c = c.next() {
		if len(a.weather.byDate[c.month-1][c.day-1]) == 0 {
			missing = append(missing, fmt.Sprintf("%02d-%02d", c.month, c.day))
		}
	}
	if len(missing) == 0 {
		return
	}
	found := fmt.Sprintf("no complete day for %d of the 365 dates: %s", len(missing), strings.Join(missing[:min(3, len(missing))], ", "))
	if len(missing) > 3 {
		found += " … " + missing[len(missing)-1]
	}
	a.faults.add(Complaint{File: a.name, Found: found, Allowed: "a whole year of hours or more (a 29 February may be missing)"})
}
