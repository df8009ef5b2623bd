package sim

import (
	"fmt"
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// present is what the people of a craft can do at best.
type present struct {
	most     int        // people at work together, with those of one craft that helps
	own      int        // of its own
	run      clock.Time // longest stretch of shifts by the clock; Never round the clock
	day      clock.Time // longest time from a start to the end of that day's last shift
	nobodies bool       // it has no shift at all
}

// peopleOf sums up the calendars of all crafts.
func (p *Plan) peopleOf() []present {
	out := make([]present, len(p.Crafts))
	for i := range p.Crafts {
		out[i] = presentOf(&p.Crafts[i])
	}
	helped := make([]int, len(out))
	for i := range p.Crafts {
		for _, h := range p.Crafts[i].Helps {
			helped[h] = max(helped[h], out[i].own)
		}
	}
	for i := range out {
		out[i].most = out[i].own + helped[i]
	}
	return out
}

func presentOf(c *Craft) present {
	var x present
	var all []*shift.Calendar
	for i := range c.Crews {
		all = append(all, c.Crews[i].Hours)
	}
	hours := shift.Union(all...)
	x.nobodies = len(hours.Intervals()) == 0
	for i := range c.Crews {
		for _, iv := range c.Crews[i].Hours.Intervals() {
			together := 0
			for k := range c.Crews {
				if c.Crews[k].Hours.On(iv.From) {
					together += c.Crews[k].People
				}
			}
			x.own = max(x.own, together)
		}
	}
	if hours.RoundTheClock() {
		x.run, x.day = clock.Never, clock.Never
		return x
	}
	for _, r := range hours.Runs() {
		x.run = max(x.run, r.To-r.From)
	}
	for i := range c.Crews {
		for _, r := range c.Crews[i].Hours.Runs() {
			for _, t := range []clock.Time{r.From, r.To} {
				if end, ok := hours.DayEnd(t); ok && hours.On(t) {
					x.day = max(x.day, end-t)
				}
			}
		}
	}
	return x
}

// checkStep says why step k of a route can never be done, or nothing.
func (p *Plan) checkStep(route *Route, k int, people []present) string {
	s := &route.Steps[k]
	for _, list := range [][]int16{s.Take, s.Use} {
		for _, place := range list {
			if p.Places[place].Count == 0 {
				return fmt.Sprintf("there is no %q", p.Places[place].Name)
			}
		}
	}
	if s.Loop && s.Again == Always && s.When == Always {
		return "it goes back to an earlier step every time, without end"
	}
	if s.Craft == None {
		return ""
	}
	c, x := &p.Crafts[s.Craft], people[s.Craft]
	if x.most < int(s.Least) {
		return fmt.Sprintf("it needs at least %d of %q and there are %d at work together", s.Least, c.Name, x.most)
	}
	if x.nobodies || x.run >= clock.Never {
		return ""
	}
	work := slowed(s, x.most)
	switch {
	case s.End == Fit && work+chained(route.Steps, k) > x.run:
		return fmt.Sprintf("it takes %.1f h, with the spraying that must follow in the same place, and must fit into a shift; the longest shift of %q has %.1f h", (work + chained(route.Steps, k)).Hours(), c.Name, x.run.Hours())
	case s.End == Finish && c.Late < clock.Never && work > x.day+c.Late:
		return fmt.Sprintf("it takes %.1f h and must be finished with the day, and the longest day of %q has %.1f h and %.1f h on top", work.Hours(), c.Name, x.day.Hours(), c.Late.Hours())
	}
	return ""
}

// slowed is the mean time of a step with the most people there can be, on a
// cool day.
func slowed(s *Step, most int) clock.Time {
	mean := clock.FromHours(s.Mean)
	if s.Scale != NoScale || most <= 0 || most >= int(s.Want) {
		return mean
	}
	return clock.FromHours(s.Mean * math.Pow(float64(s.Want)/float64(most), s.Slow))
}

// chained is the mean labor of the steps that must follow a spraying step in
// the same shift, without the waits between them; see Run.chainEnds.
func chained(steps []Step, k int) clock.Time {
	sum := clock.Time(0)
	s := &steps[k]
	if s.Spray == NoSpray || len(s.Free) > 0 {
		return 0
	}
	for i := k + 1; i < len(steps); i++ {
		next := &steps[i]
		if next.Pace == Labor && (next.End != Fit || next.Craft != s.Craft) || next.Loop {
			break
		}
		if next.Pace == Labor && next.When == Always {
			sum += clock.FromHours(next.Mean)
		}
		if next.When == Always && len(next.Free) > 0 {
			break
		}
	}
	return sum
}
