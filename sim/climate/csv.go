package climate

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"time"
)

// csvTimes are the forms of a time: year, month, day, or month/day/year.
func csvTimes() [9]string {
	return [...]string{"2006-01-02 15:04", "2006-01-02T15:04", "2006-01-02 15:04:05", "2006-01-02T15:04:05",
		time.RFC3339, "2006-01-02T15:04Z07:00", "2006-01-02 15", "1/2/2006 15:04", "1/2/2006 15:04:05"}
}

// saysMissing reports whether a text stands for a missing value.
func saysMissing(text string) bool {
	switch strings.ToLower(text) {
	case "", "na", "n/a", "nan", "null", "-", "--":
		return true
	}
	return false
}

// ReadCSV reads outdoor weather from a table with a header: a time, a dry bulb
// temperature and a relative humidity or a dew point, in any order and among
// other columns; units stand in the header ("dry bulb (F)", "RH (%)"). The
// separator is a comma, a semicolon or a tab; lines that begin with # are left
// out. Readings within one hour are averaged.
//
// Times are those of the place without daylight saving, as 2027-01-31 14:00 or
// 1/31/2027 14:00, and must rise; a zone at their end is not looked at. name
// and maxGap are as for ReadEPW. The error is *Complaints, or that of the
// reader.
func ReadCSV(r io.Reader, name string, maxGap int) (*Weather, error) {
	in := bufio.NewReader(r)
	if bom, _ := in.Peek(3); bytes.Equal(bom, []byte("\ufeff")) {
		_, _ = in.Discard(3) // three bytes that were just seen
	}
	t := &csvTable{name: name, faults: &Complaints{}, in: csv.NewReader(in)}
	t.in.Comma = separator(in)
	t.in.Comment, t.in.FieldsPerRecord, t.in.ReuseRecord, t.in.TrimLeadingSpace = '#', -1, true, true
	for {
		fields, err := t.in.Read()
		if err == io.EOF {
			break
		}
		var bad *csv.ParseError
		if errors.As(err, &bad) {
			t.faults.add(Complaint{name, bad.Line, bad.Column, "a quote that does not enclose a whole value", "text in columns", "is this a table saved as CSV?"})
			break
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		if t.columns != nil {
			t.row(fields)
		} else if !t.head(fields) {
			return nil, t.faults
		}
	}
	return assemble(name, t.hours, maxGap, t.faults)
}

// separator guesses the separator of a table by its first line that is not a
// comment.
func separator(in *bufio.Reader) rune {
	start, _ := in.Peek(4096)
	line, rest, _ := bytes.Cut(start, []byte("\n"))
	for len(rest) > 0 && (len(bytes.TrimSpace(line)) == 0 || line[0] == '#') {
		line, rest, _ = bytes.Cut(rest, []byte("\n"))
	}
	best, most := ',', 0
	for _, c := range ",;\t" {
		if n := bytes.Count(line, []byte(string(c))); n > most {
			best, most = c, n
		}
	}
	return best
}

// csvTable is the state of reading one table.
type csvTable struct {
	name         string
	in           *csv.Reader
	columns      []csvColumn
	hours        []fileHour
	nAir, nDew   int       // readings averaged in the last hour
	last         time.Time // of the last row
	late         bool      // the row before this one did not come later than last
	faults       *Complaints
	line, column int
}

// head reads the header.
func (t *csvTable) head(fields []string) bool {
	columns, ok := readHead(fields, func(index int, found, hint string) {
		line, column := t.in.FieldPos(index)
		t.faults.add(Complaint{t.name, line, column, found, csvHeadAllowed, hint})
	})
	t.columns = columns
	return ok
}

// row reads one reading.
func (t *csvTable) row(fields []string) {
	var at time.Time
	dry, rh, dew := math.NaN(), math.NaN(), math.NaN()
	ok := true
	for _, c := range t.columns {
		if c.index >= len(fields) {
			t.line, _ = t.in.FieldPos(0)
			t.column = 0
			t.complain(fmt.Sprintf("%d fields", len(fields)), "as many as the header has", "")
			return
		}
		t.line, t.column = t.in.FieldPos(c.index)
		text := strings.TrimSpace(fields[c.index])
		good := true
		switch c.what {
		case csvTime:
			at, good = t.time(text)
		case csvDry:
			dry, good = t.number("dry bulb", text, c, -70, 70)
		case csvDew:
			dew, good = t.number("dew point", text, c, -70, 70)
		case csvRH:
			rh, good = t.number("relative humidity", text, c, 0, 1.1)
		}
		ok = ok && good
	}
	if !ok {
		return
	}
	t.last = at
	if math.IsNaN(dew) {
		dew = DewPoint(dry, min(1, rh))
	}
	t.add(at, dry, dew)
}

// time reads a time and checks that it comes later than the one before; only the
// first of several that do not is complained of.
func (t *csvTable) time(text string) (time.Time, bool) {
	for _, form := range csvTimes() {
		at, err := time.Parse(form, text)
		if err != nil {
			continue
		}
		at = time.Date(at.Year(), at.Month(), at.Day(), at.Hour(), at.Minute(), at.Second(), 0, time.UTC)
		if t.last.IsZero() || at.After(t.last) {
			t.late = false
			return at, true
		}
		if !t.late {
			t.complain(fmt.Sprintf("time %s after %s", text, t.last.Format("2006-01-02 15:04")), "times that rise from row to row",
				"local time with daylight saving repeats an hour in autumn: use standard time")
		}
		t.late = true
		return at, false
	}
	t.complain(fmt.Sprintf("time %q", shorten(text)), "2027-01-31 14:00, 2027-01-31T14:00 or 1/31/2027 14:00", "")
	return time.Time{}, false
}

// number reads a value and turns it into °C or a share, which must lie in low …
// high; NaN means missing.
func (t *csvTable) number(what, text string, c csvColumn, low, high float64) (float64, bool) {
	if saysMissing(text) {
		return math.NaN(), true
	}
	v, err := strconv.ParseFloat(text, 64)
	if v = (v - c.offset) * c.scale; err == nil && v >= low && v <= high {
		return v, true
	}
	hint := ""
	if strings.Contains(text, ",") {
		hint = "write decimals with a point"
	}
	t.complain(fmt.Sprintf("%s %q", what, shorten(text)), c.limits(low, high)+", or empty for missing", hint)
	return 0, false
}

// add puts a reading into its hour, as a mean with those already there.
func (t *csvTable) add(at time.Time, dry, dew float64) {
	line, _ := t.in.FieldPos(0)
	h := fileHour{at.Year(), int(at.Month()), at.Day(), at.Hour(), line, math.NaN(), math.NaN()}
	if n := len(t.hours); n == 0 || t.hours[n-1].before(h) {
		t.hours = append(t.hours, h)
		t.nAir, t.nDew = 0, 0
	}
	hour := &t.hours[len(t.hours)-1]
	join(&hour.air, &t.nAir, dry)
	join(&hour.dew, &t.nDew, dew)
}

// join takes x into a mean of n values, unless it is missing.
func join(mean *float64, n *int, x float64) {
	if math.IsNaN(x) {
		return
	}
	*n++
	if *n == 1 {
		*mean = x
		return
	}
	*mean += (x - *mean) / float64(*n)
}

// complain adds a complaint at the field being read.
func (t *csvTable) complain(found, allowed, hint string) {
	t.faults.add(Complaint{t.name, t.line, t.column, found, allowed, hint})
}
