package floor

import (
	"moldturn/reports/chart"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// night is a time in which no craft is at work: a night, a weekend, a holiday.
type night struct{ from, to clock.Time }

// shortNight is the longest time without work that is none: a break.
const shortNight = 3 * clock.Hour

// nights are those between from and to, in order.
func nights(p *sim.Plan, from, to clock.Time) []night {
	var crews []*shift.Calendar
	for i := range p.Crafts {
		for k := range p.Crafts[i].Crews {
			crews = append(crews, p.Crafts[i].Crews[k].Hours)
		}
	}
	if len(crews) == 0 {
		return nil
	}
	var out []night
	at := from
	dark := func(until clock.Time) {
		if until-at > shortNight {
			out = append(out, night{at, until})
		}
	}
	for _, x := range shift.Union(crews...).Intervals() {
		if x.To <= at {
			continue
		}
		if x.From >= to {
			break
		}
		dark(x.From)
		at = min(x.To, to)
	}
	dark(to)
	return out
}

// shades are nights as a figure shows them.
func shades(p *sim.Plan, all []night) []chart.Shade {
	var out []chart.Shade
	for _, n := range all {
		out = append(out, chart.Shade{From: dateOf(p, n.from), To: dateOf(p, n.to)})
	}
	return out
}

// cutAtNights cuts waits where nights begin and end: whatever is waited for, at
// night nobody could give it.
func cutAtNights(all []stretch, nights []night) []stretch {
	var out []stretch
	for _, s := range all {
		if !s.thin || s.night {
			out = append(out, s)
			continue
		}
		for _, n := range nights {
			if n.from >= s.to {
				break
			}
			if n.to <= s.from {
				continue
			}
			before, during := s, s
			before.to, during.from, during.to, during.night = max(n.from, s.from), max(n.from, s.from), min(n.to, s.to), true
			if before.to > before.from {
				out = append(out, before)
			}
			out = append(out, during)
			s.from = during.to
		}
		if s.to > s.from {
			out = append(out, s)
		}
	}
	return out
}

// awake is how much of a stretch lies outside nights.
func awake(s stretch, nights []night) clock.Time {
	d := s.to - s.from
	for _, n := range nights {
		d -= max(0, min(n.to, s.to)-max(n.from, s.from))
	}
	return d
}
