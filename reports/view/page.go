package view

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Caution stands under every report.
const Caution = "A planning model with assumptions; styrene, peroxide, lifting and emissions are governed by local codes, suppliers' data sheets and licensed practice."

// The sections of the page of a comparison. Package reports/view/whole holds
// their order; what other packages add to the page is a row there.

// ComputedSection is how the figures came about.
func (s *Study) ComputedSection() (page.Section, bool, error) {
	out := page.Section{Heading: "How it was computed", Blocks: []page.Block{page.List(s.Computed())}}
	if start, ok := s.Start(); ok {
		c, err := start.Build()
		if err != nil {
			return page.Section{}, false, err
		}
		out.Blocks = append(out.Blocks, c)
	}
	return out, true, nil
}

// LedgerSection is what the base spends and earns; ok is false without money.
func (s *Study) LedgerSection() (page.Section, bool, error) {
	out, ok := s.MoneySection()
	return out, ok, nil
}

func (s *Study) assumptions() []page.Block {
	blocks := []page.Block{page.Text("Every value behind this report. What differs from its default stands first.")}
	for i, t := range s.Assumptions() {
		if i == 0 {
			blocks = append(blocks, page.Table{Table: t})
			continue
		}
		line := t.Title
		t.Title = ""
		blocks = append(blocks, page.Fold{Line: line, Blocks: []page.Block{page.Table{Table: t}}})
	}
	return blocks
}

// KeyFigures are the figures of the base that a reader looks for first.
func (s *Study) KeyFigures() page.Facts {
	var facts page.Facts
	a := s.Base()
	for _, name := range []string{"boats_per_week", "luster_p10", "share_at_target", "on_time_share"} {
		m := metric(name)
		if x, ok := a.Summary(m); ok {
			facts = append(facts, page.Fact{Label: head(m), Value: mean(m, x), Note: note(m, x)})
		}
	}
	return facts
}

// note is the interval of a key figure.
func note(m *study.Metric, x stats.Summary) string {
	if x.Half == 0 {
		return ""
	}
	k := scale(m)
	digits := decimals(k*x.Half, most(m))
	low, high := within(m, x)
	return fmt.Sprintf("%s to %s", fixed(k*low, digits), fixed(k*high, digits))
}

// Changes says what each alternative changes.
func (s *Study) Changes() cells.Table {
	t := cells.Table{Title: "What the alternatives change", Columns: []cells.Column{{Head: ""}, {Head: "changed inputs"}}}
	for i := range s.Alternatives {
		what := strings.Join(s.Alternatives[i].Changes, "; ")
		if i == 0 {
			what = "the base, against which the others are held"
		}
		t.Rows = append(t.Rows, cells.Texts(s.Alternatives[i].Name, what))
	}
	return t
}

// PictureSection holds the alternatives against each other in a drawing; ok is
// false with one of them, or without luster.
func (s *Study) PictureSection() (out page.Section, ok bool, err error) {
	if len(s.Alternatives) < 2 || len(s.levels(metric("luster_p10"))) == 0 {
		return out, false, nil
	}
	c, err := s.Picture().Build()
	return page.Section{Heading: "Boats against luster", Blocks: []page.Block{c}}, true, err
}

// MoldHoursSection is where the hours of a mold go; ok is false without molds.
func (s *Study) MoldHoursSection() (out page.Section, ok bool, err error) {
	stack, ok := s.MoldHours()
	if !ok {
		return out, false, nil
	}
	c, err := stack.Build()
	return page.Section{Heading: "Where a mold's hours go", Blocks: []page.Block{c}}, true, err
}

// WeeksSection is boats by the week of the year, of the base and of the best
// alternative; ok is false where no week was open.
func (s *Study) WeeksSection() (out page.Section, ok bool, err error) {
	out.Heading = "Through the year"
	shown := []int{0}
	if best := s.Best(); best > 0 {
		shown = append(shown, best)
	}
	for _, i := range shown {
		band, ok := s.Weeks(i)
		if !ok {
			continue
		}
		c, err := band.Build()
		if err != nil {
			return out, false, err
		}
		out.Blocks = append(out.Blocks, c)
	}
	return out, len(out.Blocks) > 0, nil
}

// WaitsSection is what molds and parts wait for.
func (s *Study) WaitsSection() (page.Section, bool, error) {
	return page.Section{Heading: "What the work waits for", Blocks: []page.Block{page.Table{Table: s.Waits()}}}, true, nil
}

// Computed says how the figures came about.
func (s *Study) Computed() []string {
	lines := []string{
		fmt.Sprintf("%s of each of %s, with %s before them that %s not counted, so that the plant is in full swing.",
			count(s.Replications, "repeat")+" of "+count(s.Years, "year"), count(len(s.Alternatives), "way")+" to run the plant", count(s.Warm, "year"), isAre(s.Warm)),
		"All ways meet the same weather, orders, absences and failures, so that differences come from the change alone.",
		fmt.Sprintf("“±” is half of a %.0f %% confidence interval (Student's t over the repeats). A difference is called not clear when its interval includes zero.", 100*study.Confidence),
		s.Fair(),
		s.Stopped(),
		s.Settled(),
		"Boats per week, luster and mold turns come from runs with orders always waiting; on-time figures from a dated order book.",
		fmt.Sprintf("Luck is drawn from the number %d; the same number, program and inputs give the same report, byte for byte.", s.Seed),
	}
	lines = slices.DeleteFunc(lines, func(line string) bool { return line == "" })
	if s.Version != "" {
		lines = append(lines, "Program: "+s.Version+".")
	}
	if s.Hash != "" {
		lines = append(lines, "Fingerprint of the inputs (SHA-256): "+s.Hash+".")
	}
	return lines
}

func isAre(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}
