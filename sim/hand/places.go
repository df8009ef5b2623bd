package hand

import "moldturn/sim"

// places sets the hours that limited places are open against the hours that a
// boat stands in them.
func (h *paper) places(t *Table) {
	for i := range h.plan.Places {
		place := &h.plan.Places[i]
		if place.Count < 0 {
			continue
		}
		p := Place{Name: place.Name, Count: place.Count}
		craft := int16(sim.None)
		extra := 0.0
		for _, b := range h.plan.Background {
			if int(b.Place) == i {
				people := float64(h.plan.Routes[b.Route].Steps[0].Want)
				p.Background += b.PerWeek / people
				extra += b.PerBoat / people
				craft = b.Craft
			}
		}
		for m := range h.lines {
			s := h.lines[m].stand[i]
			if s.hold > 0 {
				p.Held, p.Hours = true, s.open
			}
			p.PerModel = append(p.PerModel, s.work+s.hold+extra)
			if s.craft != sim.None {
				craft = s.craft
			}
		}
		if !p.Held {
			p.Hours = h.rhythm(craft).week
		}
		if p.PerBoat = t.mean(p.PerModel); p.PerBoat > 0 {
			p.Boats = max(float64(p.Count)*p.Hours-p.Background, 0) / p.PerBoat
		}
		t.Places = append(t.Places, p)
	}
}
