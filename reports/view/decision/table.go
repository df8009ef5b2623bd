package decision

import (
	"fmt"
	"slices"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim/study"
)

// mostWays is how many ways the sheet compares; more stand in the tables of the
// next section.
const mostWays = 6

// decides are the figures that decide, in the order of the columns.
var decides = []string{"boats_per_week", "luster_p10", "share_at_target", "on_time_share", "contribution_per_week"}

// Table is the ways to choose from; ok is false with one of them.
func Table(s *view.Study, best int) (c page.Choice, ok bool) {
	if len(s.Alternatives) < 2 {
		return c, false
	}
	ways := shown(s, best)
	near, _ := s.Near(best)
	for _, i := range ways {
		c.Rows = append(c.Rows, page.ChoiceRow{Name: s.Alternatives[i].Name, Mark: mark(i, best, near), Note: plain(s.Alternatives[i].Changes)})
	}
	for _, name := range decides {
		m, _ := study.MetricNamed(name)
		judged := s.Judge(&m)
		if judged == nil {
			continue
		}
		c.Columns = append(c.Columns, s.HeadOf(&m))
		for r, i := range ways {
			c.Rows[r].Cells = append(c.Rows[r].Cells, cell(judged[i]))
		}
	}
	c.Notes = []string{fmt.Sprintf("Better and worse are against %s. “±” is half of a %.0f %% confidence interval; “not clear” is a difference that luck could have made. A dash: too few runs to judge, or all of them alike.",
		view.Quoted(s.Base().Name), 100*study.Confidence)}
	if n := len(s.Alternatives) - len(ways); n > 0 {
		c.Notes = append(c.Notes, fmt.Sprintf("%s more stand in the tables of the next section.", view.Count(n, "way")))
	}
	return c, len(c.Columns) > 0
}

func cell(j view.Judged) page.ChoiceCell {
	sense := page.Unclear
	switch {
	case j.Change == "":
		sense = page.Silent
	case j.Sense > 0:
		sense = page.Better
	case j.Sense < 0:
		sense = page.Worse
	}
	return page.ChoiceCell{Value: j.Value, Change: j.Change, Sense: sense}
}

// mark is the word beside a way.
func mark(i, best int, near []int) string {
	switch {
	case i == best && best > 0:
		return "the answer"
	case i == best:
		return "stay with it"
	case best > 0 && slices.Contains(near, i):
		return "as many boats"
	}
	return ""
}

// shown are the ways on the sheet, in their order: the base, the best, those
// beside it, then those that ship most.
func shown(s *view.Study, best int) []int {
	m, _ := study.MetricNamed("boats_per_week")
	boats := func(i int) float64 {
		x, _ := s.Alternatives[i].Summary(&m)
		return x.Mean
	}
	near, _ := s.Near(best)
	first := append([]int{0, best}, near...)
	var rest []int
	for i := range s.Alternatives {
		if !slices.Contains(first, i) {
			rest = append(rest, i)
		}
	}
	slices.SortStableFunc(rest, func(a, b int) int {
		switch {
		case boats(a) > boats(b):
			return -1
		case boats(a) < boats(b):
			return 1
		}
		return 0
	})
	all := slices.Concat(first, rest)
	var out []int
	for _, i := range all {
		if !slices.Contains(out, i) && len(out) < mostWays {
			out = append(out, i)
		}
	}
	slices.Sort(out)
	return out
}
