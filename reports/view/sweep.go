package view

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Sweep is a finished sweep: the plant as it is, and with the values of each
// point.
type Sweep struct {
	Currency     string // sign of amounts; "" for $
	Scenario     string // name of the plant
	Note         string // a sentence of the user about it, may be empty
	Seed         uint64
	Replications int
	Years        int // counted in each replication
	Warm         int // simulated before them and not counted
	Design       *study.Design
	Base         study.Figures
	Points       []study.Figures // as Design.Points
	Of           []study.Metric  // figures asked for, at least one
	Pools        []string        // crafts, then places, that FirstLimit counts
	Inputs       []Input         // every value of the base
	Version      string          // of the program, may be empty
	Hash         string          // fingerprint of the inputs, may be empty
}

// summary is a figure of a point; the zero Summary if it has none.
func figure(f *study.Figures, m *study.Metric) stats.Summary {
	x, _ := f.Summary(m)
	return x
}

// figures is a figure of every point.
func (s *Sweep) figures(m *study.Metric) []stats.Summary {
	out := make([]stats.Summary, len(s.Points))
	for i := range s.Points {
		out[i] = figure(&s.Points[i], m)
	}
	return out
}

// digits are the decimals in which a figure of points is shown.
func (s *Sweep) digits(m *study.Metric) int {
	return together(halves(m, s.figures(m)), most(m))
}

// at is a point in words with a figure: "strip.every 5 (8.73 ± 0.03)".
func (s *Sweep) at(i int, m *study.Metric) string {
	return s.Points[i].Name + " (" + amount(m, figure(&s.Points[i], m), s.digits(m)) + ")"
}

// value is a point by the value of one factor, "5".
func (s *Sweep) value(i, factor int) string { return s.Design.Points[i].Values[factor] }

// lower is a figure inside a sentence.
func lower(m *study.Metric) string {
	r, n := utf8.DecodeRuneInString(m.Label)
	if next, _ := utf8.DecodeRuneInString(m.Label[n:]); unicode.IsUpper(next) {
		return m.Label
	}
	return string(unicode.ToLower(r)) + m.Label[n:]
}

// sentence begins a text with a capital letter.
func sentence(text string) string {
	r, n := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(r)) + text[n:]
}

// SimulatedYears is how many counted years stand behind each point.
func (s *Sweep) SimulatedYears() int { return s.Replications * s.Years }

// paths are the inputs that were changed.
func (s *Sweep) paths() []string {
	var out []string
	for i := range s.Design.Factors {
		out = append(out, s.Design.Factors[i].Path)
	}
	return out
}

// title is what the page is called.
func (s *Sweep) title() string {
	return s.Scenario + ": " + strings.Join(s.paths(), " and ") + " varied"
}

// UnitOf is the unit of a figure, amounts in the currency of the scenario.
func (s *Sweep) UnitOf(m *study.Metric) string {
	if s.Currency == "" {
		return m.Unit
	}
	return strings.Replace(m.Unit, "$", s.Currency, 1)
}
