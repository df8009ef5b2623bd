package scenarios

import (
	"math"
	"slices"
	"strconv"
	"time"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/finish"
	"moldturn/sim/shift"
)

func quoted(s string) string { return strconv.Quote(s) }

// plainAt is At for a path that may run through names or lists: then there is
// no single value.
func (v *Value) plainAt(path string) (*Value, bool) {
	for _, c := range path {
		if c == '*' || c == '[' {
			return nil, false
		}
	}
	return v.At(path), true
}

// physics sets cure, finish and defects.
func (b *builder) physics() {
	b.plan.Cure, b.plan.Finish = cure.Default(), finish.Default()
	b.hardness()
	b.scales()
	b.defects()
	b.set(cure.Inputs(), b.plan.Cure.Set)
	b.set(finish.Inputs(), b.plan.Finish.Set)
	for name, g := range b.v.Each("finish.grades") {
		b.plan.Finish.AddGrade(finish.Grade{Name: name, Loss: g.At("luster_lost").Number(), BuildUp: g.At("build_up").Number()})
	}
	for name, s := range b.v.Each("finish.shades") {
		b.plan.Finish.AddColor(finish.Color{Name: name, Haze: s.At("haze_seen").Share(), PostCure: s.At("waves_seen").Number(), White: s.At("white").Flag()})
	}
}

// calendars compiles the shifts with their exceptions.
func (b *builder) calendars() {
	for _, h := range b.v.Each("calendar.holidays") {
		month, day := h.MonthDay()
		for year := b.plan.Start.Year - 1; year <= b.lastYear(); year++ {
			b.exceptions.Holidays = append(b.exceptions.Holidays, shift.DateOf(year, month, day))
		}
	}
	for _, s := range b.v.Each("calendar.shutdowns") {
		fm, fd := s.At("from").MonthDay()
		tm, td := s.At("to").MonthDay()
		b.exceptions.Shutdowns = append(b.exceptions.Shutdowns, shift.Shutdown{Name: "shutdown", From: shift.DateOf(2000, fm, fd), To: shift.DateOf(2000, tm, td), Yearly: true})
	}
	for _, x := range b.v.Each("calendar.extra_days") {
		d := x.At("date").Date()
		b.exceptions.Extra = append(b.exceptions.Extra, shift.Extra{Name: "extra day", Date: shift.DateOf(d.Year(), d.Month(), d.Day()),
			Hours: shift.Hours{From: minutes(x.At("from")), To: minutes(x.At("to"))}})
	}
	b.shifts = map[string]*shift.Calendar{}
	for name, s := range b.v.Each("shifts") {
		b.shiftNames = append(b.shiftNames, name)
		b.shifts[name] = b.compile(name, s)
	}
}

func (b *builder) lastYear() int { return shift.DateAt(b.plan.Start, b.horizon).Year + 1 }

func minutes(v *Value) clock.Time { return clock.Time(v.Minutes()) * clock.Minute }

// compile lays a shift out over the run.
func (b *builder) compile(name string, v *Value) *shift.Calendar {
	h := shift.Hours{From: minutes(v.At("from")), To: minutes(v.At("to")),
		StartUp: clock.FromHours(v.At("start_up").Hours()), CleanUp: clock.FromHours(v.At("clean_up").Hours())}
	for _, br := range v.Each("breaks") {
		h.Breaks = append(h.Breaks, shift.Break{From: minutes(br.At("from")), To: minutes(br.At("to"))})
	}
	var days shift.Weekdays
	for d := time.Sunday; d <= time.Saturday; d++ {
		if v.At("days").HasWeekday(d) {
			days |= shift.DaysOf(d)
		}
	}
	if h.From == h.To%clock.Day && days == shift.DaysOf(0, 1, 2, 3, 4, 5, 6) && len(h.Breaks) == 0 && h.StartUp+h.CleanUp == 0 && b.noExceptions() {
		return shift.Always()
	}
	p := shift.Pattern{Shifts: []shift.Shift{{Name: name, Days: days, Hours: h}}, Exceptions: b.exceptions}
	cal, err := shift.Compile(p, b.plan.Start, b.horizon)
	if err != nil {
		b.complain(v, "shift "+quoted(name)+": "+err.Error(), "", "")
		return shift.Always()
	}
	return cal
}

func (b *builder) noExceptions() bool {
	return len(b.exceptions.Holidays)+len(b.exceptions.Shutdowns)+len(b.exceptions.Extra) == 0
}

// people makes the crafts and their crews.
func (b *builder) people() {
	b.crafts = map[string]int16{}
	for name := range b.v.Each("crafts") {
		b.crafts[name] = int16(len(b.craftNames))
		b.craftNames = append(b.craftNames, name)
	}
	for name, v := range b.v.Each("crafts") {
		c := sim.Craft{Name: name, Late: hoursOrNever(v.At("late")), Overtime: hoursOrNever(v.At("overtime")), HotSlow: v.At("slower_when_hot").Share(), Area: b.areaOf(v.At("area"), 0)}
		absence := v.At("absence").Share()
		hot := absence
		if v.At("absence_hot").Given() {
			hot = v.At("absence_hot").Share()
		}
		for s, n := range v.Each("people") {
			cal := b.shifts[s]
			if cal == nil {
				b.unknownName(n, "shift", s, b.shiftNames)
				continue
			}
			c.Crews = append(c.Crews, sim.Crew{Hours: cal, People: n.Count(), Absence: absence, AbsenceHot: hot})
		}
		for _, h := range v.Each("helps") {
			if i := b.crafts[h.Text()]; i != b.crafts[name] && !slices.Contains(c.Helps, i) {
				c.Helps = append(c.Helps, i)
			}
		}
		b.plan.Crafts = append(b.plan.Crafts, c)
	}
}

// hoursOrNever takes very long times as "without end".
func hoursOrNever(v *Value) clock.Time {
	if h := v.Hours(); h < 1e6 && !math.IsInf(h, 0) {
		return clock.FromHours(h)
	}
	return clock.Never
}
