package chart_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/reports/page"
)

// namer turns a plain name into the one used on the page: itself, or something
// hostile.
type namer func(string) string

func plain(s string) string { return s }

// demo is a page with every block and every kind of figure. All numbers are
// invented.
func demo(t *testing.T, n namer) page.Page {
	t.Helper()
	figures := []interface {
		Build() (page.Chart, error)
	}{demoScatter(n), demoBand(n), demoStack(n), demoLines(n), demoHeat(n), demoIntervals(n), demoPareto(n), demoGantt(n), demoLoads(n)}
	var built []page.Block
	for _, f := range figures {
		c, err := f.Build()
		if err != nil {
			t.Fatal(err)
		}
		built = append(built, c)
	}
	return page.Page{
		Title: n("Should Fenwater build a third Rush 23 mold?"),
		Lead:  n("A third mold ships 0.6 boats a week more; the lay-up crew binds before a fourth would help."),
		Sections: []page.Section{
			{Heading: n("The answer"), Blocks: []page.Block{
				page.Facts{{Label: n("boats a week"), Value: n("4.1"), Note: n("3.9 to 4.3, 40 simulated years")}, {Label: n("luster at the pull"), Value: n("86.2"), Note: n("85.7 to 86.8 gloss units")},
					{Label: n("late orders"), Value: n("1 in 12"), Note: n("today 1 in 5")}, {Label: n("payback"), Value: n("14 months"), Note: n("11 to 19 months")}},
				page.Text(n("The plant ships what its molds allow for eight months of the year. In the cool season the gel coat takes longer to cure, and the molds wait.")),
				page.Remark(n("Only 12 simulated years: intervals are wide, and differences below 0.2 boats a week are not clear.")),
				page.List{n("Build the third mold before April."), n("Keep the lay-up crew at nine.")},
			}},
			{Heading: n("Alternatives compared"), Blocks: []page.Block{built[0], demoTable(n), built[5]}},
			{Heading: n("Through the year"), Blocks: []page.Block{built[1], built[3], built[4]}},
			{Heading: n("Where time goes"), Blocks: []page.Block{built[2], built[6], built[7], built[8]}},
		},
		Foot: []string{n("All data is invented. Fenwater is an invented builder.")},
	}
}

func demoScatter(n namer) chart.Scatter {
	c := chart.Scatter{
		Figure: chart.Figure{ID: "luster", Finding: n("A third mold gains boats without losing luster; shorter cure holds lose it"),
			Caption: n("Mean of 40 simulated years with 95 % confidence intervals."), Alt: n("Scatter of boats a week against luster for nine alternatives.")},
		X:      chart.Axis{Name: n("boats shipped"), Unit: n("a week"), Digits: 2},
		Y:      chart.Axis{Name: n("luster at the pull"), Unit: n("gloss units"), Digits: 1},
		Groups: []chart.Group{{Label: n("nothing better on both"), Join: true}, {Label: n("beaten by another")}},
	}
	for _, p := range []struct {
		name         string
		x, dx, y, dy float64
		group        int
	}{
		{"as today", 3.48, 0.08, 86.4, 0.5, 1}, {"third Rush 23 mold", 4.10, 0.10, 86.2, 0.6, 0},
		{"cure hold 2 h shorter", 3.86, 0.09, 83.1, 0.8, 1}, {"cure hold 1 h shorter", 3.66, 0.09, 85.0, 0.6, 1},
		{"wax every 6 pulls", 3.40, 0.08, 88.3, 0.4, 0}, {"one more laminator", 3.52, 0.09, 86.5, 0.5, 0},
		{"heated bay in winter", 3.71, 0.07, 87.1, 0.5, 0}, {"third mold and one more laminator", 4.31, 0.11, 85.9, 0.6, 0},
		{"Saturday shift", 3.98, 0.10, 85.1, 0.7, 1},
	} {
		c.Points = append(c.Points, chart.Point{Name: n(p.name), Group: p.group,
			X: chart.Estimate{Value: p.x, Low: p.x - p.dx, High: p.x + p.dx}, Y: chart.Estimate{Value: p.y, Low: p.y - p.dy, High: p.y + p.dy}})
	}
	return c
}

func weeks(n namer) []string {
	var out []string
	for w := range 52 {
		out = append(out, n(fmt.Sprintf("week %d", w+1)))
	}
	return out
}

