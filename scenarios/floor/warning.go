package floor

import (
	"fmt"
	"strings"
)

// Shares from which on a whole floor is in doubt.
const (
	manyDoubts = 0.1 // of the rows that are things
	fewDoubts  = 3   // rows; fewer are single slips, told where they are
)

// mostTold is how many things of a kind a warning names.
const mostTold = 3

// Warnings are what somebody who only sees the answer must know of the floor, one
// line for each kind: sheets of another time than the morning, rows in doubt in
// number, molds that are taken as ready though nobody listed them, and parts in
// molds of other parts. Nil for nothing.
func (r *Reading) Warnings() []string {
	if r.Floor == nil {
		return nil
	}
	var out []string
	if text := r.apart(); text != "" {
		out = append(out, text)
	}
	if len(r.Floor.Molds) == 0 {
		out = append(out, "No mold is listed: all molds of the scenario are taken as ready.")
	}
	for _, x := range []struct{ rule, lead string }{
		{"molds missing", "Taken as ready though not listed: "},
		{"mold of another part", "Put into another mold than the one that is written, which is left as the mold log has it, or ready: "},
	} {
		if list := r.told(x.rule); len(list) > 0 {
			out = append(out, x.lead+strings.Join(list, "; ")+".")
		}
	}
	return out
}

// told are the first messages of a rule.
func (r *Reading) told(rule string) []string {
	var list []string
	more := 0
	for _, n := range r.Notices {
		switch {
		case n.Rule != rule:
		case len(list) == mostTold:
			more++
		default:
			list = append(list, n.Message)
		}
	}
	if more > 0 {
		list = append(list, fmt.Sprintf("and %d more", more))
	}
	return list
}

// apart tells of sheets that are of another time than the morning, and of many
// rows in doubt; "" for neither.
func (r *Reading) apart() string {
	morning := r.Floor.Morning
	doubts, rows := r.doubts()
	share := fmt.Sprintf("%d of %d rows are in doubt", doubts, rows)
	switch days := morning.Date.DaysSince(r.Last.Date); {
	case !r.Last.IsZero() && (days > farAhead || r.Early):
		dates := "from " + r.First.Date.String() + " to " + r.Last.Date.String()
		if r.First.Date == r.Last.Date {
			dates = "of " + r.Last.Date.String()
		}
		if days > farAhead {
			morning.Timed = false
			return fmt.Sprintf("The sheets are %s, and the morning is %s: what happened in the %d days between is missing; %s.", dates, morning, days, share)
		}
		return fmt.Sprintf("The sheets are %s, and the morning is %s; %s.", dates, morning, share)
	case doubts >= fewDoubts && float64(doubts) >= manyDoubts*float64(rows):
		return strings.ToUpper(share[:1]) + share[1:] + "."
	}
	return ""
}

// doubts counts the rows in doubt, and all that are things.
func (r *Reading) doubts() (doubts, rows int) {
	seen := map[Place]bool{}
	for _, n := range r.Notices {
		p := n.Place
		p.Column = 0
		if n.Level == Doubt && p.Row > 0 && !seen[p] {
			seen[p] = true
			doubts++
		}
	}
	for i := range r.Sheets {
		rows += len(r.Sheets[i].Rows) - r.Sheets[i].Count(Skipped)
	}
	return doubts, rows
}
