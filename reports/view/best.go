package view

import (
	"fmt"
	"slices"

	"moldturn/reports/cells"
)

// Best is a finished choice among ways to run a plant.
type Best struct {
	Metric  string     `json:"metric"`
	Label   string     `json:"-"`
	Unit    string     `json:"unit"`
	Chance  float64    `json:"chance"`
	Matters float64    `json:"matters"`
	Names   []string   `json:"names"`
	Means   []float64  `json:"means"` // 0 for what was not run in the choice
	Used    []int      `json:"runs"`
	Best    int        `json:"best"`
	Decided bool       `json:"decided"`
	Left    []int      `json:"left"`
	Drops   []BestDrop `json:"dropped"`
	Kept    int        `json:"kept_after_first_look"` // 0: no first look was needed
	Saved   float64    `json:"share_of_runs_saved"`
	Years   int        `json:"years_per_run"`
}

// BestDrop is a way that was dropped.
type BestDrop struct {
	Alternative int     `json:"alternative"`
	By          int     `json:"by"`
	After       int     `json:"after_runs"`
	Behind      float64 `json:"behind"`
}

// Headline is the choice as a sentence.
func (b *Best) Headline() string {
	name := quoted(b.Names[b.Best])
	lead := fmt.Sprintf("%s %s", fixed(b.Matters, decimals(b.Matters, 4)), b.Unit)
	if !b.Decided {
		return fmt.Sprintf("Not clear: %s leads in %s, but %d ways are too close to tell apart within the runs allowed.", name, b.Label, len(b.Left))
	}
	text := fmt.Sprintf("%s has the best %s. It is the right choice at least %.0f times in 100 when the best leads by %s or more", name, b.Label, 100*b.Chance, lead)
	if b.Kept > 0 {
		return text + fmt.Sprintf(": among the %d that a first look at all %d kept. The first look itself promises nothing.", b.Kept, len(b.Names)) + b.asGood()
	}
	return text + "." + b.asGood()
}

// asGood names the ways that were dropped for less than what matters: they are as
// good for the purpose.
func (b *Best) asGood() string {
	var names []string
	for _, d := range b.Drops {
		gap := b.Means[b.Best] - b.Means[d.Alternative]
		if max(gap, -gap) < b.Matters {
			names = append(names, quoted(b.Names[d.Alternative]))
		}
	}
	if len(names) == 0 {
		return ""
	}
	return " As good for the purpose, nearer to it than that: " + and(names) + "."
}

// Table is every way with its mean and why it was dropped.
func (b *Best) Table() cells.Table {
	t := cells.Table{Columns: []cells.Column{{Head: "way to run the plant"}, {Head: b.Label, Align: cells.Right}, {Head: "runs", Align: cells.Right}, {Head: "dropped"}}}
	digits := decimals(b.Matters, 4)
	why := map[int]string{}
	for _, d := range b.Drops {
		why[d.Alternative] = fmt.Sprintf("after %d runs, %s behind %s", d.After, fixed(d.Behind, digits), quoted(b.Names[d.By]))
	}
	left := map[int]bool{}
	for _, i := range b.Left {
		left[i] = true
	}
	for i, name := range b.Names {
		mean, text := fixed(b.Means[i], digits), why[i]
		switch {
		case left[i] && b.Decided:
			text = "no: the best"
		case left[i]:
			text = "no"
		case text == "":
			mean, text = "–", "after the first look"
		}
		t.Rows = append(t.Rows, cells.Texts(name, mean, fmt.Sprint(b.Used[i]), text))
	}
	return t
}

// Cost says what the choice took and what it saved.
func (b *Best) Cost() string {
	sum := 0
	for _, n := range b.Used {
		sum += n
	}
	most := slices.Max(b.Used)
	return fmt.Sprintf("%d runs of %s; %.0f %% fewer than the %d that equal shares would take, %d runs of each.", sum, years(b.Years), 100*b.Saved, most*len(b.Used), most)
}

// years is a number of years in words.
func years(n int) string {
	if n == 1 {
		return "1 year"
	}
	return fmt.Sprintf("%d years", n)
}
