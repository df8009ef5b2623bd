package unit

import (
	"math/bits"
	"strings"
	"time"

	"moldturn/sim/param"
)

var (
	weekdays = [...]string{"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"}
	months   = [...]string{"January", "February", "March", "April", "May", "June", "July",
		"August", "September", "October", "November", "December"}
)

const secondsPerDay = 24 * 60 * 60

// parseDate reads 2027-01-04 into days since 1970-01-01 of the Gregorian
// calendar.
func parseDate(s string) (float64, *Problem) {
	t, err := time.Parse("2006-01-02", s)
	if err != nil {
		return 0, &Problem{Message: shown(s) + " is not a date", Hint: example(param.Date)}
	}
	return float64(t.Unix() / secondsPerDay), nil
}

// Day is the date of a value of kind Date, at midnight UTC.
func Day(value float64) time.Time {
	return time.Unix(int64(value)*secondsPerDay, 0).UTC()
}

// parseDayMonth reads 07-04, "Jul 4" or "4 Jul" into month × 100 + day.
// February 29 is refused because it is not in every year.
func parseDayMonth(s string) (float64, *Problem) {
	for _, layout := range []string{"01-02", "Jan 2", "January 2", "2 Jan", "2 January"} {
		if t, err := time.Parse(layout, s); err == nil {
			if t.Month() == time.February && t.Day() == 29 {
				return 0, &Problem{Message: "February 29 is not in every year", Hint: "write 02-28 or 03-01"}
			}
			return float64(int(t.Month())*100 + t.Day()), nil
		}
	}
	return 0, &Problem{Message: shown(s) + " is not a day of the year", Hint: example(param.DayMonth)}
}

// MonthDay splits a value of kind DayMonth.
func MonthDay(value float64) (time.Month, int) {
	return time.Month(int(value) / 100), int(value) % 100
}

// parseClock reads a time of day into minutes after midnight, 0 … 1440.
func parseClock(s string) (float64, *Problem) {
	if s == "24:00" {
		return 24 * 60, nil
	}
	written := strings.ToLower(strings.ReplaceAll(s, " ", ""))
	for _, layout := range []string{"15:04", "3:04pm", "3pm"} {
		if t, err := time.Parse(layout, written); err == nil {
			return float64(t.Hour()*60 + t.Minute()), nil
		}
	}
	return 0, &Problem{Message: shown(s) + " is not a time of day", Allowed: "00:00 to 24:00", Hint: example(param.ClockTime)}
}

// parseSet reads days or months, single ones and ranges, into a set of bits.
// Ranges run round the end: Nov-Feb has four months.
func parseSet(k param.Kind, s string, names []string) (float64, *Problem) {
	if strings.EqualFold(s, "none") {
		return 0, nil
	}
	set := 0
	for part := range strings.SplitSeq(s, ",") {
		from, to, isRange := strings.Cut(strings.ReplaceAll(part, "–", "-"), "-")
		if !isRange {
			to = from
		}
		i, j := indexOf(from, names), indexOf(to, names)
		if i < 0 || j < 0 {
			return 0, &Problem{Message: shown(strings.TrimSpace(part)) + " is not one of the " + plural(k),
				Allowed: short(names), Hint: example(k)}
		}
		for ; i != j; i = (i + 1) % len(names) {
			set |= 1 << i
		}
		set |= 1 << j
	}
	return float64(set), nil
}

// plural names the members of a set.
func plural(k param.Kind) string {
	if k == param.Weekdays {
		return "days of the week"
	}
	return "months"
}

// indexOf finds a name by its first three or more letters in any case, or -1.
func indexOf(word string, names []string) int {
	w := strings.TrimSpace(word)
	for i, name := range names {
		if len(w) >= 3 && len(w) <= len(name) && strings.EqualFold(w, name[:len(w)]) {
			return i
		}
	}
	return -1
}

// short lists the three-letter names.
func short(names []string) string {
	var list []string
	for _, name := range names {
		list = append(list, name[:3])
	}
	return strings.Join(list, ", ")
}

// Has reports whether a value of kind Weekdays (0 is Monday) or Months (0 is
// January) contains member i.
func Has(value float64, i int) bool { return uint(value)>>uint(i)&1 == 1 }

// formatSet writes a set as ranges in the order of their beginnings.
func formatSet(value float64, names []string) string {
	set, n := uint(value), len(names)
	switch bits.OnesCount(set) {
	case 0:
		return "none"
	case n:
		return names[0][:3] + "-" + names[n-1][:3]
	}
	var parts []string
	for i := range names {
		if Has(value, i) && !Has(value, (i+n-1)%n) {
			end := i
			for Has(value, (end+1)%n) {
				end = (end + 1) % n
			}
			part := names[i][:3]
			if end != i {
				part += "-" + names[end][:3]
			}
			parts = append(parts, part)
		}
	}
	return strings.Join(parts, ", ")
}
