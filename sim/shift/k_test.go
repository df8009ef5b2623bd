package shift

import (
	"testing"
	"time"

	"moldturn/sim/clock"
)

// A Monday.
var monday = Date{2027, time.January, 4}

func hm(h, m int) clock.Time {
	return clock.Time(h)*clock.Hour + clock.Time(m)*clock.Minute
}

func hours(h float64) clock.Time { return clock.FromHours(h) }

func mustCompile(t testing.TB, p Pattern, start Date, end clock.Time) *Calendar {
	t.Helper()
	c, err := Compile(p, start, end)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// calendars A and B of the K rows: one eight-hour shift Monday to Friday,
// without and with a break.
func calendarA(t testing.TB) *Calendar {
	p := Pattern{Shifts: []Shift{{Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(14, 0)}}}}
	return mustCompile(t, p, monday, 10*clock.Week)
}

func calendarB(t testing.TB) *Calendar {
	p := Pattern{Shifts: []Shift{{Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(14, 30),
		Breaks: []Break{{hm(10, 0), hm(10, 30)}}}}}}
	return mustCompile(t, p, monday, 10*clock.Week)
}

// The rows are hand arithmetic on the two calendars, hours from Monday 00:00.
func TestFinishByHand(t *testing.T) {
	a, b := calendarA(t), calendarB(t)
	for _, row := range []struct {
		name               string
		cal                *Calendar
		ready, work, hours float64
	}{
		{"K1", a, 12, 5, 33},
		{"K2", a, 109, 4, 177},
		{"K3", a, 130, 2, 176},
		{"K4", a, 14, 1, 31},
		{"K5", a, 12, 2, 14},
		{"K6", a, 6, 40, 110},
		{"K7", a, 6, 41, 175},
		{"K8", a, 110, 8, 182},
		{"K9", a, 13.5, .5, 14},
		{"K10", a, 27, 1.5, 31.5},
		{"K11 pull after a cure by the clock", a, 109 + 24, 2, 176},
		{"K12 cure wrongly by the calendar", a, 109, 24, 229},
		{"K13", b, 9, 3, 12.5},
		{"K14", b, 13, 3, 31.5},
	} {
		t.Run(row.name, func(t *testing.T) {
			got := row.cal.Finish(hours(row.ready), hours(row.work))
			if got != hours(row.hours) {
				t.Errorf("done at %v, want %v", got, hours(row.hours))
			}
		})
	}
}

// K19: a job of nine hours that may not be left at the end of an eight-hour
// shift is refused at once and not looked for forever.
func TestJobLongerThanEveryShift(t *testing.T) {
	a := calendarA(t)
	if got := a.NextFit(0, 9*clock.Hour); got != clock.Never {
		t.Errorf("9 h fit at %v", got)
	}
	if a.LongestShift() != 8*clock.Hour {
		t.Errorf("longest shift %v", a.LongestShift())
	}
	if got := a.NextFit(0, 8*clock.Hour); got != hours(6) {
		t.Errorf("8 h fit at %v, want Monday 06:00", got)
	}
	if got := a.NextFit(hours(6)+1, 8*clock.Hour); got != hours(30) {
		t.Errorf("8 h fit at %v, want Tuesday 06:00", got)
	}
}

// Half-open: on at 06:00, off at 14:00; a shift end is no break.
func TestEdges(t *testing.T) {
	a, b := calendarA(t), calendarB(t)
	for _, row := range []struct {
		at   float64
		on   bool
		next float64
	}{{5.999, false, 6}, {6, true, 14}, {13.999, true, 14}, {14, false, 30}, {109, true, 110}, {110, false, 174}} {
		if got := a.On(hours(row.at)); got != row.on {
			t.Errorf("on at %g: %v", row.at, got)
		}
		if got := a.NextChange(hours(row.at)); got != hours(row.next) {
			t.Errorf("next change after %g: %v, want %g h", row.at, got, row.next)
		}
	}
	if iv, _ := b.IntervalAt(hours(7)); iv.Ends != StartOfBreak || iv.To != hours(10) {
		t.Errorf("before the break: %+v", iv)
	}
	if iv, _ := b.IntervalAt(hours(11)); iv.Ends != EndOfShift || iv.To != hours(14.5) {
		t.Errorf("after the break: %+v", iv)
	}
	for _, at := range []float64{6, 9, 10.25, 14.4} {
		if got, ok := b.ShiftEnd(hours(at)); !ok || got != hours(14.5) {
			t.Errorf("shift end from %g: %v %v", at, got, ok)
		}
	}
	if _, ok := b.ShiftEnd(hours(14.5)); ok {
		t.Error("a shift is running after its end")
	}
	if got := a.Worked(0, clock.Week); got != 40*clock.Hour {
		t.Errorf("a week has %v", got)
	}
	if got := a.OffShift(hours(109), hours(177)); got != hours(68-4) {
		t.Errorf("off from Friday 13:00 to Monday 09:00: %v", got)
	}
	if got := a.Finish(hours(15), 0); got != hours(15) {
		t.Errorf("no work at 15:00 is done at %v", got)
	}
}

func TestEndOfHorizon(t *testing.T) {
	a := calendarA(t)
	last := 10*clock.Week - 2*clock.Day - 10*clock.Hour
	if got := a.Finish(last-clock.Hour, clock.Hour); got != last {
		t.Errorf("last hour done at %v, want %v", got, last)
	}
	if got := a.Finish(last-clock.Hour, clock.Hour+1); got != clock.Never {
		t.Errorf("work beyond the horizon done at %v", got)
	}
	for _, at := range []clock.Time{last, a.End(), clock.Never} {
		if a.On(at) || a.NextOn(at) != clock.Never || a.NextChange(at) != clock.Never {
			t.Errorf("on again after %v", at)
		}
	}
	if a.On(-1) || a.NextOn(-clock.Day) != hours(6) || a.Worked(-clock.Week, clock.Day) != 8*clock.Hour {
		t.Error("before 0 is not off")
	}
}

func TestZeroCalendarIsNeverOn(t *testing.T) {
	var c Calendar
	_, ok := c.DayEnd(5)
	if c.On(0) || ok || c.Worked(-5, 5) != 0 || c.Finish(-1, 1) != clock.Never || c.Finish(3, 0) != 3 {
		t.Error("the zero calendar works")
	}
}
