package main

import (
	"fmt"

	"moldturn/scenarios"
	paper "moldturn/sim/hand"
)

// airs are warnings about the air of the base, and of alternatives that have
// others.
func airs(s *scenarios.Scenario, _ *paper.Table) []warning {
	var all []warning
	told, climates := map[string]bool{}, map[string]bool{}
	for i, a := range s.Alternatives {
		if climates[a.Plant.Climate] {
			continue
		}
		climates[a.Plant.Climate] = true
		for _, w := range a.Plant.AirWarnings() {
			if told[w.Text] {
				continue
			}
			told[w.Text] = true
			place, text := w.At.Place(), w.Text
			if i > 0 {
				v, _ := s.Base.Value.At("alternatives").Item(a.Name)
				place, text = v.Place(), fmt.Sprintf("alternative %q: %s", a.Name, w.Text)
			}
			all = append(all, warning{place, text})
		}
	}
	return all
}

// wearsAway is a rule of full strips that makes ever more of them.
func wearsAway(s *scenarios.Scenario, _ *paper.Table) []warning {
	runsAway := func(v *scenarios.Value) bool {
		strip := v.At("strip")
		return strip.At("policy").Text() != "never" && strip.At("full_at").Number() > 0 && strip.At("full_loss").Number() > 0 &&
			v.At("life.surface_limit").Number() == 0
	}
	if !anyWay(s, runsAway) {
		return nil
	}
	return warn(s, "strip.full_at", "strip.full_at is %s and life.surface_limit is 0: from there on every strip is a full one, and each wears the mold more; set life.surface_limit, at which it is resurfaced",
		number(s.Base.Value.At("strip.full_at").Number()))
}