func demoBand(n namer) chart.Band {
	r := rand.New(rand.NewPCG(1, 2))
	c := chart.Band{
		Figure: chart.Figure{ID: "weeks", Finding: n("From November to March the plant ships one boat a week less"),
			Caption: n("40 simulated years of the plant as it is today."), Alt: n("Line of boats a week over 52 weeks with a band.")},
		XTitle: n("week of the year"), X: weeks(n), Y: chart.Axis{Name: n("boats shipped"), Unit: n("a week"), Digits: 1, Zero: true},
		Middle: n("mean of the years"), Range: n("8 years in 10"), Goals: []chart.Goal{{Label: n("promised"), Value: 3.5}},
		Series: make([]chart.Ribbon, 1),
	}
	for w := range 52 {
		m := 3.6 - 0.7*math.Cos(float64(w-2)/52*2*math.Pi) + 0.15*r.NormFloat64()
		s := &c.Series[0]
		s.Middle, s.Low, s.High = append(s.Middle, m), append(s.Low, m-0.7-0.2*r.Float64()), append(s.High, m+0.6+0.3*r.Float64())
	}
	return c
}

func demoLines(n namer) chart.Lines {
	c := chart.Lines{
		Figure: chart.Figure{ID: "backlog", Finding: n("With a third mold the backlog is gone by August"), Alt: n("Backlog of three alternatives over 52 weeks.")},
		XTitle: n("week of the year"), X: weeks(n), Y: chart.Axis{Name: n("orders waiting"), Unit: n("boats"), Zero: true},
	}
	for i, name := range []string{"as today", "third Rush 23 mold", "Saturday shift"} {
		s := chart.Series{Label: n(name)}
		for w := range 52 {
			s.Values = append(s.Values, math.Max(0, 18-float64(w)*[]float64{0.05, 0.55, 0.3}[i]+3*math.Sin(float64(w)/5)))
		}
		c.Series = append(c.Series, s)
	}
	c.Series[2].Values[20] = math.NaN()
	return c
}

func demoStack(n namer) chart.Stack {
	return chart.Stack{
		Figure: chart.Figure{ID: "mold-hours", Finding: n("A Rush 23 mold waits 31 hours of its week, mostly for laminators"),
			Caption: n("Hours of an average mold week (168 h), 40 simulated years."), Alt: n("Stacked bars of mold hours by model.")},
		X:     chart.Axis{Name: n("mold hours"), Unit: n("h a week"), Digits: 1},
		Share: true,
		Parts: []string{n("worked on"), n("curing"), n("waits for laminators"), n("waits for the booth"), n("waits for the hoist"), n("no order"), n("night and weekend")},
		Rows: []chart.StackRow{
			{n("Sedge 20"), []float64{31, 38, 9, 4, 0.6, 6, 79.4}}, {n("Rush 23"), []float64{36, 40, 22, 6, 3, 0, 61}},
			{n("Reed 26"), []float64{33, 45, 12, 3, 2, 1, 72}}, {n("small parts"), []float64{18, 20, 3, 1, 0, 30, 96}},
		},
	}
}

func demoHeat(n namer) chart.Heat {
	c := chart.Heat{
		Figure: chart.Figure{ID: "months", Finding: n("July and August cost luster in every area but the heated bay"),
			Alt: n("Grid of luster by month and area.")},
		Value: chart.Axis{Name: n("luster at the pull"), Unit: n("gloss units"), Digits: 0}, XTitle: n("month"),
	}
	for _, m := range []string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"} {
		c.Columns = append(c.Columns, n(m))
	}
	for i, a := range []string{"gel booth", "lay-up north", "lay-up south", "heated bay"} {
		c.Rows = append(c.Rows, n(a))
		var vs []float64
		for m := range 12 {
			vs = append(vs, 87+float64(i)-4*math.Exp(-math.Pow(float64(m)-6.5, 2)/3))
		}
		c.Values = append(c.Values, vs)
	}
	c.Values[1][3] = math.NaN()
	return c
}

func demoIntervals(n namer) chart.Intervals {
	return chart.Intervals{
		Figure: chart.Figure{ID: "gain", Finding: n("Only the third mold clearly gains more than half a boat a week"), Caption: n("Paired differences against today, 95 % confidence."), Alt: n("Differences with intervals.")},
		X:      chart.Axis{Name: n("boats more than today"), Unit: n("a week"), Digits: 2}, Dots: true,
		Rows: []chart.IntervalRow{
			{n("third Rush 23 mold"), chart.Estimate{Value: 0.62, Low: 0.55, High: 0.69}}, {n("Saturday shift"), chart.Estimate{Value: 0.50, Low: 0.40, High: 0.60}},
			{n("heated bay in winter"), chart.Estimate{Value: 0.23, Low: 0.17, High: 0.29}}, {n("one more laminator"), chart.Estimate{Value: 0.04, Low: -0.03, High: 0.11}},
			{n("wax every 6 pulls"), chart.Estimate{Value: -0.08, Low: -0.12, High: -0.04}},
		},
	}
}

