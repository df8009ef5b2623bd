package view

import (
	"fmt"
	"math"
	"strings"

	"moldturn/sim/study"
)

// Enough is the rule by which a comparison ended, and how far it came.
type Enough struct {
	Rule    study.Rule
	Verdict study.Verdict
}

// Stopped says why no more was simulated; empty without a rule.
func (s *Study) Stopped() string {
	if s.Enough == nil {
		return ""
	}
	e := s.Enough
	repeats := count(e.Verdict.Replications, "repeat")
	switch {
	case e.Verdict.Precise:
		return fmt.Sprintf("Enough after %s: %s, wanted ± %s.", repeats, e.known(), shareText(e.Rule.Precision))
	case e.Verdict.Decided:
		return fmt.Sprintf("Enough after %s: every difference from the base in %s is clear or surely smaller than %s of the base's figure.",
			repeats, and(e.names()), shareText(e.Rule.Matters))
	}
	text := fmt.Sprintf("The budget of %s of each alternative ended the runs after %s", count(s.SimulatedYears(), "year"), repeats)
	if e.Rule.Precision > 0 {
		text += fmt.Sprintf("; %s, wanted ± %s", e.known(), shareText(e.Rule.Precision))
	}
	if e.Rule.Matters > 0 {
		text += fmt.Sprintf("; %s neither clear nor surely smaller than %s of the base's figure", e.open(), shareText(e.Rule.Matters))
	}
	return text + "."
}

// known lists how well each figure is known where it is known least.
func (e *Enough) known() string {
	var parts []string
	for _, p := range e.Verdict.Worst {
		m := metric(p.Metric)
		switch {
		case p.Share < 0:
			parts = append(parts, "no run has "+lower(m))
		case math.IsInf(p.Share, 0):
			parts = append(parts, lower(m)+" not known as a share of itself")
		default:
			parts = append(parts, fmt.Sprintf("%s known to ± %s of itself or better", lower(m), shareText(p.Share)))
		}
	}
	return and(parts)
}

func (e *Enough) names() []string {
	var names []string
	for _, p := range e.Verdict.Worst {
		names = append(names, lower(metric(p.Metric)))
	}
	return names
}

// open counts what was not decided.
func (e *Enough) open() string {
	var parts []string
	for _, p := range e.Verdict.Worst {
		if p.Open > 0 {
			parts = append(parts, fmt.Sprintf("%s in %s", count(p.Open, "difference"), lower(metric(p.Metric))))
		}
	}
	verb := " are"
	if len(parts) == 1 && strings.HasPrefix(parts[0], "1 ") {
		verb = " is"
	}
	return and(parts) + verb
}

// shareText prints a share with two digits that count.
func shareText(share float64) string {
	p := 100 * share
	digits := 0
	if p > 0 {
		digits = max(0, 1-int(math.Floor(math.Log10(p))))
	}
	text := fixed(p, min(digits, 4))
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text + " %"
}
