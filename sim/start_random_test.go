package sim

import (
	"errors"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// watchFrom is watch for a run that begins from a start: what was on the floor
// then counts as begun.
func watchFrom(p *Plan, air *Air, s *Start, seed uint64) (*watcher, error) {
	w := &watcher{now: s.At, noteAt: s.At}
	w.molds = make([]clock.Time, len(p.Molds))
	w.pools = make([]clock.Time, len(p.Crafts)+len(p.Places))
	w.level = newLevel(p)
	for i := range w.molds {
		w.molds[i] = s.At
	}
	for i := range w.pools {
		w.pools[i] = s.At
	}
	w.r = &Run{plan: p, air: air, obs: w, clk: clock.NewAt(s.At), from: s.At, root: draw.Root(seed, 0), verbs: &verbs}
	w.r.startFrom(s)
	w.births()
	for j := range w.r.jobs {
		b := &w.r.jobs[j]
		switch {
		case b.state == unused:
		case b.kind == partJob && b.mold == None && p.Parts[b.part].Care != None:
			w.pulls++
		case b.kind == boatJob:
			for _, part := range p.Models[w.r.orders[b.order].model].Parts {
				w.joined--
				if p.Parts[part].Care != None {
					w.molded--
				}
			}
		}
	}
	err := w.r.pass(w)
	if err != nil {
		w.over = true
		return w, err
	}
	w.tables()
	w.stand(p.Length - w.now)
	w.r.close()
	w.closing()
	return w, nil
}

// Random plants go on from the floor that a run of them has at a random moment:
// nothing is wrong with the floor, all identities hold (started = shipped + on
// the floor + scrapped among them), and the same start gives the same facts.
func TestStartFromRandomFloors(t *testing.T) {
	const plants = 150
	airs := randomAirs()
	floors, pieces, blocked := 0, 0, 0
	for n := range plants {
		m := randomPlan(n)
		air := airs[m.air]
		r := Begin(m.p, air, uint64(n), 0, record.Nothing{})
		if err := r.Until(clock.Time((0.2 + 0.6*draw.Root(5, n).U(0)) * float64(m.p.Length))); err != nil {
			continue // it blocks itself
		}
		s := r.TakeStock()
		if faults := s.Check(m.p); len(faults) > 0 {
			t.Fatalf("plant %d: %v", n, faults)
		}
		floors++
		pieces += len(s.Work)
		w, err := watchFrom(m.p, air, s, uint64(n))
		for _, f := range w.faults {
			t.Errorf("plant %d from %v: %s", n, s.At, f)
		}
		var circle *Deadlock
		if errors.As(err, &circle) {
			blocked++
			continue
		}
		if err != nil {
			t.Errorf("plant %d: %v", n, err)
			continue
		}
		again, _ := watchFrom(m.p, air, s, uint64(n))
		if again.sum != w.sum {
			t.Errorf("plant %d: not the same facts the second time", n)
		}
		if t.Failed() {
			break
		}
	}
	t.Logf("%d floors with %d pieces of work; %d block themselves later", floors, pieces, blocked)
	if floors < plants/2 || pieces < 5*floors {
		t.Errorf("%d floors with %d pieces are too few", floors, pieces)
	}
}
