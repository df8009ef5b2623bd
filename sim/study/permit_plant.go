package study

import (
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/permit"
	"moldturn/sim/record"
)

// PermitPlant is what a permit ledger must know of a plan: areas, months, what
// steps use. Films and laminates are left to the caller.
func PermitPlant(p *sim.Plan, f *record.Frame) permit.Plant {
	out := permit.Plant{Start: p.Start, From: f.From, To: f.To, Kinds: len(p.Background), Back: make([]int, len(p.Routes))}
	for i := range p.Models {
		out.Models = append(out.Models, p.Models[i].Name)
	}
	for i := range p.Parts {
		out.Parts = append(out.Parts, permit.Part{Model: int(p.Parts[i].Model), Area: p.Parts[i].Area})
	}
	for i := range p.Routes {
		out.Routes = append(out.Routes, permitSteps(p.Routes[i].Steps))
		out.Back[i] = -1
	}
	for k := range p.Background {
		out.Back[p.Background[k].Route] = k
	}
	for i := range p.Places {
		out.Pots = append(out.Pots, potMinutes(&p.Places[i]))
	}
	return out
}

// permitSteps says what each step uses. The resin of a part is shared among its
// steps of laminating in proportion to their mean labor; the skin coat is that
// which closes the gel window.
func permitSteps(steps []sim.Step) []permit.Step {
	total := 0.0
	for i := range steps {
		total += laid(&steps[i])
	}
	out := make([]permit.Step, len(steps))
	sum, shared := 0.0, int64(0)
	for i := range steps {
		s := &steps[i]
		x := &out[i]
		x.Lays = s.Doing == record.Laminating && s.Pace == sim.Labor
		x.Use, x.Share = permitUse(s), permit.Whole
		x.Sprays = x.Use == permit.GelCoat || x.Use == permit.Band
		if laid(s) > 0 {
			sum += laid(s)
			upTo := int64(sum/total*permit.Whole + 0.5) // so that the shares add up to one part
			x.Share, shared = upTo-shared, upTo
		}
	}
	return out
}

// laid is the labor by which a step takes its share of the resin.
func laid(s *sim.Step) float64 {
	if s.Doing != record.Laminating || s.Pace != sim.Labor {
		return 0
	}
	return s.Mean * float64(s.Want)
}

func permitUse(s *sim.Step) permit.Use {
	switch {
	case laid(s) > 0 && s.Verb == sim.SkinBegun:
		return permit.Skin
	case laid(s) > 0:
		return permit.Laminate
	case s.Doing != record.Spraying && s.Doing != record.Masking || s.Verb == sim.WashedOut:
		return permit.NoUse
	case s.Spray == sim.SprayBase:
		return permit.GelCoat
	case s.Spray == sim.SprayBand:
		return permit.Band
	case s.Doing == record.Spraying:
		return permit.Barrier
	}
	return permit.NoUse
}

// potMinutes are the lengths of a flush that only the pot guns of a place have.
func potMinutes(p *sim.Place) []float64 {
	var pots, pumps []clock.Time
	for _, guns := range p.Guns {
		for _, g := range guns {
			if g.Pot {
				pots = append(pots, g.Flush)
			} else {
				pumps = append(pumps, g.Flush)
			}
		}
	}
	var out []float64
	for _, t := range pots {
		if !slices.Contains(pumps, t) {
			out = append(out, float64(t)/float64(clock.Minute))
		}
	}
	return out
}
