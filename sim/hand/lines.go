package hand

import "moldturn/sim"

// molds works out every part's route and, for those with molds, their cycle.
func (h *paper) molds(t *Table) {
	p := h.plan
	for m := range p.Models {
		model := Model{Name: p.Models[m].Name}
		boat := h.newLine()
		h.add(&boat, p.Models[m].Boat, nil)
		for _, i := range p.Models[m].Parts {
			l := h.newLine()
			part := &p.Parts[i]
			work, hold := h.add(&l, part.Route, part)
			if part.Care != sim.None {
				more, _ := h.add(&l, part.Care, part)
				x := h.cycle(part, &l, work+more, hold)
				if t.Molds = append(t.Molds, x); model.Molds == 0 || x.Boats < model.Molds {
					model.Molds = x.Boats
				}
			}
			boat.join(l, h.rhythmOf(&l))
		}
		h.lines = append(h.lines, boat)
		t.Models = append(t.Models, model)
	}
}

// rhythmOf is the rhythm of the craft with most labor on a line.
func (h *paper) rhythmOf(l *line) rhythm { return h.rhythm(l.main()) }

// main is the craft with most labor, None for no labor.
func (l *line) main() int16 {
	best := int16(sim.None)
	for c, hours := range l.labor {
		if hours > 0 && (best == sim.None || hours > l.labor[best]) {
			best = int16(c)
		}
	}
	return best
}

// join adds the line of a part to that of its boat. Where a part stands through
// its hold, its stay is counted in whole shifts.
func (l *line) join(part line, r rhythm) {
	for c := range part.labor {
		l.labor[c] += part.labor[c]
	}
	for p, s := range part.stand {
		if s.hold > 0 {
			w, h := r.round(s.work, s.hold)
			l.stand[p].hold += float64(w+h) * r.slot
			l.stand[p].open = r.shifts * r.slot
		} else {
			l.stand[p].work += s.work
		}
		if s.craft != sim.None && l.stand[p].craft == sim.None {
			l.stand[p].craft = s.craft
		}
	}
}

// cycle rounds a turn of a mold to whole shifts.
func (h *paper) cycle(part *sim.Part, l *line, work, hold float64) Mold {
	craft := l.main()
	r := h.rhythm(craft)
	m := Mold{Model: h.plan.Models[part.Model].Name, Part: part.Name, Count: part.InUse, Work: work, Hold: hold,
		ShiftHours: r.hours, Slot: r.slot, WeekShifts: r.shifts}
	if craft != sim.None {
		m.Craft = h.plan.Crafts[craft].Name
	}
	m.WorkShifts, m.HoldShifts = r.round(work, hold)
	if n := m.WorkShifts + m.HoldShifts; n > 0 {
		m.Turns = r.shifts / float64(n)
	}
	m.Boats = m.Turns * float64(m.Count)
	return m
}

// mix takes the shares of models from their orders, or else from their molds.
func (h *paper) mix(t *Table) {
	weights := make([]float64, len(t.Models))
	for m := range min(len(weights), len(h.plan.Demand.Models)) {
		weights[m] = h.plan.Demand.Models[m].PerWeek
	}
	if sum(weights) == 0 {
		for _, o := range h.plan.Demand.Dated {
			weights[o.Model]++
		}
	}
	if sum(weights) == 0 {
		for m := range weights {
			weights[m] = t.Models[m].Molds
		}
	}
	if sum(weights) == 0 {
		for m := range weights {
			weights[m] = 1
		}
	}
	for m := range weights {
		t.Models[m].Share = weights[m] / sum(weights)
	}
}

func sum(xs []float64) float64 {
	s := 0.0
	for _, x := range xs {
		s += x
	}
	return s
}

// mean is the mean of values by model over the mix.
func (t *Table) mean(perModel []float64) float64 {
	s := 0.0
	for m, x := range perModel {
		s += t.Models[m].Share * x
	}
	return s
}

// crafts sets labor there is against labor a boat takes.
func (h *paper) crafts(t *Table) {
	for i := range h.plan.Crafts {
		craft := &h.plan.Crafts[i]
		c := Craft{Name: craft.Name}
		absent := 0.0
		for _, crew := range craft.Crews {
			hours := crew.Hours.Worked(h.frame.From, h.frame.To).Hours() / h.weeks
			c.Crews = append(c.Crews, Crew{crew.People, hours})
			c.Planned += float64(crew.People) * hours
			absent += float64(crew.People) * hours * (crew.Absence*(1-h.hot) + crew.AbsenceHot*h.hot)
		}
		if c.Planned > 0 {
			c.Absence = absent / c.Planned
		}
		extra := 0.0
		for _, b := range h.plan.Background {
			if int(b.Craft) == i {
				c.Background += b.PerWeek
				extra += b.PerBoat
			}
		}
		c.Available = max(c.Planned-absent-c.Background, 0)
		for m := range h.lines {
			c.PerModel = append(c.PerModel, h.lines[m].labor[i]+extra)
		}
		if c.PerBoat = t.mean(c.PerModel); c.PerBoat > 0 {
			c.Boats = c.Available / c.PerBoat
		}
		t.Crafts = append(t.Crafts, c)
	}
}

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
				p.Background += b.PerWeek
				extra += b.PerBoat
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
