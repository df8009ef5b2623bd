package workbook

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/view"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

const decisionSheet = "Decision"

// boatsPerWeek is the figure that is drawn.
const boatsPerWeek = "boats_per_week"

// keyFigures are those of the first sheet, in its order.
func keyFigures() []string {
	return []string{boatsPerWeek, "luster_p10", "share_at_target", "on_time_share", "cost_per_boat", "contribution_per_week"}
}

// front is the first sheet while it is written from top to bottom.
type front struct {
	*book
	row int             // the next to write
	top map[int]float64 // heights of rows, in points, where they are not usual
	err error
}

// lastColumn is the last of the columns with text; charts stand to its right.
const lastColumn = "I"

// charactersAcross is about how many characters a line over all columns holds.
const charactersAcross = 145

// decision writes the first sheet.
func (b *book) decision(months []monthRows) error {
	if err := b.paper(decisionSheet); err != nil {
		return err
	}
	for _, c := range []struct {
		columns string
		width   float64
	}{{"A", 30}, {"B", 30}, {"C:H", 11}, {"I", 14}} {
		if err := b.file.SetColWidth(decisionSheet, c.columns[:1], c.columns[len(c.columns)-1:], c.width); err != nil {
			return err
		}
	}
	s := b.study
	f := &front{book: b, row: 1, top: map[int]float64{}}
	f.across(title, s.Scenario)
	f.across(prose, s.Note)
	f.across(strong, s.Headline())
	f.across(prose, s.Known())
	boats := f.figures()
	f.changes()
	f.lines("What limits the plant now", append(s.Limits(), s.Demand()))
	f.lines("What it rests on", []string{rests(s)})
	f.lines("How it was computed", s.Computed())
	f.lines("", []string{view.Caution})
	if f.err != nil {
		return f.err
	}
	if err := b.file.SetPanes(decisionSheet, frozen(1)); err != nil { // the title stays in sight
		return err
	}
	return f.charts(boats, months)
}

// across writes a text over all columns, high enough to be read; an empty text
// is left out.
func (f *front) across(k kind, text string) {
	if text == "" || f.err != nil {
		return
	}
	height := usual * float64(1+len([]rune(text))/charactersAcross)
	if k == title || k == strong {
		height = 20 * float64(1+len([]rune(text))*5/4/charactersAcross)
	}
	f.set("A", k, text)
	f.merge("A", lastColumn)
	f.high(height)
	f.row++
}

// usual is the height of a row with one line, in points.
const usual = 15

// high sets the height of the row.
func (f *front) high(points float64) {
	f.top[f.row] = points
	if f.err == nil {
		f.err = f.file.SetRowHeight(decisionSheet, f.row, points)
	}
}

// below is the first row that lies a height in pixels below another.
func (f *front) below(row, pixels int) int {
	left := float64(pixels) * 72 / 96
	for ; left > 0; row++ {
		if h, ok := f.top[row]; ok {
			left -= h
		} else {
			left -= usual
		}
	}
	return row
}

// lines writes a heading and sentences below an empty line.
func (f *front) lines(heading string, texts []string) {
	f.row++
	f.across(strong, heading)
	for _, text := range texts {
		f.across(prose, text)
	}
}

// set puts a text into a cell of the row.
func (f *front) set(column string, k kind, text string) {
	f.put(column, look{kind: k}, func(at string) error {
		return f.file.SetCellStr(decisionSheet, at, clip(cells.OneLine(text)))
	})
}

// number puts a number into a cell of the row; nothing for one that is not known.
func (f *front) number(column string, x any) {
	if n, ok := x.(number); ok {
		f.put(column, look{format: n.format}, func(at string) error { return f.file.SetCellValue(decisionSheet, at, n.value) })
	}
}

func (f *front) put(column string, l look, set func(at string) error) {
	if f.err != nil {
		return
	}
	at := column + strconv.Itoa(f.row)
	id := 0
	if id, f.err = f.style(l); f.err != nil {
		return
	}
	if f.err = f.file.SetCellStyle(decisionSheet, at, at, id); f.err == nil {
		f.err = set(at)
	}
}

