package validate

import (
	"fmt"
	"hash/fnv"
	"math"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
)

// Case is one skeleton plant and what is known about it.
type Case struct {
	Group  string // heading
	Name   string
	Source string // where the exact numbers are published, or how they were computed

	// Plant makes the plan for a run of the given length. It must give the same
	// plan for the same length and seed.
	Plant func(length clock.Time, seed uint64) *sim.Plan

	// Of plants with luck.
	WarmUp float64   // hours left out at the start
	Hours  float64   // counted in a plain check, in batches, or in each of Runs; a full one takes more
	Runs   int       // 0: one long run in batches
	Rare   float64   // so many times longer is a full check, for numbers seldom seen; 0: 1
	Marks  []float64 // hours, within Period, at which the number at Watch is read
	Period float64   // hours; 0: each mark comes once in a run
	Watch  []string  // steps
	Firsts int       // orders whose waits are kept
	Over   Over      // long waits and stays that are counted
	Values []Value
	Long   bool // left out of a short check

	// Of plants without luck: hours at which molds are pulled, or boats leave
	// when there are no molds; and that each comes Cycle.Hours after the one
	// Cycle.Events before it.
	Exact  bool
	Times  []float64
	Length float64 // hours
	Cycle  Cycle
}

// Over are lengths in hours: waits at the steps at Watch, and lead times, that
// are longer are counted.
type Over struct{ Wait, Lead float64 }

// Cycle is a pattern that repeats itself exactly, once it has settled.
type Cycle struct {
	Events int // 0: not looked at
	Hours  float64
}

// Value is one exact number.
type Value struct {
	Name  string
	Exact float64
	Stat  Stat

	// Spread is T times the variance of an average over T hours, or over T
	// visits for a mean of visits; 0: the batches tell.
	Spread float64
}

// Stat is a figure of a run as a ratio: hours spent per hour, waits per visit.
type Stat func(s *Sums) (amount, per float64)

// Options say how thorough a check is.
type Options struct {
	Seed  uint64
	Short bool // a tenth of the hours or runs of a case, without the cases that are Long
}

// Result is one number checked.
type Result struct {
	Case  *Case
	Name  string
	Exact float64
	Got   float64
	SE    float64 // 0 where luck has no part
	Pass  bool
	Note  string // what differs first, for times
}

// Apart is how many standard errors a result lies from the exact number; 0
// without luck.
func (r *Result) Apart() float64 {
	if r.SE == 0 {
		return 0
	}
	return (r.Got - r.Exact) / r.SE
}

const (
	limit        = 4   // standard errors
	batches      = 100 // of one long run
	shortBatches = 20
	longer       = 4  // how much more than the hours and runs of a case a full check takes
	shorter      = 10 // how much less a short check takes
	roundOff     = 1e-9
)

// Check runs the plant and compares. The error is that of the engine; numbers
// that are off are results that did not pass.
func (c *Case) Check(o Options) ([]Result, error) {
	if c.Exact {
		return c.checkTimes(o)
	}
	o.Seed = c.seed(o.Seed)
	sums, err := c.run(o)
	if err != nil {
		return nil, err
	}
	out := make([]Result, 0, len(c.Values))
	for i := range c.Values {
		v := &c.Values[i]
		got, se := ratio(sums, v)
		out = append(out, Result{Case: c, Name: v.Name, Exact: v.Exact, Got: got, SE: se, Pass: math.Abs(got-v.Exact) <= max(limit*se, roundOff)})
	}
	return out, nil
}

// seed gives each case its own luck, so that one unlucky stream of arrivals
// does not move all cases one way.
func (c *Case) seed(seed uint64) uint64 {
	h := fnv.New64a()
	fmt.Fprintf(h, "%d %s %s", seed, c.Group, c.Name)
	return h.Sum64()
}

// run gives the sums of each batch, or of each run.
func (c *Case) run(o Options) ([]Sums, error) {
	parts, hours, runs := 1, c.Hours, c.Runs
	switch {
	case c.Runs == 0 && o.Short:
		parts, runs, hours = shortBatches, 1, hours/shorter
	case c.Runs == 0:
		parts, runs, hours = batches, 1, hours*longer
	case o.Short:
		runs = max(runs/shorter, shortBatches)
	default:
		runs *= longer
	}
	if c.Rare > 0 && !o.Short {
		if c.Runs > 0 {
			runs = int(c.Rare * float64(runs))
		} else {
			hours *= c.Rare
		}
	}
	length := hours / float64(parts)
	if c.Period > 0 {
		length = math.Ceil(length/c.Period) * c.Period
	}
	from := clock.FromHours(c.WarmUp)
	plan := c.Plant(from+clock.Time(parts)*clock.FromHours(length), o.Seed)
	air := sim.NewAir(climate.Steady(25, 0.5), cure.Default())
	var all []Sums
	for k := range runs {
		m := newMeter(c, plan, from, clock.FromHours(length), parts)
		if err := sim.Simulate(plan, air, o.Seed, k, m); err != nil {
			return nil, fmt.Errorf("%s: %w", c.Name, err)
		}
		all = append(all, m.sums()...)
	}
	return all, nil
}

// ratio is the figure over all batches and its standard error: that of a ratio
// of two means, by the usual linear form, if the source does not give it.
func ratio(sums []Sums, v *Value) (got, se float64) {
	amount, per := 0.0, 0.0
	for i := range sums {
		a, p := v.Stat(&sums[i])
		amount += a
		per += p
	}
	if per == 0 {
		return 0, 0
	}
	got = amount / per
	if v.Spread > 0 {
		return got, math.Sqrt(v.Spread / per)
	}
	squares := 0.0
	for i := range sums {
		a, p := v.Stat(&sums[i])
		squares += (a - got*p) * (a - got*p)
	}
	k := float64(len(sums))
	return got, math.Sqrt(squares*k/(k-1)) / per
}
