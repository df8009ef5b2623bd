package shift

import (
	"testing"
	"time"

	"moldturn/sim/clock"
)

// Weeks at the turn of the year by ISO 8601: the week of 2005-01-01 is the
// 53rd of 2004, that of 2008-12-29 the first of 2009 (from memory; the rule,
// week 1 holds the first Thursday, is in ISO 8601:2004, 2.2.10).
func TestDates(t *testing.T) {
	if y, w := (Date{2005, 1, 1}).ISOWeek(); y != 2004 || w != 53 {
		t.Errorf("2005-01-01 is in week %d of %d", w, y)
	}
	if y, w := (Date{2008, 12, 29}).ISOWeek(); y != 2009 || w != 1 {
		t.Errorf("2008-12-29 is in week %d of %d", w, y)
	}
	leap := Date{2028, time.February, 29}
	if leap.AddDays(1) != (Date{2028, time.March, 1}) || leap.AddDays(366) != (Date{2029, time.March, 1}) {
		t.Error("days after the leap day")
	}
	if n := (Date{2101, 1, 1}).DaysSince(Date{2001, 1, 1}); n != 36524 {
		t.Errorf("a century without a leap year at its end has %d days, want 36524", n)
	}
	if leap.String() != "2028-02-29" || leap.IsZero() || !(Date{}).IsZero() {
		t.Errorf("leap day is written %s", leap)
	}
}

func TestParseDate(t *testing.T) {
	if d, err := ParseDate("2028-02-29"); err != nil || d != (Date{2028, 2, 29}) {
		t.Errorf("%v %v", d, err)
	}
	for _, s := range []string{"", "2027-02-29", "2027-13-01", "2027-1-4", "04/01/2027", "2027-01-04x"} {
		if d, err := ParseDate(s); err == nil {
			t.Errorf("%q is read as %v", s, d)
		}
	}
}

func TestInstantsAndDates(t *testing.T) {
	start := Date{2027, time.December, 30} // a Thursday
	for _, row := range []struct {
		t     clock.Time
		date  Date
		week  int
		month time.Month
	}{
		{-1, Date{2027, 12, 29}, 0, 12},
		{0, start, 0, 12},
		{2*clock.Day - 1, Date{2027, 12, 31}, 0, 12},
		{2 * clock.Day, Date{2028, 1, 1}, 0, 1},
		{4*clock.Day - 1, Date{2028, 1, 2}, 0, 1},
		{4 * clock.Day, Date{2028, 1, 3}, 1, 1},
		{11 * clock.Day, Date{2028, 1, 10}, 2, 1},
		{-3*clock.Day - 1, Date{2027, 12, 26}, -1, 12},
	} {
		if got := DateAt(start, row.t); got != row.date {
			t.Errorf("%v is %v, want %v", row.t, got, row.date)
		}
		if got := WeekAt(start, row.t); got != row.week {
			t.Errorf("%v is in week %d, want %d", row.t, got, row.week)
		}
		if got := MonthAt(start, row.t); got != row.month {
			t.Errorf("%v is in %v, want %v", row.t, got, row.month)
		}
		if m := Midnight(start, row.date); m > row.t || row.t-m >= clock.Day {
			t.Errorf("midnight of %v is %v", row.date, m)
		}
		if m := WeekStart(start, row.week); m > row.t || row.t-m >= clock.Week {
			t.Errorf("week %d starts at %v", row.week, m)
		}
	}
	if WeekStart(start, 1) != 4*clock.Day || start.Monday() != (Date{2027, 12, 27}) {
		t.Error("the first Monday is not 2028-01-03")
	}
}

func TestWeekdays(t *testing.T) {
	for _, row := range []struct {
		in, out string
		want    Weekdays
	}{
		{"Mon-Fri", "Mon-Fri", MonToFri},
		{"mon - thu, saturday", "Mon-Thu, Sat", DaysOf(1, 2, 3, 4, 6)},
		{"Fri-Mon", "Mon, Fri-Sun", DaysOf(5, 6, 0, 1)},
		{"Sun", "Sun", DaysOf(time.Sunday)},
		{"Mon,Wed", "Mon, Wed", DaysOf(1, 3)},
		{"Mon-Sun", "Mon-Sun", EveryDay},
	} {
		got, err := ParseWeekdays(row.in)
		if err != nil || got != row.want || got.String() != row.out {
			t.Errorf("%q: %v %v", row.in, got, err)
		}
	}
	for _, s := range []string{"", "Mo", "Mon-", "Mon;Tue", "Mon-Tue-Wed"} {
		if got, err := ParseWeekdays(s); err == nil {
			t.Errorf("%q is read as %v", s, got)
		}
	}
	if Weekdays(0).String() != "no day" {
		t.Error("the empty set")
	}
}