func (f *front) merge(from, to string) {
	if f.err == nil {
		f.err = f.file.MergeCell(decisionSheet, from+strconv.Itoa(f.row), to+strconv.Itoa(f.row))
	}
}

// figureRows are the rows of the key figure that is drawn.
type figureRows struct{ first, last int }

// figures writes the key figures of all alternatives, figure by figure, and
// gives the rows of boats per week.
func (f *front) figures() figureRows {
	f.row++
	heads := []string{"figure", "alternative", "mean", "±", "low", "high"}
	if len(f.study.Alternatives) > 1 {
		heads = append(heads, "against the base", "±", "verdict")
	}
	for i, h := range heads {
		f.set(string(rune('A'+i)), header, h)
	}
	f.high(2 * usual)
	f.row++
	drawn := figureRows{}
	for _, name := range keyFigures() {
		m, ok := study.MetricNamed(name)
		if !ok {
			continue
		}
		first := f.row
		for i := range f.study.Alternatives {
			f.figure(i, &m)
		}
		if name == boatsPerWeek && f.row > first {
			drawn = figureRows{first, f.row - 1}
		}
	}
	return drawn
}

// figure writes the row of one figure of an alternative; none if it has not got it.
func (f *front) figure(i int, m *study.Metric) {
	a := &f.study.Alternatives[i]
	x, ok := a.Summary(m)
	if !ok {
		return
	}
	format := formatOf(m)
	f.set("A", plain, m.Label+unitBehind(a, m))
	f.set("B", plain, a.Name)
	f.number("C", mean(x, format))
	f.number("D", half(x, format))
	low, high := ends(within(m, x), format)
	f.number("E", low)
	f.number("F", high)
	switch {
	case len(f.study.Alternatives) < 2:
	case i == 0:
		f.set("I", apart, "the base")
	default:
		d := against(f.study, i, m)
		f.number("G", mean(d.Summary, sign(format)))
		f.number("H", half(d.Summary, format))
		f.set("I", apart, verdict(d))
	}
	f.row++
}

// unitBehind is the unit of a figure whose label does not say it.
func unitBehind(a *view.Alternative, m *study.Metric) string {
	if m.Share || m.Name == boatsPerWeek {
		return ""
	}
	return ", " + a.UnitOf(m)
}

// half is the half width of an interval; empty without one.
func half(x stats.Summary, format string) any {
	if x.N == 0 || !x.Known() {
		return nil
	}
	return number{x.Half, format}
}

// changes says what each alternative changes.
func (f *front) changes() {
	if len(f.study.Alternatives) < 2 {
		return
	}
	f.row++
	f.across(strong, "What the alternatives change")
	for i := range f.study.Alternatives {
		a := &f.study.Alternatives[i]
		what := strings.Join(a.Changes, "; ")
		if i == 0 {
			what = "the base, against which the others are held"
		}
		f.set("A", plain, a.Name)
		f.set("B", plain, what)
		f.merge("B", lastColumn)
		f.high(usual * float64(max(1+len([]rune(what))*4/3/charactersAcross, 1+len([]rune(a.Name))/28)))
		f.row++
	}
}

// rests counts the values behind the results by what they are known from.
func rests(s *view.Study) string {
	var names []string
	count := map[string]int{}
	all := 0
	for i := range s.Inputs {
		if s.Inputs[i].Value == "" {
			continue
		}
		name := view.MarkName(s.Inputs[i].Mark)
		if count[name] == 0 {
			names = append(names, name)
		}
		count[name]++
		all++
	}
	for i, name := range names {
		names[i] = fmt.Sprintf("%d from: %s", count[name], name)
	}
	return fmt.Sprintf("%d values, all on the sheet Assumptions: %s.", all, strings.Join(names, "; "))
}

// charts draws boats by alternative and by month beside the texts.
func (f *front) charts(boats figureRows, months []monthRows) error {
	const column = "K"
	row := 2
	if c, ok := f.byAlternative(boats); ok {
		if err := f.file.AddChart(decisionSheet, column+strconv.Itoa(row), c); err != nil {
			return err
		}
		f.bars = append(f.bars, intervals(boats))
		row = f.below(row, chartHeight) + 1
	}
	return f.file.AddChart(decisionSheet, column+strconv.Itoa(row), f.byMonth(months))
}
