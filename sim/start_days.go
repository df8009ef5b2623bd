package sim

import "slices"

// changed is a plan with the changed days of a start in its calendars; the plan
// itself without any.
func (s *Start) changed(p *Plan) *Plan {
	if len(s.Days) == 0 {
		return p
	}
	out := *p
	out.Crafts = slices.Clone(p.Crafts)
	for c := range out.Crafts {
		off, extra := s.daysOf(int16(c))
		if len(off)+len(extra) == 0 {
			continue
		}
		craft := &out.Crafts[c]
		craft.Crews = slices.Clone(craft.Crews)
		for i := range craft.Crews {
			craft.Crews[i].Hours = craft.Crews[i].Hours.Changed(off, extra)
		}
	}
	return &out
}

// daysOf lists the days off and the extra days of a craft.
func (s *Start) daysOf(craft int16) (off, extra []int) {
	for _, d := range s.Days {
		if d.Craft != None && d.Craft != craft {
			continue
		}
		for day := d.From; day <= d.To; day++ {
			if d.Extra {
				extra = append(extra, day)
			} else {
				off = append(off, day)
			}
		}
	}
	return off, extra
}

// outOf is how many people of a crew are out on a day, beside those whom luck
// keeps at home. Those of a craft are taken from its crews in their order.
func (r *Run) outOf(c *crewState, day int) int {
	n := 0
	for i := range r.outs {
		if o := &r.outs[i]; o.Craft == c.craft && o.From <= day && day <= o.To {
			n += o.People
		}
	}
	crews := r.plan.Crafts[c.craft].Crews
	for i := range crews[:c.crew] {
		n -= crews[i].People
	}
	return min(max(n, 0), crews[c.crew].People)
}
