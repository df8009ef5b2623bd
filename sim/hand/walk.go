package hand

import "moldturn/sim"

// line is what one route takes.
type line struct {
	labor []float64 // people hours by craft
	stand []stay    // by place
}

// stay is how long a place is taken: work and short waits, and hold.
type stay struct {
	work, hold float64
	craft      int16   // of the step that took it
	open       float64 // hours a week of the shifts that hold is rounded to
}

func (h *paper) newLine() line {
	l := line{labor: make([]float64, len(h.plan.Crafts)), stand: make([]stay, len(h.plan.Places))}
	for i := range l.stand {
		l.stand[i].craft = sim.None
	}
	return l
}

// add counts the labor and the places of a route for a part (nil for a boat).
func (h *paper) add(l *line, route int16, part *sim.Part) {
	taken := make([]bool, len(h.plan.Places))
	steps := h.plan.Routes[route].Steps
	for i := range steps {
		s := &steps[i]
		hours, holding := h.hours(s)
		hours *= h.often(s.When, part)
		if s.Craft != sim.None && s.Pace == sim.Labor {
			l.labor[s.Craft] += float64(s.Want) * hours
		}
		h.move(l, s, taken, hours, holding)
	}
}

// move follows the places through one step. A step that is not always done
// takes its place for its own share only.
func (h *paper) move(l *line, s *sim.Step, taken []bool, hours float64, holding bool) {
	for _, p := range s.Swap {
		taken[p] = false
	}
	for _, p := range s.Take {
		taken[p] = true
		if l.stand[p].craft == sim.None {
			l.stand[p].craft = s.Craft
		}
	}
	for _, p := range s.Use {
		l.stand[p].work += hours
		l.stand[p].craft = s.Craft
	}
	for p := range taken {
		if !taken[p] {
			continue
		}
		if holding {
			l.stand[p].hold += hours
		} else {
			l.stand[p].work += hours
		}
	}
	for _, p := range s.Free {
		taken[p] = false
	}
}
