package view

import (
	"fmt"

	"moldturn/reports/page"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Page is the whole report of a sweep.
func (s *Sweep) Page() (page.Page, error) {
	p := page.Page{Title: s.title(), Lead: s.Headline(), Foot: []string{Caution}}
	answer := page.Section{Heading: "The answer", Blocks: s.answer()}
	p.Sections = append(p.Sections, answer)
	shapes := page.Section{Heading: "Figure by figure"}
	for k := range s.Of {
		for _, b := range s.pictures(k) {
			c, err := b.Build()
			if err != nil {
				return page.Page{}, err
			}
			shapes.Blocks = append(shapes.Blocks, c)
		}
	}
	if len(shapes.Blocks) > 0 {
		p.Sections = append(p.Sections, shapes)
	}
	if f, ok := s.Frontier(); ok {
		c, err := f.Picture().Build()
		if err != nil {
			return page.Page{}, err
		}
		p.Sections = append(p.Sections, page.Section{Heading: "What beats what", Blocks: []page.Block{c, page.Table{Table: f.Table()}}})
	}
	p.Sections = append(p.Sections,
		page.Section{Heading: "All settings", Blocks: []page.Block{page.Table{Table: s.Table()}}},
		page.Section{Heading: "How it was computed", Blocks: []page.Block{page.List(s.Computed())}},
		s.assumptions())
	return p, nil
}

func (s *Sweep) answer() []page.Block {
	var blocks []page.Block
	if s.Note != "" {
		blocks = append(blocks, page.Text(s.Note))
	}
	for _, line := range s.idle() {
		blocks = append(blocks, page.Remark(line))
	}
	if s.Replications < stats.Few {
		blocks = append(blocks, page.Remark(s.Known()))
	}
	var lines []string
	for k := range s.Of {
		lines = append(lines, s.finding(&s.Of[k]))
	}
	blocks = append(blocks, page.List(append(lines, s.Known())))
	if t, ok := s.Effects(); ok {
		blocks = append(blocks, page.Table{Table: t})
	}
	return blocks
}

func (s *Sweep) assumptions() page.Section {
	section := page.Section{Heading: "Assumptions", Blocks: []page.Block{page.Text("Every value of the plant as it is, before the changes of the sweep.")}}
	for _, t := range (&Study{Inputs: s.Inputs}).Assumptions() {
		section.Blocks = append(section.Blocks, page.Table{Table: t})
	}
	return section
}

// Computed says how the figures came about.
func (s *Sweep) Computed() []string {
	lines := []string{
		fmt.Sprintf("%s of each setting, with %s before them that %s not counted, so that the plant is in full swing.",
			count(s.Replications, "repeat")+" of "+count(s.Years, "year"), count(s.Warm, "year"), isAre(s.Warm)),
		s.form(),
		"All settings meet the same weather, orders, absences and failures, so that differences come from the change alone.",
		fmt.Sprintf("“±” is half of a %.0f %% confidence interval (Student's t over the repeats). Differences from the base are paired, and their intervals hold together for all settings (Bonferroni); one that includes zero is not clear.", 100*study.Confidence),
		fmt.Sprintf("The knee is the setting with the fewest steps from the worst one that brings %.0f %% of the gain from the worst to the best. Two inputs have a ridge if the best value of one lies inside its range, not at an end, for every value of the other.", 100*study.NineTenths),
	}
	if s.narrower() > 0 {
		lines = append(lines, fmt.Sprintf("With separate luck for each setting the intervals of differences in %s would be %s times as wide (the middle one of all settings).", lower(&s.Of[0]), fixed(s.narrower(), 1)))
	}
	if f, ok := s.Frontier(); ok {
		lines = append(lines, f.Method())
	}
	lines = append(lines, fmt.Sprintf("Luck is drawn from the number %d; the same number, program and inputs give the same report, byte for byte.", s.Seed))
	if s.Version != "" {
		lines = append(lines, "Program: "+s.Version+".")
	}
	if s.Hash != "" {
		lines = append(lines, "Fingerprint of the inputs (SHA-256): "+s.Hash+".")
	}
	return lines
}

// form says how the settings were chosen.
func (s *Sweep) form() string {
	switch s.Design.Form {
	case study.Each:
		return "One input was changed at a time, the others left as they are."
	case study.Latin:
		return fmt.Sprintf("The %d settings are a Latin hypercube: the range of each input is cut into as many slices, and each slice is used once. Effects are slopes of straight lines put through all settings by least squares, repeat by repeat.", len(s.Points))
	}
	return "Every value of an input was tried with every value of the others."
}

// narrower is how many times as wide the differences of the first figure would
// be without shared luck, in the middle; 0 if it is not known.
func (s *Sweep) narrower() float64 {
	var all []float64
	for i := range s.Points {
		if d, ok := s.Points[i].Difference(&s.Base, &s.Of[0], 1); ok && d.Narrower > 0 {
			all = append(all, d.Narrower)
		}
	}
	return stats.Quantile(all, 0.5)
}
