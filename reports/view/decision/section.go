// Package decision is the page for the wall: the question, the answer with its
// range, the ways to choose from, one picture, what limits the plant, what the
// answer assumes and what would change it. It fits one sheet of paper.
package decision

import (
	"fmt"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/reports/view/assume"
)

// Section is the decision of a study.
func Section(s *view.Study) (out page.Section, ok bool, err error) {
	best := s.Best()
	out = page.Section{Heading: "Decision", Sheet: true}
	if s.Note != "" {
		out.Blocks = append(out.Blocks, page.Text(s.Note))
	}
	if len(s.Alternatives) == 1 {
		out.Blocks = append(out.Blocks, s.KeyFigures())
	}
	out.Blocks = append(out.Blocks, page.List(Answer(s, best)))
	if s.Replications < few || s.Unsettled() != "" {
		out.Blocks = append(out.Blocks, page.Remark(warning(s)))
	}
	if c, ok := Table(s, best); ok {
		out.Blocks = append(out.Blocks, c)
	}
	picture, ok, err := s.PictureSection()
	if err != nil {
		return out, false, err
	}
	if ok {
		out.Blocks = append(out.Blocks, picture.Blocks...)
	}
	out.Blocks = append(out.Blocks, panels(s, best))
	return out, true, nil
}

// Question is what the report answers.
func Question(s *view.Study) string {
	if n := len(s.Alternatives); n > 1 {
		return fmt.Sprintf("%s: which of %d ways to run the plant ships the most boats, and at what luster?", s.Scenario, n)
	}
	return fmt.Sprintf("%s: what does the plant ship as it is, and with what luster?", s.Scenario)
}

// few is the number of repeats below which the page warns.
const few = 10

func warning(s *view.Study) string {
	text := ""
	if s.Replications < few {
		text = s.Known()
	}
	if u := s.Unsettled(); u != "" {
		if text != "" {
			text += " "
		}
		text += u
	}
	return text
}

// panels are the lists under the picture.
func panels(s *view.Study, best int) page.Panels {
	out := page.Panels{{Heading: "What limits the plant now", List: short(s.LimitsOf(0))}}
	if best > 0 {
		out = append(out, page.Panel{Heading: "What limits it after the change", List: short(s.LimitsOf(best))})
	}
	return append(out, page.Panel{Heading: "What the answer assumes", List: assumed(s, best)},
		page.Panel{Heading: "What would change it", List: Changes(s, best)})
}

// short keeps the lines of the two months and of what is always full.
func short(lines []string) []string { return lines[:min(len(lines), 3)] }

// mostAssumed is how many guesses the sheet names.
const mostAssumed = 2

// assumed names what the answer rests on: the demand it was worked out with, and
// the guesses most worth checking.
func assumed(s *view.Study, best int) []string {
	out := []string{"Boats and luster are what the plant can do with orders always waiting; dates come from an order book."}
	items := assume.Rank(s, best)
	if len(items) == 0 {
		return out
	}
	var mine, others []string
	for _, x := range items {
		line := guessed(x.Path, x.Doc, x.Value, x.Why)
		switch {
		case x.Check > assume.Limit:
		case best > 0 && x.Turns(&s.Alternatives[best]) != "":
			mine = append(mine, line)
		default:
			others = append(others, line)
		}
	}
	guesses := append(mine, others...)
	out = append(out, guesses[:min(len(guesses), mostAssumed)]...)
	return append(out, assume.Marks(items))
}
