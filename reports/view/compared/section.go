// Package compared is the part of the report that holds all alternatives side by
// side: boats, luster and money as differences from the base, then every figure.
package compared

import (
	"fmt"

	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Section is boats, luster and money of all alternatives, and their tables. A
// plant without alternatives has the tables alone.
func Section(s *view.Study) (out page.Section, ok bool, err error) {
	if len(s.Alternatives) < 2 {
		out.Heading = "All figures"
		out.Blocks = []page.Block{page.Table{Table: s.Figures(s.Base())}}
	} else {
		out.Heading = "Boats, luster and money"
		out.Blocks = []page.Block{page.Text("What each way changes, against the plant as it is. Read across the drawings: what is gained in one may be lost in another.")}
		for _, d := range drawings {
			c, ok := Drawing(s, d.metric)
			if !ok {
				continue
			}
			built, err := c.Build()
			if err != nil {
				return out, false, err
			}
			out.Blocks = append(out.Blocks, built)
		}
		fold := page.Fold{Line: "All figures with their intervals, and what each way changes"}
		for _, t := range s.Comparison() {
			fold.Blocks = append(fold.Blocks, page.Table{Table: t})
		}
		fold.Blocks = append(fold.Blocks, page.Table{Table: s.Changes()})
		out.Blocks = append(out.Blocks, fold)
	}
	if len(s.Base().Plan.Models) > 1 {
		out.Blocks = append(out.Blocks, page.Table{Table: s.Models(s.Base())})
	}
	return out, true, nil
}

// phrases are the words of the finding of a figure: what ways do that are better,
// and worse.
type phrases struct{ metric, better, worse string }

// drawings are the figures that are drawn.
var drawings = []phrases{
	{"boats_per_week", "ship more boats", "ship fewer"},
	{"luster_p10", "have more luster", "have less"},
	{"cost_per_boat", "cost less a boat", "cost more"},
	{"contribution_per_week", "earn more", "earn less"},
}

// Drawing is the differences of one figure from the base; ok is false where the
// alternatives do not have it.
func Drawing(s *view.Study, name string) (c chart.Intervals, ok bool) {
	m, _ := study.MetricNamed(name)
	var ds []stats.Difference
	var names []string
	for i := 1; i < len(s.Alternatives); i++ {
		d, ok := s.Against(i, 0, &m)
		if !ok || !d.Known() {
			continue
		}
		ds, names = append(ds, d), append(names, s.Alternatives[i].Name)
		c.Rows = append(c.Rows, chart.IntervalRow{Name: s.Alternatives[i].Name, Estimate: chart.Estimate{Value: d.Mean, Low: d.Low, High: d.High}})
	}
	c.Figure = chart.Figure{ID: "gain-" + id(name), Finding: Finding(name, m.Better, names, ds),
		Caption: fmt.Sprintf("Difference from %s, with %.0f %% confidence intervals that hold together. An interval across zero is not clear.",
			view.Quoted(s.Base().Name), 100*study.Confidence),
		Alt: fmt.Sprintf("One point with its interval for each of %d ways: %s against the plant as it is.", len(c.Rows), m.Label)}
	c.X = chart.Axis{Name: m.Label + ", difference", Unit: s.Base().UnitOf(&m), Digits: m.Digits, Zero: true}
	c.Dots, c.Plus = true, true
	return c, len(c.Rows) > 0
}

func id(name string) string {
	out := []byte(name)
	for i := range out {
		if out[i] == '_' {
			out[i] = '-'
		}
	}
	return string(out)
}

// Finding says how many ways are clearly better and worse in a figure, and which
// is best; better is +1 where more is better, else -1.
func Finding(metric string, better int, names []string, ds []stats.Difference) string {
	var words phrases
	for _, d := range drawings {
		if d.metric == metric {
			words = d
		}
	}
	up, down, best := 0, 0, -1
	for i, d := range ds {
		gain := d.Mean * float64(better)
		switch {
		case d.Clear && gain > 0:
			up++
			if best < 0 || gain > ds[best].Mean*float64(better) {
				best = i
			}
		case d.Clear:
			down++
		}
	}
	switch {
	case up == 0 && down == 0:
		return fmt.Sprintf("None of %s clearly %s or %s", view.Count(len(ds), "way"), words.better, words.worse)
	case up == 0:
		return fmt.Sprintf("%d of %s clearly %s; none clearly %s", down, view.Count(len(ds), "way"), words.worse, words.better)
	}
	text := fmt.Sprintf("%d of %s clearly %s, %s most", up, view.Count(len(ds), "way"), words.better, view.Quoted(names[best]))
	if down > 0 {
		text += fmt.Sprintf("; %d clearly %s", down, words.worse)
	}
	return text
}
