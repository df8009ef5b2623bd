package floor

import (
	"slices"

	"moldturn/sim"
	"moldturn/sim/record"
)

// stepWord is a word of the shop for steps of a route, where no step is called
// so: the first step that fits is meant.
type stepWord struct {
	words []string // in the form of key
	is    func(s *sim.Step) bool
}

var stepWords = []stepWord{
	{[]string{"tapeoff", "taping", "mask", "masking", "accent", "stripe", "band"}, func(s *sim.Step) bool { return s.Spray == sim.SprayBand }},
	{[]string{"gelcoat", "gel", "gelcoating", "spray", "spraying", "sprayed", "gelled", "basecoat"}, func(s *sim.Step) bool { return s.Verb == sim.Sprayed }},
	{[]string{"tack", "tacktest", "gelling", "gelcure", "gelwait", "flash"}, func(s *sim.Step) bool { return s.Doing == record.Gelling && s.When == sim.Always }},
	{[]string{"skincoat", "skin", "skinout", "skinning"}, func(s *sim.Step) bool { return s.Verb == sim.SkinBegun }},
	{[]string{"lamination", "laminating", "layup", "glass", "bulk", "bulklaminate", "backup", "shot"}, func(s *sim.Step) bool { return s.Verb == sim.LaborEnded }},
	{[]string{"cure", "curing", "hold", "curehold", "inmold", "cured"}, func(s *sim.Step) bool { return s.Pace == sim.ByPolicy }},
	{[]string{"pull", "pulling", "demold", "demolding", "readytopull", "release"}, func(s *sim.Step) bool { return s.Verb == sim.Pulled }},
	{[]string{"trim", "trimming", "grind", "grinding", "cutback"}, func(s *sim.Step) bool { return s.Doing == record.Trimming }},
	{[]string{"finish", "finishing", "gloss", "detail", "patch"}, func(s *sim.Step) bool { return s.Doing == record.Finishing && s.When == sim.Always }},
	{[]string{"inspect", "inspection", "qc", "finalinspection"}, func(s *sim.Step) bool { return s.Verb == sim.Inspected }},
	{[]string{"buff", "buffing", "rework"}, func(s *sim.Step) bool { return s.Verb == sim.Reworked }},
	{[]string{"assembly", "assembling", "rigging", "rig", "outfitting"}, func(s *sim.Step) bool { return s.Doing == record.Assembling }},
	{[]string{"check", "moldcheck", "inspectmold"}, func(s *sim.Step) bool { return s.Verb == sim.MoldChecked }},
	{[]string{"moldrepair", "repair", "chiprepair", "chip"}, func(s *sim.Step) bool { return s.Doing == record.Repairing }},
	{[]string{"strip", "stripping", "fullstrip", "compound", "compounding"}, func(s *sim.Step) bool { return s.Verb == sim.FullStripped }},
	{[]string{"wax", "waxing", "rewax"}, func(s *sim.Step) bool { return s.Verb == sim.Waxed }},
	{[]string{"haze", "hazing"}, func(s *sim.Step) bool { return s.Doing == record.Waxing && s.Pace == sim.ByClock }},
}

// step finds a step of a route: by its name, else by a word of the shop. more
// counts the other steps that the word could mean as well.
func (n *names) step(route int16, written string) (index int16, more int) {
	if route == sim.None {
		return sim.None, 0
	}
	steps := n.plan.Routes[route].Steps
	k := key(n.meant(written))
	if i := slices.IndexFunc(steps, func(s sim.Step) bool { return key(s.Name) == k }); i >= 0 {
		return int16(i), 0
	}
	for _, w := range stepWords {
		if !slices.Contains(w.words, k) {
			continue
		}
		index = sim.None
		for i := range steps {
			if !w.is(&steps[i]) || steps[i].Pace != sim.ByPolicy && steps[i].Mean == 0 && steps[i].Add == 0 && steps[i].Verb == sim.NoVerb {
				continue
			}
			if index == sim.None {
				index = int16(i)
			} else {
				more++
			}
		}
		if index != sim.None {
			return index, more
		}
	}
	return sim.None, 0
}

// stepNames lists the steps of routes, each name once.
func (n *names) stepNames(routes ...int16) []string {
	var out []string
	for _, r := range routes {
		if r == sim.None {
			continue
		}
		for i := range n.plan.Routes[r].Steps {
			if s := &n.plan.Routes[r].Steps[i]; !slices.Contains(out, s.Name) {
				out = append(out, s.Name)
			}
		}
	}
	return out
}

// stages are the steps of a part's route at which something ends, each sim.None
// if the route has no such step.
type stages struct {
	sprayed, skinned, laminated, pulled int16
}

// stagesOf finds them.
func stagesOf(r *sim.Route) stages {
	out := stages{sim.None, sim.None, sim.None, sim.None}
	for i := range r.Steps {
		at := int16(i)
		switch r.Steps[i].Verb {
		case sim.Sprayed:
			out.sprayed = at
		case sim.SkinBegun:
			out.skinned = at
		case sim.LaborEnded:
			out.laminated = at // the last one
		case sim.Pulled:
			out.pulled = at
		}
	}
	return out
}

// inMold tells whether a part that is in or before step at of its route is
// still in a mold.
func (n *names) inMold(part, at int16) bool {
	if part == sim.None || n.plan.Parts[part].Care == sim.None {
		return false
	}
	s := stagesOf(&n.plan.Routes[n.plan.Parts[part].Route])
	return s.pulled != sim.None && at <= s.pulled
}
