package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/record"
)

// holding is how the hold of a part in its mold stands.
type holding uint8

const (
	inTime    holding = iota // it will be ready when its time is over
	tooCold                  // it will not be ready: it waits for heat until its longest hold is over
	outOfTime                // its longest hold is over and it is not ready
)

// made is what the air, and waiting, made of a part. It is plain data.
type made struct {
	progress cure.Progress // of the last shot
	at       clock.Time    // when it was so
	last     clock.Time    // when its hold ends whatever it is like
	area     int16         // where it cures
	hold     holding
	warm     bool       // it was brought to a warm place
	seen     bool       // inspected for flaws
	sprays   uint8      // how often it was sprayed
	flaws    uint8      // bits by defect: it has them
	missed   uint8      // bits by defect: inspection did not see them
	sprayC   float64    // mold temperature when sprayed, °C
	humidity float64    // relative, when sprayed
	skinned  clock.Time // when the skin coat was begun; 0 before
	mend     float64    // labor hours to put found flaws right
	shown    float64    // of a boat: luster of its worst part once all post-cure has come out
}

// cures begins the cure of the last shot, in the area of its step.
func (r *Run) cures(b *job, area int) {
	m := &b.piece.made
	m.progress, m.at, m.area = r.air.degree[area].Fresh(), r.clk.Now(), int16(area)
}

// settle brings the cure of a part up to now, from where it went on in another
// area.
func (r *Run) settle(b *job, area int) {
	m := &b.piece.made
	now := r.clk.Now()
	m.progress = r.air.degree[m.area].Advance(m.progress, m.at, now)
	m.at, m.area = now, int16(area)
}

// holdEnds is when a part that begins its hold now is looked at again: when it
// is ready, or when nothing but heat is missing. A hold counts from the end of
// the last labor in the mold; in a warm place only the degree of cure counts,
// from now.
func (r *Run) holdEnds(b *job, s *Step, now clock.Time) clock.Time {
	m := &b.piece.made
	if m.hold == outOfTime {
		return now
	}
	h := r.plan.Hold
	from := b.piece.laborEnded
	switch {
	case m.warm:
		from, h.Clock, h.Equivalent = now, 0, 0
	case from == 0:
		from = now
		r.cures(b, s.Area)
	case b.mold != None && r.molds[b.mold].breakIn > 0:
		h.Clock = max(h.Clock, r.plan.BreakIn.Hold)
	}
	if h.Degree > 0 || int16(s.Area) != m.area {
		r.settle(b, s.Area)
	}
	ready, last, missed := r.air.ready(s.Area, &h, from, m.at, m.progress, r.plan.Length)
	m.last, m.hold = last, inTime
	if missed {
		m.hold = tooCold
	}
	return max(now, ready)
}

// verbHeld is the end of a hold. A part that cannot get as hard as wanted waits
// for heat until its longest hold is over; then it is brought to a warm place,
// if its route has one, or pulled green.
func (r *Run) verbHeld(j int32) bool {
	b := &r.jobs[j]
	m := &b.piece.made
	if m.hold == tooCold && r.clk.Now() < m.last {
		m.hold = outOfTime
		r.shut(j, record.Cause{Reason: record.NeedsHeat, Of: None}, m.last)
		return false
	}
	if m.hold == inTime {
		return true
	}
	m.hold = outOfTime
	if !m.warm && r.warmAhead(b) {
		m.warm, m.hold = true, inTime
		return true
	}
	r.settle(b, int(m.area))
	r.note(record.Note{Kind: record.PulledGreen, Order: b.order, Mold: b.mold, Part: b.part, Place: None, Value: r.green(b)})
	return true
}

// warmAhead says whether the route of a job goes on in a warm place.
func (r *Run) warmAhead(b *job) bool {
	for _, s := range r.steps[b.route][b.step+1:] {
		if s.When == NeedHeat {
			return true
		}
	}
	return false
}

// green is the degree of cure that a part lacks now of one pulled in good time;
// it must be settled.
func (r *Run) green(b *job) float64 {
	return max(0, r.air.full-b.piece.made.progress.Degree)
}
