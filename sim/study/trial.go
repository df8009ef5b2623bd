package study

import (
	"math"
	"time"

	"moldturn/sim/shift"
	"moldturn/sim/stats"
)

// Trial is how one size of the plant did.
type Trial struct {
	Score float64   // how far it came: 1 or more meets the target
	Boats float64   // a week, mean
	Mix   float64   // least share of a model in the boats over what the mix asks of it; 1 or more is in the mix
	Year  float64   // share of open weeks that reach the target
	Worst float64   // the same in the worst month
	Month int       // which that is, 0 … 11
	Half  float64   // half width of the interval of the share that was asked for; of Boats where the mean was
	Sure  int       // 1 found to reach the target under fresh luck, -1 found not to, 0 not decided
	ByRun []float64 // boats a week, by replication
	// Parts are what is asked for, each as the part of it that is reached; Score is
	// made of them.
	Parts []float64 `json:"-"`

	// Above is what Reach looks at: by replication and by what is asked, how many
	// tolerances a figure is above its bar.
	Above [][]float64 `json:"-"`

	Waits []float64 // hours a week that work waits for each move; below 0 not known; nil: none is
}

// Meets says whether the trial reaches the target.
func (t *Trial) Meets() bool { return t.Score >= 1 }

// Target is what a size of the plant must do.
type Target struct {
	Boats  float64 // a week
	Share  float64 // of open weeks that must reach it, 0 … 1; 0: the mean must
	Worst  bool    // in the worst month too, not only over the year
	Luster float64 // share of boats at the luster target, 0: not asked

	// Mix is the share of each model in the boats, adding up to 1; nil: any mix
	// will do. With a mix, no model's share may fall short by more than MixSlack.
	Mix []float64
}

// MixSlack is how far the share of a model in the boats may be below its share
// in the orders, as a part of it, before boats count as out of the mix: a plant
// that always has orders builds what its molds are ready for. Assumption, no
// source.
const MixSlack = 0.1

// weekCount is weeks that were open and weeks that reached the target, by month.
type weekCount struct {
	open, reached [12]int
	boats         int
}

// count counts the weeks of runs.
func (g *Target) count(r *Runs, from, to int) (c weekCount) {
	for i := from; i < to; i++ {
		x := of(&r.Outcomes[i])
		for w, open := range x.WeekOpen {
			if !open {
				continue
			}
			m := monthOf(x.Frame.Start, x.Frame.Counted()+w)
			c.open[m]++
			c.boats += x.WeekShips[w]
			if float64(x.WeekShips[w]) >= g.Boats-1e-9 {
				c.reached[m]++
			}
		}
	}
	return c
}

// year is the share of weeks that reached the target, and the weeks.
func (c *weekCount) year() (share float64, weeks int) {
	reached := 0
	for m := range c.open {
		weeks += c.open[m]
		reached += c.reached[m]
	}
	share, _ = ratio(float64(reached), float64(weeks))
	return share, weeks
}

// worst is the month with the least share of weeks that reached the target.
func (c *weekCount) worst() (share float64, month int) {
	share = 1
	for m := range c.open {
		if s, ok := ratio(float64(c.reached[m]), float64(c.open[m])); ok && s < share {
			share, month = s, m
		}
	}
	return share, month
}

// inMix is the least share of a model in the boats of some runs, over what the mix
// asks of it: 1 or more is in the mix. It is 1 where no mix is asked for.
func (g *Target) inMix(outcomes []Outcome) float64 {
	counts, all := make([]float64, len(g.Mix)), 0.0
	for i := range outcomes {
		for m, x := range of(&outcomes[i]).Models {
			if m < len(counts) {
				counts[m] += float64(x.Shipped)
			}
			all += float64(x.Shipped)
		}
	}
	least := math.Inf(1)
	for m, share := range g.Mix {
		if share > 0 && all > 0 {
			least = min(least, counts[m]/all/share/(1-MixSlack))
		}
	}
	if math.IsInf(least, 1) {
		return 1
	}
	return least
}

