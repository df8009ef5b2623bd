package main

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/table"
	"moldturn/scenarios/floor"
	"moldturn/sim"
)

// writeFloor tells people what was read of a floor, what was not, and what
// that does to the answer.
func writeFloor(c *Context, plan *sim.Plan, r *floor.Reading, name string) error {
	fmt.Fprintln(c.Stdout, cells.OneLine(floorLine(r, name)))
	if tables := floorTables(plan, r); len(tables) > 0 {
		fmt.Fprintln(c.Stdout)
		if err := writeTables(c, tables); err != nil {
			return err
		}
	}
	writeSkipped(c, r)
	for _, section := range floorSections() {
		section.write(c, r)
	}
	return nil
}

// floorLine is a floor in one line.
func floorLine(r *floor.Reading, name string) string {
	if r.Floor == nil {
		return name + ": no floor"
	}
	f := r.Floor
	at := f.Morning.String()
	return fmt.Sprintf("%s: the morning of %s %s; %s, %s on the floor, %s, %s, %s, %s", name, f.Morning.Date.Weekday(), at,
		count(len(f.Molds), "mold", "molds"), count(len(f.Work), "part or boat", "parts and boats"), count(len(f.Orders), "order", "orders"),
		count(len(f.Out), "absence", "absences"), count(len(f.Down), "downtime", "downtimes"), count(len(f.Calendar), "changed day", "changed days"))
}

// floorTables are the rows by file, and the floor by model.
func floorTables(plan *sim.Plan, r *floor.Reading) []cells.Table {
	rows := cells.Table{Title: "Rows read", Columns: columns("file", "what", ">rows", ">used", ">older", ">passed over", ">not used")}
	for i := range r.Sheets {
		s := &r.Sheets[i]
		kind := s.Kind
		if kind == "" {
			kind = "–"
		}
		rows.Rows = append(rows.Rows, cells.Texts(cells.OneLine(s.Place.String()), kind, strconv.Itoa(len(s.Rows)), strconv.Itoa(s.Count(floor.Used)), strconv.Itoa(s.Count(floor.Older)),
			strconv.Itoa(s.Count(floor.Skipped)), strconv.Itoa(s.Count(floor.Dropped))))
	}
	var out []cells.Table
	if len(rows.Rows) > 0 {
		out = append(out, rows)
	}
	if r.Floor != nil {
		out = append(out, floorByModel(plan, r.Floor))
	}
	return out
}

// floorByModel counts what stands where.
func floorByModel(plan *sim.Plan, f *floor.Floor) cells.Table {
	t := cells.Table{Title: "The floor", Columns: columns("model", "part", ">molds", ">with a part", ">parts in molds", ">parts out of molds", ">boats in assembly", ">orders to begin")}
	for m := range plan.Models {
		for k, p := range plan.Models[m].Parts {
			var molds, occupied, in, outside, boats, orders int
			for i := range f.Molds {
				if f.Molds[i].Part == p {
					molds++
					if f.Molds[i].State == floor.Occupied {
						occupied++
					}
				}
			}
			for i := range f.Work {
				w := &f.Work[i]
				switch {
				case w.Part == p && beforePull(plan, w):
					in++
				case w.Part == p:
					outside++
				case w.Part == sim.None && w.Model == int16(m):
					boats++
				}
			}
			for i := range f.Orders {
				if f.Orders[i].Model == int16(m) && !f.Orders[i].Begun {
					orders++
				}
			}
			name, b, o := plan.Models[m].Name, strconv.Itoa(boats), strconv.Itoa(orders)
			if k > 0 {
				name, b, o = "", "", ""
			}
			t.Rows = append(t.Rows, cells.Texts(name, plan.Parts[p].Name, strconv.Itoa(molds), strconv.Itoa(occupied), strconv.Itoa(in), strconv.Itoa(outside), b, o))
		}
	}
	return t
}

// beforePull tells whether a part is still in its mold, or before it.
func beforePull(plan *sim.Plan, w *floor.Work) bool {
	steps := plan.Routes[w.Route].Steps
	for i := int(w.Step); i < len(steps); i++ {
		if steps[i].Verb == sim.Pulled {
			return true
		}
	}
	return false
}

// writeSkipped lists the rows that are no things, in short.
func writeSkipped(c *Context, r *floor.Reading) {
	var lines []string
	for i := range r.Sheets {
		s := &r.Sheets[i]
		var rows []string
		for _, row := range s.Rows {
			if row.Fate == floor.Skipped {
				rows = append(rows, fmt.Sprintf("%d (%s)", row.Row, row.Why))
			}
		}
		if len(rows) > 0 {
			lines = append(lines, fmt.Sprintf("%s: %s", s.Place, strings.Join(rows, ", ")))
		}
	}
	if len(lines) == 0 {
		return
	}
	fmt.Fprintf(c.Stdout, "\nRows passed over\n")
	for _, line := range lines {
		fmt.Fprint(c.Stdout, table.Wrap(cells.OneLine(line), table.Style{}))
	}
}

// floorSection is the notices of one level.
type floorSection struct {
	level floor.Level
	title string
}

func floorSections() []floorSection {
	return []floorSection{
		{floor.Fatal, "Why there is no floor"},
		{floor.Fault, "Not used"},
		{floor.Doubt, "In doubt: not used, or used as said"},
		{floor.Gap, "Gaps, and what is taken instead"},
		{floor.Told, "Good to know"},
	}
}

// mostNotices bounds what a section shows on a terminal.
const mostNotices = 60

// write shows a section unless it is empty.
func (s floorSection) write(c *Context, r *floor.Reading) {
	var all []floor.Notice
	for _, n := range r.Notices {
		if n.Level == s.level {
			all = append(all, n)
		}
	}
	if len(all) == 0 {
		return
	}
	fmt.Fprintf(c.Stdout, "\n%s (%d)\n", s.title, len(all))
	groups := gathered(all, r)
	for i, n := range groups {
		if i == mostNotices {
			fmt.Fprintf(c.Stdout, "and %d more; --json lists all\n", len(groups)-i)
			return
		}
		writeNotice(c, n)
	}
}

// writeNotice shows a notice with its place first.
func writeNotice(c *Context, n floor.Notice) {
	line := n.Message
	if place := n.Place.String(); place != "" {
		line = place + ": " + line
	}
	fmt.Fprint(c.Stdout, table.Wrap(cells.OneLine(line), table.Style{}))
	for _, more := range [][2]string{{"allowed", n.Allowed}, {"hint", n.Hint}, {"effect", n.Effect}} {
		if more[1] != "" {
			fmt.Fprintf(c.Stdout, "  %s: %s\n", more[0], cells.OneLine(more[1]))
		}
	}
}
