package main

import (
	"fmt"
	"slices"
	"time"

	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/draw"
	paper "moldturn/sim/hand"
)

// warning is something that is allowed and probably not meant.
type warning struct {
	Place string `json:"place"`
	Text  string `json:"text"`
}

// String is the warning in one line, "plant.yaml:14:9: warning: …".
func (w warning) String() string { return w.Place + ": warning: " + w.Text }

// suspicion looks for one kind of warning.
type suspicion func(s *scenarios.Scenario, t *paper.Table) []warning

// suspicions is the table of all of them, in the order in which they are shown.
func suspicions() []suspicion {
	return []suspicion{startsMidWeek, longShifts, cutLaws, unusedSeason, unheeded, sameAlternatives, idleCrafts, idlePlaces, overloaded, noFloorLimit, moreOrdersThanHands, airs, holdsMissed, wearsAway}
}

func warningsOf(s *scenarios.Scenario, t *paper.Table) []warning {
	all := []warning{}
	for _, suspect := range suspicions() {
		all = append(all, suspect(s, t)...)
	}
	return all
}

// warn is a warning about the input at path.
func warn(s *scenarios.Scenario, path, format string, args ...any) []warning {
	return []warning{{s.Base.Value.At(path).Place(), fmt.Sprintf(format, args...)}}
}

func startsMidWeek(s *scenarios.Scenario, _ *paper.Table) []warning {
	if d := s.Base.Value.At("start").Date(); d.Weekday() != time.Monday {
		return warn(s, "start", "%s is a %s; runs begin best on a Monday, since weeks run Monday to Sunday", d.Format(time.DateOnly), d.Weekday())
	}
	return nil
}

// longShifts last longer than people work; a shift that ends when it begins lasts
// a day.
func longShifts(s *scenarios.Scenario, _ *paper.Table) []warning {
	const longest = 16 * 60 // minutes
	var all []warning
	for name, x := range s.Base.Value.Each("shifts") {
		from, to := x.At("from").Minutes(), x.At("to").Minutes()
		if lasts := (to-from+24*60-1)%(24*60) + 1; lasts > longest {
			all = append(all, warning{x.At("to").Place(), fmt.Sprintf("shift %q lasts %.4g h, from %02d:%02d to %02d:%02d", name, float64(lasts)/60, from/60, from%60, to/60, to%60)})
		}
	}
	return all
}

// cutLaws are laws whose mean is not the one written.
func cutLaws(s *scenarios.Scenario, _ *paper.Table) []warning {
	var all []warning
	for _, l := range lawsIn(s.Base.Value) {
		if w, ok := draw.WarningOf(l.dist); ok {
			all = append(all, warning{l.place, l.path + ": " + w.String()})
		}
	}
	return all
}

// anyWay tells whether something holds in the base or in an alternative.
func anyWay(s *scenarios.Scenario, holds func(v *scenarios.Value) bool) bool {
	for _, a := range s.Alternatives {
		if holds(a.Plant.Value) {
			return true
		}
	}
	return false
}

// unusedSeason is a season that changes nothing.
func unusedSeason(s *scenarios.Scenario, _ *paper.Table) []warning {
	for _, path := range []string{"season.hot_months", "season.on", "season.off"} {
		if s.Base.Value.At(path).IsDefault() || anyWay(s, usesSeason) {
			continue
		}
		return warn(s, path, "%s is given, and nothing depends on the season: strip.policy is not seasonal and no craft has absence_hot", path)
	}
	return nil
}

func usesSeason(v *scenarios.Value) bool {
	if v.At("strip.policy").Text() == "seasonal" {
		return true
	}
	for _, craft := range v.Each("crafts") {
		if craft.At("absence_hot").Given() {
			return true
		}
	}
	return false
}

// sameAlternatives change nothing, or what another changes already.
func sameAlternatives(s *scenarios.Scenario, _ *paper.Table) []warning {
	var all []warning
	seen := map[string]string{}
	for _, a := range s.Alternatives {
		hash := a.Plant.Fingerprint(nil) // a file they name is one and the same
		if before, again := seen[hash]; again {
			v, _ := s.Base.Value.At("alternatives").Item(a.Name)
			all = append(all, warning{v.Place(), fmt.Sprintf("alternative %q is the same plant as %q", a.Name, before)})
			continue
		}
		seen[hash] = a.Name
	}
	return all
}

