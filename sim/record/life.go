package record

import (
	"cmp"
	"fmt"
	"slices"

	"moldturn/sim/clock"
)

// Life is what one part of an order, or one mold, did over a stretch of time.
// Passages follow each other without gap and fill the stretch.
type Life struct {
	Part     int16
	From, To clock.Time
	Passages []Passage
}

// Passage is a visit, with who held what it waited for. A wait before a part is
// in a mold, and every wait of a mold without a job, is a passage of its own.
type Passage struct {
	Visit
	Held []Held // by the waits of the visit
}

// Held is who held what was waited for during the waits for one cause, longest
// first: people of the craft, units of the place, molds of the part type, or
// mates of the part.
type Held []Holder

// Holder is one job, or one mold with none, and what it did.
type Holder struct {
	Job, Order, Mold  int32
	Part, Route, Step int16
	Doing             Doing
	Working           bool
	Cause             Cause      // why it waited itself, when not Working
	For               clock.Time // how much of the wait
}

// Sum is the length of all passages, which is To − From.
func (l *Life) Sum() clock.Time {
	sum := clock.Time(0)
	for i := range l.Passages {
		p := &l.Passages[i]
		sum += p.Worked + p.Waited()
	}
	return sum
}

// MoldLife is what mold m did while facts were kept. It fails when the facts
// have a hole, which is a fault of the program.
func (r *Recorder) MoldLife(m int32) (Life, error) {
	var own []Span
	for i := range r.Spans {
		if r.Spans[i].Mold == m {
			own = append(own, r.clipped(&r.Spans[i]))
		}
	}
	l := Life{Part: -1, From: r.From, To: r.To}
	if len(own) > 0 {
		l.Part = own[0].Part
	}
	return r.live(l, own, nil)
}

// OrderLife is what became of an order from its start to its end, or to the end
// of what was kept: one Life for each of its part types. Each runs over the same
// stretch: the wait for a mold, the part, the wait for its mates, the boat. It
// fails when the facts have a hole.
func (r *Recorder) OrderLife(order int32, parts []int16) ([]Life, error) {
	var boat []Span
	byPart := make([][]Span, len(parts))
	for i := range r.Spans {
		s := &r.Spans[i]
		if s.Order != order || s.Job < 0 {
			continue
		}
		if k := slices.Index(parts, s.Part); k >= 0 {
			byPart[k] = append(byPart[k], r.clipped(s))
		} else {
			boat = append(boat, r.clipped(s))
		}
	}
	for k, part := range parts {
		byPart[k] = r.withoutMold(order, part, append(byPart[k], boat...))
	}
	lives := make([]Life, len(parts))
	for k, part := range parts {
		var err error
		if lives[k], err = r.live(Life{Part: part, From: r.From, To: r.To}, byPart[k], byPart); err != nil {
			return nil, err
		}
	}
	return lives, nil
}

// withoutMold fills the time in which a part was not begun: before its first
// start, and from a part thrown away to the next start.
func (r *Recorder) withoutMold(order int32, part int16, own []Span) []Span {
	slices.SortStableFunc(own, func(a, b Span) int { return cmp.Compare(a.From, b.From) })
	var out []Span
	at, job := r.From, int32(-1)
	wait := func(to clock.Time) {
		for _, s := range r.idle(part, at, to) {
			s.Order = order
			out = append(out, s)
		}
		at = to
	}
	for i := range own {
		if own[i].From > at && own[i].Job != job && own[i].Part == part {
			wait(own[i].From)
		}
		out = append(out, own[i])
		at, job = own[i].To, own[i].Job
	}
	if at < r.To {
		wait(r.To)
	}
	return out
}

// idle cuts a wait for a mold at the instants from and to which a mold of the
// type stood ready and was kept from starting for a reason of its own.
func (r *Recorder) idle(part int16, from, to clock.Time) []Span {
	var kept []Span
	for i := range r.Spans {
		s := &r.Spans[i]
		if s.Job < 0 && s.Part == part && s.From < to && s.To > from && s.Cause.Reason >= NoPlain && s.Cause.Reason <= MateLimit {
			kept = append(kept, *s)
		}
	}
	slices.SortStableFunc(kept, func(a, b Span) int { return cmp.Compare(a.From, b.From) })
	var out []Span
	add := func(c Cause, until clock.Time) {
		if until > from {
			out = append(out, Span{Job: -1, Mold: -1, Route: -1, Step: -1, Part: part, Craft: -1, Place: -1, Unit: -1, Cause: c, From: from, To: until})
			from = until
		}
	}
	for i := range kept {
		add(Cause{NoMold, -1}, min(kept[i].From, to))
		add(kept[i].Cause, min(kept[i].To, to))
	}
	add(Cause{NoMold, -1}, to)
	return out
}

// live joins the spans of a life to passages, each wait with who held what it
// waited for; mates are the spans of all parts of the boat.
func (r *Recorder) live(l Life, own []Span, mates [][]Span) (Life, error) {
	slices.SortStableFunc(own, func(a, b Span) int { return cmp.Compare(a.From, b.From) })
	at := l.From
	for i := range own {
		if own[i].From != at || own[i].To <= at {
			return l, fmt.Errorf("the facts of this run have a hole: nothing from %v to %v", at, own[i].From)
		}
		at = own[i].To
	}
	if at != l.To {
		return l, fmt.Errorf("the facts of this run have a hole: nothing from %v to %v", at, l.To)
	}
	var open *Passage
	for i := range own {
		s := &own[i]
		if open == nil || !open.goesOn(s) || i > 0 && (own[i-1].Job != s.Job || own[i-1].Repeat != s.Repeat) {
			l.Passages = append(l.Passages, Passage{Visit: Visit{Job: s.Job, Order: s.Order, Mold: s.Mold, Route: s.Route, Step: s.Step,
				Part: s.Part, Doing: s.Doing, Asked: s.From, Began: clock.Never, Craft: -1, Place: -1, Unit: -1}})
			open = &l.Passages[len(l.Passages)-1]
		}
		open.add(s)
		if s.Working {
			continue
		}
		k := slices.IndexFunc(open.Waits, func(w Wait) bool { return w.Cause == s.Cause })
		for len(open.Held) < len(open.Waits) {
			open.Held = append(open.Held, nil)
		}
		open.Held[k] = r.holders(open.Held[k], s)
		if s.Cause.Reason == MateMissing {
			for _, mate := range mates {
				open.Held[k] = open.Held[k].missing(mate, s)
			}
		}
	}
	for i := range l.Passages {
		for _, h := range l.Passages[i].Held {
			slices.SortStableFunc(h, func(a, b Holder) int {
				return cmp.Or(cmp.Compare(b.For, a.For), cmp.Compare(a.Job, b.Job), cmp.Compare(a.Mold, b.Mold))
			})
		}
	}
	return l, nil
}
