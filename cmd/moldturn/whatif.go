package main

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/param/guess"
	"moldturn/sim/shift"
)

// whatIf reads what is asked with --if for a shop.
type whatIf struct {
	plan    *sim.Plan
	morning shift.Date
	last    shift.Date // of the board
	molds   []string   // what the shop calls the molds of the plan
}

// ifForms are what --if takes.
const ifForms = `"booth 2 down mon..fri", "sprayer out tue", "2 lamination out 2027-05-13", "mold RH-2 stuck", "extra saturday", "extra sat lamination"`

// read turns every text into a change; the error lists all that is wrong.
func (q *whatIf) read(texts []string) ([]ahead.Change, error) {
	var out []ahead.Change
	var faults []string
	for _, text := range texts {
		c, fault := q.one(text)
		if fault != "" {
			faults = append(faults, fmt.Sprintf("--if %q: %s", text, fault))
			continue
		}
		out = append(out, c)
	}
	if len(faults) > 0 {
		return nil, failed("", "%s", strings.Join(faults, "\n"))
	}
	return out, nil
}

// one reads one text; fault says what is wrong.
func (q *whatIf) one(text string) (c ahead.Change, fault string) {
	words := strings.Fields(strings.ToLower(text))
	raw := strings.Fields(text)
	for i, w := range words {
		switch {
		case w == "down" && i > 0:
			return q.down(raw[:i], words[i+1:])
		case w == "out" && i > 0:
			return q.out(words[:i], words[i+1:])
		case w == "stuck" && i > 1 && words[0] == "mold":
			return q.stuck(strings.Join(raw[1:i], " "), words[i+1:])
		case w == "extra" && i == 0:
			return q.extra(words[1:])
		}
	}
	fault = "it says neither down, out, stuck nor extra\n  allowed: " + ifForms
	for _, w := range words {
		if near := guess.Near(w, []string{"down", "out", "stuck", "extra"}); near != "" {
			return c, fault + fmt.Sprintf("\n  hint: did you mean %q?", near)
		}
	}
	return c, fault
}

// days reads "mon..fri", "tue", "today" or a date, or two with .. between; of
// nothing it makes the days given.
func (q *whatIf) days(words []string, none [2]shift.Date) (from, to shift.Date, fault string) {
	if len(words) == 0 {
		return none[0], none[1], ""
	}
	text := strings.Join(words, "")
	a, b, two := strings.Cut(text, "..")
	if !two {
		b = a
	}
	to, ok := q.day(b)
	if !ok {
		return from, to, q.noDay(b)
	}
	if from, ok = q.day(a); !ok {
		return from, to, q.noDay(a)
	}
	if _, err := shift.ParseDate(a); err != nil && to.Before(from) {
		from = from.AddDays(-7) // mon..fri on a Tuesday
	}
	switch {
	case to.Before(from):
		return from, to, fmt.Sprintf("%s ends before it begins", text)
	case q.last.Before(from) || to.Before(q.morning):
		return from, to, fmt.Sprintf("%s is not within the board, allowed: %s to %s", text, q.morning, q.last)
	}
	return from, to, ""
}

var weekdays = []string{"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"}

// day reads a day: the first of its name from the morning on, or a date.
func (q *whatIf) day(text string) (shift.Date, bool) {
	if d, err := shift.ParseDate(text); err == nil {
		return d, true
	}
	switch text {
	case "today":
		return q.morning, true
	case "tomorrow":
		return q.morning.AddDays(1), true
	}
	for i, name := range weekdays {
		if len(text) >= 3 && (strings.HasPrefix(name, text) || text == name+"s") {
			return q.morning.AddDays((i - q.morning.DaysSince(q.morning.Monday()) + 7) % 7), true
		}
	}
	return shift.Date{}, false
}