// idleCrafts have people and nothing to do.
func idleCrafts(s *scenarios.Scenario, t *paper.Table) []warning {
	var all []warning
	for i := range t.Crafts {
		c := &t.Crafts[i]
		if c.Planned > 0 && c.PerBoat == 0 && c.Background == 0 && len(s.Base.Plan().Crafts[i].Helps) == 0 {
			v, _ := s.Base.Value.At("crafts").Item(c.Name)
			all = append(all, warning{v.Place(), fmt.Sprintf("craft %q has people and no step needs them", c.Name)})
		}
	}
	return all
}

// idlePlaces are limited places that nothing stands in.
func idlePlaces(s *scenarios.Scenario, t *paper.Table) []warning {
	used := map[int16]bool{}
	for _, r := range s.Base.Plan().Routes {
		for _, step := range r.Steps {
			for _, list := range [][]int16{step.Take, step.Use} {
				for _, p := range list {
					used[p] = true
				}
			}
		}
	}
	var all []warning
	for i, p := range s.Base.Plan().Places {
		if !used[int16(i)] {
			v, _ := s.Base.Value.At("places").Item(p.Name)
			all = append(all, warning{v.Place(), fmt.Sprintf("place %q is taken by no step; is its name the one the routes use?", p.Name)})
		}
	}
	return all
}

// overloaded are crafts and places that other work fills alone.
func overloaded(s *scenarios.Scenario, t *paper.Table) []warning {
	var all []warning
	for _, c := range t.Crafts {
		if there := c.Planned * (1 - c.Absence); c.Background > there {
			v, _ := s.Base.Value.At("crafts").Item(c.Name)
			all = append(all, warning{v.Place(), fmt.Sprintf("background work asks %s h a week of %s, and %s h are there", number(c.Background), c.Name, fixed(there, 1))})
		}
	}
	for _, p := range t.Places {
		if open := float64(p.Count) * p.Hours; p.Background > open {
			v, _ := s.Base.Value.At("places").Item(p.Name)
			all = append(all, warning{v.Place(), fmt.Sprintf("background work asks %s h a week of %s, and it is open %s h", number(p.Background), p.Name, fixed(open, 1))})
		}
	}
	return all
}

// noFloorLimit lets parts pile up behind what limits the plant.
func noFloorLimit(s *scenarios.Scenario, t *paper.Table) []warning {
	p := s.Base.Capacity
	if p == nil || p.Demand.FloorLimit > 0 || len(t.Limits) == 0 || t.Limits[0].Kind == paper.ByMolds {
		return nil
	}
	for _, m := range p.Demand.Models {
		if m.Floor > 0 {
			return nil
		}
	}
	if holdsMolds(p, t.Limits[0]) {
		return nil
	}
	return warn(s, "demand", "orders are always waiting and demand.floor_limit is 0: if %s, behind the molds, cannot keep up, parts pile up without end", t.Limits[0].Words())
}

// moreOrdersThanHands is a demand that not even the paper can meet.
func moreOrdersThanHands(s *scenarios.Scenario, t *paper.Table) []warning {
	orders := 0.0
	for _, v := range s.Base.Value.Each("models") {
		orders += v.At("orders").PerWeek()
	}
	if len(t.Limits) == 0 || s.Base.Dated == nil || orders <= t.Limits[0].Boats {
		return nil
	}
	return warn(s, "models", "orders come in for %s boats a week, and by hand the plant makes %s: it falls behind without end", number(orders), fixed(t.Limits[0].Boats, 1))
}

// holdsMolds tells whether what a limit is about works on molds, or on parts in
// them, so that molds wait for it and nothing piles up.
func holdsMolds(p *sim.Plan, l paper.Limit) bool {
	for i := range p.Parts {
		part := &p.Parts[i]
		if part.Care != sim.None && slices.ContainsFunc(p.Routes[part.Care].Steps, func(x sim.Step) bool { return needs(p, &x, l) }) {
			return true
		}
		for k := range p.Routes[part.Route].Steps {
			step := &p.Routes[part.Route].Steps[k]
			if needs(p, step, l) {
				return true
			}
			if step.Verb == sim.Pulled {
				break
			}
		}
	}
	return false
}

// needs tells whether a step needs the craft or place of a limit.
func needs(p *sim.Plan, s *sim.Step, l paper.Limit) bool {
	if l.Kind == paper.ByCraft {
		return s.Craft != sim.None && p.Crafts[s.Craft].Name == l.Name
	}
	return slices.ContainsFunc(slices.Concat(s.Take, s.Use), func(i int16) bool { return p.Places[i].Name == l.Name })
}
