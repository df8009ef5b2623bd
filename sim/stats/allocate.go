package stats

import (
	"fmt"
	"math"
)

// Allocate shares a budget of replications among alternatives so that the best
// is found most surely: the optimal computing budget allocation of Chen, Lin,
// Yücesan and Chick (2000, Discrete Event Dynamic Systems 10:251–270). The best
// is the least mean, or the greatest if greatest is true. Shares are not whole
// and add up to budget.
//
// It needs two alternatives or more, standard deviations of 0 or more with one
// above 0 among those that are not the best, and no second mean equal to the
// best: then no budget would tell them apart.
func Allocate(means, sds []float64, budget float64, greatest bool) ([]float64, error) {
	if len(means) < 2 || len(sds) != len(means) {
		return nil, fmt.Errorf("%d means and %d standard deviations (allowed: the same number, 2 or more)", len(means), len(sds))
	}
	best := bestOf(means, greatest)
	shares := make([]float64, len(means))
	var total, squares sum
	for i, sd := range sds {
		if i == best {
			continue
		}
		if means[i] == means[best] {
			return nil, fmt.Errorf("alternatives %d and %d have the same mean %v (allowed: one best)", best+1, i+1, means[i])
		}
		lead := means[i] - means[best]
		shares[i] = sd * sd / (lead * lead)
		total.add(shares[i])
		squares.add(sd * sd / (lead * lead) / (lead * lead))
	}
	shares[best] = sds[best] * math.Sqrt(squares.value())
	total.add(shares[best])
	if !(total.value() > 0) || !finite(total.value()) {
		return nil, fmt.Errorf("standard deviations %v (allowed: 0 or more, not all 0)", sds)
	}
	for i := range shares {
		shares[i] *= budget / total.value()
	}
	return shares, nil
}

func bestOf(means []float64, greatest bool) int {
	best := 0
	for i, m := range means {
		if greatest && m > means[best] || !greatest && m < means[best] {
			best = i
		}
	}
	return best
}
