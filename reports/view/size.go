package view

import (
	"fmt"
	"math"
	"strings"
	"time"

	"moldturn/reports/cells"
	"moldturn/sim"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Sized is a finished search for the cheapest plant.
type Sized struct {
	Target       study.Target `json:"target"`
	Labels       []string     `json:"labels"`
	Units        []string     `json:"-"` // one of each in words
	Now          []int        `json:"now"`
	Start        []int        `json:"on_paper"` // what the plant cannot do without, by hand
	Most         []int        `json:"most"`
	Prices       []float64    `json:"dollars_a_year_each"`
	PricesFrom   string       `json:"prices_from"`
	Before       float64      `json:"dollars_a_year_now"`
	Found        *study.Sized `json:"found"`
	Replications int          `json:"replications"`
	Runs         int          `json:"runs"` // of the plant, in all
	Years        int          `json:"years"`
	Next         string       `json:"next_limit"`
	NextPool     string       `json:"next_limit_is"` // the craft or place; "molds"
	Allow        string       `json:"not_allowed"`   // what --may leaves out and would move it
	Money        Money        `json:"-"`             // how amounts are written; its zero value is in $
}

// NextLimit says what limits a plant, over the year, and which craft or place
// that is; molds where work waits for none.
func NextLimit(p *sim.Plan, r *study.Runs) (text, name string) {
	ranked := r.Limits(wholeYear()...)
	if len(ranked) == 0 || ranked[0].Wait < waitWorthNaming {
		return "its molds; " + limit(p, ranked), "molds"
	}
	return limit(p, ranked), pool(p, ranked[0].Pool)
}

// Headline is the answer as a sentence.
func (s *Sized) Headline() string {
	want := fmt.Sprintf("%s boats a week", upTo1(s.Target.Boats))
	if !s.Found.Met {
		text := fmt.Sprintf("No size was found, within what may change, that reaches %s as asked: the best found %s.", want, s.reach())
		return text + " " + s.inTheWay()
	}
	var changes []string
	for i, n := range s.Found.Size {
		if d := n - s.Now[i]; d != 0 {
			changes = append(changes, strings.Replace(fmt.Sprintf("%s %+d", s.Labels[i], d), "-", "−", 1))
		}
	}
	how := "the plant as it is"
	if len(changes) > 0 {
		how = strings.Join(changes, ", ")
	}
	return fmt.Sprintf("To ship %s: %s. That %s. It costs %s %s", want, how, s.reach(), s.costs(), s.next())
}

// next names what limits the answer.
func (s *Sized) next() string {
	if s.NextPool == "" {
		return "Next limit: not known."
	}
	return fmt.Sprintf("Next limit: %s.", s.NextPool)
}

// costs is the price against the plant as it is.
func (s *Sized) costs() string {
	d := s.Found.Price - s.Before
	if dearer(d) < 500 {
		return "as much a year as now."
	}
	return fmt.Sprintf("%sk a year %s than now.", s.sign(fmt.Sprintf("%.0f", dearer(d)/1000)), moreOrLess(d))
}

// sign sets the sign of the currency before a number.
func (s *Sized) sign(number string) string {
	m := s.Money
	if m.Currency == "" {
		m.Currency = "$"
	}
	return m.sign(number, false)
}

// reach says how far the answer comes on fresh luck.
func (s *Sized) reach() string {
	t := s.Found.Confirmed
	plus := func(on bool, k float64) string {
		if !on || t.Half <= 0 {
			return ""
		}
		return " ± " + fixed(k*t.Half, decimals(k*t.Half, 2))
	}
	byWeeks, digits := s.Target.Share > 0, 1
	if !byWeeks {
		digits = decimals(t.Half, 2)
	}
	text := fmt.Sprintf("reaches it in %s%s weeks of 100 on fresh luck, in %s, the worst month, in %s%s; the mean week ships %s%s",
		weeksOf100(t.Year), plus(byWeeks && !s.Target.Worst, 100), time.Month(t.Month+1), weeksOf100(t.Worst), plus(byWeeks && s.Target.Worst, 100), fixed(t.Boats, digits), plus(!byWeeks, 1))
	if s.Target.Mix != nil && t.Mix < 1 {
		text += fmt.Sprintf(", out of the orders' mix: one model has %.0f %% of the share it must have", 100*t.Mix)
	}
	return text
}

// weeksOf100 never rounds a share up to one that it does not reach.
func weeksOf100(share float64) string { return fixed(math.Floor(100*share+1e-9), 0) }

// month says what the worst month has to do with the size.
func (s *Sized) month() string {
	t := s.Found.Confirmed
	name := time.Month(t.Month + 1)
	switch {
	case s.Target.Share == 0 || !s.Found.Met:
		return ""
	case s.Target.Worst && t.Year > t.Worst:
		return fmt.Sprintf("%s decides the size: the year as a whole would reach the target with less.", name)
	case s.Target.Worst:
		return "No month decides the size: all are alike."
	case t.Worst < s.Target.Share:
		return fmt.Sprintf("The size is for the year. In %s it reaches the target in %s weeks of 100 only; --worst-month sizes the plant for that month too.", name, weeksOf100(t.Worst))
	}
	return fmt.Sprintf("It is enough for the worst month, %s, too.", name)
}

// inTheWay says what keeps a target out of reach.
func (s *Sized) inTheWay() string {
	if s.Allow != "" {
		return fmt.Sprintf("What limits it now, %s, may not change: allow it with --may %s.", quoted(s.NextPool), quotedName(s.Allow))
	}
	var full []string
	for i, n := range s.Found.Size {
		if n >= s.Most[i] {
			full = append(full, quoted(s.Labels[i]))
		}
	}
	if len(full) > 0 {
		return "At the most that --most allows: " + and(full) + "."
	}
	return "Next limit: " + s.Next
}

// quotedName is a name as a command line takes it.
func quotedName(name string) string {
	if strings.Contains(name, " ") {
		return "\"" + name + "\""
	}
	return name
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
		{Head: "what"}, {Head: "now", Align: cells.Right}, {Head: "on paper", Align: cells.Right}, {Head: "then", Align: cells.Right}, {Head: s.sign("k a year"), Align: cells.Right},
		{Head: "−2", Align: cells.Right}, {Head: "−1", Align: cells.Right}, {Head: "this", Align: cells.Right},
		{Head: "+1", Align: cells.Right}, {Head: "+2", Align: cells.Right}}}
	for i, n := range s.Found.Size {
		row := cells.Texts(s.Labels[i], fmt.Sprint(s.Now[i]), fmt.Sprint(s.Start[i]), fmt.Sprint(n), fixed(s.Prices[i]/1000, 0))
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
	if s.Target.Share == 0 {
		return []cells.Table{t}
	}
	return []cells.Table{t, s.weeks()}
}

