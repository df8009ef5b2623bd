package climate

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// csvQuantity is what a column of a CSV weather file holds.
type csvQuantity uint8

const (
	csvOther csvQuantity = iota
	csvTime
	csvDry
	csvRH
	csvDew
)

// quantityOf is what the name of a column, in small letters without blanks and
// marks, says that it holds.
func quantityOf(name string) csvQuantity {
	switch name {
	case "time", "date", "datetime", "dateandtime", "timestamp", "hour":
		return csvTime
	case "drybulb", "drybulbtemperature", "drybulbtemp", "temperature", "temp", "t",
		"air", "airtemperature", "airtemp", "outdoortemperature":
		return csvDry
	case "rh", "relativehumidity", "humidity", "relhumidity", "relhum":
		return csvRH
	case "dewpoint", "dew", "dewpointtemperature", "dewpointtemp":
		return csvDew
	}
	return csvOther
}

// csvUnit turns numbers into °C or a share: (value − offset) · scale.
type csvUnit struct {
	humidity      bool // a unit of relative humidity; else of temperature
	offset, scale float64
	sign          string // after a number
}

// unitOf reads a unit as splitUnit gives it.
func unitOf(unit string) (u csvUnit, known bool) {
	switch unit {
	case "c", "degc", "celsius":
		return csvUnit{false, 0, 1, " C"}, true
	case "f", "degf", "fahrenheit":
		return csvUnit{false, 32, 1 / 1.8, " F"}, true
	case "k":
		return csvUnit{false, kelvin, 1, " K"}, true
	case "%", "pct", "percent":
		return csvUnit{true, 0, 0.01, " %"}, true
	case "share", "0-1":
		return csvUnit{true, 0, 1, " as a share"}, true
	}
	return csvUnit{}, false
}

// csvColumn is a column that is read: where it stands and how its numbers turn
// into °C or a share.
type csvColumn struct {
	index int
	what  csvQuantity
	csvUnit
}

// limits writes a range of °C or of a share in the unit of the column: "-70 …
// 70 C", "0 … 110 %".
func (c csvColumn) limits(low, high float64) string {
	of := func(x float64) float64 { return math.Round(100*(x/c.scale+c.offset)) / 100 }
	return fmt.Sprintf("%g … %g%s", of(low), of(high), c.sign)
}

// csvHeadAllowed is what a header may say, for complaints.
const csvHeadAllowed = `columns "time", "dry bulb (C)" and "RH (%)" or "dew point (C)"; units C, F, K, %, share`

// readHead finds the columns in a header's fields. complain is called with the
// index of the field at fault, 0 for the header as a whole.
func readHead(fields []string, complain func(index int, found, hint string)) (columns []csvColumn, ok bool) {
	ok = true
	for i, field := range fields {
		c, found, hint := headColumn(field)
		if found == "" && c.what != csvOther && slices.ContainsFunc(columns, func(d csvColumn) bool { return d.what == c.what }) {
			found = fmt.Sprintf("a second column of the same kind, %q", shorten(field))
		}
		if found != "" {
			complain(i, found, hint)
			ok = false
			continue
		}
		if c.index = i; c.what != csvOther {
			columns = append(columns, c)
		}
	}
	has := func(q csvQuantity) bool {
		return slices.ContainsFunc(columns, func(c csvColumn) bool { return c.what == q })
	}
	for _, need := range []struct {
		met  bool
		name string
	}{{has(csvTime), "time"}, {has(csvDry), "dry bulb"}, {has(csvRH) || has(csvDew), "humidity"}} {
		if ok && !need.met {
			complain(0, "no column of "+need.name, "")
			ok = false
		}
	}
	return columns, ok
}

// headColumn reads one field of the header: "Dry bulb (F)", "temp_C", "RH [%]".
// found says what is wrong with it, if anything.
func headColumn(field string) (c csvColumn, found, hint string) {
	name, unit := splitUnit(field)
	c.what = quantityOf(name)
	if c.what == csvOther || c.what == csvTime {
		return c, "", ""
	}
	if unit == "" {
		usual := " (C)"
		if c.what == csvRH {
			usual = " (%)"
		}
		return c, fmt.Sprintf("no unit in %q", shorten(field)), fmt.Sprintf("write it as %q", strings.TrimSpace(field)+usual)
	}
	u, known := unitOf(unit)
	if !known || u.humidity != (c.what == csvRH) {
		return c, fmt.Sprintf("unit %q in %q", unit, shorten(field)), ""
	}
	c.csvUnit = u
	return c, "", ""
}

// splitUnit parts a header's field into its name and its unit, both in small
// letters without blanks, brackets and marks. The unit is in brackets, or is
// the last word if that is a unit.
func splitUnit(field string) (name, unit string) {
	s := strings.ToLower(strings.TrimSpace(field))
	if i := strings.IndexAny(s, "([{"); i >= 0 {
		return plain(s[:i]), plain(s[i:])
	}
	words := strings.FieldsFunc(s, func(r rune) bool { return r == ' ' || r == '_' || r == ',' || r == '-' })
	if n := len(words) - 1; n > 0 {
		if _, known := unitOf(plain(words[n])); known {
			return plain(strings.Join(words[:n], "")), plain(words[n])
		}
	}
	return plain(s), ""
}

// plain takes blanks, brackets, degree signs and other marks out.
func plain(s string) string {
	return strings.Map(func(r rune) rune {
		if strings.ContainsRune(" _()[]{}°.:/\t", r) || r == '-' && !strings.Contains(s, "0-1") {
			return -1
		}
		return r
	}, s)
}
