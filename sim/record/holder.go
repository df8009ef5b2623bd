package record

import "moldturn/sim/clock"

// holders adds to h who held, during a wait, what it waited for.
func (r *Recorder) holders(h Held, wait *Span) Held {
	if wait.Cause.Reason == FloorLimit {
		return r.onFloor(h, wait)
	}
	for i := range r.Spans {
		s := &r.Spans[i]
		if s.From >= wait.To || s.To <= wait.From || !s.keepsFrom(wait) && !r.mateOf(s, wait) {
			continue
		}
		h = h.with(s, min(s.To, wait.To)-max(s.From, wait.From))
	}
	return h
}

// keepsFrom tells whether a span, at the same time, held what a wait was for.
func (s *Span) keepsFrom(wait *Span) bool {
	if s.Job >= 0 && s.Job == wait.Job {
		return false
	}
	switch c := wait.Cause; c.Reason {
	case NoCrew:
		return s.Working && s.People > 0 && (s.Craft == c.Of || s.Lent > 0 && s.Lender == c.Of)
	case NoPlace, NoHoist, NoGun, Down:
		return s.Job >= 0 && s.holds(c.Of)
	case NoMold:
		return wait.Part >= 0 && s.Mold >= 0 && s.Part == wait.Part
	case RotationFull:
		return s.Mold >= 0 && s.Mold != wait.Mold && s.Part == wait.Part
	}
	return false
}

// mateOf tells whether a span is of a mold of a mate, when a part type is ahead
// of its mates and the mold is not itself one that waits for that.
func (r *Recorder) mateOf(s, wait *Span) bool {
	if wait.Cause.Reason != MateLimit || s.Mold < 0 || s.Part < 0 || wait.Part < 0 || s.Part == wait.Part {
		return false
	}
	of := r.Limits.OfPart
	return int(max(s.Part, wait.Part)) < len(of) && of[s.Part] == of[wait.Part] && s.Cause.Reason != MateLimit
}

func (s *Span) holds(place int16) bool {
	for _, h := range s.Held {
		if h.Place == place {
			return true
		}
	}
	return false
}

// with adds time of a holder; one at the same step for the same reason is the
// same holder.
func (h Held) with(s *Span, d clock.Time) Held {
	n := Holder{Job: s.Job, Order: s.Order, Mold: s.Mold, Part: s.Part, Route: s.Route, Step: s.Step, Doing: s.Doing, Working: s.Working, Cause: s.Cause}
	for i := range h {
		same := h[i]
		same.For = 0
		if same == n {
			h[i].For += d
			return h
		}
	}
	n.For = d
	return append(h, n)
}

// missing adds to h the mates that a finished part waited for, and what each of
// them did: own are the spans of a mate, its wait for a mold included.
func (h Held) missing(own []Span, wait *Span) Held {
	for i := range own {
		s := &own[i]
		if s.From < wait.To && s.To > wait.From && s.Part >= 0 && s.Part != wait.Part && s.Cause.Reason != MateMissing {
			h = h.with(s, min(s.To, wait.To)-max(s.From, wait.From))
		}
	}
	return h
}
