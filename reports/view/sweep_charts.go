package view

import (
	"fmt"
	"math"

	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// builder is a figure of any kind.
type builder interface{ Build() (page.Chart, error) }

// pictures are the drawings of one figure: a curve with its band for one
// factor, a map for two, and bars for any other design.
func (s *Sweep) pictures(k int) []builder {
	m := &s.Of[k]
	if len(s.figures(m)) == 0 || s.missing(m) {
		return nil
	}
	switch {
	case s.Design.Form == study.Each:
		return []builder{s.tornado(k)}
	case s.Design.Form == study.Grid && len(s.Design.Factors) == 1 && len(s.Points) > 1:
		if s.Design.Factors[0].Numbers == nil {
			return []builder{s.levels(k)}
		}
		return []builder{s.curve(k)}
	case s.Design.Form == study.Grid && len(s.Design.Factors) == 2:
		return []builder{s.heat(k)}
	}
	if bars, ok := s.effects(k); ok {
		return []builder{bars}
	}
	return nil
}

// missing is true for a figure that some point does not have.
func (s *Sweep) missing(m *study.Metric) bool {
	for _, x := range s.figures(m) {
		if x.N == 0 {
			return true
		}
	}
	return false
}

func (s *Sweep) figureHead(kind string, k int) chart.Figure {
	m := &s.Of[k]
	return chart.Figure{ID: fmt.Sprintf("%s-%d", kind, k+1), Finding: s.heading(m),
		Caption: fmt.Sprintf("%s. %s simulated for each setting.", sentence(m.Doc), count(s.SimulatedYears(), "year"))}
}

func axis(m *study.Metric, digits int) chart.Axis {
	return chart.Axis{Name: m.Label, Unit: measure(m), Digits: digits}
}

// measure is the unit of a figure as people read it.
func measure(m *study.Metric) string {
	if m.Share {
		return "%"
	}
	return m.Unit
}

// curve is one figure over the values of one factor.
func (s *Sweep) curve(k int) chart.Band {
	m, f := &s.Of[k], &s.Design.Factors[0]
	r := chart.Ribbon{}
	for _, x := range s.figures(m) {
		e := scaled(m, x)
		r.Low, r.Middle, r.High = append(r.Low, e.Low), append(r.Middle, e.Value), append(r.High, e.High)
	}
	c := chart.Band{Figure: s.figureHead("curve", k), XTitle: f.Path, X: f.Levels, Y: axis(m, s.digits(m)),
		Middle: "mean", Range: fmt.Sprintf("%.0f %% confidence interval", 100*study.Confidence), Series: []chart.Ribbon{r}}
	c.Caption += " All settings met the same luck; the table of all settings has their paired differences."
	c.Alt = fmt.Sprintf("Line of %s over %s with its interval.", lower(m), f.Path)
	if x := figure(&s.Base, m); x.N > 0 {
		c.Goals = []chart.Goal{{Label: s.Base.Name, Value: scale(m) * x.Mean}}
	}
	return c
}

// levels is one figure by the words of one factor.
func (s *Sweep) levels(k int) chart.Intervals {
	m := &s.Of[k]
	c := chart.Intervals{Figure: s.figureHead("levels", k), X: axis(m, s.digits(m)), Dots: true}
	c.Alt = fmt.Sprintf("%s for each value of %s with its interval.", sentence(lower(m)), s.Design.Factors[0].Path)
	for i, x := range s.figures(m) {
		c.Rows = append(c.Rows, chart.IntervalRow{Name: s.value(i, 0), Estimate: scaled(m, x)})
	}
	return c
}

// scaled is a level in the scale of people, inside the range that it can have.
func scaled(m *study.Metric, x stats.Summary) chart.Estimate {
	low, high := within(m, x)
	return chart.Estimate{Value: scale(m) * x.Mean, Low: scale(m) * low, High: scale(m) * high}
}

// moved is a difference in the scale of people.
func moved(m *study.Metric, d stats.Difference) chart.Estimate {
	return chart.Estimate{Value: scale(m) * d.Mean, Low: scale(m) * d.Low, High: scale(m) * d.High}
}

// heat is one figure over the values of two factors; the one with more values
// runs to the right.
func (s *Sweep) heat(k int) chart.Heat {
	m := &s.Of[k]
	down, right := 0, 1
	if len(s.Design.Factors[0].Levels) > len(s.Design.Factors[1].Levels) {
		down, right = 1, 0
	}
	rows, columns := &s.Design.Factors[down], &s.Design.Factors[right]
	c := chart.Heat{Figure: s.figureHead("map", k), Value: axis(m, s.digits(m)), XTitle: columns.Path,
		Columns: columns.Levels, Rows: rows.Levels, Values: make([][]float64, len(rows.Levels))}
	c.Caption += fmt.Sprintf(" Rows are %s, columns are %s.", rows.Path, columns.Path)
	c.Alt = fmt.Sprintf("Map of %s over %s and %s.", lower(m), rows.Path, columns.Path)
	for r := range c.Values {
		c.Values[r] = make([]float64, len(columns.Levels))
		for j := range c.Values[r] {
			c.Values[r][j] = math.NaN()
		}
	}
	for i, x := range s.figures(m) {
		at := s.Design.Points[i].Level
		c.Values[at[down]][at[right]] = scale(m) * x.Mean
	}
	return c
}

// tornado is what each change alone does to one figure, the input that moves it
// most first.
func (s *Sweep) tornado(k int) chart.Intervals {
	m := &s.Of[k]
	c := chart.Intervals{Figure: s.figureHead("tornado", k)}
	c.Caption = fmt.Sprintf("%s against %s, one change at a time; the input that moves it most stands first. Intervals hold together with %.0f %% confidence. %s simulated for each setting.",
		sentence(lower(m)), quoted(s.Base.Name), 100*study.Confidence, count(s.SimulatedYears(), "year"))
	c.Alt = fmt.Sprintf("Bars of differences in %s by input, largest first.", lower(m))
	var spread []stats.Summary
	for _, factor := range s.byReach(m) {
		for i := range s.Points {
			if s.Design.Points[i].Level[factor] < 0 {
				continue
			}
			d, _ := s.Points[i].Difference(&s.Base, m, len(s.Points))
			c.Rows = append(c.Rows, chart.IntervalRow{Name: s.Points[i].Name, Estimate: moved(m, d)})
			spread = append(spread, d.Summary)
		}
	}
	c.X = chart.Axis{Name: m.Label + ", against the base", Unit: measure(m), Digits: together(halves(m, spread), most(m)), Zero: true}
	return c
}

// byReach orders factors by the largest difference from the base that one of
// their values makes.
func (s *Sweep) byReach(m *study.Metric) []int {
	reach := make([]float64, len(s.Design.Factors))
	order := make([]int, len(reach))
	for f := range reach {
		order[f] = f
		for i := range s.Points {
			if s.Design.Points[i].Level[f] >= 0 {
				d, _ := s.Points[i].Difference(&s.Base, m, 1)
				reach[f] = max(reach[f], math.Abs(d.Mean))
			}
		}
	}
	sortBy(order, func(f int) float64 { return -reach[f] })
	return order
}

// effects is the slope of one figure by input, strongest first.
func (s *Sweep) effects(k int) (c chart.Intervals, ok bool) {
	m := &s.Of[k]
	e, ok := study.EffectsOf(s.Design, s.Points, m)
	if !ok {
		return c, false
	}
	c = chart.Intervals{Figure: s.figureHead("effects", k)}
	c.Caption = fmt.Sprintf("Change of %s from one end of an input's values to the other, by straight lines through all settings, which explain %.0f %% of how they differ. Intervals hold together with %.0f %% confidence.",
		lower(m), 100*e.Linear, 100*study.Confidence)
	c.Alt = fmt.Sprintf("Bars of changes in %s by input, largest first.", lower(m))
	var spread []stats.Summary
	for _, x := range ranked(e.All) {
		c.Rows = append(c.Rows, chart.IntervalRow{Name: fmt.Sprintf("%s %s to %s", s.Design.Factors[x.Factor].Path, x.Low, x.High), Estimate: moved(m, x.Change)})
		spread = append(spread, x.Change.Summary)
	}
	c.X = chart.Axis{Name: "change of " + lower(m), Unit: measure(m), Digits: together(halves(m, spread), most(m)), Zero: true}
	return c, true
}
