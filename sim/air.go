package sim

import (
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/policy"
)

// Air is the weather of one replication inside the plant, and the cure it
// allows, by area. It is made once, is read-only, and is shared by all
// alternatives under the same climate and heating.
type Air struct {
	climate.Conditions
	cure   []*cure.Hours
	degree []*cure.Degree
	full   float64 // degree of cure of a part pulled in good time
	peaks  func(area, day int) float64
}

// NewAir prepares the conditions of one replication for a resin. Where many
// replications are made, AirOf saves making the resin's table again.
func NewAir(path *climate.Path, p cure.Params) *Air { return AirOf(path, cure.NewTable(p)) }

// AirOf prepares the conditions of one replication for the resin of a table,
// which may be shared.
func AirOf(path *climate.Path, t *cure.Table) *Air {
	a := &Air{Conditions: path, peaks: path.PeakMean7, full: t.Reference()}
	for i := range path.Areas() {
		hours := cure.NewHours(path.Hourly(i), t.Params())
		a.cure = append(a.cure, hours)
		a.degree = append(a.degree, cure.NewDegree(path.Hourly(i), hours, t))
	}
	return a
}

// Ready is when a hold rule lets a part be pulled whose last labor in the mold
// ended at from, in an area: what pull crews are planned by, with the Air of a
// forecast. missed says that the rule is not met by its longest hold, which is
// then the answer: the shop is too cold for the degree of cure that is wanted,
// or too slow.
func (a *Air) Ready(area int, h *policy.Hold, from clock.Time) (ready clock.Time, missed bool) {
	ready, last, missed := a.ready(area, h, from, from, a.degree[area].Fresh(), clock.Never)
	if missed {
		return last, true
	}
	return ready, false
}

// ready judges a hold that counts from an instant, for a shot that had cured to
// p at another one. ready is when all that can be met is met, last when the
// hold ends whatever the part is like, at most horizon; missed says that by
// then something is not met.
func (a *Air) ready(area int, h *policy.Hold, from, at clock.Time, p cure.Progress, horizon clock.Time) (ready, last clock.Time, missed bool) {
	ready = from + clock.FromHours(h.Clock)
	last = max(horizon, ready)
	if h.Most > 0 {
		last = max(from+clock.FromHours(h.Most), ready)
	}
	if h.Equivalent > 0 {
		if ready = max(ready, a.cure[area].Ready(from, h.Equivalent)); ready > last {
			return last, last, true
		}
	}
	if h.Degree > 0 {
		t, ok := a.degree[area].ReadyFrom(p, at, h.Degree, last)
		if !ok {
			return ready, last, true
		}
		ready = max(ready, t)
	}
	return ready, last, false
}

// heatAbsence is the chance that a person of a craft is absent on a day: between
// the two limits of the season, by the mean of the last seven daily peaks of the
// heat index where the craft works, it rises from that of cool to that of hot
// weeks.
func (r *Run) heatAbsence(craft int16, crew *Crew, day int) float64 {
	s := &r.plan.Season
	if crew.AbsenceHot == crew.Absence {
		return crew.Absence
	}
	peak := r.air.peaks(r.plan.Crafts[craft].Area, day)
	share := 0.0
	switch {
	case peak >= s.On:
		share = 1
	case peak > s.Off:
		share = (peak - s.Off) / (s.On - s.Off)
	}
	return crew.Absence + share*(crew.AbsenceHot-crew.Absence)
}
