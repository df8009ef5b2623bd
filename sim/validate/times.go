package validate

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/record"
)

// times keeps when molds were pulled and boats left.
type times struct {
	record.Nothing
	pulls, ships []clock.Time
}

func (t *times) Pull(p *record.Pull) { t.pulls = append(t.pulls, p.At) }
func (t *times) Ship(s *record.Ship) { t.ships = append(t.ships, s.At) }

// checkTimes compares the times of a plant without luck.
func (c *Case) checkTimes(o Options) ([]Result, error) {
	plan := c.Plant(clock.FromHours(c.Length), o.Seed)
	var t times
	if err := sim.Simulate(plan, sim.NewAir(climate.Steady(25, 0.5), cure.Default()), o.Seed, 0, &t); err != nil {
		return nil, fmt.Errorf("%s: %w", c.Name, err)
	}
	got := t.pulls
	if len(plan.Molds) == 0 {
		got = t.ships
	}
	out := []Result{c.first(got)}
	if c.Cycle.Events > 0 {
		out = append(out, c.cycle(got))
	}
	return out, nil
}

// first compares the first times. A case that lists none wants none.
func (c *Case) first(got []clock.Time) Result {
	r := Result{Case: c, Name: "instants that agree", Exact: float64(len(c.Times))}
	for i, want := range c.Times {
		if i < len(got) && got[i] == clock.FromHours(want) {
			r.Got++
		} else if r.Note == "" {
			r.Note = fmt.Sprintf("number %d is to be at %.6g h", i+1, want)
			if i < len(got) {
				r.Note += fmt.Sprintf(" and was at %.6f h", got[i].Hours())
			}
		}
	}
	r.Pass = r.Note == ""
	if len(c.Times) == 0 && len(got) > 0 {
		r.Pass, r.Note = false, fmt.Sprintf("nothing is to end and something did at %.6f h", got[0].Hours())
	}
	return r
}

// cycle looks for the repeating pattern in the second half of the run.
func (c *Case) cycle(got []clock.Time) Result {
	n := c.Cycle.Events
	r := Result{Case: c, Name: fmt.Sprintf("hours for %d pulls", n), Exact: c.Cycle.Hours}
	for i := max(len(got)/2, n); i < len(got); i++ {
		r.Got = (got[i] - got[i-n]).Hours()
		if got[i]-got[i-n] != clock.FromHours(c.Cycle.Hours) {
			return r
		}
		r.Pass = true
	}
	return r
}