// TrialOf says how runs of one size did against a target. Score is 1 or more
// when all that is asked is met, and then how far the nearest is exceeded. Below
// 1 it is the mean, over what is asked, of how near each comes, so that a search
// has a slope to climb.
func (g *Target) TrialOf(r *Runs) Trial {
	n := len(r.Outcomes)
	c := g.count(r, 0, n)
	year, weeks := c.year()
	if weeks == 0 {
		return Trial{}
	}
	t := Trial{Year: year, Boats: float64(c.boats) / float64(weeks), Mix: g.inMix(r.Outcomes)}
	t.Worst, t.Month = c.worst()
	var shares []float64
	for i := range n {
		one := g.count(r, i, i+1)
		share, open := one.year()
		if g.Worst {
			share, _ = ratio(float64(one.reached[t.Month]), float64(one.open[t.Month]))
		}
		boats := float64(one.boats) / float64(max(open, 1))
		t.ByRun, shares = append(t.ByRun, boats), append(shares, share)
		t.Above = append(t.Above, g.above(&one, boats, &r.Outcomes[i]))
	}
	asked := shares
	if g.Share == 0 {
		asked = t.ByRun
	}
	t.Half = stats.TInterval(asked, Confidence).Half
	t.Parts = g.parts(r, &t)
	t.Score = score(t.Parts)
	return t
}

// Tolerances of Reach: a size that is above what is asked by twice as much is
// found to reach it, one that falls short is not. A month has a twelfth of the
// weeks, so its share is known to the root of 12 less well.
const (
	TolerateWeeks  = 0.01  // of the share of weeks, and of boats at the luster target
	TolerateMonths = 0.035 // of the share of weeks of one month
	TolerateBoats  = 0.005 // of the mean of boats a week, as a part of it
	TolerateMix    = 0.01  // of a model's share of the boats, as a part of it
)

// above is how many tolerances each figure of a run is above its bar, which lies
// one tolerance above what is asked.
func (g *Target) above(c *weekCount, boats float64, o *Outcome) []float64 {
	over := func(x, asked, tolerance float64) float64 { return (x-asked)/tolerance - 1 }
	var out []float64
	if g.Share > 0 {
		year, _ := c.year()
		out = append(out, over(year, g.Share, TolerateWeeks))
	} else {
		out = append(out, over(boats, g.Boats, TolerateBoats*g.Boats))
	}
	for m := range c.open {
		if share, ok := ratio(float64(c.reached[m]), float64(c.open[m])); g.Worst && g.Share > 0 {
			if !ok {
				share = g.Share + 2*TolerateMonths // no open week: nothing asked
			}
			out = append(out, over(share, g.Share, TolerateMonths))
		}
	}
	if g.Mix != nil {
		out = append(out, over(g.inMix([]Outcome{*o}), 1, TolerateMix))
	}
	if m, _ := MetricNamed("share_at_target"); g.Luster > 0 {
		x, _ := m.Of(o)
		out = append(out, over(x, g.Luster, TolerateWeeks))
	}
	return out
}

// parts are what is asked for, each as the part of it that is reached.
func (g *Target) parts(r *Runs, t *Trial) []float64 {
	parts := []float64{t.Boats / g.Boats}
	if g.Share > 0 {
		parts = append(parts, t.Year/g.Share)
		if g.Worst {
			parts = append(parts, t.Worst/g.Share)
		}
	}
	if g.Mix != nil {
		parts = append(parts, t.Mix)
	}
	if g.Luster > 0 {
		m, _ := MetricNamed("share_at_target")
		s, _ := r.Summary(&m)
		parts = append(parts, s.Mean/g.Luster)
	}
	return parts
}

func score(parts []float64) float64 {
	least, sum := math.Inf(1), 0.0
	for _, p := range parts {
		least, sum = min(least, p), sum+min(p, 1)
	}
	if least >= 1 {
		return least
	}
	return min(sum/float64(len(parts)), 1-1e-9)
}

// monthOf is the month, 0 … 11, of the Thursday of week w.
func monthOf(start shift.Date, w int) int {
	return int(shift.DateAt(start, shift.WeekStart(start, w)).AddDays(3).Month - time.January)
}
