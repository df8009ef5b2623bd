package floor

import (
	"fmt"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/study"
)

// MoldsID is the id of the figure of molds.
const MoldsID = "molds-by-the-hour"

// Molds is the section with a row for each mold over the recorded weeks. name is
// the way to run the plant that t is of. ok is false without molds.
func Molds(t *study.Typical, name string) (s page.Section, ok bool, err error) {
	if t == nil || t.Recorder == nil || len(t.Plan.Molds) == 0 {
		return s, false, nil
	}
	c, err := moldsFigure(t).Build()
	if err != nil {
		return s, false, err
	}
	return page.Section{Heading: "What each mold does, in a typical run", Blocks: []page.Block{page.Text(which(t, name)), c}}, true, nil
}

// which says which run and which weeks are shown, and why.
func which(t *study.Typical, name string) string {
	why := "the first weeks without a shutdown"
	if t.Tight {
		why = "those of the year in which work waits longest for people and places, over all repeats"
	}
	weeks := (t.Recorder.To - t.Recorder.From) / clock.Week
	return fmt.Sprintf("“%s”, repeat %d of %d, run again: it ships %.2f boats a week, the repeat nearest the middle one (%.2f). Shown are %d weeks from %s: %s.",
		cells.OneLine(name), t.Replication+1, t.Replications, t.Boats, t.Median, weeks,
		dateOf(t.Plan, t.Recorder.From).Format("Monday, January 2, 2006"), why)
}

func moldsFigure(t *study.Typical) chart.Gantt {
	p, r := t.Plan, t.Recorder
	all, dark := stretches(p, r), nights(p, r.From, r.To)
	from, to := dateOf(p, r.From), dateOf(p, r.To)
	c := chart.Gantt{
		Figure: chart.Figure{ID: MoldsID, Finding: moldsFinding(shares(all, dark)),
			Caption: "A row for each mold, from left to right its weeks; the axis names Mondays. Thick bars are work and cure, thin bars are waits, lines are waits at night or for the next shift; the pointer tells for what. The table has the hours of each.",
			Alt:     fmt.Sprintf("Bars of what each of %d molds does or waits for, from %s to %s.", len(p.Molds), from.Format("January 2, 2006"), to.Format("January 2, 2006"))},
		From: from, To: to, Kinds: kindNames[:], Shades: shades(p, dark), Shaded: "nobody at work",
	}
	for i := range p.Molds {
		c.Rows = append(c.Rows, p.Molds[i].Name)
	}
	for _, s := range all {
		c.Bars = append(c.Bars, chart.Bar{Row: int(s.mold), Kind: int(s.kind), Label: s.label, Thin: s.thin, Line: s.night, Start: dateOf(p, s.from), End: dateOf(p, s.to)})
	}
	c.Numbers = moldHours(p, all)
	return c
}

// moldHours has the hours of each mold by kind; waits for a pull stand with the
// pulls.
func moldHours(p *sim.Plan, all []stretch) cells.Table {
	t := cells.Table{Title: "Hours in these weeks", Columns: []cells.Column{{Head: "mold"}}}
	for _, k := range kindNames {
		t.Columns = append(t.Columns, cells.Column{Head: k, Align: cells.Right})
	}
	sums := make([][kinds]clock.Time, len(p.Molds))
	for _, s := range all {
		sums[s.mold][s.kind] += s.to - s.from
	}
	for i := range sums {
		row := cells.Texts(cells.OneLine(p.Molds[i].Name))
		for _, h := range sums[i] {
			row.Cells = append(row.Cells, cells.Cell{Text: fmt.Sprintf("%.0f", h.Hours())})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
