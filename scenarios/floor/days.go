package floor

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// past takes out people, downtime and days that are over by the morning.
func (r *reader) past() {
	morning := r.floor.Morning
	over := func(l *line, to Moment) {
		if end := to; !end.IsZero() && (end.Date.Before(morning.Date) || end.Timed && end.Compare(morning) <= 0) {
			l.retire(Skipped, "over by the morning")
		}
	}
	for i := range r.out {
		over(r.out[i].l, r.out[i].it.To)
	}
	for i := range r.down {
		over(r.down[i].l, r.down[i].it.To)
	}
	for i := range r.calendar {
		over(r.calendar[i].l, r.calendar[i].it.To)
	}
	r.out, r.down, r.calendar = kept(r.out), kept(r.down), kept(r.calendar)
	for i := range r.calendar {
		r.noChange(&r.calendar[i])
	}
}

// noChange tells of a day that is as the calendar has it anyway.
func (r *reader) noChange(e *entry[Change]) {
	for d := e.it.From.Date; ; d = d.AddDays(1) {
		if worked, known := r.worked(d); !known || worked != e.it.Extra {
			return
		}
		if d == e.it.To.Date {
			break
		}
	}
	word := "not worked"
	if e.it.Extra {
		word = "worked"
	}
	e.l.note(Told, "change", "no change", fmt.Sprintf("%s is %s by the scenario's calendar already", e.it.From, word), "")
}

// worked tells whether anybody works on a day; known is false for days that the
// plan does not lay out.
func (r *reader) worked(d shift.Date) (worked, known bool) {
	from := shift.Midnight(r.names.plan.Start, d)
	if from < 0 || from+clock.Day > r.names.plan.Length {
		return false, false
	}
	for i := range r.names.plan.Crafts {
		for _, c := range r.names.plan.Crafts[i].Crews {
			if c.Hours.Worked(from, from+clock.Day) > 0 {
				return true, true
			}
		}
	}
	return false, true
}

// tooMany holds the people who are out against those there are.
func (r *reader) tooMany() {
	for i := range r.out {
		e := &r.out[i]
		craft := &r.names.plan.Crafts[e.it.Craft]
		there := 0
		for _, c := range craft.Crews {
			there += c.People
		}
		if e.it.Number > there {
			e.l.doubtful("number", "more out than there are", fmt.Sprintf("%d of %s are out, and the scenario has %d", e.it.Number, craft.Name, there), "", "all of them are taken as out")
			e.it.Number = there
		}
	}
	r.out = slices.DeleteFunc(r.out, func(e entry[Absent]) bool { return e.it.Number == 0 })
}

// manyRows is how many older rows make a list of molds a log.
const manyRows = 6

// weeks tells of weeks that a mold log leaves out.
func (r *reader) weeks() {
	if len(r.history) < manyRows {
		return
	}
	all := slices.Clone(r.history)
	for _, e := range r.molds {
		all = append(all, stamp{e.it.When, e.l.place(e.l.t.column("since"))})
	}
	all = slices.DeleteFunc(all, func(s stamp) bool { return s.at.IsZero() })
	slices.SortStableFunc(all, func(a, b stamp) int { return a.at.Compare(b.at) })
	var missing []string
	var after Place
	for i := 1; i < len(all); i++ {
		for monday := all[i-1].at.Date.Monday().AddDays(7); monday.Before(all[i].at.Date.Monday()); monday = monday.AddDays(7) {
			if !r.closed(monday) {
				missing = append(missing, monday.String())
				after = all[i-1].place
			}
		}
		if len(missing) > 60 {
			break
		}
	}
	if len(missing) > 0 {
		after.Column = 0
		r.say(Notice{Place: after, Level: Gap, Rule: "weeks missing", Message: fmt.Sprintf("the mold log says nothing in %s (%s)", plural(len(missing), "week"), weekList(missing)),
			Effect: "counters may be short by the turns of those weeks: strips come later on the board than on the floor"})
	}
}

// closed tells whether nobody works from Monday to Sunday.
func (r *reader) closed(monday shift.Date) bool {
	for d := range 7 {
		if worked, known := r.worked(monday.AddDays(d)); worked || !known {
			return false
		}
	}
	return true
}

func weekList(mondays []string) string {
	if len(mondays) > 6 {
		return fmt.Sprintf("from Monday %s on, and %d more", strings.Join(mondays[:5], ", "), len(mondays)-5)
	}
	return "from Monday " + strings.Join(mondays, ", ")
}

func plural(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %ss", n, one)
}
