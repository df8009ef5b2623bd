package main

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/table"
	"moldturn/sim"
	paper "moldturn/sim/hand"
	"moldturn/sim/param/unit"
)

// usual is what the trade knows of the distance between paper and floor.
const usual = "Waiting, shifts and bad luck usually cost 20 to 40 % of what is worked out by hand (common practice, no source); \"moldturn compare\" simulates them."

// writeHand shows the paper with its arithmetic.
func writeHand(c *Context, p *sim.Plan, t *paper.Table, style unit.Style) error {
	tables := []cells.Table{moldTable(t), wholeShifts(t), craftTable(t)}
	if places := placeTable(t); len(places.Rows) > 0 {
		tables = append(tables, places)
	}
	if err := writeTables(c, tables); err != nil {
		return err
	}
	fmt.Fprintln(c.Stdout)
	for _, line := range append(basis(p, t, style), verdict(t), usual) {
		fmt.Fprint(c.Stdout, table.Wrap(line, table.Style{}))
	}
	return nil
}

// moldTable has the hours of a turn.
func moldTable(t *paper.Table) cells.Table {
	out := cells.Table{Title: "Molds by hand: hours of a turn, nights with weekends; turns and boats a week",
		Columns: columns("part", ">labor", ">waits", ">hold", ">nights", ">turn", ">turns", ">molds", ">boats")}
	for _, m := range t.Molds {
		out.Rows = append(out.Rows, cells.Texts(m.Model+" "+m.Part, fixed(m.Labor, 1), fixed(m.Waits, 1), fixed(m.Hold, 1), fixed(m.Off, 1),
			fixed(m.Cycle(), 0), fixed(m.Turns, 2), strconv.Itoa(m.Count), fixed(m.Boats, 2)))
	}
	return out
}

// wholeShifts is the shop rule: work and hold of a turn rounded up to shifts.
func wholeShifts(t *paper.Table) cells.Table {
	out := cells.Table{Title: "The same in whole shifts, as shops count (common practice, no source)",
		Columns: columns("part", ">work + hold", ">shifts / turn = turns", ">boats")}
	notes := map[string]int{}
	for _, m := range t.Molds {
		row := cells.Texts(m.Model+" "+m.Part, fmt.Sprintf("%d + %d shifts", m.WorkShifts, m.HoldShifts),
			fmt.Sprintf("%s / %d = %s", fixed(m.WeekShifts, 1), m.WorkShifts+m.HoldShifts, fixed(m.WholeTurns, 2)), fixed(m.WholeTurns*float64(m.Count), 2))
		if _, known := notes[m.Craft]; !known {
			notes[m.Craft] = len(out.Notes)
			out.Notes = append(out.Notes, shiftsOf(&m))
		}
		row.Cells[1].Notes = []int{notes[m.Craft]}
		out.Rows = append(out.Rows, row)
	}
	return out
}

// shiftsOf says whose shifts are counted.
func shiftsOf(m *paper.Mold) string {
	if m.Craft == "" {
		return "shifts of 8 h around the clock: no craft works on these molds"
	}
	return fmt.Sprintf("shifts of %s, who have most of the labor on these molds: %s a week of %s h, %s h from one to the next",
		m.Craft, fixed(m.WeekShifts, 1), fixed(m.ShiftHours, 1), fixed(m.Slot, 1))
}

func craftTable(t *paper.Table) cells.Table {
	out := cells.Table{Title: "People by hand: boats a week are hours for boats over hours a boat",
		Columns: columns("craft", "people × hours a week", ">absent", ">other work", ">for boats", ">a boat", ">boats a week")}
	for i := range t.Crafts {
		x := &t.Crafts[i]
		out.Rows = append(out.Rows, cells.Texts(x.Name, crews(x.Crews), fixed(100*x.Absence, 1)+" %", fixed(x.Background, 0)+" h",
			fixed(x.Available, 0)+" h", fixed(x.PerBoat, 1)+" h", boatsOf(x.PerBoat, x.Boats)))
		if x.PerBoat > 0 && len(x.Helpers) > 0 && x.Boats*x.PerBoat > 1.001*x.Available {
			last := out.Rows[len(out.Rows)-1].Cells
			last[len(last)-1].Notes = []int{len(out.Notes)}
			out.Notes = append(out.Notes, "with the help of "+strings.Join(x.Helpers, ", ")+": hours and work of all of them together")
		}
	}
	return out
}