func (q *whatIf) noDay(text string) string {
	fault := fmt.Sprintf("there is no day %q\n  allowed: today, tomorrow, mon to sun, a date such as %s, or two with .. between", text, q.morning)
	if near := guess.Near(text, append(weekdays, "today", "tomorrow")); near != "" {
		fault += fmt.Sprintf("\n  hint: did you mean %q?", near)
	}
	return fault
}

func (q *whatIf) today() [2]shift.Date { return [2]shift.Date{q.morning, q.morning} }

// down reads "booth 2 down mon..fri": the number may be left out.
func (q *whatIf) down(name, days []string) (c ahead.Change, fault string) {
	unit := int16(sim.None)
	number := 0
	if n, err := strconv.Atoi(name[len(name)-1]); err == nil && len(name) > 1 {
		number, name = n, name[:len(name)-1]
	}
	var places []string
	for i := range q.plan.Places {
		if q.plan.Places[i].Count > 0 {
			places = append(places, q.plan.Places[i].Name)
		}
	}
	place := int16(sim.None)
	for i := range q.plan.Places {
		if guess.Fold(q.plan.Places[i].Name) == guess.Fold(strings.Join(name, " ")) && q.plan.Places[i].Count > 0 {
			place = int16(i)
		}
	}
	if place == sim.None {
		return c, unknown("place", strings.Join(name, " "), places)
	}
	if n := q.plan.Places[place].Count; number != 0 {
		if number < 1 || number > n {
			return c, fmt.Sprintf("there is no %s %d, allowed: 1 to %d", q.plan.Places[place].Name, number, n)
		}
		unit = int16(number - 1)
	}
	from, to, fault := q.days(days, q.today())
	if fault != "" {
		return c, fault
	}
	words := q.plan.Places[place].Name
	if number > 0 {
		words += fmt.Sprint(" ", number)
	}
	start := q.plan.Start
	row := sim.StartDown{Place: place, Unit: unit, From: shift.Midnight(start, from), To: shift.Midnight(start, to) + clock.Day}
	return ahead.Change{Words: words + " down " + q.span(from, to), Down: []sim.StartDown{row}}, ""
}

func unknown(what, found string, names []string) string {
	fault := fmt.Sprintf("there is no %s %q\n  allowed: %s", what, found, strings.Join(names, ", "))
	if near := guess.Near(found, names); near != "" {
		fault += fmt.Sprintf("\n  hint: did you mean %q?", near)
	}
	return fault
}

// trades are what people of a craft are called, by the craft's usual name.
var trades = map[string][]string{"gel": {"sprayer", "gunner", "gel coater"}, "lamination": {"laminator"}, "mold": {"mold tech", "waxer"},
	"pull": {"puller", "trimmer"}, "finish": {"finisher", "buffer"}, "assembly": {"assembler", "rigger"}}

// craft finds a craft by its name or by what its people are called.
func (q *whatIf) craft(text string) (int16, string) {
	var names []string
	for i := range q.plan.Crafts {
		name := q.plan.Crafts[i].Name
		for _, alias := range append([]string{name}, trades[name]...) {
			if f := guess.Fold(text); f == guess.Fold(alias) || f == guess.Fold(alias)+"s" {
				return int16(i), ""
			}
			names = append(names, alias)
		}
	}
	return sim.None, unknown("craft", text, names)
}

// out reads "sprayer out tue" and "2 laminators out".
func (q *whatIf) out(who, days []string) (c ahead.Change, fault string) {
	people := 1
	if n, err := strconv.Atoi(who[0]); err == nil && len(who) > 1 {
		if n < 1 {
			return c, fmt.Sprintf("%d people, allowed: 1 or more", n)
		}
		people, who = n, who[1:]
	}
	craft, fault := q.craft(strings.Join(who, " "))
	if fault != "" {
		return c, fault
	}
	if n := q.crew(craft); people > n {
		return c, fmt.Sprintf("%d of %s, and the crew is %d, allowed: 1 to %d", people, q.plan.Crafts[craft].Name, n, n)
	}
	from, to, fault := q.days(days, q.today())
	if fault != "" {
		return c, fault
	}
	row := sim.StartOut{Craft: craft, People: people, From: from.DaysSince(q.plan.Start), To: to.DaysSince(q.plan.Start)}
	return ahead.Change{Words: fmt.Sprintf("%d of %s out %s", people, q.plan.Crafts[craft].Name, q.span(from, to)), Out: []sim.StartOut{row}}, ""
}

