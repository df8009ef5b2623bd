package reports

import (
	"fmt"
	"io"
	"strings"

	"moldturn/reports/csv"
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// FactColumns are the columns of facts.csv with what each is.
var FactColumns = [...][2]string{
	{"alternative", "name of the way to run the plant"},
	{"orders", "\"always waiting\" or \"with dates\""},
	{"case", "the part, boat, mold in care or background work that is followed"},
	{"activity", "the step of its route; \"stored\" for a part that waits for its mates, \"idle\" and \"out of rotation\" for a mold"},
	{"asked", "local date and time when it came to the step"},
	{"start", "when work or cure began; empty if it did not"},
	{"end", "when it left the step, or the counted years ended"},
	{"people", "the most at work at once"},
	{"resource", "their craft"},
	{"place", "the place it stood in, with its number where there are several"},
	{"mold", "the mold it was in, or is"},
	{"worked_h", "hours of work or cure"},
	{"waited_h", "hours of waits"},
	{"wait_reasons", "the waits by reason, \"off shift: gel 8.25; gel window 0.5\", hours that add up to waited_h"},
}

// Facts is what was recorded of one run.
type Facts struct {
	Alternative string
	Plan        *sim.Plan
	Recorder    *record.Recorder
}

// FactsCSV writes a row for each visit of a step.
func FactsCSV(w io.Writer, runs []Facts) error {
	var head []string
	for _, c := range FactColumns {
		head = append(head, c[0])
	}
	out, err := csv.New(w, head...)
	if err != nil {
		return err
	}
	for i := range runs {
		visits := runs[i].Recorder.Visits()
		for k := range visits {
			if err := out.Row(runs[i].row(&visits[k])...); err != nil {
				return err
			}
		}
	}
	return out.Flush()
}

func (f *Facts) row(v *record.Visit) []csv.Cell {
	p := f.Plan
	orders := "with dates"
	if p.Demand.Full {
		orders = "always waiting"
	}
	row := []csv.Cell{csv.Text(f.Alternative), csv.Text(orders), csv.Text(caseOf(p, v)), csv.Text(activityOf(p, v)), csv.Text(instant(p.Start, v.Asked))}
	if v.Began < clock.Never {
		row = append(row, csv.Text(instant(p.Start, v.Began)))
	} else {
		row = append(row, csv.Empty())
	}
	craft, mold := "", ""
	if v.Craft >= 0 {
		craft = p.Crafts[v.Craft].Name
	}
	if v.Mold >= 0 {
		mold = p.Molds[v.Mold].Name
	}
	row = append(row, csv.Text(instant(p.Start, v.End)), csv.Int(int64(v.People)), csv.Text(craft), csv.Text(placeOf(p, v)), csv.Text(mold))
	var reasons []string
	for _, wait := range v.Waits {
		reasons = append(reasons, fmt.Sprintf("%s %v", view.CauseName(p, wait.Cause), wait.For.Hours()))
	}
	return append(row, csv.Number(v.Worked.Hours()), csv.Number(v.Waited().Hours()), csv.Text(strings.Join(reasons, "; ")))
}

// caseOf names what a visit is of.
func caseOf(p *sim.Plan, v *record.Visit) string {
	switch {
	case v.Order >= 0 && v.Part >= 0:
		return fmt.Sprintf("order %d %s", v.Order+1, p.Parts[v.Part].Name)
	case v.Order >= 0:
		return fmt.Sprintf("order %d", v.Order+1)
	case v.Mold >= 0:
		return fmt.Sprintf("mold %d %s", v.Mold+1, p.Molds[v.Mold].Name)
	}
	return fmt.Sprintf("%s %d", p.Routes[v.Route].Name, v.Job)
}

func activityOf(p *sim.Plan, v *record.Visit) string {
	switch name := view.StepName(p, v.Route, v.Step); {
	case name != "":
		return name
	case v.Job >= 0:
		return "stored"
	case v.Mold < 0:
		return "not begun"
	}
	return v.Doing.String()
}

func placeOf(p *sim.Plan, v *record.Visit) string {
	if v.Place < 0 {
		return ""
	}
	name := p.Places[v.Place].Name
	if v.Unit >= 0 && p.Places[v.Place].Count > 1 {
		name = fmt.Sprintf("%s %d", name, v.Unit+1)
	}
	return name
}
