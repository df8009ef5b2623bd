package view

import (
	"fmt"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/sim/study"
)

// Frontier holds the settings of a sweep against each other by two figures, of
// which more or less is better: the first two of those asked for.
type Frontier struct {
	study.Frontier
	sweep *Sweep
	all   []study.Figures // the base, then the points that are not the same as it
}

// drawnMost is the largest number of settings that are all drawn; of more, only
// those that may be undominated, and the base.
const drawnMost = 40

// Frontier of the sweep; ok is false with fewer than two figures of which one
// side is better.
func (s *Sweep) Frontier() (f Frontier, ok bool) {
	var of []*study.Metric
	for i := range s.Of {
		if s.Of[i].Better != 0 {
			of = append(of, &s.Of[i])
		}
	}
	if len(of) < 2 {
		return f, false
	}
	f = Frontier{sweep: s, all: []study.Figures{s.Base}}
	same := ""
	for i := range s.Points {
		switch {
		case !s.Points[i].Same(&s.Base):
			f.all = append(f.all, s.Points[i])
		case same == "":
			same = ", which is " + s.Points[i].Name
		default:
			same = ", to which several settings come"
		}
	}
	f.all[0].Name += same
	f.Frontier, ok = study.FrontierOf(f.all, of[0], of[1])
	return f, ok
}

// Finding is what the frontier says: that all settings are the same, or how many
// are beaten by none, and whether the base is one of them.
func (f *Frontier) Finding() string {
	if len(f.all) == 1 {
		return fmt.Sprintf("All settings come to the same %s and %s, so none beats another.", lower(&f.X), lower(&f.Y))
	}
	n, sure := 0, 0
	for i, free := range f.Undominated {
		if free {
			n++
		}
		if f.Confidence[i] >= study.Sure {
			sure++
		}
	}
	base := fmt.Sprintf("whether %s is one of them is not sure", quoted(f.all[0].Name))
	switch {
	case f.Confidence[0] >= study.Sure:
		base = fmt.Sprintf("%s is one of them", quoted(f.all[0].Name))
	case f.Confidence[0] < 1-study.Sure:
		base = fmt.Sprintf("%s is beaten", quoted(f.all[0].Name))
	}
	return fmt.Sprintf("%d of %s %s beaten by no other in both %s and %s, %d of them surely; %s.",
		n, count(len(f.all), "different setting"), isAre(n), lower(&f.X), lower(&f.Y), sure, base)
}

// Method says how sure was found out.
func (f *Frontier) Method() string {
	return fmt.Sprintf("A setting is beaten if another is at least as good in both figures and better in one. How sure that is: the repeats were drawn again with replacement %d times, the same ones for all settings (bootstrap, Efron and Tibshirani 1993); sure is %.0f %% of the draws or more.",
		f.Draws, 100*study.Sure)
}

// Table is the settings that may be undominated, those surest first.
func (f *Frontier) Table() cells.Table {
	t := cells.Table{Title: "Beaten by no other, or perhaps", Columns: []cells.Column{{Head: "setting"},
		{Head: head(&f.X), Align: cells.Right}, {Head: head(&f.Y), Align: cells.Right}, {Head: "how sure, %", Align: cells.Right}}}
	x, y := f.sweep.digits(&f.X), f.sweep.digits(&f.Y)
	order := f.candidates()
	sortBy(order, func(i int) float64 { return -figure(&f.all[i], &f.X).Mean })
	for _, i := range order {
		row := cells.Texts(f.all[i].Name, amount(&f.X, figure(&f.all[i], &f.X), x), amount(&f.Y, figure(&f.all[i], &f.Y), y), fixed(100*f.Confidence[i], 0))
		row.Strong = f.Undominated[i]
		t.Rows = append(t.Rows, row)
	}
	return t
}

// candidates are the settings that are undominated or may well be.
func (f *Frontier) candidates() []int {
	var out []int
	for i := range f.all {
		if f.Undominated[i] || f.Confidence[i] >= 1-study.Sure {
			out = append(out, i)
		}
	}
	return out
}

// Picture is the settings in the plane of the two figures.
func (f *Frontier) Picture() chart.Scatter {
	c := chart.Scatter{
		Figure: chart.Figure{ID: "frontier", Finding: f.Finding(), Caption: f.Method(),
			Alt: fmt.Sprintf("%d settings by %s and %s, with those that no other beats joined by a line.", len(f.all), lower(&f.X), lower(&f.Y))},
		X: axis(&f.X, f.sweep.digits(&f.X)), Y: axis(&f.Y, f.sweep.digits(&f.Y)),
		Groups: []chart.Group{{Label: "beaten by no other", Join: true}, {Label: "perhaps beaten by no other"}, {Label: "beaten"}},
	}
	few := len(f.all) <= drawnMost
	left := 0
	for i := range f.all {
		group := f.group(i)
		if group == 2 && i > 0 && !few {
			left++
			continue
		}
		c.Points = append(c.Points, chart.Point{Name: f.all[i].Name, Group: group,
			X: scaled(&f.X, figure(&f.all[i], &f.X)), Y: scaled(&f.Y, figure(&f.all[i], &f.Y))})
	}
	if left > 0 {
		c.Caption += fmt.Sprintf(" %s that others beat are left out of the drawing; the table of all settings has them.", sentence(count(left, "setting")))
	}
	return c
}

// group is 0 for undominated, 1 for perhaps, 2 for beaten.
func (f *Frontier) group(i int) int {
	switch {
	case f.Undominated[i]:
		return 0
	case f.Confidence[i] >= 1-study.Sure:
		return 1
	}
	return 2
}
