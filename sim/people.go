package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// crewState is one crew of a craft: who is there today.
type crewState struct {
	craft   int16
	crew    int16
	present int32 // of the people planned
	on      bool
	breaks  bool // off for a break, not for the day
}

// startCrews sets up the people and their calendars.
func (r *Run) startCrews() {
	for c := range r.plan.Crafts {
		for i := range r.plan.Crafts[c].Crews {
			k := int32(len(r.crews))
			r.crews = append(r.crews, crewState{craft: int16(c), crew: int16(i)})
			r.crewChange(k)
		}
	}
}

// hoursOf is when anybody of a craft is at work.
func hoursOf(c *Craft) *shift.Calendar {
	if len(c.Crews) == 1 {
		return c.Crews[0].Hours
	}
	var all []*shift.Calendar
	for i := range c.Crews {
		all = append(all, c.Crews[i].Hours)
	}
	return shift.Union(all...)
}

// crewChange is the start or end of a crew's shift or break.
func (r *Run) crewChange(k int32) {
	c := &r.crews[k]
	crew := &r.plan.Crafts[c.craft].Crews[c.crew]
	now := r.clk.Now()
	before := c.there()
	run, inShift := crew.Hours.RunAt(now)
	c.on = crew.Hours.On(now)
	c.breaks = inShift && !c.on
	if c.on && (now == run.From || now == r.from) {
		c.present = r.present(c, crew, run.Day)
	}
	p := int32(c.craft)
	if more := c.there() - before; more != 0 {
		r.use(p)
		r.pools[p].capacity += more
		r.pools[p].free += more
		r.touch(p)
		if more < 0 {
			r.clk.Ask(clock.Match)
			r.shedding = append(r.shedding, c.craft)
		} else {
			r.relieve(c.craft)
		}
	}
	if c.on {
		r.touch(p) // a new shift, even with as many people: what did not fit into the last may now
	}
	if next := crew.Hours.NextChange(now); next < r.plan.Length {
		r.clk.At(next, clock.Change, evShift, k)
	}
}

func (c *crewState) there() int32 {
	if c.on {
		return c.present
	}
	return 0
}

// present counts who of a crew came on a day. A person's luck is that of the
// craft, the person's slot and the date, whoever else is planned.
func (r *Run) present(c *crewState, crew *Crew, day int) int32 {
	absence := r.heatAbsence(c.craft, crew, day)
	out := 0
	if len(r.outs) > 0 {
		out = r.outOf(c, day)
	}
	if absence <= 0 {
		return int32(crew.People - out)
	}
	n := int32(0)
	for i := uint64(out); i < uint64(crew.People); i++ {
		if r.root.At2(luckPerson, uint64(c.craft), personSlot(int(c.crew), i)).U(uint64(day+1)) >= absence {
			n++
		}
	}
	return n
}

// shed ends or hands over the work of a craft that has fewer people than are
// at work. Work is kept in the order in which it was begun.
func (r *Run) shed(craft int16) {
	q := &r.pools[craft]
	if q.used <= q.capacity {
		return
	}
	keep := q.capacity
	for j := q.runHead; j != None; {
		next := r.jobs[j].runNext
		if n := int32(r.jobs[j].people); n <= keep {
			keep -= n
		} else {
			r.leave(j, craft)
		}
		j = next
	}
	for _, h := range r.plan.Crafts[craft].Helps {
		for j := r.pools[h].runHead; j != None && q.used > q.capacity; {
			next := r.jobs[j].runNext
			if r.jobs[j].lender == craft {
				r.leave(j, h)
			}
			j = next
		}
	}
}

// leave does what the end rule of a job's step says when its people go.
func (r *Run) leave(j int32, craft int16) {
	b := &r.jobs[j]
	s := r.step(b)
	switch {
	case s.End == Fit || b.state == timed: // time that only passes does not stop
		return
	case s.End == Finish && !r.onBreak(craft):
		limit := r.plan.Crafts[craft].Overtime
		if until := r.clk.Now() + limit; limit < clock.Never && b.ends > until && b.over == 0 {
			b.over = r.clk.At(until, clock.Change, evOver, j)
		}
		return
	}
	r.pause(j, record.Cause{Reason: record.NoCrew, Of: craft})
}

// relieve ends the overtime of a craft's work when the next shift has people
// for all of it: it goes on in their hours.
func (r *Run) relieve(craft int16) {
	q := &r.pools[craft]
	if q.used > q.capacity {
		return
	}
	for j := q.runHead; j != None; j = r.jobs[j].runNext {
		if b := &r.jobs[j]; b.over != 0 {
			r.clk.Cancel(b.over)
			b.over = 0
		}
	}
}

// over ends the overtime of a job: it pauses until the next shift.
func (r *Run) over(j int32) {
	b := &r.jobs[j]
	b.over = 0
	r.pause(j, record.Cause{Reason: record.NoCrew, Of: r.step(b).Craft})
}

// onBreak says whether the people of a craft only have a break.
func (r *Run) onBreak(craft int16) bool {
	for k := range r.crews {
		if r.crews[k].craft == craft && r.crews[k].breaks {
			return true
		}
	}
	return false
}
