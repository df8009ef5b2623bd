package view

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
	"moldturn/sim/study"
)

// Hours prints a length of time as hours with one decimal.
func Hours(t clock.Time) string { return tenths(int64((t + 3*clock.Minute) / (6 * clock.Minute))) }

func tenths(n int64) string { return fmt.Sprintf("%d.%d", n/10, n%10) }

func moment(p *sim.Plan, t clock.Time) string {
	d := shift.DateAt(p.Start, t)
	rest := t - shift.Midnight(p.Start, d)
	return fmt.Sprintf("%s %d, %d, %02d:%02d", d.Month.String()[:3], d.Day, d.Year, rest/clock.Hour, rest%clock.Hour/clock.Minute)
}

func shortMoment(p *sim.Plan, t clock.Time) string {
	d := shift.DateAt(p.Start, t)
	rest := t - shift.Midnight(p.Start, d)
	return fmt.Sprintf("%s %2d %02d:%02d", d.Month.String()[:3], d.Day, rest/clock.Hour, rest%clock.Hour/clock.Minute)
}

// CauseName is a wait in words: "no free crew: lamination".
func CauseName(p *sim.Plan, c record.Cause) string {
	switch {
	case c.Of < 0:
		return c.Reason.String()
	case c.Reason == record.NoCrew || c.Reason == record.OffShift || c.Reason == record.ShiftEnds:
		return c.Reason.String() + ": " + p.Crafts[c.Of].Name
	case int(c.Of) < len(p.Places):
		return c.Reason.String() + ": " + p.Places[c.Of].Name
	}
	return c.Reason.String()
}

func workedAs(p *sim.Plan, v *record.Visit) string {
	if v.Craft < 0 {
		return v.Doing.String()
	}
	return fmt.Sprintf("%s: %d of %s", v.Doing, v.People, p.Crafts[v.Craft].Name)
}

// CrewName is what the people of a craft are called: "gel crew".
func CrewName(craft string) string {
	if strings.Contains(strings.ToLower(craft), "crew") {
		return craft
	}
	return craft + " crew"
}

// StepName is the name of a step; "" between routes.
func StepName(p *sim.Plan, route, step int16) string {
	if route < 0 || step < 0 {
		return ""
	}
	return p.Routes[route].Steps[step].Name
}

// mostHolders is how many holders of one wait the tables name.
const mostHolders = 2

// heldBy names the holders of a wait: a job or mold once, by what it did most.
func heldBy(s *study.Story, p *record.Passage, c record.Cause, h record.Held) string {
	list := Holders(h, c)
	if len(list) == 0 && c.Reason == record.NoCrew {
		return "too few at work, or kept for older work"
	}
	var out []string
	for i, x := range list {
		if i == mostHolders {
			out = append(out, fmt.Sprintf("%d more", len(list)-i))
			break
		}
		out = append(out, fmt.Sprintf("%s %s", HolderName(s.Plan, &x, p.Order), Hours(x.For)))
	}
	return strings.Join(out, "; ")
}

// Holders joins what one job, one mold without a job, one boat on the floor or one
// part not begun did to one row with its longest doing, longest first. A wait for
// a mold, or for mates to catch up, is joined by mold.
func Holders(h record.Held, c record.Cause) []record.Holder {
	var out []record.Holder
	for _, x := range h {
		if c.Reason == record.NoMold || c.Reason == record.MateLimit {
			x.Job, x.Order = -1, -1
		}
		k := slices.IndexFunc(out, func(y record.Holder) bool {
			return y.Job == x.Job && (x.Job >= 0 || y.Mold == x.Mold && y.Order == x.Order && (y.Part == x.Part || x.Mold >= 0))
		})
		if k < 0 {
			out = append(out, x)
			continue
		}
		out[k].For += x.For
	}
	slices.SortStableFunc(out, func(a, b record.Holder) int { return cmp.Compare(b.For, a.For) })
	return out
}

// HolderName is who it is and what it did, as seen from an order.
func HolderName(p *sim.Plan, h *record.Holder, order int32) string {
	var who []string
	switch {
	case h.Order >= 0 && h.Order == order && h.Part >= 0:
		who = append(who, "its "+p.Parts[h.Part].Name)
	case h.Order >= 0 && h.Part >= 0:
		who = append(who, fmt.Sprintf("order %d %s", h.Order+1, p.Parts[h.Part].Name))
	case h.Order >= 0:
		who = append(who, fmt.Sprintf("order %d", h.Order+1))
	case h.Mold >= 0:
		who = append(who, p.Molds[h.Mold].Name)
	case h.Route >= 0:
		who = append(who, p.Routes[h.Route].Name)
	}
	if h.Job < 0 && h.Mold >= 0 && h.Step >= 0 { // a mold, whatever it did
		return p.Molds[h.Mold].Name
	}
	did := StepName(p, h.Route, h.Step)
	if did == "" {
		did = h.Doing.String()
		if !h.Working {
			did = h.Cause.Reason.String()
		}
	}
	if len(who) > 0 && who[0] == did {
		return did
	}
	return strings.Join(append(who, "("+did+")"), " ")
}
