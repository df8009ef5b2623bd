package floor

import (
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// dayOrder is how a column writes dates of numbers only.
type dayOrder uint8

const (
	orderUnknown dayOrder = iota
	dayFirst
	monthFirst
	orderMixed // some rows show one, some the other
)

// errAmbiguous is the error of a date that could be two days.
var errAmbiguous = errors.New("could be two days")

// firstYear and lastYear bound what a date on a shop floor can be.
const firstYear, lastYear = 1990, 2099

const dateStyles = "2026-11-25, 11/25/2026 or 25.11.2026 in a column that shows which is which, 25 Nov 2026, a spreadsheet's date; with or without a time, 14:30 or 2:30 pm"

var (
	clockPart  = regexp.MustCompile(`(?i)^(.*?)[ T,]+(?:at )?(\d{1,2})[:.h](\d{2})(?:[:.](\d{2})(?:\.\d+)?)? ?([ap]\.?m\.?|h|hrs|uhr)?$`)
	hourPart   = regexp.MustCompile(`(?i)^(.*?)[ ,]+(\d{1,2}) ?([ap]\.?m\.?)$`)
	numbers    = regexp.MustCompile(`^(\d{1,4})([-/.])(\d{1,2})([-/.])(\d{1,4})\.?$`)
	dayMonth   = regexp.MustCompile(`^(\d{1,2})(?:st|nd|rd|th|\.)?[ -/]*(?:of )?([A-Za-z]{3,9})\.?,?[ -/]*(\d{2}|\d{4})$`)
	monthDay   = regexp.MustCompile(`^([A-Za-z]{3,9})\.? ?(\d{1,2})(?:st|nd|rd|th)?,? ?(\d{4})$`)
	yearMonth  = regexp.MustCompile(`^(\d{4})[ -/]([A-Za-z]{3,9})\.?[ -/](\d{1,2})$`)
	plainCount = regexp.MustCompile(`^\d+(?:[.,]\d+)?$`)
	weekdayIn  = regexp.MustCompile(`^([A-Za-z]{2,9})\.?,? +(.+)$`)
)

// parseMoment reads a date with or without a time. order decides numbers that
// could be two days; without one they give errAmbiguous.
func parseMoment(s string, order dayOrder, since1904 bool) (Moment, error) {
	if plainCount.MatchString(s) {
		return parseCount(s, since1904)
	}
	weekday, s := cutWeekday(s)
	date, at, timed, err := cutClock(s)
	if err != nil {
		return Moment{}, err
	}
	d, err := parseDay(date, order)
	if err != nil {
		return Moment{}, err
	}
	if d.Year < firstYear || d.Year > lastYear {
		return Moment{}, fmt.Errorf("the year %d is no year of this plant", d.Year)
	}
	if weekday >= 0 && d.Weekday() != time.Weekday(weekday) {
		return Moment{}, fmt.Errorf("%s is a %s", d, d.Weekday())
	}
	return Moment{Date: d, Clock: at, Timed: timed}, nil
}

// parseCount reads a date that is one number: 20261125, or the days of a
// spreadsheet.
func parseCount(s string, since1904 bool) (Moment, error) {
	if t, err := time.Parse("20060102", s); err == nil && t.Year() >= firstYear && t.Year() <= lastYear {
		return Moment{Date: shift.DateOf(t.Year(), t.Month(), t.Day())}, nil
	}
	x, err := strconv.ParseFloat(strings.Replace(s, ",", ".", 1), 64)
	if err != nil {
		return Moment{}, errors.New("not a date")
	}
	m, err := FromSerial(x, since1904)
	if err == nil && (m.Date.Year < firstYear || m.Date.Year > lastYear) {
		err = fmt.Errorf("as a spreadsheet's date it is %s", m.Date)
	}
	if err != nil {
		return Moment{}, err
	}
	return m, nil
}

// cutWeekday takes the name of a weekday from the front; -1 for none.
func cutWeekday(s string) (int, string) {
	m := weekdayIn.FindStringSubmatch(s)
	if m == nil {
		return -1, s
	}
	for d := range 7 {
		name := strings.ToLower(time.Weekday(d).String())
		if w := strings.ToLower(m[1]); len(w) >= 2 && strings.HasPrefix(name, w) || w == name[:3]+"s" || w == "thur" && d == 4 {
			return d, m[2]
		}
	}
	return -1, s
}

// cutClock takes the time of day from the end.
func cutClock(s string) (date string, at clock.Time, timed bool, err error) {
	hour, minute, second, half := "", "0", "0", ""
	if m := clockPart.FindStringSubmatch(s); m != nil && m[1] != "" {
		date, hour, minute, half = m[1], m[2], m[3], m[5]
		if m[4] != "" {
			second = m[4]
		}
	} else if m := hourPart.FindStringSubmatch(s); m != nil {
		date, hour, half = m[1], m[2], m[3]
	} else {
		return s, 0, false, nil
	}
	h, _ := strconv.Atoi(hour)
	m, _ := strconv.Atoi(minute)
	sec, _ := strconv.Atoi(second)
	half = strings.ToLower(half[:min(1, len(half))])
	if half == "a" || half == "p" {
		if h < 1 || h > 12 {
			return "", 0, false, fmt.Errorf("%s %sm is no time of day", hour, half)
		}
		h %= 12
		if half == "p" {
			h += 12
		}
	}
	if h > 23 || m > 59 || sec > 59 {
		return "", 0, false, fmt.Errorf("%s:%s is no time of day", hour, minute)
	}
	return strings.TrimSuffix(date, ","), clock.Time(h)*clock.Hour + clock.Time(m)*clock.Minute + clock.Time(sec)*clock.Second, true, nil
}

// parseDay reads the date alone.
func parseDay(s string, order dayOrder) (shift.Date, error) {
	if m := numbers.FindStringSubmatch(s); m != nil && m[2] == m[4] {
		return numericDay(m[1], m[3], m[5], order)
	}
	if m := dayMonth.FindStringSubmatch(s); m != nil {
		return namedDay(m[3], m[2], m[1])
	}
	if m := monthDay.FindStringSubmatch(s); m != nil {
		return namedDay(m[3], m[1], m[2])
	}
	if m := yearMonth.FindStringSubmatch(s); m != nil {
		return namedDay(m[1], m[2], m[3])
	}
	return shift.Date{}, errors.New("not a date")
}

// orderOf is what a date of numbers shows about the order of its column; dots
// tells that it is written with dots.
func orderOf(s string) (order dayOrder, ambiguous, dots bool) {
	_, s = cutWeekday(s)
	s, _, _, err := cutClock(s)
	m := numbers.FindStringSubmatch(s)
	if err != nil || m == nil || m[2] != m[4] || len(m[1]) > 2 {
		return orderUnknown, false, false
	}
	a, _ := strconv.Atoi(m[1])
	b, _ := strconv.Atoi(m[3])
	switch {
	case a > 12 && b <= 12:
		return dayFirst, false, m[2] == "."
	case b > 12 && a <= 12:
		return monthFirst, false, m[2] == "."
	}
	return orderUnknown, a != b && a <= 12 && b <= 12, m[2] == "."
}

// numericDay reads a date of three numbers.
func numericDay(first, second, third string, order dayOrder) (shift.Date, error) {
	a, _ := strconv.Atoi(first)
	b, _ := strconv.Atoi(second)
	c, _ := strconv.Atoi(third)
	switch {
	case len(first) == 4 && len(third) <= 2:
		return realDay(a, b, c)
	case len(first) > 2 || len(third) != 2 && len(third) != 4:
		return shift.Date{}, errors.New("not a date")
	}
	if len(third) == 2 {
		c += 2000
	}
	switch {
	case a == b || b > 12:
		return realDay(c, a, b)
	case a > 12:
		return realDay(c, b, a)
	case order == dayFirst:
		return realDay(c, b, a)
	case order == monthFirst:
		return realDay(c, a, b)
	}
	return shift.Date{}, errAmbiguous
}

// namedDay reads a date with the name of its month.
func namedDay(year, month, day string) (shift.Date, error) {
	y, _ := strconv.Atoi(year)
	d, _ := strconv.Atoi(day)
	if len(year) == 2 {
		y += 2000
	}
	month = strings.ToLower(month)
	for m := time.January; m <= time.December; m++ {
		name := strings.ToLower(m.String())
		if strings.HasPrefix(name, month) && len(month) >= 3 || month == "sept" && m == time.September {
			return realDay(y, int(m), d)
		}
	}
	return shift.Date{}, fmt.Errorf("there is no month %q", month)
}

// realDay refuses days that never were.
func realDay(y, m, d int) (shift.Date, error) {
	if m < 1 || m > 12 {
		return shift.Date{}, fmt.Errorf("there is no month %d", m)
	}
	out := shift.DateOf(y, time.Month(m), d)
	if out.Day != d || d < 1 {
		return shift.Date{}, fmt.Errorf("%s %d has no day %d", time.Month(m), y, d)
	}
	return out, nil
}

// ParseMorning reads the moment that a command line names, "2027-03-08" or
// "2027-03-08 06:00".
func ParseMorning(s string) (Moment, error) {
	m, err := parseMoment(clean(s), orderUnknown, false)
	if err != nil || plainCount.MatchString(clean(s)) {
		return Moment{}, fmt.Errorf("%q is not a date (allowed: year-month-day, with or without a time: 2027-03-08 06:00)", s)
	}
	return m, nil
}
