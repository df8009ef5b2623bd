package shift

import (
	"fmt"
	"strings"
	"time"
)

// Weekdays is a set of days of the week. The zero value is the empty set.
type Weekdays uint8

// Common sets.
const (
	MonToFri Weekdays = 1<<time.Monday | 1<<time.Tuesday | 1<<time.Wednesday |
		1<<time.Thursday | 1<<time.Friday
	EveryDay Weekdays = MonToFri | 1<<time.Saturday | 1<<time.Sunday
)

// DaysOf gives the set of the days named.
func DaysOf(days ...time.Weekday) Weekdays {
	var w Weekdays
	for _, d := range days {
		w |= 1 << d
	}
	return w
}

// Has is true if d is in the set.
func (w Weekdays) Has(d time.Weekday) bool { return w&(1<<d) != 0 }

// String writes the set from Monday on: "Mon, Tue, Fri"; runs of three days or
// more as "Mon-Fri"; the empty set as "no day".
func (w Weekdays) String() string {
	var out []string
	for i := 0; i < 7; {
		n := 0
		for i+n < 7 && w.Has(weekday(i+n)) {
			n++
		}
		if n >= 3 {
			out = append(out, shortName(i)+"-"+shortName(i+n-1))
			i += n
			continue
		}
		if n > 0 {
			out = append(out, shortName(i))
		}
		i++
	}
	if out == nil {
		return "no day"
	}
	return strings.Join(out, ", ")
}

// ParseWeekdays reads what String writes, in any letter case: days and ranges
// joined by commas, "Mon-Fri, Sun". A range may go over Sunday, "Fri-Mon". Full
// English names are allowed too. An empty list is an error.
func ParseWeekdays(s string) (Weekdays, error) {
	var w Weekdays
	for _, item := range strings.Split(s, ",") {
		from, to, isRange := strings.Cut(item, "-")
		i, ok := parseDay(from)
		j := i
		if ok && isRange {
			j, ok = parseDay(to)
		}
		if !ok {
			return 0, fmt.Errorf("not days of the week: %q (allowed: Mon, Tue, Wed, Thu, Fri, Sat, Sun and ranges like Mon-Fri)", s)
		}
		for ; i != j; i = (i + 1) % 7 {
			w |= 1 << weekday(i)
		}
		w |= 1 << weekday(j)
	}
	return w, nil
}

// parseDay gives the number of the day counted from Monday.
func parseDay(s string) (int, bool) {
	s = strings.TrimSpace(s)
	for i := range 7 {
		if strings.EqualFold(s, shortName(i)) || strings.EqualFold(s, weekday(i).String()) {
			return i, true
		}
	}
	return 0, false
}

// weekday is the day i days after Monday.
func weekday(i int) time.Weekday { return time.Weekday((i + 1) % 7) }

func shortName(i int) string { return weekday(i).String()[:3] }
