package view

import (
	"fmt"
	"time"

	"moldturn/reports/cells"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Worth is a finished study of one more and one less.
type Worth struct {
	Study  *Study
	Levers []string // labels
	Now    []int
	Rows   []study.Worth
}

// Headline says which one more adds most, or that none clearly does.
func (w *Worth) Headline() string {
	var best *study.Worth
	for i := range w.Rows {
		r := &w.Rows[i]
		if r.Steps > 0 && r.Year.Clear && r.Year.Mean > 0 && (best == nil || r.Year.Mean > best.Year.Mean) {
			best = r
		}
	}
	if best == nil {
		return "No single addition clearly adds boats: the plant is balanced, or something that was not moved limits it." + w.then(0, "Most waited for")
	}
	text := fmt.Sprintf("One more of “%s” adds %s boats a week, more than one more of anything else.", w.Levers[best.Lever], bare(best.Year))
	if j, l := w.bestIn(0), w.bestIn(6); j >= 0 && l >= 0 && w.Rows[j].Lever != w.Rows[l].Lever {
		text += fmt.Sprintf(" In January it is “%s”, in July “%s”.", w.Levers[w.Rows[j].Lever], w.Levers[w.Rows[l].Lever])
	}
	return text + w.then(best.Run, "Next limit then")
}

// then names what limits a run over the year; empty where it is not known.
func (w *Worth) then(run int, what string) string {
	if w.Study == nil || run >= len(w.Study.Alternatives) || len(w.Study.Alternatives[run].Outcomes) == 0 {
		return ""
	}
	a := &w.Study.Alternatives[run]
	_, name := NextLimit(a.Plan, &a.Runs)
	return fmt.Sprintf(" %s: %s.", what, name)
}

// currency is the sign of amounts.
func (w *Worth) currency() string {
	if w.Study == nil || w.Study.Money.Currency == "" {
		return "$"
	}
	return w.Study.Money.Currency
}

// bestIn is the row of the addition that clearly adds most in a month, or -1.
func (w *Worth) bestIn(month int) int {
	best := -1
	for i := range w.Rows {
		d := &w.Rows[i].Months[month]
		if w.Rows[i].Steps > 0 && d.Clear && d.Mean > 0 && (best < 0 || d.Mean > w.Rows[best].Months[month].Mean) {
			best = i
		}
	}
	return best
}

// Table is one row for each lever: what one more and one less do.
func (w *Worth) Table() cells.Table {
	t := cells.Table{Title: "Boats a week against the plant as it is", Columns: []cells.Column{
		{Head: "what"}, {Head: "now", Align: cells.Right}, {Head: "one more", Align: cells.Right}, {Head: "in January", Align: cells.Right},
		{Head: "in July", Align: cells.Right}, {Head: "one less", Align: cells.Right},
	}}
	for i := range w.Rows {
		r := &w.Rows[i]
		if r.Steps < 0 {
			continue
		}
		less := "–"
		if k := w.less(r.Lever); k != nil {
			less = difference(k.Year)
		}
		t.Rows = append(t.Rows, cells.Texts(w.Levers[r.Lever], fmt.Sprint(w.Now[r.Lever]), difference(r.Year), difference(r.Months[0]), difference(r.Months[6]), less))
	}
	return t
}

// less is the row of one less of a lever; nil where it cannot be.
func (w *Worth) less(lever int) *study.Worth {
	for k := range w.Rows {
		if w.Rows[k].Lever == lever && w.Rows[k].Steps < 0 {
			return &w.Rows[k]
		}
	}
	return nil
}

// Money is one row for each lever: what one more and one less do to the
// contribution of a week; ok is false without prices.
func (w *Worth) Money() (t cells.Table, ok bool) {
	t = cells.Table{Title: "Contribution, " + w.currency() + " a week, against the plant as it is", Columns: []cells.Column{
		{Head: "what"}, {Head: "one more", Align: cells.Right}, {Head: "one less", Align: cells.Right}}}
	for i := range w.Rows {
		r := &w.Rows[i]
		ok = ok || r.Priced
		if r.Steps < 0 {
			continue
		}
		less := "–"
		if k := w.less(r.Lever); k != nil {
			less = dollars(k.Money)
		}
		t.Rows = append(t.Rows, cells.Texts(w.Levers[r.Lever], dollars(r.Money), less))
	}
	return t, ok
}

// Months is one row for each lever: what one more adds in boats a week, month by
// month. A gain that luck could have made is left empty.
func (w *Worth) Months() cells.Table {
	t := cells.Table{Title: "One more, month by month: boats a week where it is clear", Columns: []cells.Column{{Head: "what"}}}
	for m := range 12 {
		t.Columns = append(t.Columns, cells.Column{Head: time.Month(m + 1).String()[:3], Align: cells.Right})
	}
	for i := range w.Rows {
		r := &w.Rows[i]
		if r.Steps < 0 {
			continue
		}
		row := cells.Texts(w.Levers[r.Lever])
		for _, d := range r.Months {
			text := ""
			if d.Clear {
				text = signed(d.Mean, decimals(d.Half, 1))
			}
			row.Cells = append(row.Cells, cells.Cell{Text: text})
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// Limits says what work waits for in January and in July, side by side.
func (w *Worth) Limits() []string { return w.Study.Limits() }

// difference is a paired difference as text: not clear where it is not.
func difference(d stats.Difference) string {
	if !d.Clear {
		return "not clear"
	}
	return signedHalf(d)
}

// dollars is a difference of money as text, in whole units.
func dollars(d stats.Difference) string {
	if !d.Clear {
		return "not clear"
	}
	return signed(d.Mean, 0) + " ± " + fixed(d.Half, 0)
}

// signedHalf is "+0.52 ± 0.05", to the digits the interval supports.
func signedHalf(d stats.Difference) string {
	n := decimals(d.Half, 2)
	return signed(d.Mean, n) + " ± " + fixed(d.Half, n)
}
