package view

import (
	"fmt"
	"strings"
	"time"

	"moldturn/reports/cells"
	"moldturn/sim"
	"moldturn/sim/study"
)

// Sized is a finished search for the cheapest plant.
type Sized struct {
	Target       study.Target `json:"target"`
	Labels       []string     `json:"labels"`
	Now          []int        `json:"now"`
	Prices       []float64    `json:"dollars_a_year_each"`
	Before       float64      `json:"dollars_a_year_now"`
	Found        *study.Sized `json:"found"`
	Replications int          `json:"replications"`
	Fresh        int          `json:"fresh_replications"`
	Years        int          `json:"years"`
	Next         string       `json:"next_limit"`
}

// NextLimit says what limits a plant, over the year.
func NextLimit(p *sim.Plan, r *study.Runs) string {
	return limit(p, r.Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11))
}

// Headline is the answer as a sentence.
func (s *Sized) Headline() string {
	want := fmt.Sprintf("%s boats a week", upTo1(s.Target.Boats))
	t := s.Found.Confirmed
	reach := fmt.Sprintf("%.0f weeks of 100 on fresh luck, %.0f in %s, the worst month; the mean week ships %.1f", 100*t.Year, 100*t.Worst, time.Month(t.Month+1), t.Boats)
	if !s.Found.Met {
		return fmt.Sprintf("No size within the limits reaches %s as asked: the best found reaches it in %s.", want, reach)
	}
	var changes []string
	for i, n := range s.Found.Size {
		if d := n - s.Now[i]; d != 0 {
			changes = append(changes, fmt.Sprintf("%s %+d", s.Labels[i], d))
		}
	}
	how := "the plant as it is"
	if len(changes) > 0 {
		how = strings.Join(changes, ", ")
	}
	return fmt.Sprintf("To ship %s: %s. That reaches it in %s. It costs $%.0fk a year %s than now.", want, how, reach, dearer(s.Found.Price-s.Before)/1000, moreOrLess(s.Found.Price-s.Before))
}

func upTo1(x float64) string { return strings.TrimSuffix(fixed(x, 1), ".0") }

func dearer(d float64) float64 { return max(d, -d) }

func moreOrLess(d float64) string {
	if d < 0 {
		return "less"
	}
	return "more"
}

// Tables are the size found and the staircase around it.
func (s *Sized) Tables() []cells.Table {
	t := cells.Table{Title: "The cheapest found, and boats a week with one and two more or less", Columns: []cells.Column{
		{Head: "what"}, {Head: "now", Align: cells.Right}, {Head: "then", Align: cells.Right}, {Head: "$k a year each", Align: cells.Right},
		{Head: "two less", Align: cells.Right}, {Head: "one less", Align: cells.Right}, {Head: "this", Align: cells.Right},
		{Head: "one more", Align: cells.Right}, {Head: "two more", Align: cells.Right}}}
	for i, n := range s.Found.Size {
		row := cells.Texts(s.Labels[i], fmt.Sprint(s.Now[i]), fmt.Sprint(n), fixed(s.Prices[i]/1000, 0))
		for d := -2; d <= 2; d++ {
			text := "–"
			for k, at := range s.Found.Around[i] {
				if at == n+d {
					text = fixed(s.Found.Stairs[i][k].Boats, 1)
				}
			}
			row.Cells = append(row.Cells, cells.Cell{Text: text})
		}
		t.Rows = append(t.Rows, row)
	}
	return []cells.Table{t}
}

// Cost says what limits next and what the search took.
func (s *Sized) Cost() string {
	return fmt.Sprintf("Next limit: %s %d sizes tried, %d runs of %s each; the answer was confirmed with %d runs of fresh luck.",
		s.Next, s.Found.Tried, s.Replications, years(s.Years), s.Fresh)
}
