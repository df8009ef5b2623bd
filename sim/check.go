package sim

import (
	"fmt"
	"slices"

	"moldturn/sim/clock"
)

// Check gives what would keep a plan from running or from ever shipping a
// boat, one sentence each; none for a sound plan.
func (p *Plan) Check() []string {
	var out []string
	add := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	for _, m := range p.Models {
		if len(m.Parts) == 0 || len(m.Parts) > mostParts {
			add("model %q has %d parts; allowed: 1 to %d", m.Name, len(m.Parts), mostParts)
		}
		free := true
		for _, part := range m.Parts {
			if p.Parts[part].Care != None {
				free = false
			}
		}
		if free && p.Demand.Full && p.Demand.FloorLimit == 0 {
			add("model %q needs no mold: with orders always waiting it needs a limit of work on the floor", m.Name)
		}
	}
	for i := range p.Parts {
		part := &p.Parts[i]
		pulled := slices.ContainsFunc(p.Routes[part.Route].Steps, func(s Step) bool { return s.Verb == Pulled })
		if part.Care != None && !pulled {
			add("the %s of %q is never pulled: its route %q has no step that means \"pulled\", or gives it no hours", part.Name, p.Models[part.Model].Name, p.Routes[part.Route].Name)
		}
	}
	for i := range p.Routes {
		for k := range p.Routes[i].Steps {
			s := &p.Routes[i].Steps[k]
			if fault := p.checkStep(s); fault != "" {
				add("%s, step %q: %s", p.Routes[i].Name, s.Name, fault)
			}
		}
	}
	return out
}

// checkStep says why a step can never be done, or nothing.
func (p *Plan) checkStep(s *Step) string {
	for _, list := range [][]int16{s.Take, s.Use} {
		for _, place := range list {
			if p.Places[place].Count == 0 {
				return fmt.Sprintf("there is no %q", p.Places[place].Name)
			}
		}
	}
	if s.Craft == None {
		return ""
	}
	c := &p.Crafts[s.Craft]
	most, longest := 0, clock.Time(0)
	for i := range c.Crews {
		most += c.Crews[i].People
		if c.Crews[i].People > 0 {
			longest = max(longest, c.Crews[i].Hours.LongestShift())
		}
	}
	if most < int(s.Least) {
		return fmt.Sprintf("it needs at least %d of %q and there are %d", s.Least, c.Name, most)
	}
	if work := clock.FromHours(s.Mean); s.End == Fit && work > longest && longest > 0 {
		return fmt.Sprintf("it takes %.1f h and must fit into a shift, and the longest shift of %q has %.1f h", s.Mean, c.Name, longest.Hours())
	}
	return ""
}
