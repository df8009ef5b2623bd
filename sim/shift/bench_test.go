package shift

import (
	"testing"

	"moldturn/sim/clock"
)

func benchCalendar(b *testing.B) *Calendar {
	p := Pattern{Shifts: []Shift{
		{Days: MonToFri, Hours: Hours{From: hm(6, 0), To: hm(14, 30), Breaks: []Break{{hm(9, 0), hm(9, 15)}, {hm(12, 0), hm(12, 30)}}}},
		{Days: MonToFri, Hours: Hours{From: hm(14, 30), To: hm(23, 0), Breaks: []Break{{hm(18, 0), hm(18, 30)}}}},
	}}
	return mustCompile(b, p, monday, 11*52*clock.Week)
}

func BenchmarkFinish(b *testing.B) {
	c := benchCalendar(b)
	var sum clock.Time
	t := clock.Time(0)
	for b.Loop() {
		t = (t + 7919*clock.Minute) % (500 * clock.Week)
		sum += c.Finish(t, 9*clock.Hour)
	}
	if sum == 0 {
		b.Fatal("nothing done")
	}
}

func BenchmarkWorked(b *testing.B) {
	c := benchCalendar(b)
	var sum clock.Time
	t := clock.Time(0)
	for b.Loop() {
		t = (t + 7919*clock.Minute) % (500 * clock.Week)
		sum += c.Worked(t, t+3*clock.Day)
	}
	if sum == 0 {
		b.Fatal("nothing worked")
	}
}

func BenchmarkCompileTenYears(b *testing.B) {
	for b.Loop() {
		benchCalendar(b)
	}
}
