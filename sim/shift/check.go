package shift

import (
	"fmt"
	"strings"

	"moldturn/sim/clock"
)

// Problem is one complaint about a Pattern. Field is the path of the input from
// the pattern, "shifts[1].breaks[0].from"; whoever read the file knows its line.
type Problem struct {
	Field   string
	Found   string
	Allowed string
}

// Error writes the problem in one line.
func (p Problem) Error() string {
	return fmt.Sprintf("%s: found %s (allowed: %s)", p.Field, p.Found, p.Allowed)
}

// Problems are complaints in the order of the inputs; as an error, one a line.
type Problems []Problem

// Error writes the problems one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

func (ps *Problems) add(field, found, allowed string) {
	*ps = append(*ps, Problem{field, found, allowed})
}

// Check gives all that is wrong with p; nil if nothing is.
func (p Pattern) Check() Problems {
	var ps Problems
	for i, s := range p.Shifts {
		field := fmt.Sprintf("shifts[%d]", i)
		if s.Days == 0 || s.Days&^EveryDay != 0 {
			ps.add(field+".days", s.Days.String(), "at least one day of the week")
		}
		s.Hours.check(field, &ps)
	}
	for i, h := range p.Exceptions.Holidays {
		checkDate(h, fmt.Sprintf("holidays[%d]", i), &ps)
	}
	for i, s := range p.Exceptions.Shutdowns {
		s.check(fmt.Sprintf("shutdowns[%d]", i), &ps)
	}
	for i, x := range p.Exceptions.Extra {
		field := fmt.Sprintf("extra[%d]", i)
		checkDate(x.Date, field+".date", &ps)
		x.Hours.check(field, &ps)
	}
	return ps
}

func checkDate(d Date, field string, ps *Problems) {
	if DateOf(d.Year, d.Month, d.Day) != d {
		ps.add(field, d.String(), "a day of the calendar")
	}
}

func (s Shutdown) check(field string, ps *Problems) {
	checkDate(s.From, field+".from", ps)
	checkDate(s.To, field+".to", ps)
	if !s.Yearly && s.To.Before(s.From) {
		ps.add(field+".to", s.To.String(), s.From.String()+" or later")
	}
}

func (h Hours) check(field string, ps *Problems) {
	if h.From < 0 || h.From >= clock.Day {
		ps.add(field+".from", h.From.String(), "00:00 to before 24:00")
		return
	}
	if h.To < 0 || h.To > clock.Day {
		ps.add(field+".to", h.To.String(), "00:00 to 24:00")
		return
	}
	if h.StartUp < 0 {
		ps.add(field+".start_up", h.StartUp.String(), "0 or more")
	}
	if h.CleanUp < 0 {
		ps.add(field+".clean_up", h.CleanUp.String(), "0 or more")
	}
	last := h.From
	for i, b := range h.Breaks {
		last = h.checkBreak(b, last, fmt.Sprintf("%s.breaks[%d]", field, i), ps)
	}
	if len(h.pieces()) == 0 {
		ps.add(field, "no time left to work", "start-up, breaks and clean-up shorter than the shift")
	}
}

// checkBreak gives the end of b, from which the next break may start.
func (h Hours) checkBreak(b Break, last clock.Time, field string, ps *Problems) clock.Time {
	if b.From < 0 || b.From > clock.Day || b.To < 0 || b.To > clock.Day {
		ps.add(field, clockTime(b.From)+"–"+clockTime(b.To), "clock times 00:00 to 24:00")
		return last
	}
	from, to := h.place(b)
	if from < last || to <= from || to > h.From+h.Length() {
		ps.add(field, clockTime(b.From)+"–"+clockTime(b.To), fmt.Sprintf(
			"inside %s–%s, in order, not overlapping", clockTime(h.From), clockTime(h.To)))
		return last
	}
	return to
}

// clockTime writes a time of day, "06:30".
func clockTime(t clock.Time) string {
	return fmt.Sprintf("%02d:%02d", t/clock.Hour, t%clock.Hour/clock.Minute)
}
