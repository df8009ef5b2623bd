package floor

import (
	"cmp"
	"slices"
	"time"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// stretch is a mold in one state.
type stretch struct {
	mold     int32
	from, to clock.Time
	state
}

// stretches joins what molds do, cut at the ends of what was recorded, by mold
// and time. Neighbors that look alike become one; waits are cut where nights
// begin and end.
func stretches(p *sim.Plan, r *record.Recorder) []stretch {
	var all []stretch
	for i := range r.Spans {
		if s := &r.Spans[i]; s.Mold >= 0 {
			all = append(all, stretch{s.Mold, max(s.From, r.From), min(s.To, r.To), stateOf(p, s)})
		}
	}
	slices.SortStableFunc(all, func(a, b stretch) int {
		return cmp.Or(cmp.Compare(a.mold, b.mold), cmp.Compare(a.from, b.from))
	})
	var out []stretch
	for _, s := range all {
		if n := len(out); n > 0 && out[n-1].mold == s.mold && out[n-1].to == s.from && out[n-1].state == s.state {
			out[n-1].to = s.to
			continue
		}
		out = append(out, s)
	}
	return cutAtNights(out, nights(p, r.From, r.To))
}

// dateOf is a moment of the plan's calendar, which knows no time zone.
func dateOf(p *sim.Plan, t clock.Time) time.Time {
	return time.Date(p.Start.Year, p.Start.Month, p.Start.Day, 0, 0, 0, 0, time.UTC).Add(time.Duration(t) * time.Millisecond)
}
