package view

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/sim/shift"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Launch is the launch of a model, or of more molds for one, to be shown. Study
// carries names, inputs and how it was computed; its alternatives have no
// outcomes.
type Launch struct {
	Study  *Study
	Launch *study.Launch
}

// weeksShown are the weeks of the weekly table, relative to the first mold.
func (l *Launch) weeksShown() (from, to int) {
	return max(-4, -l.Launch.First), min(26, l.Launch.Weeks-l.Launch.First)
}

// names joins the names of models.
func (l *Launch) names(models []int) string {
	var out []string
	for _, m := range models {
		out = append(out, l.Launch.Plan.Models[m].Name)
	}
	return and(out)
}

// day is a day of the simulated calendar.
func (l *Launch) day(week int) string {
	d := shift.DateAt(l.Launch.Plan.Start, shift.WeekStart(l.Launch.Plan.Start, l.Launch.First+week))
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Format(time.DateOnly)
}

// Headline is what the launch brings, and what it takes from the other models.
func (l *Launch) Headline() string {
	spans := l.Launch.Spans()
	last := spans[len(spans)-1]
	m := metric("boats_per_week")
	with, own, ok := l.Launch.Rate(last, l.Launch.Models...)
	text := fmt.Sprintf("New molds for %s come from the week of %s on.", l.names(l.Launch.Models), l.day(0))
	if !ok {
		return text
	}
	text += fmt.Sprintf(" In %s %s %s boats a week, %s.", l.spanName(last), verb(len(l.Launch.Models), "it ships", "they ship"), alone(m, with), changeOwn(own))
	if others := l.Launch.Others(); len(others) > 0 {
		if _, d, _ := l.Launch.Rate(last, others...); d.Clear {
			text += fmt.Sprintf(" %s %s %s than without the launch.", l.names(others), verb(len(others), "ships", "ship"), boatsMore(d))
		} else {
			text += fmt.Sprintf(" For %s no change is clear.", l.names(others))
		}
	}
	return text
}

// changeOwn is the change of the launched models in words.
func changeOwn(d stats.Difference) string {
	if !d.Clear {
		return "with no clear change from the plant without them"
	}
	return boatsMore(d) + " than without them"
}

// boatsMore is a clear difference of boats a week in words.
func boatsMore(d stats.Difference) string {
	word := "more"
	if d.Mean < 0 {
		word = "fewer"
	}
	digits := decimals(d.Half, 2)
	text := fixed(math.Abs(d.Mean), digits)
	if d.Half > 0 {
		text += plusMinus(d.Half, digits)
	}
	return text + " boats a week " + word
}

func verb(n int, one, many string) string {
	if n == 1 {
		return one
	}
	return many
}

// spanName names a span: "weeks 5 to 8".
func (l *Launch) spanName(s study.Span) string {
	if s.To <= 0 {
		return fmt.Sprintf("the %d weeks before", s.To-s.From)
	}
	return fmt.Sprintf("weeks %d to %d", s.From+1, s.To)
}

// Tables are the tables of the launch in order.
func (l *Launch) Tables() []cells.Table { return []cells.Table{l.Summary(), l.Weekly()} }

// Summary is boats a week by model in stretches before and after the first mold
// comes, with the change that the launch makes.
func (l *Launch) Summary() cells.Table {
	t := cells.Table{Title: "Boats a week by model, and the change that the launch makes", Columns: right("model", "weeks", "boats a week", "change")}
	t.Columns[1].Align = cells.Left
	m := metric("boats_per_week")
	for i := range l.Launch.Plan.Models {
		for k, s := range l.Launch.Spans() {
			name, boats, gained := "", "–", "–"
			if k == 0 {
				name = l.Launch.Plan.Models[i].Name
			}
			if with, d, ok := l.Launch.Rate(s, i); ok {
				boats, gained = mean(m, with), change(m, d, decimals(d.Half, 2))
				if d.Mean == 0 && d.SD == 0 {
					gained = "0"
				}
			}
			row := cells.Texts(name, strings.TrimPrefix(strings.TrimPrefix(l.spanName(s), "the "), "weeks "), boats, gained)
			row.Strong = slices.Contains(l.Launch.Models, i)
			t.Rows = append(t.Rows, row)
		}
	}
	t.Notes = []string{fmt.Sprintf("Weeks are counted from that of the first new mold; shutdown weeks are left out. A change is the difference from the same plant, under the same luck, into which no new mold comes, with %.0f %% confidence intervals.", 100*study.Confidence)}
	return t
}

