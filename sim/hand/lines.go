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
			h.add(&l, part.Route, part)
			if part.Care != sim.None {
				h.add(&l, part.Care, part)
				x := h.cycle(part, &l)
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
