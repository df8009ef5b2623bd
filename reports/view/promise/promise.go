// Package promise tells when boats that are asked for can leave, and whom that
// delays, in words and tables.
package promise

import (
	"fmt"
	"time"

	"moldturn/reports/cells"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/hand"
	"moldturn/sim/shift"
)

// View is a promise with the names its numbers stand for.
type View struct {
	*ahead.Promise
	Plant   string
	Boat    string   // what is asked for: "Rush 23 in navy"
	Names   []string // of the orders of the start, by index
	Model   int
	Paper   hand.Table
	Morning clock.Time
	First   shift.Date // of the plan
	By      clock.Time // the day asked for ends here; clock.Never: none was
	Futures int
	Warned  []string // what a reader must know of the floor before all else; nil for nothing
	Assumed []string
}

// asked is "20 Rush 23 in navy".
func (v *View) asked() string { return fmt.Sprintf("%d %s", len(v.Boats), v.Boat) }

// Possible says whether a date can be given at all.
func (v *View) Possible() bool { return v.All.Surely(0.9) != clock.Never }

// Headline is the answer in a sentence.
func (v *View) Headline() string {
	if v.By != clock.Never {
		return v.answer()
	}
	if !v.Possible() {
		return fmt.Sprintf("No date can be given for %s: in %s they are not all out. %s", v.asked(), v.share(1-v.All.Ever()), v.reason())
	}
	return fmt.Sprintf("%s can be promised for %s, met 9 times in 10; an even chance is %s.", v.asked(), v.day(v.All.Surely(0.9)), v.day(v.All.Surely(0.5)))
}

// answer is the answer to a date that was asked for.
func (v *View) answer() string {
	chance := v.All.By(v.By)
	day := v.day(v.By - 1)
	switch {
	case chance >= 0.9:
		return fmt.Sprintf("Yes: %s are out by %s in %s.", v.asked(), day, v.share(chance))
	case chance >= 0.5:
		return fmt.Sprintf("Perhaps: %s are out by %s in %s; %s", v.asked(), day, v.share(chance), v.rather())
	}
	return fmt.Sprintf("No: %s are out by %s in %s only; %s %s", v.asked(), day, v.share(chance), v.rather(), v.reason())
}

// rather is the date that can be promised instead.
func (v *View) rather() string {
	if !v.Possible() {
		return "no date can be given in the time looked at."
	}
	return fmt.Sprintf("%s is met 9 times in 10.", v.day(v.All.Surely(0.9)))
}

// share says a chance as times in ten, or as a count of the futures.
func (v *View) share(p float64) string {
	return fmt.Sprintf("%d of %d simulated futures", int(p*float64(v.Futures)+0.5), v.Futures)
}

// reason is what the molds of the model make by hand against what is asked.
func (v *View) reason() string {
	if len(v.Paper.Limits) == 0 {
		return ""
	}
	m := v.Paper.Models[v.Model]
	if m.Molds > 0 {
		text := fmt.Sprintf("The molds of %s make %.1f boats a week at most, so %d take %.0f weeks without any waiting", m.Name, m.Molds, len(v.Boats), float64(len(v.Boats))/m.Molds)
		return text + fmt.Sprintf("; %d orders stand before them.", v.Before)
	}
	return fmt.Sprintf("The plant makes %.1f boats a week at most, limited by %s; %d orders stand before them.", v.Paper.Limits[0].Boats, v.Paper.Limits[0].Words(), v.Before)
}

// day is a date as people say it; a day's night belongs to it.
func (v *View) day(t clock.Time) string {
	d := shift.DateAt(v.First, t)
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Format("Mon 2 Jan 2006")
}

// never stands for what does not happen in the time looked at.
const never = "not by then"

func (v *View) when(t clock.Time) string {
	if t == clock.Never {
		return never
	}
	return v.day(t)
}

// mostBoats is how many boats of a promise are listed one by one.
const mostBoats = 6

// Dates lists when the boats leave.
func (v *View) Dates() cells.Table {
	t := cells.Table{Title: "When they leave", Columns: []cells.Column{{Head: "boat"}, {Head: "even chance", Align: cells.Right}, {Head: "9 times in 10", Align: cells.Right}}}
	for i, w := range v.Boats {
		if n := len(v.Boats); n > mostBoats && i >= mostBoats/2 && i < n-mostBoats/2 {
			if i == mostBoats/2 {
				t.Rows = append(t.Rows, cells.Texts("…", "", ""))
			}
			continue
		}
		t.Rows = append(t.Rows, cells.Texts(fmt.Sprintf("%d of %d", i+1, len(v.Boats)), v.when(w.Surely(0.5)), v.when(w.Surely(0.9))))
	}
	t.Rows = append(t.Rows, cells.Texts("all", v.when(v.All.Surely(0.5)), v.when(v.All.Surely(0.9))))
	return t
}

// Delayed lists who leaves later because of them; without rows nobody does.
func (v *View) Delayed() cells.Table {
	t := cells.Table{Title: "Who leaves later because of them", Columns: []cells.Column{{Head: "order"}, {Head: "due"}, {Head: "days later", Align: cells.Right},
		{Head: "late now,/10", Align: cells.Right}, {Head: "late then,/10", Align: cells.Right}}}
	for _, m := range v.Moved {
		due, before, after := "no date", "", ""
		if m.Due != clock.Never {
			due = v.day(m.Due - 1)
			before, after = tenths(1-m.Without.By(m.Due)), tenths(1-m.With.By(m.Due))
		}
		t.Rows = append(t.Rows, cells.Texts(v.Names[m.Order], due, fmt.Sprintf("%+.1f ± %.1f", m.Days, m.Half), before, after))
	}
	return t
}

// tenths is a chance as times in ten.
func tenths(p float64) string { return fmt.Sprintf("%.0f", 10*p) }

// Basis says what the dates stand on.
func (v *View) Basis() []string {
	lines := []string{fmt.Sprintf("%d futures from the floor of %s under other luck and weather, up to %s, with the orders of the book and nothing that comes later. Chances are those of the model, not proven on a real shop.",
		v.Futures, v.day(v.Morning), v.day(v.Until-1))}
	if len(v.Moved) == 0 && v.Possible() {
		lines = append(lines, fmt.Sprintf("No order that is there leaves more than half a day later because of them (%d looked at).", v.Before))
	}
	return append(lines, v.Assumed...)
}

// Date is a day as 2026-11-25, "" for never.
func (v *View) Date(t clock.Time) string {
	if t == clock.Never {
		return ""
	}
	return shift.DateAt(v.First, t).String()
}

// Stamp is an instant as 2026-11-25 14:30, "" for never.
func (v *View) Stamp(t clock.Time) string {
	if t == clock.Never {
		return ""
	}
	minute := int(t % clock.Day / clock.Minute)
	return fmt.Sprintf("%s %02d:%02d", v.Date(t), minute/60, minute%60)
}
