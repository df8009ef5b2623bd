package main

import (
	"sync"

	"moldturn/reports/view"
	"moldturn/scenarios"
)

// permitRepeats is how many repeats stand behind the permit line of a report.
const permitRepeats = 5

// withPermit has the report of a comparison show the permit line of its base,
// where the scenario has a permit. The runs are made when the page is written.
func withPermit(c *Context, o *common, s *scenarios.Scenario, v *view.Study) {
	base := &s.Alternatives[0]
	if base.Plant.Permit() == nil {
		return
	}
	few := *o
	few.Replications = option[int]{Value: max(min(v.Replications, permitRepeats), 1), Given: true}
	few.Quiet = true
	v.Permit = sync.OnceValues(func() (*view.Permit, error) { return permitOf(c, &few, s, base, "counting for the permit") })
}
