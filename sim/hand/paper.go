package hand

import (
	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// paper is what is worked out once for a plant and used in every line.
type paper struct {
	plan   *sim.Plan
	air    *sim.Air
	frame  record.Frame
	weeks  float64   // open weeks
	speed  []float64 // mean speed of cure, by area
	hot    float64   // share of days in the hot season
	strips float64   // per pull
	chip   float64   // mean hours of a chip repair
	flaws  float64   // mean hours to put right the flaws of a part made as it should be
	lines  []line    // labor hours and standing hours, by model

	holds     []float64         // mean hold in hours, by area; worked out when asked for
	calendars []*shift.Calendar // by craft, made when asked for
}

// year takes means over the counted days: of cure and of the season.
func (h *paper) year() {
	p, air := h.plan, h.air
	for area := range max(len(p.Areas), 1) {
		sum, n := 0.0, 0
		for t := h.frame.From; t < h.frame.To; t += clock.Hour {
			sum += cure.Speed(air.MoldC(area, t), p.Cure.ActivationEnergy)
			n++
		}
		h.speed = append(h.speed, sum/float64(max(n, 1)))
	}
	h.hot = h.hotShare()
	for _, season := range []struct {
		hot   bool
		share float64
	}{{true, h.hot}, {false, 1 - h.hot}} {
		if n := p.Strip.Interval(season.hot); n > 0 {
			h.strips += season.share / float64(n)
		}
	}
	h.chip = meanOf(p.Chip.Quantile)
	if p.Defects != nil {
		part := defect.Reference()
		part.Film = p.Film
		for i := range defect.Count {
			if law := &p.Defects.Each[i]; i != defect.Sticking {
				h.flaws += defect.Chance(p.Defects, i, &part) * law.Found * (1 - law.Scrap) * law.Hours.Mean()
			}
		}
	}
}

// hotShare counts hot days as the plant's season policy does.
func (h *paper) hotShare() float64 {
	air, s := h.air, &h.plan.Season
	hot, before, days, peaks := 0, false, 0, []float64(nil)
	for t := h.frame.From; t < h.frame.To; t += clock.Day {
		mean := 0.0
		if s.Kind == policy.ByHeatPeak {
			peaks = append(peaks, dayPeak(air, t-clock.Day))
			peaks = peaks[max(0, len(peaks)-7):]
			for _, x := range peaks {
				mean += x / float64(len(peaks))
			}
		}
		if before = s.Hot(int(shift.MonthAt(h.frame.Start, t)), mean, before); before {
			hot++
		}
		days++
	}
	return float64(hot) / float64(max(days, 1))
}

// dayPeak is the highest heat index, °F, of the day from t on.
func dayPeak(air climate.Conditions, t clock.Time) float64 {
	top := air.HeatIndexF(0, t)
	for hour := range clock.Time(24) {
		top = max(top, air.HeatIndexF(0, t+hour*clock.Hour))
	}
	return top
}

// meanOf is the mean of a law by the midpoint rule over its quantiles, good to
// about a percent unless the tail is heavy.
func meanOf(quantile func(float64) float64) float64 {
	const n = 400
	sum := 0.0
	for i := range n {
		sum += quantile((float64(i) + 0.5) / n)
	}
	return sum / n
}

// often is how often a condition holds at a step of a part or of its mold, per
// turn. What depends on luster or on bad luck counts as never.
func (h *paper) often(c sim.Cond, part *sim.Part) float64 {
	s := &h.plan.Strip
	full := 0.0
	if s.FullEvery > 0 {
		full = 1 / float64(s.FullEvery)
	}
	wax := 0.0
	if every := h.plan.Wax.Every; every > 0 {
		wax = (1 - h.strips) / float64(every)
	}
	switch c {
	case sim.Always:
		return 1
	case sim.Banded:
		if part != nil && len(h.plan.Models[part.Model].Bands) > 0 {
			return part.Band
		}
	case sim.DueLight:
		return h.strips * (1 - full)
	case sim.DueFull:
		return h.strips * full
	case sim.DueWax:
		return wax * float64(h.plan.Wax.Coats)
	case sim.CoatsLeft:
		return wax * float64(h.plan.Wax.Coats-1)
	case sim.Damaged:
		if part != nil {
			return part.Chips
		}
	case sim.Flawed:
		return 1 // hours of flaws are means over all parts
	case sim.WornOut:
		if h.plan.Life.Limit > 0 {
			return 1 / float64(h.plan.Life.Limit)
		}
	}
	return 0
}

// hours is the mean time of a step when it is done, and whether it is the hold.
func (h *paper) hours(s *sim.Step) (hours float64, hold bool) {
	switch s.Pace {
	case sim.ByCure:
		return s.Mean / h.speed[s.Area], false
	case sim.ByPolicy:
		return h.holdHours(s.Area), true
	}
	extra := 0.0
	switch s.Add {
	case sim.RepairHours:
		extra = h.chip
	case sim.TouchUpHours:
		extra = h.flaws
	}
	return s.Mean + extra/float64(max(s.Want, 1)), false
}

// holdHours is the mean hold that the policy asks for, over parts whose last
// labor ends at three in the afternoon of each day.
func (h *paper) holdHours(area int) float64 {
	p := &h.plan.Hold
	if p.Equivalent == 0 && p.Degree == 0 {
		return p.Clock
	}
	for len(h.holds) <= area {
		total, n := clock.Time(0), 0
		for t := h.frame.From + 15*clock.Hour; t < h.frame.To; t += clock.Day {
			ready, _ := h.air.Ready(len(h.holds), p, t)
			total += ready - t
			n++
		}
		h.holds = append(h.holds, total.Hours()/float64(max(n, 1)))
	}
	return h.holds[area]
}
