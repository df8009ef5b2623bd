package shift

import (
	"testing"
	"time"

	"moldturn/sim/clock"
)

// Day 06–15, evening 15–22 and night 22–06 touch: three shifts, no gap.
func threeShifts() Pattern {
	return Pattern{Shifts: []Shift{
		{Name: "day", Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(15, 0)}},
		{Name: "evening", Days: MonToFri, Hours: Hours{From: hm(15, 0), To: hm(22, 0)}},
		{Name: "night", Days: MonToFri, Hours: Hours{From: hm(22, 0), To: hm(6, 0)}},
	}}
}

func TestTouchingShiftsStayApart(t *testing.T) {
	c := mustCompile(t, threeShifts(), monday, 2*clock.Week)
	if got := c.NextChange(hours(8)); got != hours(15) {
		t.Errorf("change after 08:00 at %v, want 15:00", got)
	}
	if iv, _ := c.IntervalAt(hours(14)); iv.Ends != EndOfShift {
		t.Errorf("day shift ends in %+v", iv)
	}
	if got := c.Finish(hours(14), 9*clock.Hour); got != hours(23) {
		t.Errorf("nine hours over two changes done at %v", got)
	}
	if got, _ := c.ShiftEnd(hours(15)); got != hours(22) {
		t.Errorf("at 15:00 the shift ends at %v", got)
	}
	if got, _ := c.DayEnd(hours(8)); got != hours(30) {
		t.Errorf("Monday's last shift ends at %v, want Tuesday 06:00", got)
	}
	if got, _ := c.DayEnd(hours(29)); got != hours(30) {
		t.Errorf("Tuesday 05:00 is Monday's work, ends at %v", got)
	}
	if got, _ := c.DayEnd(hours(30)); got != hours(54) {
		t.Errorf("Tuesday 06:00 is Tuesday's work, ends at %v", got)
	}
	if _, ok := c.DayEnd(hours(5*24 + 12)); ok {
		t.Error("Saturday noon has a last shift")
	}
	if r, _ := c.RunAt(hours(5*24 + 2)); r.Day != 4 || r.Shift != 2 {
		t.Errorf("Saturday 02:00 is %+v, want Friday's night shift", r)
	}
}

// The night shift of the Sunday before the start reaches into Monday.
func TestNightShiftOfTheDayBefore(t *testing.T) {
	p := Pattern{Shifts: []Shift{{Days: EveryDay, Hours: Hours{From: hm(22, 0), To: hm(6, 0)}}}}
	c := mustCompile(t, p, monday, clock.Week)
	r, ok := c.RunAt(0)
	if !ok || r.Day != -1 || r.To != hours(6) {
		t.Errorf("Monday 00:00: %+v %v", r, ok)
	}
	if got, ok := c.DayEnd(hours(3)); !ok || got != hours(6) {
		t.Errorf("its day ends at %v", got)
	}
}

func TestHolidayStopsShiftsThatStartOnIt(t *testing.T) {
	p := threeShifts()
	p.Exceptions.Holidays = []Date{monday.AddDays(1)}
	c := mustCompile(t, p, monday, clock.Week)
	if !c.On(hours(29)) {
		t.Error("Monday's night shift is gone on the holiday morning")
	}
	if c.On(hours(30)) || c.On(hours(53)) || !c.On(hours(54)) {
		t.Error("the holiday is not 06:00 to 06:00")
	}
	if got := c.Worked(0, clock.Week); got != 4*clock.Day {
		t.Errorf("the week has %v, want four days", got)
	}
}

// A yearly shutdown over the new year, in a leap year and out of it, and an
// extra day inside it.
func TestShutdownOverTheNewYear(t *testing.T) {
	p := Pattern{
		Shifts: []Shift{{Days: EveryDay, Hours: Hours{From: hm(7, 0), To: hm(15, 0)}}},
		Exceptions: Exceptions{
			Shutdowns: []Shutdown{{From: Date{Month: time.December, Day: 24, Year: 2000}, To: Date{Year: 2000, Month: time.January, Day: 2}, Yearly: true}},
			Extra:     []Extra{{Date: Date{2028, time.December, 28}, Hours: Hours{From: hm(8, 0), To: hm(12, 0)}}},
		},
	}
	start := Date{2027, time.December, 1}
	c := mustCompile(t, p, start, 800*clock.Day)
	for _, row := range []struct {
		date  string
		hours clock.Time
	}{
		{"2027-12-23", 8}, {"2027-12-24", 0}, {"2027-12-31", 0}, {"2028-01-01", 0}, {"2028-01-02", 0}, {"2028-01-03", 8},
		{"2028-02-28", 8}, {"2028-02-29", 8}, {"2028-03-01", 8},
		{"2028-12-23", 8}, {"2028-12-24", 0}, {"2028-12-28", 4}, {"2029-01-02", 0}, {"2029-01-03", 8}, {"2029-03-01", 8},
	} {
		d, err := ParseDate(row.date)
		if err != nil {
			t.Fatal(err)
		}
		from := Midnight(start, d)
		if got := c.Worked(from, from+clock.Day); got != row.hours*clock.Hour {
			t.Errorf("%s has %v, want %d h", d, got, row.hours)
		}
	}
	if got := c.Worked(Midnight(start, Date{2028, 1, 1}), Midnight(start, Date{2029, 1, 1})); got != ((366-2-8)*8+4)*clock.Hour {
		t.Errorf("2028 has %v", got)
	}
}

