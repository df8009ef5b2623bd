package floor

import (
	"fmt"

	"moldturn/sim/clock"
)

// share is how the hours of molds were spent while people were at work, as
// shares of 1 of the hours in rotation.
type share struct {
	waits  float64 // for people, places, air, the gel window
	idle   float64 // ready, and nothing to begin
	reason string  // what they wait for most, of waits: "the gel crew"
	most   float64 // its share
}

// shares sums stretches outside nights. What is not in rotation counts for
// nothing, and a wait for the next shift is no wait for anything else.
func shares(all []stretch, nights []night) share {
	var total, waits, ready clock.Time
	var labels []string
	by := map[string]clock.Time{} // never ranged over
	for _, s := range all {
		if s.label == notInUse {
			continue
		}
		d := awake(s, nights)
		total += d
		switch {
		case s.kind == idle:
			ready += d
		case s.thin && !s.night:
			waits += d
			if _, ok := by[s.what]; !ok {
				labels = append(labels, s.what)
			}
			by[s.what] += d
		}
	}
	if total == 0 {
		return share{}
	}
	out := share{waits: float64(waits) / float64(total), idle: float64(ready) / float64(total)}
	for _, l := range labels {
		if x := float64(by[l]) / float64(total); x > out.most {
			out.most, out.reason = x, l
		}
	}
	return out
}

// waitingMuch is the share of mold hours from which on waits are the finding.
const waitingMuch = 0.10

// moldsFinding is the rule "what molds wait for": waits or missing orders of a
// tenth of the hours or more, the greater first; else nothing stands out.
func moldsFinding(s share) string {
	switch {
	case s.waits >= waitingMuch && s.waits >= s.idle:
		return fmt.Sprintf("While people are at work, molds wait for %.0f %% of the time, most for %s", 100*s.waits, s.reason)
	case s.idle >= waitingMuch:
		return fmt.Sprintf("While people are at work, nothing is begun in molds that are ready for %.0f %% of the time", 100*s.idle)
	}
	return "No wait stands out: molds are worked on, cure, or wait for the next shift"
}
