package board

import (
	"fmt"
	"strings"

	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
)

// Row is one line of a board in full, for files. Texts that do not belong to its
// kind are empty. Dates are 2027-05-11, moments 2027-05-11 06:30.
type Row struct {
	Day    int          `json:"-"`
	Thing  *ahead.Thing `json:"-"` // nil for boats, people and windows that run already
	From   clock.Time   `json:"-"` // middle of the time it may begin, clock.Never without one
	Date   string       `json:"date"`
	Kind   string       `json:"kind"` // pull, strip, spray, gel window, boat, people
	Mold   string       `json:"mold,omitempty"`
	Part   string       `json:"part,omitempty"`
	Order  string       `json:"order,omitempty"`
	Chance float64      `json:"chance"`
	Early  string       `json:"early,omitempty"`
	Likely string       `json:"likely,omitempty"`
	Late   string       `json:"late,omitempty"`
	By     string       `json:"nine_in_10_by,omitempty"`
	Craft  string       `json:"craft,omitempty"`
	People int          `json:"people,omitempty"`
	Hours  float64      `json:"hours,omitempty"`
	Turns  int          `json:"turns,omitempty"`
	Apart  int          `json:"days_either_way,omitempty"`
	Least  string       `json:"costs_least,omitempty"`
	Booth  string       `json:"booth,omitempty"`
	InList int          `json:"in_list,omitempty"`
	Color  string       `json:"color,omitempty"`
	Band   string       `json:"band,omitempty"`
	Length clock.Time   `json:"-"` // from begin to end, in the middle
}

// Rows are all lines of a day.
func (v *View) Rows(day int) []Row {
	d := &v.Days[day]
	var out []Row
	for _, x := range d.Pulls {
		out = append(out, v.pullRow(x))
	}
	for i := range d.Strips {
		out = append(out, v.stripRow(&d.Strips[i]))
	}
	for i := range d.Booths {
		out = append(out, v.sprayRows(&d.Booths[i])...)
	}
	for i := range d.Risks {
		out = append(out, v.riskRow(&d.Risks[i]))
	}
	for i := range d.Leaves {
		out = append(out, v.leaveRow(&d.Leaves[i]))
	}
	for _, s := range d.Short {
		out = append(out, Row{Kind: "people", From: clock.Never, Craft: v.Craft(s.Craft), People: s.Out, Hours: round1(s.Waits), Chance: 1})
	}
	for i := range out {
		out[i].Day, out[i].Date = day, v.Date(d.From).String()
	}
	return out
}

func round1(t clock.Time) float64 { return float64(int(10*t.Hours()+0.5)) / 10 }

// row has what every thing at a mold has.
func (v *View) row(kind string, x *ahead.Thing, at func(*ahead.Task) clock.Time) Row {
	r := Row{Kind: kind, Thing: x, Mold: v.Molds[x.Mold], Part: v.Part(x), Chance: x.Chance, By: v.stampDay(x.When(ahead.EndedAt).Surely(0.9))}
	craft, _ := x.Most(func(t *ahead.Task) int { return int(t.Craft) })
	if craft >= 0 {
		r.Craft = v.Craft(int16(craft))
	}
	r.People, _ = x.Most(func(t *ahead.Task) int { return int(t.People) })
	g := x.When(at).Given()
	r.From = g.Surely(0.5)
	r.Early, r.Likely, r.Late = v.Stamp(g.Surely(0.1)), v.Stamp(r.From), v.Stamp(g.Surely(0.9))
	r.Length = x.Mean(func(t *ahead.Task) clock.Time { return t.Worked })
	if order := v.Board.Order(x); order >= 0 {
		r.Order = v.Orders[order]
	}
	return r
}

func (v *View) pullRow(x *ahead.Thing) Row { return v.row("pull", x, ahead.ReadyAt) }

func (v *View) stripRow(s *ahead.Strip) Row {
	r := v.row("strip", s.Thing, ahead.BegunAt)
	r.Part, r.Order = v.plan().Models[v.plan().Parts[s.Part].Model].Name+" "+v.plan().Parts[s.Part].Name, ""
	r.Turns, r.Apart, r.Hours = s.Turns, s.Apart, round1(StripHours(s))
	if !s.Under {
		r.Least = v.stampDay(v.Days[s.Slot].From)
	}
	return r
}

func (v *View) sprayRows(b *ahead.BoothDay) []Row {
	var out []Row
	for k, unit := range b.Units {
		for i := range b.Lists[k] {
			s := &b.Lists[k][i]
			r := v.row("spray", s.Thing, ahead.BegunAt)
			r.Booth, r.InList, r.Color = v.Booth(b.Place, unit), i+1, v.color(s.Color)
			if s.Accent != sim.None {
				r.Band = v.color(s.Accent)
			}
			out = append(out, r)
		}
	}
	return out
}

func (v *View) riskRow(x *ahead.Risk) Row {
	r := Row{Kind: "gel window", Thing: x.Spray, From: x.Until, Mold: v.Molds[x.Mold], Likely: v.Stamp(x.Until), Chance: x.Chance}
	if x.Spray != nil {
		r.Part = v.Part(x.Spray)
	}
	return r
}

func (v *View) leaveRow(l *ahead.Leaving) Row {
	g := l.At.Given()
	return Row{Kind: "boat", From: g.Surely(0.5), Order: v.OrderName(l.Order), Chance: l.Chance,
		Early: v.Stamp(g.Surely(0.1)), Likely: v.Stamp(g.Surely(0.5)), Late: v.Stamp(g.Surely(0.9)), By: v.stampDay(l.At.Surely(0.9))}
}

// Stamp is a moment as 2026-11-25 14:30, "" for never.
func (v *View) Stamp(t clock.Time) string {
	if t == clock.Never {
		return ""
	}
	minute := int(t % clock.Day / clock.Minute)
	return fmt.Sprintf("%s %02d:%02d", v.Date(t), minute/60, minute%60)
}

// stampDay is a day as 2026-11-25, "" for never.
func (v *View) stampDay(t clock.Time) string {
	day, _, _ := strings.Cut(v.Stamp(t), " ")
	return day
}
