package study

import (
	"math"
)

// WaitWorthNaming is the hours a week below which a wait limits nothing worth
// naming. Assumption of this program, no source.
const WaitWorthNaming = 2.0

// firstLimit is the name under which Figures keep what work waits for most.
const firstLimit = "first_limit"

// limitsOf is, by outcome, the craft or place (crafts first) that work waits for
// most over the year; -1 where none is worth naming: molds.
func limitsOf(outcomes []Outcome) Values {
	v := make(Values, len(outcomes))
	for i := range outcomes {
		one := Runs{Outcomes: outcomes[i : i+1]}
		v[i] = -1
		if ls := one.Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11); len(ls) > 0 && ls[0].Wait >= WaitWorthNaming {
			v[i] = float64(ls[0].Pool)
		}
	}
	return v
}

// FirstLimit is the craft or place, crafts first, that work waits for most in
// most replications, the first of equals; -1 for none, which leaves the molds. ok
// is false for figures that were kept without it.
func (f *Figures) FirstLimit() (pool int, ok bool) {
	count := map[int]int{}
	for _, x := range f.Values[firstLimit] {
		if math.IsNaN(x) {
			continue
		}
		p := int(x)
		if count[p]++; !ok || count[p] > count[pool] || count[p] == count[pool] && p < pool {
			pool, ok = p, true
		}
	}
	return pool, ok
}
