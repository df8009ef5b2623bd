package ahead

import (
	"cmp"

	"moldturn/sim/clock"
	"moldturn/sim/stats"
)

// Option is a way to recover, weighed against what the changes cost the orders
// that they hurt. It cannot win back more than those have lost: what orders leave
// earlier beyond that, the way would win without the changes too.
type Option struct {
	Change
	Won    stats.Summary // days that the orders that were hurt together leave earlier with it, over the futures pair by pair
	All    stats.Summary // days that all orders together leave earlier with it
	Back   float64       // days of what was lost that it wins back, 0 … what was lost; 0 unless Helps
	Least  float64       // the low end of Back
	Most   float64       // the high end
	Beyond float64       // days that all orders together leave earlier on top of Back; negative where others leave later for it
	Late   float64       // orders that leave after their date, on average
	Hours  float64       // people-hours at work that it takes more, overtime in, in all the time looked at, on average
}

// OptionOf weighs a way against the days that were lost: won is what it wins for
// the orders that lost them, and all what it wins for all orders.
func OptionOf(c Change, lost float64, won, all stats.Summary) Option {
	o := Option{Change: c, Won: won, All: all, Beyond: all.Mean}
	if o.Helps() {
		o.Back, o.Least, o.Most = min(won.Mean, lost), min(won.Low, lost), min(won.High, lost)
		o.Beyond -= o.Back
	}
	return o
}

// Helps says whether a way clearly brings the orders that were hurt forward, and
// does not clearly set all orders together back.
func (o *Option) Helps() bool { return o.Won.Known() && o.Won.Low > 0 && !o.Harms() }

// Harms says whether a way clearly sets the orders that were hurt back further,
// or all orders together.
func (o *Option) Harms() bool {
	return o.Won.Known() && o.Won.High < 0 || o.All.Known() && o.All.High < 0
}

// better orders ways: those that help before those of which it is not clear,
// those that harm last; of those that help what wins most back first, and of
// equals what takes fewest hours.
func better(a, b Option) int {
	return cmp.Or(cmp.Compare(a.class(), b.class()), cmp.Compare(b.Back, a.Back), cmp.Compare(a.Hours, b.Hours))
}

func (o *Option) class() int {
	switch {
	case o.Helps():
		return 0
	case o.Harms():
		return 2
	}
	return 1
}

// hours is the people-hours at work in some futures, overtime in, on average.
func hours(futures []Future) float64 {
	sum := clock.Time(0)
	for f := range futures {
		for c := range futures[f].There {
			for d := range futures[f].There[c] {
				sum += futures[f].There[c][d] + futures[f].Over[c][d]
			}
		}
	}
	return sum.Hours() / float64(max(len(futures), 1))
}
