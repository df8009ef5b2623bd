package study

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/money"
	"moldturn/sim/record"
)

// MoneyPlant is what a ledger must know of a plan: names, areas, what steps are
// for. Materials, margins and prices of molds are left to the caller.
func MoneyPlant(p *sim.Plan, f *record.Frame) money.Plant {
	out := money.Plant{Start: p.Start, From: f.From, To: f.To, Open: f.Open(),
		LightCoats: int64(p.Strip.LightCoats), FullCoats: int64(p.Strip.FullCoats)}
	for i := range p.Crafts {
		out.Crafts = append(out.Crafts, p.Crafts[i].Name)
	}
	for i := range p.Models {
		out.Models = append(out.Models, money.Model{Name: p.Models[i].Name})
	}
	for i := range p.Parts {
		x := &p.Parts[i]
		out.Parts = append(out.Parts, money.Part{Name: p.Models[x.Model].Name + " " + x.Name, Model: int(x.Model),
			Area: int64(x.Area*1e4 + 0.5), MoldLife: float64(p.Life.Limit * (p.Life.Resurfaces + 1))})
	}
	out.Back = make([]int, len(p.Routes))
	for i := range out.Back {
		out.Back[i] = -1
	}
	for k := range p.Background {
		out.Small = append(out.Small, money.Small{Name: p.Background[k].Name})
		out.Back[p.Background[k].Route] = k
	}
	for i := range p.Routes {
		var steps []money.Step
		for k := range p.Routes[i].Steps {
			steps = append(steps, moneyStep(&p.Routes[i].Steps[k]))
		}
		out.Routes = append(out.Routes, steps)
	}
	for i := range p.Places {
		for _, guns := range p.Places[i].Guns {
			for _, g := range guns {
				minutes := float64(g.Flush) / float64(clock.Minute)
				if g.Pot {
					out.PotFlush = append(out.PotFlush, minutes)
				} else {
					out.PumpFlush = append(out.PumpFlush, minutes)
				}
			}
		}
	}
	return out
}

// moneyStep says what a step of a route is for. Work on a mold in care is
// prevention when it waxes or strips; finish work that is done only under a
// condition is failure; inspection and mold check are appraisal.
func moneyStep(s *sim.Step) money.Step {
	out := money.Step{Repair: s.Doing == record.Repairing && s.Verb != sim.Renewed, Band: s.Spray == sim.SprayBand, Booth: s.Spray != sim.NoSpray}
	failed := s.Doing == record.Finishing && s.When != sim.Always || s.Verb == sim.WashedOut || s.Add == sim.BuffHours || s.Add == sim.StuckHours || s.Add == sim.TouchUpHours
	switch {
	case failed:
		out.Class, out.Rework = money.InternalFailure, true
	case s.Doing == record.Waxing, s.Doing == record.Stripping:
		out.Class = money.Prevention
	case s.Verb == sim.Inspected, s.Verb == sim.MoldChecked, s.Doing == record.Checking:
		out.Class = money.Appraisal
	}
	return out
}

// both hands every fact to two observers.
type both struct{ a, b record.Observer }

func (o both) Span(f *record.Span) { o.a.Span(f); o.b.Span(f) }
func (o both) Use(f *record.Use)   { o.a.Use(f); o.b.Use(f) }
func (o both) Pull(f *record.Pull) { o.a.Pull(f); o.b.Pull(f) }
func (o both) Ship(f *record.Ship) { o.a.Ship(f); o.b.Ship(f) }
func (o both) Note(f *record.Note) { o.a.Note(f); o.b.Note(f) }
