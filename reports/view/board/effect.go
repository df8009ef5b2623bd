package board

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/stats"
)

// asked joins the changes the board is drawn up under.
func (v *View) asked() string {
	var words []string
	for _, c := range v.If.Changes {
		words = append(words, c.Words)
	}
	return strings.Join(words, "; ")
}

// Answer says what the changes do, and what is won back best.
func (v *View) Answer() string {
	e := v.If
	text := fmt.Sprintf("If %s: ", v.asked())
	switch {
	case e.Costs():
		text += fmt.Sprintf("%s, %.1f ± %.1f days together; of all orders together it is %s days", leave(len(e.Hurt)), e.Lost.Mean, e.Lost.Half, span(e.Net))
	case e.Gains():
		text += fmt.Sprintf("the orders leave %.1f ± %.1f days earlier in all; %s", -e.Net.Mean, e.Net.Half, v.movedWords())
	default:
		text += fmt.Sprintf("the orders do not clearly leave later or earlier in all (%s days); %s", span(e.Net), v.movedWords())
	}
	return text + fmt.Sprintf(". Late: %.1f of %d boats, without it %.1f. %s", e.Late, len(v.Orders), e.Before, v.recovery())
}

// leave is "3 orders clearly leave later".
func leave(n int) string {
	if n == 1 {
		return "1 order clearly leaves later"
	}
	return fmt.Sprintf("%d orders clearly leave later", n)
}

// recovery is the sentence on the ways to recover.
func (v *View) recovery() string {
	e := v.If
	switch {
	case e.Gains():
		return "Nothing is lost, so there is nothing to win back."
	case !e.Costs():
		return "Nothing is clearly lost, so there is nothing to win back."
	case len(e.Options) == 0 || !e.Options[0].Helps():
		return "No way that was tried clearly wins anything back."
	}
	o := &e.Options[0]
	return fmt.Sprintf("Most is won back by: %s (%.1f of %.1f days%s, for %s).", o.Words, o.Back, e.Lost.Mean, between(o), peopleHours(o.Hours))
}

// between is the range of what a way wins back, where it is one.
func between(o *ahead.Option) string {
	if low, high := fmt.Sprintf("%.1f", o.Least), fmt.Sprintf("%.1f", o.Most); low != high {
		return ", " + low + " to " + high
	}
	return ""
}

// span is "-1.2 ± 3.4".
func span(s stats.Summary) string { return fmt.Sprintf("%+.1f ± %.1f", s.Mean, s.Half) }

// peopleHours is what a way takes: "96 people-hours more".
func peopleHours(h float64) string {
	if h < 1 {
		return "no hours more"
	}
	return fmt.Sprintf("%.0f people-hours more", h)
}

func (v *View) movedWords() string {
	switch n := len(v.If.Moved); n {
	case 0:
		return "none of them clearly moves by half a day"
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
		t.Rows = append(t.Rows, cells.Texts(v.OrderName(m.Order), due, fmt.Sprintf("%+.1f ± %.1f", m.Days, m.Half), before, after))
	}
	return t
}

// Recover lists the ways that clearly help, and says of which others it is not
// clear and which make it worse; without rows none helps.
func (v *View) Recover() cells.Table {
	t := cells.Table{Title: fmt.Sprintf("Ways to win back the %.1f days lost, each under the same luck", v.If.Lost.Mean),
		Columns: []cells.Column{{Head: "way"}, {Head: "won back", Align: cells.Right}, {Head: "range", Align: cells.Right}, {Head: "beyond it", Align: cells.Right},
			{Head: "hours more", Align: cells.Right}, {Head: "late", Align: cells.Right}}}
	for i := range v.If.Options {
		if o := &v.If.Options[i]; o.Helps() {
			t.Rows = append(t.Rows, cells.Texts(o.Words, fmt.Sprintf("%.1f d", o.Back), fmt.Sprintf("%.1f – %.1f", o.Least, o.Most), beyond(o.Beyond),
				fmt.Sprintf("%.0f", max(o.Hours, 0)), fmt.Sprintf("%.1f", o.Late)))
		}
	}
	if len(t.Rows) > 0 {
		t.Notes = []string{v.basisOfWays()}
		t.Rows[0].Cells[1].Notes = []int{0}
	}
	return t
}

// basisOfWays says what the numbers of the ways are.
func (v *View) basisOfWays() string {
	text := fmt.Sprintf("Won back: days of the orders that leave later, never more than they lose; the range holds 95 times in 100. Beyond it: all orders together, what the way would win anyhow. Of ways that win back the same, the one with fewest people-hours more in these %.0f weeks stands first.",
		float64(v.If.Length)/float64(clock.Week))
	if !v.If.Reserve {
		text += " No mold is in reserve, so none could be tried."
	}
	return text
}

// OtherWays says of which ways the effect is not clear, and which make it worse;
// "" for none.
func (v *View) OtherWays() string {
	var unclear, worse, out []string
	for i := range v.If.Options {
		o := &v.If.Options[i]
		text := fmt.Sprintf("%s (%s days for those that lose, %s for all)", o.Words, span(o.Won), span(o.All))
		switch {
		case o.Harms():
			worse = append(worse, text)
		case !o.Helps():
			unclear = append(unclear, text)
		}
	}
	if len(unclear) > 0 {
		out = append(out, "Not clear whether it wins anything back: "+strings.Join(unclear, "; ")+".")
	}
	if len(worse) > 0 {
		out = append(out, "Makes it worse: "+strings.Join(worse, "; ")+".")
	}
	return strings.Join(out, " ")
}

// beyond is "+27.4 d", signed.
func beyond(days float64) string { return fmt.Sprintf("%+.1f d", days) }
