package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/finish"
	"moldturn/sim/policy"
)

// lookAt is what the strip policy sees of a mold at its check.
func (r *Run) lookAt(m *mold) policy.Look {
	s := &r.plan.Strip
	look := policy.Look{Turns: int(m.since), Strips: int(m.strips), Surface: m.surface, Hot: r.hot}
	switch s.Kind {
	case policy.StripByBuildUp:
		look.Haze = r.nextHaze(m)
	case policy.StripByLuster:
		look.Reading, look.Low = m.reading, int(m.low)
	case policy.StripOpportunistic:
		look.Slack = look.Turns+1 >= s.Every && r.slack(m)
	}
	return look
}

// nextHaze is the haze to be expected on the next part of a mold: that of the
// first order that waits for such a part. Where none waits it is that of a part
// in its own color, or, without one, in a color that shows haze most.
func (r *Run) nextHaze(m *mold) float64 {
	pt := &r.plan.Parts[m.part]
	part := finish.Part{Grade: pt.Grade, Color: pt.BandLook, BuildUp: m.buildUp}
	if pt.Color != None {
		part.Color = r.plan.Colors[pt.Color].Look
	}
	if o := r.nextOrder(pt); o != nil {
		part.Color = r.lookOf(o, pt)
	}
	return finish.HazeOf(&r.plan.Finish, &part)
}

// nextOrder is the first order that waits for a part of a kind, nil for none.
// Where orders are always waiting one is there unless the floor is full.
func (r *Run) nextOrder(pt *Part) *order {
	full := r.floorFull(pt.Model)
	for _, i := range r.models[pt.Model].open {
		if o := &r.orders[i]; o.started&(1<<pt.Index) == 0 && (o.onFloor || !full) {
			return o
		}
	}
	if full || !r.plan.Demand.Full || len(r.models[pt.Model].open) > maxLook {
		return nil
	}
	return &r.orders[r.newOrder(pt.Model)]
}

// lookOf is how the part of an order shows haze: index into Finish.Colors.
func (r *Run) lookOf(o *order, pt *Part) int {
	color := o.color
	if pt.Color != None {
		color = pt.Color
	}
	switch {
	case r.banded(o, pt):
		return pt.BandLook
	case color == None:
		return 0
	}
	return r.plan.Colors[color].Look
}

// showsHaze says whether the part of an order is dark to the eye.
func (r *Run) showsHaze(o *order, pt *Part) bool {
	return r.plan.Finish.Colors[r.lookOf(o, pt)].Haze >= darkHaze
}

// stock has as many orders wait for a part of a kind as a release by color
// looks at, where orders are always waiting.
func (r *Run) stock(pt *Part) {
	rel := &r.plan.Release
	if !r.plan.Demand.Full || rel.Kind != policy.ColorRun && !rel.ByColor {
		return
	}
	waiting := 0
	for _, i := range r.models[pt.Model].open {
		if r.orders[i].started&(1<<pt.Index) == 0 {
			waiting++
		}
	}
	for ; waiting < rel.Look && len(r.models[pt.Model].open) <= maxLook; waiting++ {
		r.newOrder(pt.Model)
	}
}

// slackHours is how many working hours a mold must not be missed for to be
// stripped before its time.
const slackHours = 4

// slack says whether a mold will not be missed within the next working hours:
// another of its kind waits already, no order needs its part, or no booth will
// be free for it.
func (r *Run) slack(m *mold) bool {
	p := &r.parts[m.part]
	if len(p.ready) > 0 {
		return true
	}
	return r.unwanted(m.part) || r.boothsBusy(m.part)
}

// unwanted says whether no order needs the next part of a kind, or may begin it
// now.
func (r *Run) unwanted(part int16) bool {
	pt := &r.plan.Parts[part]
	d := &r.plan.Demand
	if d.MateLead > 0 && r.parts[part].started+1-r.slowestMate(pt) > d.MateLead {
		return true
	}
	full := r.floorFull(pt.Model)
	if d.Full && !full {
		return false
	}
	for _, i := range r.models[pt.Model].open {
		if o := &r.orders[i]; o.started&(1<<pt.Index) == 0 && (o.onFloor || !full) {
			return false
		}
	}
	return true
}

// boothsBusy says whether every booth that a part needs will be held for some
// working hours of its sprayers, or work already waits for one.
func (r *Run) boothsBusy(part int16) bool {
	for i := range r.steps[r.plan.Parts[part].Route] {
		s := &r.steps[r.plan.Parts[part].Route][i]
		if s.Spray == NoSpray || len(s.Take) == 0 || s.Craft == None {
			continue
		}
		q := &r.pools[r.place(s.Take[0])]
		if q.endless {
			return false
		}
		if q.free > 0 {
			return false
		}
		if q.head != None {
			return true
		}
		until := r.hours[s.Craft].Finish(r.clk.Now(), slackHours*clock.Hour)
		for u := range q.units {
			if h := q.units[u].holder; h == None || r.jobs[h].ends < until {
				return false
			}
		}
		return true
	}
	return false
}
