package shift

import (
	"slices"
	"testing"

	"moldturn/sim/clock"
)

// Days off and extra days against a calendar that is compiled with them, minute
// arithmetic included.
func TestChangedAgainstExceptions(t *testing.T) {
	start := DateOf(2027, 1, 4) // a Monday
	hours := Hours{From: 6 * clock.Hour, To: 14*clock.Hour + 30*clock.Minute, Breaks: []Break{{From: 10 * clock.Hour, To: 10*clock.Hour + 30*clock.Minute}}}
	p := Pattern{Shifts: []Shift{{Days: MonToFri, Hours: hours}}}
	plain := mustCompile(t, p, start, 28*clock.Day)
	p.Exceptions.Holidays = []Date{DateOf(2027, 1, 6), DateOf(2027, 1, 14)}
	p.Exceptions.Extra = []Extra{{Date: DateOf(2027, 1, 9), Hours: hours}}
	want := mustCompile(t, p, start, 28*clock.Day)
	got := plain.Changed([]int{2, 10}, []int{5, 7})
	if !slices.EqualFunc(got.Intervals(), want.Intervals(), func(a, b Interval) bool { return a.From == b.From && a.To == b.To && a.Ends == b.Ends }) {
		t.Errorf("got %v, want %v", got.Intervals(), want.Intervals())
	}
	for day := range 28 {
		noon := clock.Time(day)*clock.Day + 12*clock.Hour
		a, okA := got.DayEnd(noon)
		b, okB := want.DayEnd(noon)
		if a != b || okA != okB || got.Worked(0, noon) != want.Worked(0, noon) {
			t.Errorf("day %d: the day ends at %v, %v; want %v, %v", day, a, okA, b, okB)
		}
	}
	if plain.On(5*clock.Day+8*clock.Hour) || !plain.On(2*clock.Day+8*clock.Hour) {
		t.Error("the calendar itself has changed")
	}
}

// An extra day before the first working day is like the first one after it; a
// night shift moves as a whole; one day in both lists is off; round the clock
// stays so.
func TestChangedAtTheEdges(t *testing.T) {
	night := Pattern{Shifts: []Shift{{Days: DaysOf(3), Hours: Hours{From: 22 * clock.Hour, To: 6 * clock.Hour}}}}
	c := mustCompile(t, night, DateOf(2027, 1, 4), 14*clock.Day) // Wednesdays: days 2 and 9
	got := c.Changed([]int{9, 4}, []int{0, 4, 0})                // a day said twice is one day
	var from []clock.Time
	for _, r := range got.Runs() {
		from = append(from, r.From, r.To)
	}
	if want := []clock.Time{hm(22, 0), hm(30, 0), hm(70, 0), hm(78, 0)}; !slices.Equal(from, want) {
		t.Errorf("shifts %v, want %v", from, want)
	}
	if !Always().Changed([]int{1}, nil).RoundTheClock() {
		t.Error("round the clock has no days")
	}
}
