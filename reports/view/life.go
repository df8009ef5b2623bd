package view

import (
	"cmp"
	"fmt"
	"slices"

	"moldturn/reports/cells"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// Life is the story of one order or mold as sentences and tables.
type Life struct {
	Title  string
	Lines  []string
	Sums   cells.Table   // where the time went; every column adds up to its last row
	Tables []cells.Table // step by step, by part
	Notes  []string
}

// lifeNotes say how to read the tables.
var lifeNotes = []string{
	"Hours in the first table are rounded so that each column adds up.",
	"Held by: who had the people, the place or the molds during that wait, filled the floor, or was the mate that is missing or behind, longest first, with the hours of it and what it did then. Weather, shift times and a missing order have nobody to name.",
	"One run of the plant is one way things may go; another replication has other luck.",
}

// LifeOf makes the page of a story.
func LifeOf(s *study.Story) Life {
	l := Life{Title: lifeTitle(s), Lines: lifeLines(s), Sums: lifeSums(s), Notes: lifeNotes}
	for i := range s.Lives {
		own := s.Lives[i].Passages
		title := "Step by step"
		if s.Fate != nil {
			title = s.Plan.Parts[s.Lives[i].Part].Name
			own = slices.DeleteFunc(slices.Clone(own), isBoat)
		}
		l.Tables = append(l.Tables, lifeTable(s, title, own))
	}
	if s.Fate != nil && len(s.Lives) > 0 {
		own := slices.DeleteFunc(slices.Clone(s.Lives[0].Passages), func(p record.Passage) bool { return !isBoat(p) })
		if len(own) > 0 {
			l.Tables = append(l.Tables, lifeTable(s, "The boat", own))
		}
	}
	return l
}

func isBoat(p record.Passage) bool { return p.Job >= 0 && p.Part < 0 }

func lifeTitle(s *study.Story) string {
	if s.Fate == nil {
		return fmt.Sprintf("Mold %d: %s", s.Mold+1, s.Plan.Molds[s.Mold].Name)
	}
	return fmt.Sprintf("Order %d: %s", s.Fate.Order+1, s.Plan.Models[s.Fate.Model].Name)
}

func lifeLines(s *study.Story) []string {
	span := fmt.Sprintf("%s h from %s to %s", Hours(s.To-s.From), moment(s.Plan, s.From), moment(s.Plan, s.To))
	f := s.Fate
	if f == nil {
		return []string{span + "."}
	}
	var lines []string
	switch {
	case f.Shipped:
		line := "Shipped. Lead time " + span + "."
		if f.Last.Due < clock.Never {
			line += fmt.Sprintf(" Due %s: ", moment(s.Plan, f.Last.Due))
			if f.Ended > f.Last.Due {
				line += Hours(f.Ended-f.Last.Due) + " h late."
			} else {
				line += "on time."
			}
		}
		lines = append(lines, line)
	case f.Cancelled:
		lines = append(lines, "Given up before it was begun, "+span+".")
	case f.Began == clock.Never:
		lines = append(lines, "Not begun by the end of the run, "+span+".")
	default:
		lines = append(lines, "Not shipped by the end of the run, "+span+".")
	}
	if p := lastPart(s); p >= 0 {
		lines = append(lines, fmt.Sprintf("The last of its parts to be ready was %s.", s.Plan.Parts[p].Name))
	}
	return lines
}

// lastPart is the part type the boat waited for, -1 for a boat of one part or
// one that was not put together.
func lastPart(s *study.Story) int16 {
	if len(s.Lives) < 2 {
		return -1
	}
	last, at := int16(-1), clock.Time(-1)
	for i := range s.Lives {
		own := s.Lives[i].Passages
		if !slices.ContainsFunc(own, isBoat) {
			return -1
		}
		for k := range own {
			if own[k].Job >= 0 && !isBoat(own[k]) && own[k].Step >= 0 && own[k].End > at {
				last, at = s.Lives[i].Part, own[k].End
			}
		}
	}
	return last
}

// Spent is how much of a life went into one thing.
type Spent struct {
	Work  string // "labor", "cure and other time", "out of rotation"; "" for a wait
	Cause record.Cause
	For   clock.Time
}

// spentOn says what the time at a step counts as.
func spentOn(p *record.Visit) string {
	switch {
	case p.Doing == record.OutOfUse:
		return "out of rotation"
	case p.Craft >= 0:
		return "labor"
	}
	return "cure and other time"
}

// SpentIn sums a life by what it was spent on: work first, then waits by
// reason. The sums add up to the life.
func SpentIn(l *record.Life) []Spent {
	var out []Spent
	add := func(work string, c record.Cause, d clock.Time) {
		for i := range out {
			if out[i].Work == work && out[i].Cause == c {
				out[i].For += d
				return
			}
		}
		out = append(out, Spent{work, c, d})
	}
	for i := range l.Passages {
		p := &l.Passages[i]
		if p.Worked > 0 {
			add(spentOn(&p.Visit), record.Cause{Of: -1}, p.Worked)
		}
		for _, w := range p.Waits {
			add("", w.Cause, w.For)
		}
	}
	slices.SortStableFunc(out, func(a, b Spent) int {
		return cmp.Or(cmp.Compare(b.Work, a.Work), cmp.Compare(a.Cause.Reason, b.Cause.Reason), cmp.Compare(a.Cause.Of, b.Cause.Of))
	})
	return out
}

func lifeSums(s *study.Story) cells.Table {
	t := cells.Table{Title: "Where the hours went", Columns: []cells.Column{{Head: "worked at, or waited for"}}}
	var rows []Spent
	all := make([][]Spent, len(s.Lives))
	for i := range s.Lives {
		all[i] = SpentIn(&s.Lives[i])
		head := "hours"
		if s.Fate != nil {
			head = s.Plan.Parts[s.Lives[i].Part].Name
		}
		t.Columns = append(t.Columns, cells.Column{Head: head, Align: cells.Right})
		for _, x := range all[i] {
			if !slices.ContainsFunc(rows, func(y Spent) bool { return y.Work == x.Work && y.Cause == x.Cause }) {
				rows = append(rows, x)
			}
		}
	}
	slices.SortStableFunc(rows, func(a, b Spent) int {
		return cmp.Or(cmp.Compare(b.Work, a.Work), cmp.Compare(a.Cause.Reason, b.Cause.Reason), cmp.Compare(a.Cause.Of, b.Cause.Of))
	})
	texts := make([][]string, len(rows)+1)
	for i, x := range rows {
		texts[i] = []string{x.Work}
		if x.Work == "" {
			texts[i][0] = CauseName(s.Plan, x.Cause)
		}
	}
	texts[len(rows)] = []string{"together"}
	for i := range all {
		times := make([]clock.Time, len(rows))
		for k, x := range rows {
			for _, y := range all[i] {
				if x.Work == y.Work && x.Cause == y.Cause {
					times[k] = y.For
				}
			}
		}
		sum := int64(0)
		for k, n := range adds(times, 6*clock.Minute) {
			sum += n
			texts[k] = append(texts[k], tenths(n))
		}
		texts[len(rows)] = append(texts[len(rows)], tenths(sum))
	}
	for i := range texts {
		row := cells.Texts(texts[i]...)
		row.Strong = i == len(rows)
		t.Rows = append(t.Rows, row)
	}
	return t
}

// lifeTable has a line for each wait, with who held what it waited for, and one
// for the work of each step.
func lifeTable(s *study.Story, title string, own []record.Passage) cells.Table {
	t := cells.Table{Title: title, Columns: []cells.Column{{Head: "from"}, {Head: "step"}, {Head: "hours", Align: cells.Right}, {Head: "did, or waited for"}, {Head: "held by"}}}
	for i := range own {
		p := &own[i]
		from, step := shortMoment(s.Plan, p.Asked), StepName(s.Plan, p.Route, p.Step)
		if step == "" && p.Job >= 0 {
			step = "stored"
		}
		line := func(d clock.Time, what, by string) {
			t.Rows = append(t.Rows, cells.Texts(from, step, Hours(d), what, by))
			from, step = "", ""
		}
		for k, w := range p.Waits {
			line(w.For, CauseName(s.Plan, w.Cause), heldBy(s, p, w.Cause, p.Held[k]))
		}
		if p.Worked > 0 {
			line(p.Worked, workedAs(s.Plan, &p.Visit), "")
		}
	}
	return t
}
