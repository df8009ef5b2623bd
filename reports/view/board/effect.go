package board

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim/clock"
)

// asked joins the changes the board is drawn up under.
func (v *View) asked() string {
	var words []string
	for _, c := range v.If.Changes {
		words = append(words, c.Words)
	}
	return strings.Join(words, "; ")
}

// little is how many days, of all orders together, are not worth a word.
const little = 0.5

// Answer says what the changes do.
func (v *View) Answer() string {
	e := v.If
	text := fmt.Sprintf("If %s: ", v.asked())
	switch {
	case e.Lost >= little:
		text += fmt.Sprintf("the orders leave %.1f days later in all; %s", e.Lost, v.movedWords())
	case e.Lost <= -little:
		text += fmt.Sprintf("the orders leave %.1f days earlier in all", -e.Lost)
	default:
		text += "no order moves much"
	}
	text += fmt.Sprintf(". Late: %.1f of %d boats, without it %.1f.", e.Late, len(v.Orders), e.Before)
	if len(e.Options) > 0 && e.Options[0].Won >= little {
		text += fmt.Sprintf(" Most is won back by: %s (%.1f days).", e.Options[0].Words, e.Options[0].Won)
	} else if e.Lost >= little {
		text += " No way that was tried wins half a day back."
	}
	return text
}

func (v *View) movedWords() string {
	switch n := len(v.If.Moved); n {
	case 0:
		return "none of them moves by half a day"
	case 1:
		return "1 moves by half a day or more"
	default:
		return fmt.Sprintf("%d move by half a day or more", n)
	}
}

// Moved lists the orders that move; without rows none does.
func (v *View) Moved() cells.Table {
	t := cells.Table{Title: "Orders that move, + later", Columns: []cells.Column{{Head: "order"}, {Head: "due"}, {Head: "days", Align: cells.Right},
		{Head: "late now,/10", Align: cells.Right}, {Head: "late then,/10", Align: cells.Right}}}
	for _, m := range v.If.Moved {
		due, before, after := "no date", "", ""
		if m.Due != clock.Never {
			due = v.Day(m.Due - 1)
			before, after = fmt.Sprintf("%.0f", 10*(1-m.Without.By(m.Due))), fmt.Sprintf("%.0f", 10*(1-m.With.By(m.Due)))
		}
		t.Rows = append(t.Rows, cells.Texts(v.OrderName(m.Order), due, fmt.Sprintf("%+.1f", m.Days), before, after))
	}
	return t
}

// Recover lists the ways to recover.
func (v *View) Recover() cells.Table {
	t := cells.Table{Title: "Ways to recover, each under the same luck", Columns: []cells.Column{{Head: "way"}, {Head: "days won back", Align: cells.Right}, {Head: "boats late", Align: cells.Right}},
		Notes: []string{"Days of all orders together, on average over the futures. What a way costs is not counted."}}
	if !v.If.Reserve {
		t.Notes[0] += " No mold is in reserve, so none could be tried."
	}
	for _, o := range v.If.Options {
		t.Rows = append(t.Rows, cells.Texts(o.Words, fmt.Sprintf("%+.1f", o.Won), fmt.Sprintf("%.1f", o.Late)))
	}
	if len(t.Rows) > 0 {
		t.Rows[0].Cells[1].Notes = []int{0}
	}
	return t
}
