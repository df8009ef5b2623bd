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

// Page is the whole report.
func (s *Study) Page() (page.Page, error) {
	p := page.Page{Title: s.title(), Lead: s.Headline(), Foot: []string{Caution}}
	answer := page.Section{Heading: "The answer", Blocks: s.answer()}
	charts, err := s.charts()
	if err != nil {
		return page.Page{}, err
	}
	if ledger, ok := s.MoneySection(); ok {
		charts = append(charts, ledger)
	}
	computed := []page.Block{page.List(s.Computed())}
	if start, ok := s.Start(); ok {
		c, err := start.Build()
		if err != nil {
			return page.Page{}, err
		}
		computed = append(computed, c)
	}
	p.Sections = append(append([]page.Section{answer}, charts...),
		page.Section{Heading: "How it was computed", Blocks: computed},
		page.Section{Heading: "Assumptions", Blocks: s.assumptions()})
	return p, nil
}

func (s *Study) assumptions() []page.Block {
	blocks := []page.Block{page.Text("Every value behind this report. What differs from its default stands first.")}
	for _, t := range s.Assumptions() {
		blocks = append(blocks, page.Table{Table: t})
	}
	return blocks
}

func (s *Study) title() string {
	if n := len(s.Alternatives); n > 1 {
		return fmt.Sprintf("%s: %d ways to run the plant", s.Scenario, n)
	}
	return s.Scenario + ": the plant as it is"
}

// answer is key figures, the comparison and what limits the plant.
func (s *Study) answer() []page.Block {
	var blocks []page.Block
	if s.Note != "" {
		blocks = append(blocks, page.Text(s.Note))
	}
	blocks = append(blocks, page.Text(fmt.Sprintf("%s in key figures, with %.0f %% confidence intervals from %s:",
		quoted(s.Base().Name), 100*study.Confidence, count(s.SimulatedYears(), "simulated year"))), s.facts())
	if s.Replications < stats.Few {
		blocks = append(blocks, page.Remark(s.Known()))
	}
	if warning := s.Unsettled(); warning != "" {
		blocks = append(blocks, page.Remark(warning))
	}
	for _, t := range s.Comparison() {
		blocks = append(blocks, page.Table{Table: t})
	}
	if len(s.Alternatives) > 1 {
		blocks = append(blocks, page.Table{Table: s.Changes()})
	} else {
		blocks = append(blocks, page.Table{Table: s.Figures(s.Base())})
	}
	if len(s.Base().Plan.Models) > 1 {
		blocks = append(blocks, page.Table{Table: s.Models(s.Base())})
	}
	binds := s.Limits()
	if d := s.Demand(); d != "" {
		binds = append(binds, d)
	}
	return append(blocks, page.List(binds))
}

// facts are the key figures of the base.
func (s *Study) facts() page.Facts {
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
	return fmt.Sprintf("%s to %s", fixed(k*x.Low, digits), fixed(k*x.High, digits))
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

// charts are the sections with drawings.
func (s *Study) charts() ([]page.Section, error) {
	var out []page.Section
	if len(s.Alternatives) > 1 && len(s.levels(metric("luster_p10"))) > 0 {
		c, err := s.Picture().Build()
		if err != nil {
			return nil, err
		}
		out = append(out, page.Section{Heading: "Boats against luster", Blocks: []page.Block{c}})
	}
	year := page.Section{Heading: "Through the year"}
	shown := []int{0}
	if best := s.Best(); best > 0 {
		shown = append(shown, best)
	}
	for _, i := range shown {
		if band, ok := s.Weeks(i); ok {
			c, err := band.Build()
			if err != nil {
				return nil, err
			}
			year.Blocks = append(year.Blocks, c)
		}
	}
	year.Blocks = append(year.Blocks, page.Table{Table: s.Waits()})
	out = append(out, year)
	if stack, ok := s.MoldHours(); ok {
		c, err := stack.Build()
		if err != nil {
			return nil, err
		}
		out = append(out, page.Section{Heading: "Where a mold's hours go", Blocks: []page.Block{c}})
	}
	return out, nil
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
