package study

import (
	"moldturn/sim/money"
	"moldturn/sim/record"
	"moldturn/sim/stats"
)

// QualityPolicy is what one policy costs in quality, per year of counted time.
type QualityPolicy struct {
	Runs     *Runs
	Every    int                          // turns between strips, 0 when the policy is another
	Class    [money.Classes]stats.Summary // by class; Work is not filled in
	Four     stats.Summary                // the four classes
	PerBoat  [money.Classes]stats.Summary
	FourBoat stats.Summary
	Boats    stats.Summary // shipped a year
	Escapes  stats.Summary // boats shipped with an escape a year
	MoldDays stats.Summary // of molds being stripped, a year
	Luster   stats.Summary
	Margin   stats.Summary // margin given up against the policy that ships most
	Other    stats.Summary // other costs, against the same policy
	Total    stats.Summary // the four classes, margin given up and other costs

	// More is what the policy costs more than the one that costs least, under
	// the same luck. The intervals of all pairs hold together (Bonferroni), since
	// which one costs least is seen only afterwards.
	More     stats.Difference
	NotWorse bool // not clearly dearer than the least
}

// Quality compares policies by the cost of quality.
type Quality struct {
	Policies []QualityPolicy
	Least    int  // costs least in all
	Most     int  // ships most boats
	Margins  bool // margins are known; otherwise the four classes alone decide
	Dated    bool // figures are of the dated order book
}

// yearly are the amounts of one replication per year.
type yearly struct {
	class               [money.Classes]float64
	four, margin, other float64
	boats, escapes      float64
	contribution        float64
	moldDays            float64
}

// years gives the amounts of every replication; none without a ledger.
func (r *Runs) years(dated bool) []yearly {
	var out []yearly
	for i := range r.Outcomes {
		g := r.Outcomes[i].CapacityLedger
		if dated {
			g = r.Outcomes[i].DatedLedger
		}
		if g == nil {
			return nil
		}
		var y yearly
		for c := money.Prevention; c < money.Classes; c++ {
			y.class[c] = g.Quality(c).Amount() / g.Years
			y.four += y.class[c]
		}
		y.margin = g.Total(money.Income).Amount() / g.Years
		y.contribution = g.Contribution().Amount() / g.Years
		y.other = y.margin - y.contribution - y.four
		y.boats, y.escapes = float64(g.Boats())/g.Years, float64(g.Escaped)/g.Years
		y.moldDays = g.MoldUse[record.Stripping] / g.Years
		out = append(out, y)
	}
	return out
}

// CompareQuality makes the comparison. every says the turns between strips of
// each of the runs, 0 for other policies. Dated takes the runs with the dated
// order book. Nil when a run has no ledger.
func CompareQuality(runs []Runs, every []int, dated bool) *Quality {
	q := &Quality{Margins: true, Dated: dated}
	all := make([][]yearly, len(runs))
	luster, _ := MetricNamed("luster_mean")
	for i := range runs {
		all[i] = runs[i].years(dated)
		if len(all[i]) == 0 {
			return nil
		}
		p := QualityPolicy{Runs: &runs[i], Every: every[i]}
		p.Luster, _ = runs[i].Summary(&luster)
		p.fill(all[i])
		q.Policies = append(q.Policies, p)
		for k := range runs[i].Outcomes {
			for _, g := range []*money.Ledger{runs[i].Outcomes[k].CapacityLedger, runs[i].Outcomes[k].DatedLedger} {
				q.Margins = q.Margins && (g == nil || g.Margins)
			}
		}
		if p.Boats.Mean > q.Policies[q.Most].Boats.Mean {
			q.Most = i
		}
	}
	totals := q.totals(all)
	for i := range totals {
		q.Policies[i].Total = stats.TInterval(totals[i], Confidence)
		if q.Policies[i].Total.Mean < q.Policies[q.Least].Total.Mean {
			q.Least = i
		}
	}
	for i := range totals {
		p := &q.Policies[i]
		p.More = stats.Paired(totals[i], totals[q.Least], stats.Bonferroni(Confidence, len(totals)*(len(totals)-1)/2))
		p.NotWorse = i == q.Least || !p.More.Clear
	}
	return q
}

// fill summarizes what needs no comparison.
func (p *QualityPolicy) fill(ys []yearly) {
	sum := func(of func(*yearly) float64) stats.Summary { return stats.TInterval(column(ys, of), Confidence) }
	for c := money.Prevention; c < money.Classes; c++ {
		p.Class[c] = sum(func(y *yearly) float64 { return y.class[c] })
		p.PerBoat[c] = sum(func(y *yearly) float64 { return perBoat(y.class[c], y.boats) })
	}
	p.Four = sum(func(y *yearly) float64 { return y.four })
	p.FourBoat = sum(func(y *yearly) float64 { return perBoat(y.four, y.boats) })
	p.Boats = sum(func(y *yearly) float64 { return y.boats })
	p.Escapes = sum(func(y *yearly) float64 { return y.escapes })
	p.MoldDays = sum(func(y *yearly) float64 { return y.moldDays })
}

func perBoat(amount, boats float64) float64 { return amount / max(boats, 1) }

func column(ys []yearly, of func(*yearly) float64) []float64 {
	out := make([]float64, len(ys))
	for i := range ys {
		out[i] = of(&ys[i])
	}
	return out
}

