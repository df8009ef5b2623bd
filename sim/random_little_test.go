package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// level sums job-hours at every step twice, as Little's law has it (Little 1961,
// Operations Research 9:383–387): the number there over time, counted in the
// tables, and the length of all visits, from the facts. From the start of a run
// to its end both are the same to the millisecond. So are the hours of people
// that the pools count and those of the work they did.
type level struct {
	there, visits [][]clock.Time // by route and step, the last for none
	used, worked  []clock.Time   // by craft, and place
}

func newLevel(p *Plan) level {
	var l level
	for i := range p.Routes {
		n := len(p.Routes[i].Steps) + 1
		l.there, l.visits = append(l.there, make([]clock.Time, n)), append(l.visits, make([]clock.Time, n))
	}
	n := len(p.Crafts) + len(p.Places)
	l.used, l.worked = make([]clock.Time, n), make([]clock.Time, n)
	return l
}

// stand adds the jobs that stood at each step for a time.
func (w *watcher) stand(d clock.Time) {
	for j := range w.r.jobs {
		if b := &w.r.jobs[j]; b.state != unused {
			there := w.there[b.route]
			there[min(int(b.step), len(there)-1)] += d
		}
	}
}

// visit adds a span of a job.
func (w *watcher) visit(s *record.Span) {
	visits, k := w.visits[s.Route], int(s.Step)
	if k < 0 {
		k = len(visits) - 1
	}
	visits[k] += s.To - s.From
	if s.Working && s.Craft >= 0 {
		w.worked[s.Craft] += clock.Time(s.People-s.Lent) * (s.To - s.From)
		if s.Lent > 0 {
			w.worked[s.Lender] += clock.Time(s.Lent) * (s.To - s.From)
		}
	}
}

// little compares the sums at the end of a run.
func (w *watcher) little() {
	for i := range w.there {
		for k := range w.there[i] {
			if w.there[i][k] != w.visits[i][k] {
				w.fault("route %d, step %d: jobs stood there for %v, their visits last %v", i, k, w.there[i][k], w.visits[i][k])
			}
		}
	}
	for c := range w.r.plan.Crafts {
		if w.used[c] != w.worked[c] {
			w.fault("craft %d is in use for %v, its people work for %v", c, w.used[c], w.worked[c])
		}
	}
}
