// Package board tells what the next days of a shop will likely be, day by day, in
// words and tables: pulls, strips, spray lists, gel windows, boats that leave and
// who is short.
package board

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// View is a board with the names its numbers stand for.
type View struct {
	*ahead.Board
	Plant   string
	Futures int
	Orders  []string      // what the orders of the start are called; "" for none
	Molds   []string      // what the shop calls the molds of the plan
	Warned  []string      // what a reader must know of the floor before all else; nil for nothing
	Assumed []string      // what was assumed to begin
	If      *ahead.Effect // what the changes do under which the board is drawn up; nil without any
}

func (v *View) plan() *sim.Plan { return v.Setup.Plan }

// Date is the day an instant lies in.
func (v *View) Date(t clock.Time) shift.Date { return shift.DateAt(v.plan().Start, t) }

// Works lists the days that have a page: on which somebody works or something
// is planned, by their index.
func (v *View) Works() []int {
	var out []int
	for i := range v.Days {
		d := &v.Days[i]
		if d.Works || len(d.Pulls)+len(d.Strips)+len(d.Booths)+len(d.Leaves)+len(d.Risks) > 0 {
			out = append(out, i)
		}
	}
	return out
}

// Part is "F27-160 hull", or "Rush 23 hull" where no order is named.
func (v *View) Part(x *ahead.Thing) string {
	part := v.plan().Parts[x.Part]
	if order := v.Order(x); order >= 0 && v.Orders[order] != "" {
		return v.Orders[order] + " " + part.Name
	}
	return v.plan().Models[part.Model].Name + " " + part.Name
}

// OrderName is what an order is called, with its model.
func (v *View) OrderName(order int) string {
	model := v.plan().Models[v.Setup.Start.Orders[order].Model].Name
	if v.Orders[order] == "" {
		return fmt.Sprintf("order %d, %s", order+1, model)
	}
	return v.Orders[order] + ", " + model
}

// color names a color; what differs from future to future is open.
func (v *View) color(c int16) string {
	if c == sim.None {
		return "open"
	}
	return v.plan().Colors[c].Name
}

// Booth is "booth 2", or the name of a booth that stands alone.
func (v *View) Booth(place, unit int16) string {
	p := v.plan().Places[place]
	if p.Count <= 1 {
		return p.Name
	}
	return fmt.Sprintf("%s %d", p.Name, unit+1)
}

// Crew is who does it in most futures: "2 pull".
func (v *View) Crew(x *ahead.Thing) string {
	craft, _ := x.Most(func(t *ahead.Task) int { return int(t.Craft) })
	people, _ := x.Most(func(t *ahead.Task) int { return int(t.People) })
	if craft < 0 {
		return ""
	}
	return fmt.Sprintf("%d %s", people, v.plan().Crafts[craft].Name)
}

// Craft names a craft.
func (v *View) Craft(c int16) string { return v.plan().Crafts[c].Name }
