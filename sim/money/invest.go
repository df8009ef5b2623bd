package money

import "math"

// PresentWorth is the value today of flows of cash: flows[k] falls at the end
// of year k, flows[0] today. Rate is the discount rate a year, above -1.
func PresentWorth(rate float64, flows []float64) float64 {
	sum := 0.0
	for k := len(flows) - 1; k >= 0; k-- { // Horner
		sum = sum/(1+rate) + flows[k]
	}
	return sum
}

// SeriesWorth is the value today of 1 at the end of each of so many years: P/A
// of the factor tables.
func SeriesWorth(rate float64, years int) float64 {
	if rate == 0 {
		return float64(years)
	}
	return -math.Expm1(-float64(years)*math.Log1p(rate)) / rate
}

// CapitalRecovery is the yearly amount that pays back 1 with interest in so
// many years: A/P, one over SeriesWorth.
func CapitalRecovery(rate float64, years int) float64 { return 1 / SeriesWorth(rate, years) }

// ReturnRate is the discount rate at which flows are worth nothing. It is
// defined here only for flows that change sign once, the first non-zero one
// negative: then there is exactly one rate above -1 (Descartes' rule of signs).
func ReturnRate(flows []float64) (float64, bool) {
	if !changesOnce(flows) {
		return 0, false
	}
	return solveRate(func(rate float64) float64 { return PresentWorth(rate, flows) })
}

func changesOnce(flows []float64) bool {
	changes, before := 0, 0.0
	for _, f := range flows {
		if f == 0 {
			continue
		}
		if before == 0 && f > 0 || before > 0 && f < 0 {
			return false
		}
		if before < 0 && f > 0 {
			changes++
		}
		before = f
	}
	return changes == 1
}

// solveRate finds where a worth that falls with the rate is zero, between -99 %
// and 100,000 % a year.
func solveRate(worth func(rate float64) float64) (float64, bool) {
	low, high := -0.99, 1000.0
	if worth(low) < 0 || worth(high) > 0 {
		return 0, false
	}
	for range 200 {
		middle := (low + high) / 2
		if worth(middle) > 0 {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2, true
}

// Investment is one purchase for a gain that is the same in every year of its
// use. Amounts are cash before taxes; wear is not in them.
type Investment struct {
	Purchase float64 // paid today
	Lead     float64 // years from payment to first use
	Life     int     // years of use, at least 1
	Residual float64 // worth at the end
	Rate     float64 // discount rate a year
}

// Worth is the net present value of a gain a year: gains come at the end of
// each year of use, and the lead time puts all of them off.
func (v *Investment) Worth(gain float64) float64 { return v.worthAt(v.Rate, gain) }

func (v *Investment) worthAt(rate, gain float64) float64 {
	later := math.Pow(1+rate, -v.Lead)
	end := math.Pow(1+rate, -float64(v.Life))
	return later*(gain*SeriesWorth(rate, v.Life)+v.Residual*end) - v.Purchase
}

// YearlyCost is the equivalent annual cost: the gain a year at which the
// investment is worth nothing, and so also its break-even.
func (v *Investment) YearlyCost() float64 {
	end := math.Pow(1+v.Rate, -float64(v.Life))
	return (v.Purchase*math.Pow(1+v.Rate, v.Lead) - v.Residual*end) * CapitalRecovery(v.Rate, v.Life)
}

// Payback is the years from payment until the gains, without interest, add up
// to the purchase; false when they do not within its life.
func (v *Investment) Payback(gain float64) (float64, bool) {
	switch {
	case v.Purchase <= 0:
		return 0, true
	case gain <= 0 || v.Purchase > gain*float64(v.Life):
		return 0, false
	}
	return v.Lead + v.Purchase/gain, true
}

// ReturnRate is the internal rate of return of a gain a year. It is defined
// only where money goes out first and comes back later.
func (v *Investment) ReturnRate(gain float64) (float64, bool) {
	if v.Purchase <= 0 || gain < 0 || v.Residual < 0 || gain+v.Residual <= 0 {
		return 0, false
	}
	return solveRate(func(rate float64) float64 { return v.worthAt(rate, gain) })
}
