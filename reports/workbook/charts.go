package workbook

import (
	"fmt"
	"strings"

	"github.com/xuri/excelize/v2"

	"moldturn/reports/cells"
	"moldturn/sim/study"
)

// ink is the color of texts in charts: a contrast of 10 on white.
const ink = "404040"

// chartHeight is the height of a chart in pixels, of which 96 are 72 points.
const chartHeight = 380

// mostDrawn is the largest number of alternatives whose names fit below a chart.
const mostDrawn = 16

// byAlternative is boats per week of each alternative with its interval; ok is
// false with too few or too many to draw.
func (b *book) byAlternative(rows figureRows) (c *excelize.Chart, ok bool) {
	n := rows.last - rows.first + 1
	if rows.first == 0 || n < 2 || n > mostDrawn {
		return nil, false
	}
	at := func(column string) string {
		return fmt.Sprintf("%s!$%s$%d:$%s$%d", decisionSheet, column, rows.first, column, rows.last)
	}
	c = b.chart(b.study.Headline(), fmt.Sprintf("boats shipped a week, with %.0f %% confidence intervals", 100*study.Confidence))
	c.Format.AltText = fmt.Sprintf("Boats shipped a week, a dot with its interval for each of %d ways to run the plant. The numbers stand in columns C to F.", n)
	c.Series = []excelize.ChartSeries{{Name: fmt.Sprintf("%s!$A$%d", decisionSheet, rows.first), Categories: at("B"), Values: at("C"), Fill: solid(accent),
		Line: excelize.LineOptions{Type: excelize.LineNone}, Marker: marker("circle", accent)}}
	c.Legend.Position = "none"
	return c, true
}

// intervals are the bars of that chart, as the first that is added.
func intervals(rows figureRows) errorBars {
	return errorBars{chart: 1, half: fmt.Sprintf("%s!$D$%d:$D$%d", decisionSheet, rows.first, rows.last)}
}

// byMonth is boats per open week by month, of the base and of the best.
func (b *book) byMonth(months []monthRows) *excelize.Chart {
	s := b.study
	finding := "Boats a week by month"
	if band, ok := s.Weeks(0); ok {
		finding = band.Finding
	}
	c := b.chart(finding, "boats shipped in an open week, by month")
	c.Format.AltText = "Boats shipped in an open week, by month. The numbers stand on the sheet Weeks, on the right."
	shown := []int{0}
	if best := s.Best(); best > 0 {
		shown = append(shown, best)
	}
	for k, i := range shown {
		at := func(column string) string {
			return fmt.Sprintf("%s!$%s$%d:$%s$%d", weeksSheet, column, months[i].first, column, months[i].last)
		}
		symbol, color, dash := "circle", accent, excelize.LineDashSolid
		if k > 0 {
			symbol, color, dash = "diamond", "B45F06", excelize.LineDashDash
		}
		c.Series = append(c.Series, excelize.ChartSeries{Name: fmt.Sprintf("%s!$G$%d", weeksSheet, months[i].first), Categories: at("H"), Values: at("J"), Fill: solid(color),
			Line: excelize.LineOptions{Type: excelize.LineSolid, Width: 2, Dash: dash, Fill: solid(color)}, Marker: marker(symbol, color)})
	}
	c.Legend.Position = "bottom"
	return c
}

// chart is a line chart without its series; under its finding stands what it shows.
func (b *book) chart(finding, what string) *excelize.Chart {
	return &excelize.Chart{Type: excelize.Line,
		Title: excelize.ChartTitle{Paragraph: []excelize.RichTextRun{
			{Text: broken(cells.OneLine(finding), 62) + "\n", Font: &excelize.Font{Size: 11, Bold: true, Color: accent}},
			{Text: what, Font: &excelize.Font{Size: 9, Color: ink}}}},
		XAxis:     excelize.ChartAxis{Font: excelize.Font{Size: 9, Color: ink}},
		YAxis:     excelize.ChartAxis{MajorGridLines: true, Font: excelize.Font{Size: 9, Color: ink}, NumFmt: excelize.ChartNumFmt{CustomNumFmt: decimals(1)}},
		Dimension: excelize.ChartDimension{Width: 640, Height: chartHeight}}
}

func solid(color string) excelize.Fill {
	return excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{color}}
}

func marker(symbol, color string) excelize.ChartMarker {
	return excelize.ChartMarker{Symbol: symbol, Size: 8, Fill: solid(color), Border: excelize.LineOptions{Type: excelize.LineSolid, Fill: solid(color)}}
}

// broken sets line ends where a text would pass a width.
func broken(text string, width int) string {
	var b strings.Builder
	n := 0
	for i, word := range strings.Fields(text) {
		length := len([]rune(word))
		switch {
		case i > 0 && n+1+length > width:
			b.WriteByte('\n')
			n = 0
		case i > 0:
			b.WriteByte(' ')
			n++
		}
		b.WriteString(word)
		n += length
	}
	return b.String()
}
