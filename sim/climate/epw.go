package climate

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
)

// The EPW format, an open text format for hourly weather: eight header lines,
// then one line of 35 fields per hour. Source: "Auxiliary Programs", chapter
// "EnergyPlus Weather File (EPW) Data Dictionary", EnergyPlus documentation.
const (
	epwHeaderLines = 8
	epwFields      = 35
	epwFieldsLeast = 32 // older files end before albedo and liquid precipitation
	epwMissingTemp = 99.9
	epwMissingRH   = 999
	epwLongestLine = 1 << 20
)

// epwHeaders begin the header lines, in order.
func epwHeaders() [epwHeaderLines]string {
	return [...]string{"LOCATION", "DESIGN CONDITIONS", "TYPICAL/EXTREME PERIODS",
		"GROUND TEMPERATURES", "HOLIDAYS/DAYLIGHT SAVINGS", "COMMENTS 1", "COMMENTS 2", "DATA PERIODS"}
}

// epwField is a column of an EPW line: its index and what it may hold.
type epwField struct {
	index     int
	name      string
	low, high float64
	missing   float64 // this value or more means "not measured"; an empty field too
	unit      string
}

// epwTable is the columns that are read.
type epwTable struct{ year, month, day, hour, dry, dew, rh epwField }

func epwColumns() epwTable {
	never := math.Inf(1)
	return epwTable{
		epwField{0, "year", 1, 9999, never, ""},
		epwField{1, "month", 1, 12, never, ""},
		epwField{2, "day", 1, 31, never, ""},
		epwField{3, "hour", 1, 24, never, ""},
		epwField{6, "dry bulb", -70, 70, epwMissingTemp, " C"},
		epwField{7, "dew point", -70, 70, epwMissingTemp, " C"},
		epwField{8, "relative humidity", 0, 110, epwMissingRH, " %"},
	}
}

// ReadEPW reads an EPW file. name is used in complaints; maxGap is the longest
// gap in hours that is filled in a straight line (and reported in Repairs).
//
// Humidity is taken from the dew point, and from relative humidity where the
// dew point is missing. Hour 1 of a line is the hour that begins at midnight.
// Files of typical months mix years; their year column is not used unless the
// file holds several years. The error is *Complaints, or that of the reader.
func ReadEPW(r io.Reader, name string, maxGap int) (*Weather, error) {
	e := &epwReader{name: name, columns: epwColumns(), faults: &Complaints{}}
	lines := bufio.NewScanner(r)
	lines.Buffer(make([]byte, 64<<10), epwLongestLine)
	for lines.Scan() {
		e.line++
		text := strings.TrimRight(strings.TrimPrefix(lines.Text(), "\ufeff"), "\r")
		switch {
		case e.line <= epwHeaderLines:
			if !e.header(text) {
				return nil, e.faults
			}
		case strings.TrimSpace(text) != "":
			e.row(text)
		}
	}
	if err := lines.Err(); err != nil {
		return nil, fmt.Errorf("%s:%d: %w", name, e.line+1, err)
	}
	e.settleYears()
	return assemble(name, e.inOrder(), maxGap, e.faults)
}

// epwReader is the state of reading one file.
type epwReader struct {
	name    string
	columns epwTable
	line    int
	hours   []fileHour
	faults  *Complaints
}

// header checks that a header line is the one that belongs there, and that the
// data are hourly. After a complaint reading stops: it is no such file.
func (e *epwReader) header(text string) bool {
	want := epwHeaders()[e.line-1]
	fields := strings.Split(text, ",")
	if !strings.EqualFold(strings.TrimSpace(fields[0]), want) {
		e.complain(1, fmt.Sprintf("header line %d begins with %q", e.line, shorten(fields[0])), want,
			"is this an EPW file? A table of time, dry bulb and humidity is read as CSV")
		return false
	}
	if e.line == epwHeaderLines && len(fields) > 2 {
		if n := strings.TrimSpace(fields[2]); n != "1" {
			e.complain(len(fields[0])+len(fields[1])+3, fmt.Sprintf("%q records per hour", n), "1", "")
			return false
		}
	}
	return true
}

// row reads one hour.
func (e *epwReader) row(text string) {
	fields := strings.Split(text, ",")
	if n := len(fields); n < epwFieldsLeast || n > epwFields {
		e.complain(1, fmt.Sprintf("%d fields", n), fmt.Sprintf("%d fields (or %d from older files)", epwFields, epwFieldsLeast), "")
		return
	}
	ok := true
	number := func(f epwField) float64 {
		v, valid := e.number(fields, f)
		ok = ok && valid
		return v
	}
	c := &e.columns
	h := fileHour{line: e.line, year: int(number(c.year)), month: int(number(c.month)), day: int(number(c.day)), hour: int(number(c.hour)) - 1}
	dry, dew, rh := number(c.dry), number(c.dew), number(c.rh)
	if !ok {
		return
	}
	if most := daysIn(2000, h.month); h.day > most {
		e.complain(fieldColumn(fields, c.day.index), fmt.Sprintf("day %d of month %d", h.day, h.month), fmt.Sprintf("1 … %d", most), "")
		return
	}
	h.air, h.dew = dry, dew
	if math.IsNaN(dew) {
		h.dew = DewPoint(dry, min(1, rh/100)) // NaN when either is missing
	}
	e.hours = append(e.hours, h)
}

// number reads a field; NaN means missing.
func (e *epwReader) number(fields []string, f epwField) (float64, bool) {
	text := strings.TrimSpace(fields[f.index])
	dated := math.IsInf(f.missing, 1)
	if text == "" && !dated {
		return math.NaN(), true
	}
	v, err := strconv.ParseFloat(text, 64)
	switch {
	case err == nil && !dated && v >= f.missing && v <= math.MaxFloat32:
		return math.NaN(), true
	case err == nil && v >= f.low && v <= f.high && (!dated || v == math.Trunc(v)):
		return v, true
	}
	allowed := fmt.Sprintf("%g … %g%s", f.low, f.high, f.unit)
	if !dated {
		allowed += fmt.Sprintf(", or %g for missing", f.missing)
	}
	e.complain(fieldColumn(fields, f.index), fmt.Sprintf("%s %q", f.name, shorten(text)), allowed, "")
	return 0, false
}

// complain adds a complaint of the line being read.
func (e *epwReader) complain(column int, found, allowed, hint string) {
	e.faults.add(Complaint{e.name, e.line, column, found, allowed, hint})
}

// settleYears replaces the years of a file of one year, which may be put
// together of months from many, by a single one: 2000 if there is a 29
// February, 2001 if not.
func (e *epwReader) settleYears() {
	year := 2001
	for i, h := range e.hours {
		if i > 0 && h.month < e.hours[i-1].month {
			return // several years
		}
		if h.month == 2 && h.day == 29 {
			year = 2000
		}
	}
	for i := range e.hours {
		e.hours[i].year = year
	}
}

// inOrder drops hours that do not come later than those before them, with a
// complaint for the first of each row of such hours.
func (e *epwReader) inOrder() []fileHour {
	kept, late := e.hours[:0], false
	for _, h := range e.hours {
		if len(kept) == 0 || kept[len(kept)-1].before(h) {
			kept, late = append(kept, h), false
			continue
		}
		if !late {
			e.line = h.line
			e.complain(1, fmt.Sprintf("month %d, day %d, hour %d comes again or too late", h.month, h.day, h.hour+1),
				"hours in the order of time, each once", "")
		}
		late = true
	}
	return kept
}