// crews is "15 × 39.8 h + 9 × 29.8 h".
func crews(list []paper.Crew) string {
	var parts []string
	for _, crew := range list {
		parts = append(parts, fmt.Sprintf("%d × %s h", crew.People, fixed(crew.Hours, 1)))
	}
	return strings.Join(parts, " + ")
}

func placeTable(t *paper.Table) cells.Table {
	out := cells.Table{Title: "Places by hand: boats a week are hours for boats over hours a boat",
		Columns: columns("place", "count × open hours a week", ">other work", ">for boats", ">a boat", ">boats a week")}
	for i := range t.Places {
		x := &t.Places[i]
		out.Rows = append(out.Rows, cells.Texts(x.Name, fmt.Sprintf("%d × %s h", x.Count, fixed(x.Hours, 1)), fixed(x.Background, 0)+" h",
			fixed(max(float64(x.Count)*x.Hours-x.Background, 0), 0)+" h", fixed(x.PerBoat, 1)+" h", boatsOf(x.PerBoat, x.Boats)))
	}
	return out
}

// boatsOf is boats a week; a dash where a boat takes nothing of it.
func boatsOf(perBoat, boats float64) string {
	if perBoat == 0 {
		return "–"
	}
	return fixed(boats, 2)
}

// basis says what the paper stands on: the mix of boats and the shares of the
// year.
func basis(p *sim.Plan, t *paper.Table, style unit.Style) []string {
	var mix []string
	for _, m := range t.Models {
		mix = append(mix, fmt.Sprintf("%s %s %%", m.Name, fixed(100*m.Share, 0)))
	}
	line := "Hours a boat are those of the mean boat: " + strings.Join(mix, ", ") + ". "
	if every := t.StripShare; every > 0 {
		line += fmt.Sprintf("A mold is stripped every %s turns. ", fixed(1/every, 1))
	}
	return []string{line + fmt.Sprintf("Cure runs at %s of its speed at %s, the mean of the year. Weeks are open weeks with holidays taken out.", fixed(t.CureSpeed, 2), style.Temperature(25))}
}

// verdict names the tightest limits.
func verdict(t *paper.Table) string {
	if len(t.Limits) == 0 {
		return "By hand nothing limits this plant."
	}
	first := t.Limits[0]
	line := fmt.Sprintf("By hand about %s boats a week, limited by %s", fixed(first.Boats, 1), first.Words())
	var next []string
	for _, l := range t.Limits[1:min(3, len(t.Limits))] {
		next = append(next, fmt.Sprintf("%s (%s)", l.Words(), fixed(l.Boats, 1)))
	}
	if len(next) > 0 {
		line += "; next " + strings.Join(next, " and ")
	}
	if q := t.Queueing; q > 0 {
		line += fmt.Sprintf(". With queueing about %s, if hours varied as pure chance does; a shop whose hours vary less loses less (approximate: all molds as one mean mold, shifts by their share of the week)", fixed(q, 1))
	}
	if n := t.Narrow; n.Craft != "" {
		line += fmt.Sprintf(". From about %s molds on, of which there are %d, the people of %s limit their turns", fixed(n.Molds, 0), moldCount(t), n.Craft)
	}
	return line + "."
}

func moldCount(t *paper.Table) int {
	n := 0
	for _, m := range t.Molds {
		n += m.Count
	}
	return n
}

func fixed(x float64, digits int) string { return strconv.FormatFloat(x, 'f', digits, 64) }