// crew is how many people a craft has on all shifts.
func (q *whatIf) crew(craft int16) int {
	n := 0
	for _, c := range q.plan.Crafts[craft].Crews {
		n += c.People
	}
	return n
}

// stuck reads "mold RH-2 stuck"; without days it is for a week.
func (q *whatIf) stuck(name string, days []string) (c ahead.Change, fault string) {
	mold := -1
	for i, m := range q.molds {
		if guess.Fold(m) == guess.Fold(name) || guess.Fold(q.plan.Molds[i].Name) == guess.Fold(name) {
			mold = i
		}
	}
	if mold < 0 {
		return c, unknown("mold", name, q.molds)
	}
	from, to, fault := q.days(days, [2]shift.Date{q.morning, q.morning.AddDays(6)})
	if fault != "" {
		return c, fault
	}
	if q.morning.Before(from) {
		return c, fmt.Sprintf("a mold is stuck from this morning on, found %s, allowed: %s or earlier", from, q.morning)
	}
	return ahead.Change{Words: fmt.Sprintf("mold %s stuck until %s, the part in it lost", q.molds[mold], to),
		Stuck: []ahead.Stuck{{Mold: int32(mold), Until: shift.Midnight(q.plan.Start, to) + clock.Day}}}, ""
}

// extra reads "extra saturday" and "extra sat lamination".
func (q *whatIf) extra(words []string) (c ahead.Change, fault string) {
	if len(words) == 0 {
		return c, "which day?\n  allowed: " + ifForms
	}
	from, to, fault := q.days(words[:1], q.today())
	if fault != "" {
		return c, fault
	}
	craft, who := int16(sim.None), "all"
	if len(words) > 1 {
		if craft, fault = q.craft(strings.Join(words[1:], " ")); fault != "" {
			return c, fault
		}
		who = q.plan.Crafts[craft].Name
	}
	if q.worked(from, craft) {
		return c, fmt.Sprintf("%s is a working day as it is, allowed: a day off", from)
	}
	row := sim.StartDay{From: from.DaysSince(q.plan.Start), To: to.DaysSince(q.plan.Start), Extra: true, Craft: craft}
	return ahead.Change{Words: fmt.Sprintf("extra day %s for %s", span(from, to), who), Days: []sim.StartDay{row}}, ""
}

// worked says whether a craft, or every craft, works on a day by the calendar.
func (q *whatIf) worked(day shift.Date, craft int16) bool {
	from := shift.Midnight(q.plan.Start, day)
	for c := range q.plan.Crafts {
		if craft != sim.None && int(craft) != c {
			continue
		}
		hours := clock.Time(0)
		for i := range q.plan.Crafts[c].Crews {
			hours += q.plan.Crafts[c].Crews[i].Hours.Worked(from, from+clock.Day)
		}
		if hours == 0 {
			return false
		}
	}
	return true
}

// span names the days that count: those before the morning are over.
func (q *whatIf) span(from, to shift.Date) string {
	if from.Before(q.morning) {
		over := "is"
		if from != q.morning.AddDays(-1) {
			over = "are"
		}
		return fmt.Sprintf("%s (%s %s over)", span(q.morning, to), span(from, q.morning.AddDays(-1)), over)
	}
	return span(from, to)
}

func span(from, to shift.Date) string {
	if from == to {
		return from.String()
	}
	return from.String() + " to " + to.String()
}
