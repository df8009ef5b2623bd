package view

import (
	"fmt"
	"math"
	"strings"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Headline is the answer in a sentence or two: the first figure asked for.
func (s *Sweep) Headline() string {
	return strings.TrimSpace(s.finding(&s.Of[0]) + " " + s.nextLimit())
}

// Findings are a sentence or two about every figure, what has no effect at all,
// and how much was simulated.
func (s *Sweep) Findings() []string {
	var lines []string
	for k := range s.Of {
		lines = append(lines, s.finding(&s.Of[k]))
	}
	lines[0] = s.Headline()
	return append(append(lines, s.idle()...), s.Known())
}

// nextLimit says what work waits for most in the setting that is best in the
// first figure, or in the base where none is clearly best; empty where that was
// not kept.
func (s *Sweep) nextLimit() string {
	f, where := &s.Base, s.Base.Name
	if shape, ok := study.ShapeOf(s.Design, s.Points, &s.Of[0]); ok && shape.Clear {
		f, where = &s.Points[shape.Best], s.Points[shape.Best].Name
	}
	switch i, ok := f.FirstLimit(); {
	case !ok || i >= len(s.Pools):
		return ""
	case i < 0:
		return fmt.Sprintf("Next limit at %s: the molds.", where)
	default:
		return fmt.Sprintf("Next limit at %s: %s.", where, s.Pools[i])
	}
}

// finding is what the points say about one figure.
func (s *Sweep) finding(m *study.Metric) string {
	if shape, ok := study.ShapeOf(s.Design, s.Points, m); ok {
		return s.shape(m, &shape)
	}
	if e, ok := study.EffectsOf(s.Design, s.Points, m); ok {
		return s.strongest(m, &e)
	}
	return s.extremes(m)
}

// heading is the finding in the words that fit above a drawing.
func (s *Sweep) heading(m *study.Metric) string {
	if shape, ok := study.ShapeOf(s.Design, s.Points, m); ok && shape.Clear {
		return strings.TrimSuffix(s.ends(m, &shape), ".")
	}
	return strings.TrimSuffix(s.finding(m), ".")
}

// ends names the best and the worst point.
func (s *Sweep) ends(m *study.Metric, x *study.Shape) string {
	verb := "best at"
	switch {
	case x.Inside && m.Better < 0:
		verb = "lowest at"
	case x.Inside:
		verb = "a peak at"
	}
	return fmt.Sprintf("%s: %s %s, worst at %s.", sentence(lower(m)), verb, s.at(x.Best, m), s.at(x.Worst, m))
}

// shape puts a curve or a map in words.
func (s *Sweep) shape(m *study.Metric, x *study.Shape) string {
	if !x.Clear {
		return fmt.Sprintf("%s: no clear difference between any two of the %d settings.", sentence(lower(m)), x.Points)
	}
	text := s.ends(m, x)
	if x.Knee != x.Best {
		text += fmt.Sprintf(" The knee is at %s: nine tenths of the gain in the fewest steps.", s.at(x.Knee, m))
	}
	if x.Ridge != nil {
		text += " " + s.ridge(x)
	}
	if n := len(x.AsGood); n > 0 {
		text += " Not clearly worse than the best" + s.order() + ": " + s.some(x.AsGood) + "."
	}
	return text
}

// ridge names the ridge of a map.
func (s *Sweep) ridge(x *study.Shape) string {
	along, across := x.Along, 1-x.Along
	level := s.Design.Points[x.Ridge[0]].Level[across]
	same := true
	var pairs []string
	for _, i := range x.Ridge {
		same = same && s.Design.Points[i].Level[across] == level
		pairs = append(pairs, fmt.Sprintf("%s at %s", s.value(i, across), s.value(i, along)))
	}
	a, b := s.Design.Factors[along].Path, s.Design.Factors[across].Path
	if same {
		return fmt.Sprintf("A ridge runs along %s: whatever %s is, the best %s is %s.", a, a, b, s.value(x.Ridge[0], across))
	}
	return fmt.Sprintf("A ridge runs along %s: the best %s lies inside its range throughout, %s.", a, b, strings.Join(pairs, ", "))
}

// someMost is how many settings a sentence lists.
const someMost = 6

// some lists points by their values, the first ones of many.
func (s *Sweep) some(points []int) string {
	var names []string
	for _, i := range points[:min(len(points), someMost)] {
		names = append(names, strings.Join(s.Design.Points[i].Values, " / "))
	}
	if more := len(points) - someMost; more > 0 {
		return strings.Join(names, ", ") + fmt.Sprintf(" and %d more", more)
	}
	return and(names)
}

// order says in which order values of several inputs stand; empty for one.
func (s *Sweep) order() string {
	if len(s.Design.Factors) == 1 {
		return ""
	}
	return " (" + strings.Join(s.paths(), " / ") + ")"
}

// strongest names the factor that moves a figure most.
func (s *Sweep) strongest(m *study.Metric, e *study.Effects) string {
	best := -1
	for i := range e.All {
		if e.All[i].Change.Clear && (best < 0 || math.Abs(e.All[i].Change.Mean) > math.Abs(e.All[best].Change.Mean)) {
			best = i
		}
	}
	if best < 0 {
		return fmt.Sprintf("%s: no input clearly changes it from one end of its values to the other.", sentence(lower(m)))
	}
	x := &e.All[best]
	text := fmt.Sprintf("%s: %s moves it most, by %s from %s to %s", sentence(lower(m)), s.Design.Factors[x.Factor].Path, effect(m, x), x.Low, x.High)
	if len(e.All) == 1 {
		text = fmt.Sprintf("%s changes by %s as %s goes from %s to %s", sentence(lower(m)), effect(m, x), s.Design.Factors[x.Factor].Path, x.Low, x.High)
	}
	if s.Design.Form != study.Each && e.Linear < roughFit {
		text += fmt.Sprintf("; straight lines explain only %.0f %% of how the points differ, so take this as rough", 100*e.Linear)
	}
	return text + "."
}

// roughFit is the share that straight lines must explain before their slopes
// are given without a warning. Assumption of this report, no source.
const roughFit = 0.8

// effect prints a difference with the decimals of its own interval.
func effect(m *study.Metric, x *study.Effect) string {
	return change(m, x.Change, decimals(scale(m)*x.Change.Half, most(m)))
}

// extremes names the points with the least and the most of a figure of which
// neither is better.
func (s *Sweep) extremes(m *study.Metric) string {
	low, high := -1, -1
	xs := s.figures(m)
	for i, x := range xs {
		if x.N == 0 {
			continue
		}
		if low < 0 || x.Mean < xs[low].Mean {
			low = i
		}
		if high < 0 || x.Mean > xs[high].Mean {
			high = i
		}
	}
	if low < 0 {
		return fmt.Sprintf("%s: no run has this figure.", sentence(lower(m)))
	}
	return fmt.Sprintf("%s goes from %s to %s.", sentence(lower(m)), s.at(low, m), s.at(high, m))
}

// idle warns of inputs without any effect.
func (s *Sweep) idle() []string {
	var lines []string
	for _, k := range study.Idle(s.Design, s.Points) {
		lines = append(lines, fmt.Sprintf("%s makes no difference at all: every one of its values gives the same runs. It is probably not in use in this plant.", s.Design.Factors[k].Path))
	}
	return lines
}

// Known says how much was simulated and how well the first figure is known.
func (s *Sweep) Known() string {
	text := fmt.Sprintf("%s simulated for each of %s", count(s.SimulatedYears(), "year"), count(len(s.Points)+1, "setting"))
	m := &s.Of[0]
	wide := 0.0
	for _, x := range s.figures(m) {
		wide = max(wide, scale(m)*x.Half)
	}
	if wide > 0 {
		text += fmt.Sprintf("; %s known to%s or better", lower(m), plusMinus(wide, decimals(wide, most(m))))
	}
	if s.Replications < stats.Few {
		text += fmt.Sprintf(". Only %s: intervals from so few are rough", count(s.Replications, "repeat"))
	}
	return text + "."
}
