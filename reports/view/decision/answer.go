package decision

import (
	"fmt"
	"math"

	"moldturn/reports/view"
	"moldturn/sim/record"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Answer is what to choose and how sure that is, in boats, weeks and money.
func Answer(s *view.Study, best int) []string {
	var out []string
	if best > 0 {
		out = append(out, why(s, best))
		if d, ok := s.Against(best, 0, named("boats_per_week")); ok {
			out = append(out, yearly(s.Alternatives[best].Name, d, openWeeks(s)))
		}
	}
	if line := worstWeeks(s, best); line != "" {
		out = append(out, line)
	}
	if best > 0 {
		if d, ok := s.Against(best, 0, named("contribution_per_week")); ok {
			out = append(out, earns(d, s.Size(named("contribution_per_week"), d)))
		}
	}
	for _, line := range []string{s.ByHand(), s.Demand()} {
		if line != "" {
			out = append(out, line)
		}
	}
	if s.Replications >= few {
		out = append(out, s.Known()+" "+luckOnly)
	}
	return out
}

// luckOnly is what no interval of a study holds.
const luckOnly = "Ranges hold the luck of weather, orders, people and failures, not mistakes in the plant's own numbers."

// why says by which rule the best is the answer.
func why(s *view.Study, best int) string {
	near, _ := s.Near(best)
	name := view.Quoted(s.Alternatives[best].Name)
	if len(near) == 0 {
		return fmt.Sprintf("%s is the answer: none of the others clearly ships as many boats.", name)
	}
	return fmt.Sprintf("%s is the answer: of the ways that clearly ship more boats, none is clearly better than it in boats or in luster without losing in the other.", name)
}

func named(name string) *study.Metric {
	m, _ := study.MetricNamed(name)
	return &m
}

// openWeeks is how many weeks of a year count, on average.
func openWeeks(s *view.Study) float64 {
	if len(s.Base().Outcomes) == 0 || s.Years == 0 {
		return 0
	}
	return float64(counted(&s.Base().Outcomes[0]).Frame.Open()) / float64(s.Years)
}

// counted is the run with orders always waiting, or else the only one.
func counted(o *study.Outcome) *record.Result {
	if o.Capacity != nil {
		return o.Capacity
	}
	return o.Dated
}

// yearly is a difference in boats a week as boats a year, with its range.
func yearly(name string, d stats.Difference, weeks float64) string {
	if !d.Known() {
		return fmt.Sprintf("In a year of %.0f open weeks %s makes %s more; one run does not show how sure that is.", weeks, view.Quoted(name), boats(d.Mean*weeks))
	}
	return fmt.Sprintf("In a year of %.0f open weeks %s makes %s more, with %.0f %% confidence between %s and %s.",
		weeks, view.Quoted(name), boats(d.Mean*weeks), 100*study.Confidence, view.Fixed(d.Low*weeks, 0), view.Fixed(d.High*weeks, 0))
}

// boats prints a number of boats.
func boats(n float64) string { return view.Count(int(math.Round(n)), "boat") }

// worstWeeks says how many boats nine open weeks in ten ship, now and with the
// best; empty where no week was open.
func worstWeeks(s *view.Study, best int) string {
	now, ok := nineInTen(s.Base())
	if !ok {
		return ""
	}
	text := fmt.Sprintf("9 open weeks in 10 ship %s or more today", view.Count(now, "boat"))
	if best > 0 {
		then, _ := nineInTen(&s.Alternatives[best])
		text += fmt.Sprintf(", %d or more with %s", then, view.Quoted(s.Alternatives[best].Name))
	}
	return text + "."
}

// nineInTen is the largest number of boats that at least nine open weeks in ten
// ship, over all simulated years.
func nineInTen(a *view.Alternative) (most int, ok bool) {
	var weeks []int
	for i := range a.Outcomes {
		r := counted(&a.Outcomes[i])
		for w, n := range r.WeekShips {
			if r.WeekOpen[w] {
				weeks = append(weeks, n)
			}
		}
	}
	if len(weeks) == 0 {
		return 0, false
	}
	for n := 1; ; n++ {
		reach := 0
		for _, w := range weeks {
			if w >= n {
				reach++
			}
		}
		if 10*reach < 9*len(weeks) {
			return n - 1, true
		}
	}
}

// earns says what a change in contribution is; size is its amount without sign.
func earns(d stats.Difference, size string) string {
	switch {
	case d.Clear && d.Mean > 0:
		return fmt.Sprintf("Contribution rises by %s a week if every boat is sold, before what the change itself costs to buy.", size)
	case d.Clear:
		return fmt.Sprintf("Contribution falls by %s a week if every boat is sold, before what the change itself costs to buy.", size)
	}
	return "Whether contribution rises is not clear."
}
