package study

import (
	"math"
	"time"

	"moldturn/sim/shift"
)

// Target is what a size of the plant must do.
type Target struct {
	Boats  float64 // a week
	Share  float64 // of open weeks that must reach it, 0 … 1; 0: the mean must
	Worst  bool    // in the worst month, not over the year
	Luster float64 // share of boats at the luster target, 0: not asked

	// Mix is the share of each model in the boats, adding up to 1; nil: any mix
	// will do. With a mix, boats a week are counted as far as the mix can be kept:
	// the least, over models, of its boats over its share.
	Mix []float64
}

// mixed is boats a week that keep the mix.
func (g *Target) mixed(r *Runs, boats float64) float64 {
	if g.Mix == nil {
		return boats
	}
	counts, all := make([]float64, len(g.Mix)), 0.0
	for i := range r.Outcomes {
		for m, x := range of(&r.Outcomes[i]).Models {
			counts[m] += float64(x.Shipped)
			all += float64(x.Shipped)
		}
	}
	if all == 0 {
		return 0
	}
	least := boats
	for m, share := range g.Mix {
		if share > 0 {
			least = min(least, boats*counts[m]/all/share)
		}
	}
	return least
}

// TrialOf says how runs of one size did against a target. Score is 1 or more
// when the target is met. Below, half of it is how near the mean comes and half
// how near the share of weeks does, so that a search has a slope to climb.
func (g *Target) TrialOf(r *Runs) Trial {
	var weeks, reached [12]int
	boats, open := 0, 0
	for i := range r.Outcomes {
		x := of(&r.Outcomes[i])
		for w, ok := range x.WeekOpen {
			if !ok {
				continue
			}
			m := monthOf(x.Frame.Start, x.Frame.Counted()+w)
			weeks[m]++
			open++
			boats += x.WeekShips[w]
			if float64(x.WeekShips[w]) >= g.Boats {
				reached[m]++
			}
		}
	}
	t := Trial{Worst: 1, Month: 0}
	all := 0
	for m := range weeks {
		all += reached[m]
		if weeks[m] == 0 {
			continue
		}
		if s := float64(reached[m]) / float64(weeks[m]); s < t.Worst {
			t.Worst, t.Month = s, m
		}
	}
	if open == 0 {
		return Trial{}
	}
	t.Boats, t.Year = float64(boats)/float64(open), float64(all)/float64(open)
	t.Boats = g.mixed(r, t.Boats)
	t.Score = t.Boats / g.Boats
	if g.Share > 0 {
		share := t.Year
		if g.Worst {
			share = t.Worst
		}
		t.Score = min(t.Score, 1)/2 + share/g.Share/2
	}
	if g.Luster > 0 {
		m, _ := MetricNamed("share_at_target")
		s, _ := r.Summary(&m)
		t.Score = min(t.Score, s.Mean/g.Luster)
	}
	if math.IsNaN(t.Score) {
		t.Score = 0
	}
	return t
}

// monthOf is the month, 0 … 11, of the Thursday of week w.
func monthOf(start shift.Date, w int) int {
	return int(shift.DateAt(start, shift.WeekStart(start, w)).AddDays(3).Month - time.January)
}