// totals fills in what is given up against the policy that ships most, and
// gives the total cost of each policy by replication. Without margins it is the
// four classes.
func (q *Quality) totals(all [][]yearly) [][]float64 {
	out := make([][]float64, len(all))
	most := all[q.Most]
	for i, ys := range all {
		margin, other := make([]float64, len(ys)), make([]float64, len(ys))
		out[i] = make([]float64, len(ys))
		for k := range ys {
			out[i][k] = ys[k].four
			if q.Margins {
				margin[k], other[k] = most[k].margin-ys[k].margin, ys[k].other-most[k].other
				out[i][k] += margin[k] + other[k]
			}
		}
		q.Policies[i].Margin, q.Policies[i].Other = stats.TInterval(margin, Confidence), stats.TInterval(other, Confidence)
	}
	return out
}

// MoldsBind says whether time that molds spend in strips costs boats: whether
// the policy with most of it ships clearly fewer boats than another with less,
// the one that ships most. many is the index of the policy with most.
func (q *Quality) MoldsBind() (binds bool, many int, d stats.Difference) {
	for i := range q.Policies {
		if q.Policies[i].MoldDays.Mean > q.Policies[many].MoldDays.Mean {
			many = i
		}
	}
	d = stats.Paired(q.boats(q.Most), q.boats(many), Confidence)
	return many != q.Most && d.Clear && d.Mean > 0, many, d
}

func (q *Quality) boats(i int) []float64 {
	return column(q.Policies[i].Runs.years(q.Dated), func(y *yearly) float64 { return y.boats })
}

// Fewer is boats a year of policy i less those of the policy that ships most.
func (q *Quality) Fewer(i int) stats.Difference {
	return stats.Paired(q.boats(i), q.boats(q.Most), Confidence)
}

// BreakEven is the mean cost of a warranty claim at which two policies cost the
// same.
type BreakEven struct {
	Often, Seldom int   // indexes of the policies
	Claim         Ratio // of a claim, with all costs
	Four          Ratio // with the four classes alone
	Fewer         stats.Difference
	Claims        bool // stripping often clearly lowers the number of claims

	// What is known whatever Claims is: stripping often is clearly dearer (1) or
	// cheaper (-1) with any mean claim from nothing up to To.
	ClaimSide, FourSide Side
}

// BreakEvenOf works out the claim at which stripping as often as policy often
// costs the same as policy seldom; chance is that of a claim per escape, and
// claim its present mean.
func (q *Quality) BreakEvenOf(often, seldom int, chance, claim float64) BreakEven {
	a, b := q.Policies[often].Runs.years(q.Dated), q.Policies[seldom].Runs.years(q.Dated)
	n := min(len(a), len(b))
	fewer, four, total := make([]float64, n), make([]float64, n), make([]float64, n)
	for k := range n {
		fewer[k] = chance * (b[k].escapes - a[k].escapes)
		dear := func(x, y float64) float64 { return x - y + fewer[k]*claim } // without warranty
		four[k] = dear(a[k].four, b[k].four)
		total[k] = dear(b[k].contribution, a[k].contribution)
	}
	e := BreakEven{Often: often, Seldom: seldom, Fewer: stats.Paired(column(b, claims(chance)), column(a, claims(chance)), Confidence)}
	e.Claims = e.Fewer.Clear && e.Fewer.Mean > 0
	e.Four, _ = RatioOfMeans(four, fewer, Confidence)
	e.FourSide = SideOfMeans(four, fewer, Confidence)
	e.Claim, e.ClaimSide = e.Four, e.FourSide
	if q.Margins {
		e.Claim, _ = RatioOfMeans(total, fewer, Confidence)
		e.ClaimSide = SideOfMeans(total, fewer, Confidence)
	}
	return e
}

func claims(chance float64) func(*yearly) float64 {
	return func(y *yearly) float64 { return chance * y.escapes }
}

// Between is the paired differences of two policies, the first less the second,
// a year. Without margins Total is the four classes.
type Between struct {
	Class            [money.Classes]stats.Difference
	Four, FourBoat   stats.Difference
	Boats            stats.Difference
	Total, TotalBoat stats.Difference // TotalBoat is per boat of the second policy
}

// Between compares two policies under the same luck.
func (q *Quality) Between(first, second int) *Between {
	a, b := q.Policies[first].Runs.years(q.Dated), q.Policies[second].Runs.years(q.Dated)
	diff := func(of func(*yearly) float64) stats.Difference {
		return stats.Paired(column(a, of), column(b, of), Confidence)
	}
	out := &Between{}
	for _, c := range []money.Class{money.Prevention, money.Appraisal, money.InternalFailure, money.ExternalFailure} {
		out.Class[c] = diff(func(y *yearly) float64 { return y.class[c] })
	}
	out.Four = diff(func(y *yearly) float64 { return y.four })
	out.FourBoat = diff(func(y *yearly) float64 { return perBoat(y.four, y.boats) })
	out.Boats = diff(func(y *yearly) float64 { return y.boats })
	cost := func(y *yearly) float64 { return y.four }
	if q.Margins {
		cost = func(y *yearly) float64 { return -y.contribution }
	}
	out.Total = diff(cost)
	n := min(len(a), len(b))
	dear, zero := make([]float64, n), make([]float64, n)
	for k := range n {
		dear[k] = perBoat(cost(&a[k])-cost(&b[k]), b[k].boats)
	}
	out.TotalBoat = stats.Paired(dear, zero, Confidence)
	return out
}
