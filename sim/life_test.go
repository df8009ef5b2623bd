package sim

import (
	"errors"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// fates follows every order of a run.
type fates struct {
	record.Nothing
	began, ended []clock.Time
}

func (f *fates) Note(n *record.Note) {
	switch n.Kind {
	case record.OrderArrived:
		f.began, f.ended = append(f.began, clock.Never), append(f.ended, clock.Never)
	case record.BoatBegun:
		f.began[n.Order] = n.At
	}
}

func (f *fates) Ship(s *record.Ship) { f.ended[s.Order] = s.At }

// plainSums adds up the spans of an order, or of a mold, without the code that
// makes lives of them.
func plainSums(r *record.Recorder, mine func(*record.Span) bool) (work clock.Time, waits [record.Reasons]clock.Time) {
	for i := range r.Spans {
		s := &r.Spans[i]
		if !mine(s) {
			continue
		}
		d := min(s.To, r.To) - max(s.From, r.From)
		if s.Working {
			work += d
		} else {
			waits[s.Cause.Reason] += d
		}
	}
	return work, waits
}

func lifeSums(l *record.Life, mine func(*record.Passage) bool) (work clock.Time, waits [record.Reasons]clock.Time) {
	for i := range l.Passages {
		if p := &l.Passages[i]; mine(p) {
			work += p.Worked
			for _, w := range p.Waits {
				waits[w.Cause.Reason] += w.For
			}
		}
	}
	return work, waits
}

// In random plants the reasons of every order add up to its lead time exactly,
// along each of its parts, and those of every mold to the stretch looked at; and
// each reason has what the facts give it.
func TestLivesAddUp(t *testing.T) {
	airs := randomAirs()
	orders, molds, waits, held := 0, 0, 0, 0
	named := &naming{}
	for n := range 80 {
		m := randomPlan(n)
		f := &fates{}
		var circle *Deadlock
		if err := Simulate(m.p, airs[m.air], uint64(n), 0, f); errors.As(err, &circle) {
			continue
		} else if err != nil {
			t.Fatal(err)
		}
		for o := range f.began {
			if f.ended[o] == clock.Never || o%7 != 0 || f.began[o] == f.ended[o] {
				continue
			}
			orders++
			r := record.NewRecorder(f.began[o], f.ended[o])
			r.Limits = limitsOf(m.p)
			if err := Simulate(m.p, airs[m.air], uint64(n), 0, r); err != nil {
				t.Fatal(err)
			}
			model := None
			for i := range r.Spans {
				if s := &r.Spans[i]; s.Order == int32(o) && s.Part >= 0 {
					model = int(m.p.Parts[s.Part].Model)
				}
			}
			if model == None { // nothing of it took any time
				continue
			}
			lives, err := r.OrderLife(int32(o), m.p.Models[model].Parts)
			if err != nil {
				t.Errorf("plant %d, order %d: %v", n, o, err)
				continue
			}
			for k := range lives {
				l := &lives[k]
				if l.Sum() != f.ended[o]-f.began[o] {
					t.Errorf("plant %d, order %d, part %d: %v of %v", n, o, l.Part, l.Sum(), f.ended[o]-f.began[o])
				}
				work, why := plainSums(r, func(s *record.Span) bool { return s.Job >= 0 && s.Order == int32(o) && s.Part == l.Part })
				work2, why2 := lifeSums(l, func(p *record.Passage) bool { return p.Job >= 0 && p.Part >= 0 })
				if work != work2 || why != why2 {
					t.Errorf("plant %d, order %d, part %d: worked %v, facts say %v; waits %v, facts say %v", n, o, l.Part, work2, work, why2, why)
				}
				for i := range l.Passages {
					for j, w := range l.Passages[i].Waits {
						waits++
						held += len(l.Passages[i].Held[j])
						named.add(t, m.p, &l.Passages[i], j)
						if w.Cause.Reason == record.NoReason || w.For <= 0 {
							t.Errorf("plant %d, order %d: a wait of %v for %q", n, o, w.For, w.Cause.Reason)
						}
					}
				}
			}
			if orders%5 == 0 {
				break
			}
		}
		r := record.NewRecorder(m.p.Length/3, m.p.Length/2)
		r.Limits = limitsOf(m.p)
		if err := Simulate(m.p, airs[m.air], uint64(n), 0, r); err != nil {
			t.Fatal(err)
		}
		for i := range m.p.Molds {
			molds++
			l, err := r.MoldLife(int32(i))
			if err != nil || l.Sum() != r.To-r.From {
				t.Errorf("plant %d, mold %d: %v of %v, %v", n, i, l.Sum(), r.To-r.From, err)
			}
			for k := range l.Passages {
				for j := range l.Passages[k].Waits {
					named.add(t, m.p, &l.Passages[k], j)
				}
			}
			work, why := plainSums(r, func(s *record.Span) bool { return s.Mold == int32(i) })
			work2, why2 := lifeSums(&l, func(*record.Passage) bool { return true })
			if work != work2 || why != why2 {
				t.Errorf("plant %d, mold %d: worked %v, facts say %v; waits %v, facts say %v", n, i, work2, work, why2, why)
			}
		}
	}
	if orders < 100 || waits < 1000 || held < 1000 {
		t.Errorf("only %d orders with %d waits and %d holders", orders, waits, held)
	}
	named.check(t)
	t.Logf("%d orders with %d waits and %d holders, %d molds", orders, waits, held, molds)
}

func limitsOf(p *Plan) record.FloorLimits {
	l := record.FloorLimits{All: p.Demand.FloorLimit}
	for i := range p.Demand.Models {
		l.Models = append(l.Models, p.Demand.Models[i].Floor)
	}
	for i := range p.Parts {
		l.OfPart = append(l.OfPart, p.Parts[i].Model)
	}
	return l
}

// naming is how long was waited for each reason, and how much of that nobody
// held.
type naming struct{ waited, nobody [record.Reasons]clock.Time }

func (n *naming) add(t *testing.T, p *Plan, at *record.Passage, wait int) {
	w, held := at.Waits[wait], at.Held[wait]
	sum := clock.Time(0)
	for i := range held {
		h := &held[i]
		sum += h.For
		if h.For <= 0 || h.For > w.For {
			t.Errorf("%s: held for %v of %v", w.Cause.Reason, h.For, w.For)
		}
		if w.Cause.Reason == record.MateMissing && (h.Order != at.Order || h.Part == at.Part || h.Part < 0 || h.Cause.Reason == record.MateMissing) {
			t.Errorf("order %d, part %d waits for %+v, which is no mate that is missing", at.Order, at.Part, *h)
		}
	}
	n.waited[w.Cause.Reason] += w.For
	n.nobody[w.Cause.Reason] += max(w.For-sum, 0)
	if limit := p.Demand.FloorLimit; w.Cause.Reason == record.FloorLimit && limit > 0 && len(p.Demand.Models) == 0 && sum < clock.Time(limit)*w.For {
		t.Errorf("boats stood on the floor for %v together during %v of waiting for a limit of %d", sum, w.For, limit)
	}
}

// check demands names for every hour of the waits that something there always
// holds up. People may be too few because some are absent, places because they
// are down; those waits are shown.
func (n *naming) check(t *testing.T) {
	for _, r := range []record.Reason{record.FloorLimit, record.MateLimit, record.RotationFull, record.MateMissing, record.NoHoist} {
		if n.waited[r] == 0 || n.nobody[r] > 0 {
			t.Errorf("%s: %v waited, %v of it held by nobody", r, n.waited[r], n.nobody[r])
		}
	}
	for r := range record.Reasons {
		if n.waited[r] > 0 {
			t.Logf("%-26s %10.0f h, by nobody %10.1f h", r, n.waited[r].Hours(), n.nobody[r].Hours())
		}
	}
}
