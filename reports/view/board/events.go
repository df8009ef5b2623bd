package board

import (
	"fmt"
	"strings"
	"time"

	"moldturn/reports/ical"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Calendar is the board as entries of a calendar: pulls, strips and gel windows
// at their time, the spray list and the boats that leave as whole days. Drawn up
// again on a later morning, an entry for the same turn of a mold takes the place
// of the one before.
func (v *View) Calendar() ical.Calendar {
	morning := v.Date(v.Setup.Start.At)
	c := ical.Calendar{Name: v.Plant + " board", Product: "-//moldturn//board//EN", Stamp: v.clock(v.Setup.Morning()), Issue: max(morning.DaysSince(shift.DateOf(2000, 1, 1)), 1)}
	for day := range v.Days {
		lists := map[string]int{} // booth: its entry
		for _, r := range v.Rows(day) {
			switch r.Kind {
			case "pull":
				from := r.Thing.OnDay(v.Setup.Morning())
				c.Events = append(c.Events, v.event(&r, from, from+max(r.Length, 15*clock.Minute), fmt.Sprintf("Pull %s, %s", r.Mold, r.Part), v.turnKey(&r)))
			case "strip":
				from := v.Days[day].From
				e := v.event(&r, from, from+clock.Day, fmt.Sprintf("Strip %s, %d turns", r.Mold, r.Turns), fmt.Sprintf("strip %s %s", r.Mold, v.turnKey(&r)))
				e.AllDay = true
				c.Events = append(c.Events, e)
			case "gel window":
				c.Events = append(c.Events, v.event(&r, r.From, r.From+15*clock.Minute, fmt.Sprintf("Skin coat by now: %s", r.Mold), fmt.Sprintf("window %s %s", r.Mold, r.Likely)))
			case "boat":
				e := v.event(&r, v.Days[day].From, v.Days[day].From+clock.Day, "Leaves: "+r.Order, "boat "+r.Order)
				e.AllDay = true
				c.Events = append(c.Events, e)
			case "spray":
				i, ok := lists[r.Booth]
				if !ok {
					i = len(c.Events)
					lists[r.Booth] = i
					e := v.event(&r, v.Days[day].From, v.Days[day].From+clock.Day, "Spray list, "+r.Booth, "spray "+r.Booth+" "+r.Date)
					e.AllDay, e.Description = true, "Chances are those of the model, not proven on a real shop."
					c.Events = append(c.Events, e)
				}
				line := fmt.Sprintf("%d. %s%s: %s, %s, %s", r.InList, band(r.Band), r.Color, r.Mold, r.Part, Chance(r.Chance))
				c.Events[i].Description = insert(c.Events[i].Description, line)
			}
		}
	}
	return c
}

func band(color string) string {
	if color == "" {
		return ""
	}
	return "band " + color + ", "
}

// insert adds a line before the last.
func insert(text, line string) string {
	i := strings.LastIndex(text, "\n") + 1
	return text[:i] + line + "\n" + text[i:]
}

// turnKey names a pull or strip by the turn of its mold, which is the same from
// one morning to the next; by the morning where the turns are not known.
func (v *View) turnKey(r *Row) string {
	if r.Thing == nil {
		return r.Mold
	}
	for i := range v.Setup.Start.Molds {
		if m := &v.Setup.Start.Molds[i]; m.Mold == r.Thing.Mold && m.Turns >= 0 {
			return fmt.Sprintf("%s %s turn %d", r.Kind, r.Mold, m.Turns+r.Thing.Nth)
		}
	}
	return fmt.Sprintf("%s %s %d from %s", r.Kind, r.Mold, r.Thing.Nth, v.Date(v.Setup.Start.At))
}

// clock is an instant of the plant as a time on the clock of the shop.
func (v *View) clock(t clock.Time) time.Time {
	d := v.plan().Start
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Add(time.Duration(t) * time.Millisecond).Truncate(time.Minute)
}

func (v *View) event(r *Row, from, to clock.Time, summary, key string) ical.Event {
	text := Chance(r.Chance) + " that it is on this day."
	if r.Kind == "gel window" {
		text = Chance(r.Chance) + " that the skin coat comes later."
	}
	if r.By != "" {
		text += "\n9 times in 10 by " + r.By + "."
	}
	if r.People > 0 {
		text += fmt.Sprintf("\n%d %s.", r.People, r.Craft)
	}
	if r.Least != "" {
		text += "\nCosts least on " + r.Least + "."
	}
	text += "\nChances are those of the model, not proven on a real shop. " + Caution
	return ical.Event{Key: key, Start: v.clock(from), End: v.clock(to), Summary: summary, Description: text, Category: r.Kind}
}
