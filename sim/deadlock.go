package sim

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/sim/clock"
)

// lookEvery is how often a run looks for work that waits in a circle. A circle
// never opens again, so looking seldom loses nothing but time.
const lookEvery = 28 * clock.Day

// Deadlock is the error of a run in which work waits for places that are held
// by work that waits in turn, all round: none of it can ever go on. It tells
// what a plant would have to change: more places, or fewer molds.
type Deadlock struct {
	At    clock.Time // when it was found; it may have begun up to 28 days before
	Waits []Waiting  // those that hold places first
}

// Waiting is one job in a Deadlock.
type Waiting struct {
	Job   string   // "hull of order 12 in mold A"
	Holds []string // places it keeps
	For   string   // the place it waits for, or "its mates"
}

// Error names everything in the circle, at most eight.
func (d *Deadlock) Error() string {
	var b strings.Builder
	fmt.Fprintf(&b, "at %v work waits in a circle for places that it holds itself", d.At)
	for i, w := range d.Waits {
		if i == 8 {
			fmt.Fprintf(&b, "; and %d more", len(d.Waits)-i)
			break
		}
		fmt.Fprintf(&b, "; %s", w.Job)
		if len(w.Holds) > 0 {
			fmt.Fprintf(&b, " holds %s and", strings.Join(w.Holds, ", "))
		}
		fmt.Fprintf(&b, " waits for %s", w.For)
	}
	return b.String()
}

// pass lets time pass until the end of the run, and looks in between whether
// work waits in a circle.
func (r *Run) pass(h clock.Handler) error { return r.passUntil(h, r.plan.Length) }

// passUntil is pass up to an instant. Circles are looked for at the same
// instants wherever a run is stopped in between.
func (r *Run) passUntil(h clock.Handler, end clock.Time) error {
	end = min(end, r.plan.Length)
	every := lookEvery
	if !r.keepsPlaces() {
		every = max(r.plan.Length, 1)
	}
	for r.clk.Now() < end || end == r.plan.Length {
		look := min((r.clk.Now()/every+1)*every, r.plan.Length)
		if err := r.clk.Run(min(look, end), h); err != nil {
			return err
		}
		if end < look {
			return nil
		}
		if d := r.deadlock(); d != nil {
			return d
		}
		if look >= r.plan.Length {
			return nil
		}
	}
	return nil
}

// keepsPlaces says whether some step takes a place of which there are only so
// many, without which no circle can close.
func (r *Run) keepsPlaces() bool {
	for _, steps := range r.steps {
		for i := range steps {
			for _, p := range steps[i].Take {
				if !r.pools[r.place(p)].endless {
					return true
				}
			}
		}
	}
	return false
}

// deadlock finds the jobs that can never go on: the largest set of waiting
// jobs in which each waits for a place whose every unit is held by one of the
// set, or for a mate in it. nil when there is none.
func (r *Run) deadlock() *Deadlock {
	dead := make([]bool, len(r.jobs))
	some := false
	for j := range r.jobs {
		b := &r.jobs[j]
		dead[j] = b.state == stored || (b.state == waiting || b.state == paused) && b.queue >= r.place(0) && b.queue < r.anything()
		some = some || dead[j] && b.state != stored
	}
	for changed := some; changed; {
		changed = false
		for j := range dead {
			if dead[j] && r.canGoOn(int32(j), dead) {
				dead[j], changed = false, true
			}
		}
	}
	if !some || !slices.Contains(dead, true) {
		return nil
	}
	d := &Deadlock{At: r.clk.Now()}
	for j := range dead {
		if dead[j] {
			d.Waits = append(d.Waits, r.describe(&r.jobs[j]))
		}
	}
	slices.SortStableFunc(d.Waits, func(a, b Waiting) int { return min(len(b.Holds), 1) - min(len(a.Holds), 1) })
	return d
}

// canGoOn says whether a waiting job may still get what it waits for, if the
// jobs marked dead stay where they are.
func (r *Run) canGoOn(j int32, dead []bool) bool {
	b := &r.jobs[j]
	if b.state == stored {
		return !r.mateDead(b, dead)
	}
	q := &r.pools[b.queue]
	held := int32(0)
	for u := range q.units {
		h := q.units[u].holder
		if h == None || !dead[h] {
			return true
		}
		held++
	}
	return q.endless || q.used > held // a running step will give it back
}

// mateDead says whether a mate that a stored part waits for can never come.
func (r *Run) mateDead(b *job, dead []bool) bool {
	o := &r.orders[b.order]
	for k, part := range r.plan.Models[o.model].Parts {
		switch {
		case o.done&(1<<k) != 0:
		case o.started&(1<<k) == 0:
			if r.moldsDead(part, dead) {
				return true
			}
		default:
			i := slices.IndexFunc(r.jobs, func(m job) bool {
				return m.state != unused && m.kind == partJob && m.order == b.order && m.part == part
			})
			if i >= 0 && dead[i] {
				return true
			}
		}
	}
	return false
}

// moldsDead says whether every mold of a part type is with a job marked dead.
func (r *Run) moldsDead(part int16, dead []bool) bool {
	with := 0
	for j := range r.jobs {
		if b := &r.jobs[j]; b.state != unused && b.mold != None && r.molds[b.mold].part == part {
			if !dead[j] {
				return false
			}
			with++
		}
	}
	all := 0
	for i := range r.molds {
		if r.molds[i].part == part && r.molds[i].state != gone {
			all++
		}
	}
	return all > 0 && with == all
}

// describe says in words what a job is, holds and waits for.
func (r *Run) describe(b *job) Waiting {
	w := Waiting{Job: r.plan.Routes[b.route].Name, For: "its mates"}
	if b.part != None {
		w.Job = r.plan.Parts[b.part].Name
	}
	if b.kind == careJob {
		w.Job = "care of a mold of " + w.Job
	}
	if b.number != None {
		w.Job += fmt.Sprintf(" of order %d", b.number)
	}
	if b.mold != None {
		w.Job += fmt.Sprintf(" in mold %q", r.plan.Molds[b.mold].Name)
	}
	for _, h := range b.held {
		if h.unit != None {
			w.Holds = append(w.Holds, fmt.Sprintf("%q", r.plan.Places[h.place].Name))
		}
	}
	if b.state != stored {
		w.For = fmt.Sprintf("%q", r.plan.Places[b.queue-r.place(0)].Name)
	}
	return w
}