// weeks is the staircase in weeks of 100 that reach the target, of the year or of
// its worst month. A tilde marks what is cheaper than the answer and reaches the
// target in these runs, but not without doubt.
func (s *Sized) weeks() cells.Table {
	title := "Weeks of 100 that reach the target"
	if s.Target.Worst {
		title += " in the worst month"
	}
	t := cells.Table{Title: title, Columns: []cells.Column{{Head: "what"}, {Head: "−2", Align: cells.Right}, {Head: "−1", Align: cells.Right},
		{Head: "this", Align: cells.Right}, {Head: "+1", Align: cells.Right}, {Head: "+2", Align: cells.Right}}}
	for i, n := range s.Found.Size {
		row := cells.Texts(s.Labels[i])
		for d := -2; d <= 2; d++ {
			text := "–"
			for k, at := range s.Found.Around[i] {
				if at == n+d {
					text = s.weekCell(&s.Found.Stairs[i][k], d)
				}
			}
			row.Cells = append(row.Cells, cells.Cell{Text: text})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func (s *Sized) weekCell(t *study.Trial, steps int) string {
	share := t.Year
	if s.Target.Worst {
		share = t.Worst
	}
	text := weeksOf100(share)
	switch {
	case steps < 0 && t.Meets():
		return "~" + text
	case s.Target.Mix != nil && t.Mix < 1:
		return "(" + text + ")"
	}
	return text
}

// marks explain the signs of the table of weeks.
func (s *Sized) marks() string {
	tilde, outOfMix := false, false
	for i := range s.Found.Stairs {
		for k := range s.Found.Stairs[i] {
			t := &s.Found.Stairs[i][k]
			tilde = tilde || t.Meets() && s.Found.Around[i][k] < s.Found.Size[i]
			outOfMix = outOfMix || s.Target.Mix != nil && t.Mix < 1
		}
	}
	text := ""
	if tilde {
		text = "~: cheaper, and near the target, but fresh runs leave doubt that it reaches it. "
	}
	if outOfMix {
		text += fmt.Sprintf("(): a model has more than %.0f %% less of the boats than of the orders. ", 100*study.MixSlack)
	}
	return strings.TrimSpace(text)
}

// Staircase says what the last one of each thing that was added brings, and what
// one more would: "The 4th pull person on day adds 0.6 ± 0.2 boats a week, the
// 5th nothing clear."
func (s *Sized) Staircase() []string {
	var lines []string
	for i, n := range s.Found.Size {
		last, has := s.Found.Adds(i, n)
		if !has || !last.Clear || last.Mean <= 0 {
			continue
		}
		text := fmt.Sprintf("The %s %s adds %s boats a week", ordinal(n), s.Units[i], bare(last))
		if more, ok := s.Found.Adds(i, n+1); ok {
			switch {
			case more.Clear && more.Mean > 0:
				text += fmt.Sprintf(", the %s %s", ordinal(n+1), bare(more))
			default:
				text += fmt.Sprintf(", the %s nothing clear", ordinal(n+1))
			}
		}
		lines = append(lines, text+".")
	}
	return lines
}

// bare is a gain without its sign.
func bare(d stats.Difference) string { return strings.TrimPrefix(signedHalf(d), "+") }

// ordinal is "1st", "2nd", "3rd", "4th".
func ordinal(n int) string {
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			return fmt.Sprintf("%dst", n)
		case 2:
			return fmt.Sprintf("%dnd", n)
		case 3:
			return fmt.Sprintf("%drd", n)
		}
	}
	return fmt.Sprintf("%dth", n)
}

// Cost says what limits next and what the search took.
func (s *Sized) Cost() []string {
	next := "Next limit: " + s.Next
	if s.Allow != "" {
		next += fmt.Sprintf(" It may not change here: allow it with --may %s.", quotedName(s.Allow))
	}
	var lines []string
	for _, line := range []string{s.marks(), s.month(), next, s.took(), s.promise(), "Prices: " + s.PricesFrom + "."} {
		if line != "" {
			lines = append(lines, line)
		}
	}
	return lines
}

// took says how much was run.
func (s *Sized) took() string {
	return fmt.Sprintf("%s tried, %d runs of each in the search, %d runs of %s in all. %s held against fresh luck, up to %d runs each; the staircase is on fresh luck too.",
		sentence(count(s.Found.Tried, "size")), s.Replications, s.Runs, years(s.Years), sentence(count(s.Found.Held, "size")), s.Found.Most)
}

// promise says what the answer stands for.
func (s *Sized) promise() string {
	if !s.Found.Met {
		return ""
	}
	return fmt.Sprintf("Of the sizes held against fresh luck this is the cheapest that reaches the target without doubt, with %.0f %% confidence (\"moldturn explain sizing\").", 100*study.Confidence)
}
