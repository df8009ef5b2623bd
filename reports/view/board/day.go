package board

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
)

// Tables are those of a day, without the empty ones.
func (v *View) Tables(day int) []cells.Table {
	d := &v.Days[day]
	var out []cells.Table
	for _, t := range append([]cells.Table{v.pulls(d), v.strips(d)}, append(v.booths(d), v.risks(d), v.leaves(d), v.crafts(d))...) {
		if len(t.Rows) > 0 {
			out = append(out, t)
		}
	}
	return out
}

func columns(heads ...string) []cells.Column {
	var out []cells.Column
	for _, h := range heads {
		out = append(out, cells.Column{Head: h})
	}
	return out
}

func (v *View) pulls(d *ahead.Day) cells.Table {
	t := cells.Table{Title: "Pull", Columns: columns("mold", "part", "ready (8 in 10)", "crew", "chance", "9 in 10 by")}
	for _, x := range d.Pulls {
		t.Rows = append(t.Rows, cells.Texts(v.Molds[x.Mold], v.Part(x), v.Ready(x.When(ahead.ReadyAt), d.From), v.Crew(x), Chance(x.Chance), v.By(x.When(ahead.EndedAt))))
	}
	return t
}

func (v *View) strips(d *ahead.Day) cells.Table {
	t := cells.Table{Title: "Strip", Columns: columns("mold", "turns", "likely day", "chance", "hours", "costs least")}
	for i := range d.Strips {
		s := &d.Strips[i]
		t.Rows = append(t.Rows, cells.Texts(v.Molds[s.Mold], fmt.Sprint(s.Turns), v.Likely(s), Chance(s.Chance), hours(StripHours(s)), v.Slot(s)))
	}
	return t
}

// StripHours is the labor of a strip, on average.
func StripHours(s *ahead.Strip) clock.Time {
	return s.Mean(func(t *ahead.Task) clock.Time { return t.Worked * clock.Time(max(t.People, 1)) })
}

// Likely is the day of a strip and how far it may move, 8 times in 10.
func (v *View) Likely(s *ahead.Strip) string {
	text := fmt.Sprintf("%s ± %d d", v.Day(v.Days[s.Day].From), s.Apart)
	if s.Later {
		text += " or later"
	}
	return text
}

// Slot is the day that costs least, with the time that is free on it.
func (v *View) Slot(s *ahead.Strip) string {
	if s.Under {
		return "under way"
	}
	if s.Slot == s.Day {
		return fmt.Sprintf("that day, %s free", hours(s.FreeDay))
	}
	return fmt.Sprintf("%s, %s free (not %s)", v.Day(v.Days[s.Slot].From), hours(s.FreeDay), hours(s.FreeNow))
}

// booths are a table for each booth.
func (v *View) booths(d *ahead.Day) []cells.Table {
	var out []cells.Table
	for i := range d.Booths {
		b := &d.Booths[i]
		for k, unit := range b.Units {
			t := cells.Table{Title: "Spray, " + v.Booth(b.Place, unit), Columns: columns("color", "mold", "part", "likely", "chance")}
			for _, s := range b.Lists[k] {
				t.Rows = append(t.Rows, cells.Texts(v.Color(&s), v.Molds[s.Mold], v.Part(s.Thing), hour(s.OnDay(v.Setup.Morning())), Chance(s.Chance)))
			}
			if len(t.Rows) > 0 {
				out = append(out, t)
			}
		}
		if n := len(out); n > 0 {
			out[n-1].Notes = []string{v.Flushes(b)}
			out[n-1].Rows[0].Cells[0].Notes = []int{0}
		}
	}
	return out
}

// Color is what a part is sprayed in, its band first.
func (v *View) Color(s *ahead.Spray) string {
	if s.Accent == sim.None {
		return v.color(s.Color)
	}
	return "band " + v.color(s.Accent) + ", " + v.color(s.Color)
}

// Flushes compares the order of a list with that of the futures.
func (v *View) Flushes(b *ahead.BoothDay) string {
	var names []string
	for _, u := range b.Units {
		names = append(names, v.Booth(b.Place, u))
	}
	text := fmt.Sprintf("%s: %s, %.0f min, in this order of colors", strings.Join(names, " and "), count(b.Flushes, "flush", "flushes"), b.Flushing.Hours()*60)
	if b.AsRunTime > b.Flushing {
		return text + fmt.Sprintf("; %d, %.0f min, as the parts come.", b.AsRun, b.AsRunTime.Hours()*60)
	}
	return text + ", as many as they come."
}

func count(n int, one, more string) string {
	switch n {
	case 0:
		return "no " + more
	case 1:
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}

func (v *View) risks(d *ahead.Day) cells.Table {
	t := cells.Table{Title: "Gel window at risk", Columns: columns("mold", "skin coat by", "late in", "sprayed again in")}
	for _, r := range d.Risks {
		t.Rows = append(t.Rows, cells.Texts(v.Molds[r.Mold], v.Until(&r, d.From), Chance(r.Chance), Chance(r.Wash)))
	}
	return t
}

// Until is when a gel window ends.
func (v *View) Until(r *ahead.Risk, day clock.Time) string {
	if r.Until <= v.Setup.Start.At {
		return "it is over"
	}
	return v.at(r.Until, day)
}

func (v *View) leaves(d *ahead.Day) cells.Table {
	t := cells.Table{Title: "Boats that leave", Columns: columns("order", "due", "chance", "9 in 10 by")}
	for _, l := range d.Leaves {
		due := "no date"
		if at := v.Setup.Start.Orders[l.Order].Due; at != clock.Never {
			due = v.Day(at - 1)
		}
		t.Rows = append(t.Rows, cells.Texts(v.OrderName(l.Order), due, Chance(l.Chance), v.By(l.At)))
	}
	return t
}

func (v *View) crafts(d *ahead.Day) cells.Table {
	t := cells.Table{Title: "Who is short", Columns: []cells.Column{{Head: "craft"}, {Head: "at work", Align: cells.Right}, {Head: "out", Align: cells.Right}, {Head: "work waits", Align: cells.Right}}}
	for _, s := range d.Short {
		out := ""
		if s.Out > 0 {
			out = fmt.Sprint(s.Out)
		}
		t.Rows = append(t.Rows, cells.Texts(v.Craft(s.Craft), hours(s.There), out, hours(s.Waits)))
	}
	return t
}
