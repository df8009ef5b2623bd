package study

import (
	"context"
	"math"

	"moldturn/sim/stats"
)

// Rule says when a comparison has run enough. With both Precision and Matters
// it ends as soon as one of them is met; with neither, at the budget.
type Rule struct {
	Metrics []Metric // the figures that count

	// Precision is the wanted half width of every figure of every alternative,
	// as a share of the figure; 0: not asked.
	Precision float64

	// Matters is the smallest difference that counts, as a share of the base's
	// figure. A decision is clear when every difference from the base either
	// leaves out zero or is surely smaller than this. 0: not asked.
	Matters float64

	Round  int // replications added at a time, at least 1
	Budget int // replications at most
}

// Verdict is how far a comparison came.
type Verdict struct {
	Replications int
	Precise      bool // every figure is known as well as wanted
	Decided      bool // the decision is clear
	Spent        bool // the budget ended the runs
	Worst        []Precision
}

// Precision is how well one figure is known where it is known least.
type Precision struct {
	Metric      string
	Alternative string
	Share       float64 // half width over the mean; +Inf for a mean of 0
	Open        int     // differences from the base that are neither clear nor too small to matter
}

// Enough is true if the rule is met.
func (v Verdict) Enough() bool { return v.Precise || v.Decided }

// Rounds runs every alternative in rounds of r.Round replications until r is
// met or its budget is used up. have are outcomes of earlier runs, the same
// number of each alternative, and may be nil. Results depend on nothing but the
// setup, the rule and have: not on time, machine or workers.
//
// The first look is after stats.Few replications, since intervals from fewer
// are rough.
func Rounds(ctx context.Context, s *Setup, r *Rule, have []Runs) ([]Runs, Verdict, error) {
	runs := have
	if len(runs) == 0 {
		runs = s.empty()
	}
	round := max(r.Round, 1)
	for {
		n := len(runs[0].Outcomes)
		if n >= r.Budget || n%round == 0 && n >= stats.Few {
			v := r.Judge(runs)
			if v.Enough() || n >= r.Budget {
				v.Spent = !v.Enough()
				return runs, v, nil
			}
		}
		more := *s
		more.First, more.Replications = n, min(round-n%round, r.Budget-n)
		next, err := Compare(ctx, &more)
		if err != nil {
			return nil, Verdict{}, err
		}
		for i := range runs {
			runs[i].Outcomes = append(runs[i].Outcomes, next[i].Outcomes...)
		}
	}
}

func (s *Setup) empty() []Runs {
	out := make([]Runs, len(s.Alternatives))
	for i := range out {
		out[i] = Runs{Name: s.Alternatives[i].Name, Changes: s.Alternatives[i].Changes}
	}
	return out
}

// look is the number of the look at n replications, 1 for the first.
func (r *Rule) look(n int) int {
	return max(1, 1+(n-stats.Few)/max(r.Round, 1))
}

// Judge looks at what is there. A half width
// within Precision/(1+Precision) of the estimated figure is within Precision of
// the true one (Law 2015, Simulation Modeling and Analysis, section 9.4.1).
//
// Repeated looks would find differences that are not there. So the k-th look
// asks for intervals that hold with 1-α/(k(k+1)), α = 1-Confidence, for all
// alternatives and figures together: over all looks the chances of an error add
// up to α at most (Bonferroni).
func (r *Rule) Judge(runs []Runs) Verdict {
	v := Verdict{Replications: len(runs[0].Outcomes), Precise: r.Precision > 0, Decided: r.Matters > 0}
	look := r.look(v.Replications)
	alpha := (1 - Confidence) / float64(look*(look+1))
	confidence := stats.Bonferroni(1-alpha, (len(runs)-1)*len(r.Metrics))
	for k := range r.Metrics {
		p := r.precision(runs, &r.Metrics[k], confidence)
		v.Worst = append(v.Worst, p)
		v.Precise = v.Precise && p.Share <= r.Precision/(1+r.Precision)
		v.Decided = v.Decided && p.Open == 0
	}
	return v
}

// precision is how well a figure is known, and how many differences are open.
func (r *Rule) precision(runs []Runs, m *Metric, confidence float64) Precision {
	p := Precision{Metric: m.Name, Share: -1}
	for i := range runs {
		x, ok := runs[i].Summary(m)
		if !ok {
			continue
		}
		if share := relative(x); share > p.Share {
			p.Share, p.Alternative = share, runs[i].Name
		}
		if i > 0 {
			d, ok := runs[i].difference(&runs[0], m, confidence)
			if base, has := runs[0].Summary(m); ok && has && r.open(d, math.Abs(base.Mean)) {
				p.Open++
			}
		}
	}
	return p
}

// relative is a half width as a share of its mean. Values that are all the same
// are known exactly.
func relative(x stats.Summary) float64 {
	switch {
	case !x.Known():
		return math.Inf(1)
	case x.Half == 0:
		return 0
	}
	return x.Half / math.Abs(x.Mean)
}

// open is true for a difference that is neither clear nor surely too small.
func (r *Rule) open(d stats.Difference, base float64) bool {
	small := r.Matters * base
	return !d.Known() || !(d.Clear || d.Low > -small && d.High < small)
}

// difference is Difference with another confidence.
func (r *Runs) difference(base *Runs, m *Metric, confidence float64) (stats.Difference, bool) {
	var a, b []float64
	for i := range min(len(r.Outcomes), len(base.Outcomes)) {
		x, okX := m.Of(&r.Outcomes[i])
		y, okY := m.Of(&base.Outcomes[i])
		if okX && okY {
			a, b = append(a, x), append(b, y)
		}
	}
	if len(a) == 0 {
		return stats.Difference{}, false
	}
	return stats.Paired(a, b, confidence), true
}