func demoPareto(n namer) chart.Pareto {
	return chart.Pareto{
		Figure: chart.Figure{ID: "causes", Finding: n("Two causes make two thirds of the rework"), Alt: n("Sorted shares of rework hours by cause.")},
		Of:     chart.Axis{Name: n("rework"), Unit: n("h a week"), Digits: 1},
		Causes: []chart.Cause{{n("porosity"), 9.5}, {n("print-through"), 14.2}, {n("alligatoring"), 4.1}, {n("fish-eye"), 2.2}, {n("sag"), 3.0}, {n("other"), 2.4}},
	}
}

func demoGantt(n namer) chart.Gantt {
	monday := time.Date(2031, 3, 3, 0, 0, 0, 0, time.UTC)
	c := chart.Gantt{
		Figure: chart.Figure{ID: "diary", Finding: n("The two Rush 23 molds wait for the same crew on Tuesday"), Alt: n("Bars of work by mold over one week.")},
		From:   monday, To: monday.AddDate(0, 0, 5),
		Rows:  []string{n("Sedge 20 mold 1"), n("Rush 23 mold 1"), n("Rush 23 mold 2"), n("Reed 26 mold 1")},
		Kinds: []string{n("worked on"), n("curing"), n("waits for laminators")}, Shaded: n("night"),
	}
	for day := range 5 {
		c.Shades = append(c.Shades, chart.Shade{From: monday.AddDate(0, 0, day).Add(-6 * time.Hour), To: monday.AddDate(0, 0, day).Add(7 * time.Hour)})
	}
	for row := range 4 {
		at := monday.Add(time.Duration(row*3-6) * time.Hour)
		for k := range 12 {
			end := at.Add(time.Duration(6+(k*5+row*3)%9) * time.Hour)
			c.Bars = append(c.Bars, chart.Bar{Row: row, Kind: k % 3, Start: at, End: end, Label: n([]string{"lay-up", "cure", "wait"}[k%3]), Thin: k%3 == 2})
			at = end
		}
	}
	return c
}

func demoLoads(n namer) chart.Loads {
	c := chart.Loads{Figure: chart.Figure{ID: "by-week", Finding: n("Work waits longest for laminators, most in week 28"), Alt: n("Grid of use and waits by week.")},
		Rows: []string{n("lamination"), n("gel booth"), n("hoist")}, Weeks: weeks(n)}
	for w := range c.Weeks {
		tick := ""
		if w%13 == 0 {
			tick = n([]string{"Jan", "Apr", "Jul", "Oct"}[w/13])
		}
		c.Ticks = append(c.Ticks, tick)
	}
	for i := range c.Rows {
		var use, wait []float64
		for w := range c.Weeks {
			hot := math.Exp(-math.Pow(float64(w)-28, 2) / 60)
			use, wait = append(use, 60-20*float64(i)+30*hot), append(wait, (20+90*hot)/float64(1+i*i))
		}
		use[51], wait[51] = math.NaN(), math.NaN()
		c.Use, c.Wait = append(c.Use, use), append(c.Wait, wait)
	}
	return c
}

func demoTable(n namer) page.Table {
	return page.Table{Table: cells.Table{
		Title:   n("Alternatives by boats shipped"),
		Columns: []cells.Column{{Head: n("alternative")}, {Head: n("boats a week"), Align: cells.Right}, {Head: n("luster"), Align: cells.Right}, {Head: n("what binds")}},
		Rows: []cells.Row{
			cells.Texts(n("as today"), n("3.48"), n("86.4"), n("molds")),
			{Cells: []cells.Cell{{Text: n("third Rush 23 mold")}, {Text: n("4.10"), Notes: []int{0}}, {Text: n("86.2")}, {Text: n("lay-up crew")}}, Strong: true},
			cells.Texts(n("Saturday shift"), n("3.98"), n("85.1"), n("molds")),
		},
		Notes: []string{n("only 12 simulated years")},
	}}
}
