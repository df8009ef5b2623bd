package main

import (
	"fmt"

	"moldturn/scenarios"
	paper "moldturn/sim/hand"
)

// holdsMissed are holds that many parts do not reach in the time they have.
func holdsMissed(s *scenarios.Scenario, _ *paper.Table) []warning {
	var all []warning
	seen := map[string]bool{}
	for i, a := range s.Alternatives {
		key := fmt.Sprintf("%s %v", a.Plant.Climate, a.Plant.Plan().Hold)
		if seen[key] {
			continue
		}
		seen[key] = true
		_, often, text := a.Plant.HoldMissed()
		switch v, _ := s.Base.Value.At("alternatives").Item(a.Name); {
		case often && i == 0:
			all = append(all, warn(s, "hold", "%s", text)...)
		case often:
			all = append(all, warning{v.Place(), fmt.Sprintf("alternative %q: %s", a.Name, text)})
		}
	}
	return all
}