func TestShutdownOfOneYear(t *testing.T) {
	e := Exceptions{
		Holidays:  []Date{{2027, time.July, 2}},
		Shutdowns: []Shutdown{{From: Date{2027, time.July, 5}, To: Date{2027, time.July, 11}}, {From: Date{2027, time.July, 14}, To: Date{2027, time.July, 14}}},
	}
	for _, row := range []struct {
		day, shut int
	}{{4, 0}, {5, 7}, {11, 7}, {12, 1}, {19, 0}} {
		if got := e.ShutDays(Date{2027, time.July, row.day}); got != row.shut {
			t.Errorf("week of July %d: %d days shut, want %d", row.day, got, row.shut)
		}
	}
	if e.Shut(Date{2028, time.July, 5}) || !e.Closed(Date{2027, time.July, 2}) || e.Shut(Date{2027, time.July, 2}) {
		t.Error("shut and closed are mixed up")
	}
}

func TestTimeLostToStartUpAndCleanUp(t *testing.T) {
	p := Pattern{Shifts: []Shift{{Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(14, 30),
		Breaks:  []Break{{hm(10, 0), hm(10, 30)}},
		StartUp: hm(0, 20), CleanUp: hm(0, 40)}}}}
	c := mustCompile(t, p, monday, clock.Week)
	if c.NextOn(0) != hm(6, 20) {
		t.Errorf("work begins at %v", c.NextOn(0))
	}
	if got, _ := c.ShiftEnd(hm(7, 0)); got != hm(13, 50) {
		t.Errorf("work ends at %v", got)
	}
	if got := c.Worked(0, clock.Week); got != 35*clock.Hour {
		t.Errorf("the week has %v", got)
	}
	paid := mustCompile(t, p.Attendance(), monday, clock.Week)
	if got := paid.Worked(0, clock.Week); got != 40*clock.Hour {
		t.Errorf("people are there for %v", got)
	}
	if p.Shifts[0].StartUp != hm(0, 20) {
		t.Error("Attendance changed the pattern")
	}
}

// Of two shifts that overlap the first runs to its end.
func TestOverlapBelongsToTheShiftThatBeganFirst(t *testing.T) {
	p := Pattern{Shifts: []Shift{
		{Days: MonToFri, Hours: Hours{From: hm(14, 0), To: hm(22, 0)}},
		{Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(14, 30)}},
		{Days: MonToFri, Hours: Hours{From: hm(8, 0), To: hm(12, 0)}},
	}}
	c := mustCompile(t, p, monday, clock.Week)
	if got := c.NextChange(hm(6, 0)); got != hm(14, 30) {
		t.Errorf("the day shift ends at %v", got)
	}
	if got := c.Worked(0, clock.Day); got != 16*clock.Hour {
		t.Errorf("the day has %v", got)
	}
	if n := len(c.Runs()); n != 10 {
		t.Errorf("%d shifts in the week, want 10", n)
	}
}

func TestRoundTheClock(t *testing.T) {
	p := Pattern{Shifts: []Shift{{Days: EveryDay, Hours: Hours{From: hm(6, 0), To: hm(6, 0)}}}}
	c := mustCompile(t, p, monday, 3*clock.Week)
	if !c.RoundTheClock() || c.Worked(-5, 4*clock.Week) != 3*clock.Week {
		t.Error("06:00–06:00 every day is not round the clock")
	}
	if got, _ := c.ShiftEnd(hours(12)); got != hours(30) {
		t.Errorf("its shift ends at %v", got)
	}
	if got := c.Finish(hours(12), 100*clock.Hour); got != hours(112) {
		t.Errorf("100 h done at %v", got)
	}
	a := Always()
	if !a.RoundTheClock() || !a.On(clock.Never-1) || a.On(-1) || a.NextChange(0) != clock.Never ||
		a.Finish(7, 5) != 12 || a.Worked(3, 10) != 7 || a.NextFit(9, clock.Week) != 9 {
		t.Error("Always is not always on")
	}
	if end, ok := a.DayEnd(hours(30)); !ok || end != clock.Never {
		t.Errorf("day end of Always: %v %v", end, ok)
	}
	if a.ShopDay(hours(30)) != 1 {
		t.Errorf("shop day of Always: %d", a.ShopDay(hours(30)))
	}
}

func TestProblemsComeTogetherWithTheirPlaces(t *testing.T) {
	p := Pattern{
		Shifts: []Shift{
			{Hours: Hours{From: hm(6, 0), To: hm(25, 0)}},
			{Days: MonToFri, Hours: Hours{From: hm(22, 0), To: hm(6, 0), Breaks: []Break{{hm(2, 0), hm(2, 30)}, {hm(1, 0), hm(1, 15)}}}},
			{Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(7, 0), StartUp: hm(0, 30), CleanUp: hm(0, 30)}},
		},
		Exceptions: Exceptions{
			Holidays:  []Date{{2027, time.February, 29}},
			Shutdowns: []Shutdown{{From: Date{2027, time.July, 9}, To: Date{2027, time.July, 5}}},
			Extra:     []Extra{{Date: monday, Hours: Hours{From: hm(24, 0), To: hm(3, 0)}}},
		},
	}
	want := []string{"shifts[0].days", "shifts[0].to", "shifts[1].breaks[1]", "shifts[2]",
		"holidays[0]", "shutdowns[0].to", "extra[0].from"}
	got := p.Check()
	if len(got) != len(want) {
		t.Fatalf("%d problems, want %d:\n%v", len(got), len(want), got)
	}
	for i := range want {
		if got[i].Field != want[i] || got[i].Allowed == "" || got[i].Found == "" {
			t.Errorf("problem %d: %v, want one about %s", i, got[i], want[i])
		}
	}
	if _, err := Compile(p, monday, clock.Week); err == nil {
		t.Error("compiled in spite of problems")
	}
}
