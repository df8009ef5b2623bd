package view

import (
	"strings"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Judged is a figure of an alternative in finished texts, and how it stands
// against the base.
type Judged struct {
	Value  string
	Change string // empty for the base
	Sense  int    // +1 clearly better, -1 clearly worse, 0 not clear, or neither is better
}

// Judge gives a figure of every alternative, judged by the same intervals as the
// tables of Comparison; none where no alternative has it.
func (s *Study) Judge(m *study.Metric) []Judged {
	levels := s.levels(m)
	if levels == nil {
		return nil
	}
	gains := s.gains(m)
	spread := make([]stats.Summary, len(gains))
	for i := range gains {
		spread[i] = gains[i].Summary
	}
	value, change := together(halves(m, levels), most(m)), together(halves(m, spread), most(m))
	out := make([]Judged, len(levels))
	for i := range out {
		out[i] = Judged{Value: s.write(m, levels[i], value)}
		if i > 0 {
			out[i].Change, out[i].Sense = s.writeChange(m, gains[i], change), m.Better*verdict(gains[i])
		}
	}
	return out
}

// write is amount, in the scenario's currency where the figure is an amount.
func (s *Study) write(m *study.Metric, x stats.Summary, digits int) string {
	if isMoney(m) {
		return s.Money.amount(x)
	}
	return amount(m, x, digits)
}

func (s *Study) writeChange(m *study.Metric, d stats.Difference, digits int) string {
	if isMoney(m) {
		return s.Money.change(d)
	}
	return change(m, d, digits)
}

func isMoney(m *study.Metric) bool { return strings.HasPrefix(m.Unit, "$") }

// HeadOf is a figure's label with its unit where the label does not say it.
func (s *Study) HeadOf(m *study.Metric) string {
	if isMoney(m) {
		return m.Label + ", " + s.Base().UnitOf(m)
	}
	return head(m)
}

// Against is a figure of alternative i less that of k, with an interval that
// holds together with those of the other alternatives; ok is false where one of
// them does not have it.
func (s *Study) Against(i, k int, m *study.Metric) (d stats.Difference, ok bool) {
	return s.Alternatives[i].Together(&s.Alternatives[k].Runs, m, s.several())
}

// Changed prints a difference of a figure: "not clear" where it is not.
func (s *Study) Changed(m *study.Metric, d stats.Difference) string {
	return s.writeChange(m, d, decimals(scale(m)*d.Half, most(m)))
}

// Size is Changed without the sign, for sentences that say which way.
func (s *Study) Size(m *study.Metric, d stats.Difference) string {
	return strings.TrimLeft(s.Changed(m, d), "+−")
}

// Names are the quoted names of alternatives.
func (s *Study) Names(of []int) []string {
	var out []string
	for _, i := range of {
		out = append(out, quoted(s.Alternatives[i].Name))
	}
	return out
}

// Quoted is a name of the user inside a sentence.
func Quoted(name string) string { return quoted(name) }

// And joins names for a sentence.
func And(names []string) string { return and(names) }

// Fixed prints v with a number of decimals, with a proper minus sign.
func Fixed(v float64, digits int) string { return fixed(v, digits) }

// Count is a number with its noun, "1 year", "20 years".
func Count(n int, noun string) string { return count(n, noun) }

// SameLuster is a difference in luster, in points of 100, that is not worth a
// sentence. Assumption of this report, no source.
const SameLuster = same
