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
	Boats float64   // a week, mean, as far as the mix is kept
	Year  float64   // share of open weeks that reach the target
	Worst float64   // the same in the worst month
	Month int       // which that is, 0 … 11
	Half  float64   // half width of the interval of the share that was asked for; of Boats where the mean was
	Sure  int       // 1 surely meets the target, -1 surely falls short, 0 not sure
	ByRun []float64 // boats a week, by replication
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
	// will do. With a mix, boats are counted as far as the mix is kept, in the mean
	// and week by week: a model that falls short by more than MixSlack makes all
	// boats count for less, in the same proportion.
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

// count counts boats as in the mix by a factor.
func (g *Target) count(r *Runs, from, to int, factor float64) (c weekCount) {
	for i := from; i < to; i++ {
		x := of(&r.Outcomes[i])
		for w, open := range x.WeekOpen {
			if !open {
				continue
			}
			m := monthOf(x.Frame.Start, x.Frame.Counted()+w)
			c.open[m]++
			c.boats += x.WeekShips[w]
			if float64(x.WeekShips[w])*factor >= g.Boats-1e-9 {
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

// inMix is the part of the boats that keep the mix, 1 within MixSlack.
func (g *Target) inMix(r *Runs) float64 {
	counts, all := make([]float64, len(g.Mix)), 0.0
	for i := range r.Outcomes {
		for m, x := range of(&r.Outcomes[i]).Models {
			if m < len(counts) {
				counts[m] += float64(x.Shipped)
			}
			all += float64(x.Shipped)
		}
	}
	if all == 0 {
		return 1
	}
	least := 1.0
	for m, share := range g.Mix {
		if share > 0 {
			least = min(least, counts[m]/all/share/(1-MixSlack))
		}
	}
	return least
}

// TrialOf says how runs of one size did against a target. Score is 1 or more
// when all that is asked is met, and then how far the nearest is exceeded. Below
// 1 it is the mean, over what is asked, of how near each comes, so that a search
// has a slope to climb.
func (g *Target) TrialOf(r *Runs) Trial {
	n := len(r.Outcomes)
	factor := g.inMix(r)
	c := g.count(r, 0, n, factor)
	year, weeks := c.year()
	if weeks == 0 {
		return Trial{}
	}
	t := Trial{Year: year, Boats: float64(c.boats) / float64(weeks) * factor}
	t.Worst, t.Month = c.worst()
	var byRun, shares []float64
	for i := range n {
		one := g.count(r, i, i+1, factor)
		share, open := one.year()
		if g.Worst {
			share, _ = ratio(float64(one.reached[t.Month]), float64(one.open[t.Month]))
		}
		byRun, shares = append(byRun, factor*float64(one.boats)/float64(max(open, 1))), append(shares, share)
	}
	t.ByRun = byRun
	asked := g.Boats
	if g.Share > 0 {
		byRun, asked = shares, g.Share
	}
	known := stats.TInterval(byRun, stats.Bonferroni(Confidence, sizeLooks))
	t.Half = stats.TInterval(byRun, Confidence).Half
	t.Score = score(g.parts(r, &t))
	switch {
	case known.Known() && known.Low >= asked && t.Meets():
		t.Sure = 1
	case known.Known() && known.High < asked && !t.Meets():
		t.Sure = -1
	}
	return t
}

// sizeLooks is how many intervals hold together while an answer is held against
// fresh luck: the sizes and rounds of it.
const sizeLooks = confirmMost * confirmRounds

// parts are what is asked for, each as the part of it that is reached.
func (g *Target) parts(r *Runs, t *Trial) []float64 {
	parts := []float64{t.Boats / g.Boats}
	if g.Share > 0 {
		parts = append(parts, t.Year/g.Share)
		if g.Worst {
			parts = append(parts, t.Worst/g.Share)
		}
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
