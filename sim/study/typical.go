package study

import (
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Typical is one replication of a plant that stands for many, some weeks of
// which were run again with every fact kept.
type Typical struct {
	Plan         *sim.Plan
	Replication  int     // from 0
	Boats        float64 // a week, in it
	Median       float64 // of all replications
	Replications int     // it was chosen from
	Tight        bool    // the weeks are those in which work waits longest; else the first that are open
	Recorder     *record.Recorder
}

// TypicalOf chooses the replication nearest the median in boats a week, the first
// of several, and in it Weeks weeks in a row: those of the year in which work
// waits longest for people and places, over all replications. It runs that
// replication of the alternative again. It gives nil where no such row of weeks
// is open in it, or runs do not know their weeks.
func TypicalOf(a *Alternative, r *Runs, seed uint64, weeks int) (*Typical, error) {
	if len(r.Outcomes) == 0 {
		return nil, nil
	}
	t := r.middle()
	from, tight, ok := r.tightest(t.Replication, weeks)
	if !ok {
		return nil, nil
	}
	t.Tight = tight
	if t.Plan = a.Capacity; t.Plan == nil {
		t.Plan = a.Dated
	}
	air, err := a.Air(seed, t.Replication)
	if err != nil {
		return nil, err
	}
	t.Recorder = record.NewRecorder(from, from+clock.Time(weeks)*clock.Week)
	if err := sim.Simulate(t.Plan, air, seed, t.Replication, t.Recorder); err != nil {
		return nil, err
	}
	return t, Complete(t.Recorder)
}

// middle finds the replication nearest the median of boats a week.
func (r *Runs) middle() *Typical {
	boats := make([]float64, len(r.Outcomes))
	for i := range r.Outcomes {
		x := of(&r.Outcomes[i])
		boats[i] = float64(x.Shipped) / float64(max(x.Frame.Open(), 1))
	}
	sorted := slices.Sorted(slices.Values(boats))
	n := len(sorted)
	t := &Typical{Median: (sorted[(n-1)/2] + sorted[n/2]) / 2, Replications: n}
	for i, b := range boats {
		if abs(b-t.Median) < abs(boats[t.Replication]-t.Median) {
			t.Replication = i
		}
	}
	t.Boats = boats[t.Replication]
	return t
}

func abs(x float64) float64 { return max(x, -x) }

// tightest is the begin of the row of open weeks, in one replication, in which
// work waits longest on average over all; the first of several. tight is false
// if work waits for nothing in any.
func (r *Runs) tightest(replication, weeks int) (from clock.Time, tight, ok bool) {
	x := of(&r.Outcomes[replication])
	waits := r.WaitByWeek()
	best := -1.0
	for at := 0; at+weeks <= len(x.WeekOpen); at++ {
		if slices.Contains(x.WeekOpen[at:at+weeks], false) {
			continue
		}
		sum := 0.0
		for _, w := range x.WeekYear[at : at+weeks] {
			sum += waits[w]
		}
		if sum > best {
			best, from, ok = sum, shift.WeekStart(x.Frame.Start, x.Frame.Counted()+at), true
		}
	}
	return from, best > 0, ok
}