// Weekly is the launch week by week: molds that come, break-in turns, boats by
// model with the launch and, in brackets, without.
func (l *Launch) Weekly() cells.Table {
	t := cells.Table{Title: "Week by week: boats with the launch, and without it in brackets", Columns: right("week", "from", "new molds", "break-in turns")}
	for _, m := range l.Launch.Plan.Models {
		t.Columns = append(t.Columns, cells.Column{Head: m.Name, Align: cells.Right})
	}
	from, to := l.weeksShown()
	for w := from; w < to; w++ {
		label := fmt.Sprintf("%+d", w)
		if w >= 0 {
			label = fmt.Sprintf("%d", w+1)
		}
		row := cells.Texts(strings.Replace(label, "-", "−", 1), l.day(w), fmt.Sprint(l.Launch.Arrivals(w)), fixed(l.Launch.BreakIns(w), 1))
		for m := range l.Launch.Plan.Models {
			text := "shut"
			if !l.Launch.Closed(w) {
				text = fixed(weekMean(l.Launch.With, l.Launch.First+w, m), 1) + " (" + fixed(weekMean(l.Launch.Without, l.Launch.First+w, m), 1) + ")"
			}
			row.Cells = append(row.Cells, cells.Cell{Text: text})
		}
		t.Rows = append(t.Rows, row)
	}
	t.Notes = []string{fmt.Sprintf("Means of %s.", count(len(l.Launch.With), "repeat"))}
	return t
}

// weekMean is boats of some models shipped in a week, mean over replications.
func weekMean(books []*study.WeekBook, week int, models ...int) float64 {
	sum := 0
	for _, b := range books {
		for _, m := range models {
			sum += b.Boats[week][m]
		}
	}
	return float64(sum) / float64(len(books))
}

// Picture is boats a week of the launched models, and of the others with and
// without the launch, as means of four weeks.
func (l *Launch) Picture() (c chart.Lines, ok bool) {
	from, to := l.weeksShown()
	if to-from < 2 {
		return c, false
	}
	others := l.Launch.Others()
	c = chart.Lines{
		Figure: chart.Figure{ID: "launch", Finding: l.finding(),
			Caption: fmt.Sprintf("Boats shipped a week, each point the mean of the open weeks of the four up to it, over %s. Week 1 is that of the first new mold.", count(len(l.Launch.With), "repeat")),
			Alt:     "Lines of boats shipped by week around the launch."},
		XTitle: "week", Y: chart.Axis{Name: "boats shipped", Unit: "a week", Digits: 1, Zero: true},
		Series: []chart.Series{{Label: l.names(l.Launch.Models)}},
	}
	if len(others) > 0 {
		c.Series = append(c.Series, chart.Series{Label: l.names(others) + ", with the launch"}, chart.Series{Label: l.names(others) + ", without"})
	}
	for w := from; w < to; w++ {
		label := fmt.Sprint(w + 1)
		if w < 0 {
			label = "−" + fmt.Sprint(-w)
		}
		c.X = append(c.X, label)
		c.Series[0].Values = append(c.Series[0].Values, l.smooth(l.Launch.With, w, l.Launch.Models))
		if len(others) > 0 {
			c.Series[1].Values = append(c.Series[1].Values, l.smooth(l.Launch.With, w, others))
			c.Series[2].Values = append(c.Series[2].Values, l.smooth(l.Launch.Without, w, others))
		}
	}
	return c, true
}

// finding is what the picture shows, in short.
func (l *Launch) finding() string {
	spans := l.Launch.Spans()
	last := spans[len(spans)-1]
	_, own, ok := l.Launch.Rate(last, l.Launch.Models...)
	if !ok {
		return "Boats around the launch of " + l.names(l.Launch.Models)
	}
	return fmt.Sprintf("%s in %s: %s", l.names(l.Launch.Models), l.spanName(last), changeOwn(own))
}

// smooth is the mean of the open weeks of the four up to week w; NaN when none
// is open.
func (l *Launch) smooth(books []*study.WeekBook, w int, models []int) float64 {
	sum, open := 0.0, 0
	for k := max(w-3, -l.Launch.First); k <= w; k++ {
		if !l.Launch.Closed(k) {
			sum += weekMean(books, l.Launch.First+k, models...)
			open++
		}
	}
	if open == 0 {
		return math.NaN()
	}
	return sum / float64(open)
}

// Page is the launch as a page.
func (l *Launch) Page() (page.Page, error) {
	out := page.Page{Title: l.Study.Scenario + ": launch of " + l.names(l.Launch.Models), Lead: l.Headline(), Foot: []string{Caution}}
	answer := page.Section{Heading: "The launch"}
	if c, ok := l.Picture(); ok {
		built, err := c.Build()
		if err != nil {
			return page.Page{}, err
		}
		answer.Blocks = append(answer.Blocks, built)
	}
	for _, t := range l.Tables() {
		answer.Blocks = append(answer.Blocks, page.Table{Table: t})
	}
	out.Sections = []page.Section{answer,
		{Heading: "How it was computed", Blocks: []page.Block{page.List{
			fmt.Sprintf("%s of the plant with the new molds and of the same plant without them, under the same weather, orders, absences and failures.", count(l.Study.Replications, "repeat")),
			"A new mold is waxed as its break-in asks, takes plain orders first and is held longer until it is broken in; it sticks more often. Models with a learning curve take longer for their first boats.",
			fmt.Sprintf("Luck is drawn from the number %d; the same number, program and inputs give the same page, byte for byte.", l.Study.Seed),
		}}},
		{Heading: "Assumptions", Blocks: l.Study.assumptions()}}
	return out, nil
}
