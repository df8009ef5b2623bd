package sim

import (
	"fmt"
	"slices"
)

// Check gives what would keep a plan from running or from ever shipping a
// boat, one sentence each; none for a sound plan. It tells only what is
// certain: a circle of places that may close is met at run time (Deadlock).
func (p *Plan) Check() []string {
	var out []string
	add := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	for i := range p.Models {
		p.checkModel(&p.Models[i], add)
	}
	for i := range p.Parts {
		p.checkPart(int16(i), add)
	}
	kinds := p.routeKinds()
	people := p.peopleOf()
	for i := range p.Routes {
		for k := range p.Routes[i].Steps {
			s := &p.Routes[i].Steps[k]
			if fault := p.checkStep(&p.Routes[i], k, people); fault != "" {
				add("%s, step %q: %s", p.Routes[i].Name, s.Name, fault)
			}
			if fault := checkMeaning(p.Routes[i].Steps, k, kinds[i]); fault != "" {
				add("%s, step %q: %s", p.Routes[i].Name, s.Name, fault)
			}
		}
	}
	return out
}

func (p *Plan) checkModel(m *Model, add func(string, ...any)) {
	if len(m.Parts) == 0 || len(m.Parts) > mostParts {
		add("model %q has %d parts; allowed: 1 to %d", m.Name, len(m.Parts), mostParts)
	}
	bare := !slices.ContainsFunc(m.Parts, func(i int16) bool { return p.Parts[i].Care != None })
	if bare && p.Demand.Full && p.Demand.FloorLimit == 0 {
		add("model %q needs no mold: with orders always waiting it needs a limit of work on the floor", m.Name)
	}
	for i := range p.Places {
		n := 0
		for _, part := range m.Parts {
			if p.keepsAtEnd(p.Parts[part].Route, int16(i)) {
				n++
			}
		}
		if count := p.Places[i].Count; count > 0 && n > count {
			add("model %q: its finished parts wait for each other in %d of %q and there are %d", m.Name, n, p.Places[i].Name, count)
		}
	}
}

// keepsAtEnd says whether whoever walks a route surely holds a place at its end.
func (p *Plan) keepsAtEnd(route, place int16) bool {
	holds := false
	for i := range p.Routes[route].Steps {
		s := &p.Routes[route].Steps[i]
		if slices.Contains(s.Swap, place) {
			holds = false
		}
		if s.When == Always && slices.Contains(s.Take, place) {
			holds = true
		}
		if slices.Contains(s.Free, place) {
			holds = false
		}
	}
	return holds
}

func (p *Plan) checkPart(i int16, add func(string, ...any)) {
	part := &p.Parts[i]
	if part.Care == None {
		return
	}
	name, model := part.Name, &p.Models[part.Model]
	if !slices.ContainsFunc(p.Routes[part.Route].Steps, func(s Step) bool { return s.Verb == Pulled }) {
		add("the %s of %q is never pulled: its route %q has no step that means \"pulled\", or gives it no hours", name, model.Name, p.Routes[part.Route].Name)
	}
	molds, later, fresh := 0, 0, false
	for k := range p.Molds {
		if m := &p.Molds[k]; m.Part == i {
			fresh = fresh || m.New
			if !m.Reserve {
				molds++
			}
			if m.Arrives > 0 { // on top of the plan
				later++
			}
		}
	}
	switch {
	case molds == 0:
		add("the %s of %q has no mold in rotation", name, model.Name)
	case molds-later > part.InUse:
		add("the %s of %q has %d molds in rotation and a plan for %d; the others belong in reserve", name, model.Name, molds-later, part.InUse)
	}
	breaksIn := p.BreakIn.Turns() > 0 && (fresh || p.Life.Limit > 0 || p.Life.SurfaceHigh > 0)
	if breaksIn && part.Band >= 1 && len(model.Bands) > 0 && len(p.Demand.Dated) == 0 {
		add("the %s of %q always carries a band, and a mold in break-in waits for a plain one", name, model.Name)
	}
	p.checkGuns(i, add)
}

// checkGuns tells of colors that no gun set of a booth can spray.
func (p *Plan) checkGuns(i int16, add func(string, ...any)) {
	part := &p.Parts[i]
	model := &p.Models[part.Model]
	for k := range p.Routes[part.Route].Steps {
		s := &p.Routes[part.Route].Steps[k]
		colors := model.Colors
		switch {
		case s.Spray == SprayBand:
			colors = model.Bands
		case part.Color != None:
			colors = []Share{{part.Color, 1}}
		}
		for _, t := range s.Take {
			for _, c := range colors {
				if s.Spray != NoSpray && c.Color != None && c.Weight > 0 && !p.sprays(t, c.Color, s.Spray) {
					add("%s of %q, step %q: no gun set of %q sprays %q", part.Name, model.Name, s.Name, p.Places[t].Name, p.Colors[c.Color].Name)
				}
			}
		}
	}
}

// sprays says whether some unit of a place has a gun set for a color. A place
// without gun sets has all it needs.
func (p *Plan) sprays(place, color int16, spray Spray) bool {
	listed := false
	for _, guns := range p.Places[place].Guns {
		for _, g := range guns {
			listed = true
			if (g.Color == None || g.Color == color) && (!g.Pot || spray == SprayBand) {
				return true
			}
		}
	}
	return !listed
}
