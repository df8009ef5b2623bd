package exact

// Pair is the mean time from an order to its last part when each order sends
// one job to each of two like servers, Poisson orders of the given rate,
// exponential work: (12−ρ)/8 · 1/(μ−λ). waits is what a part that is done waits
// for the other. Flatto and Hahn 1984, SIAM Journal on Applied Mathematics
// 44:1041–1053; Nelson and Tantawi 1988, IEEE Transactions on Computers
// 37:739–743.
func Pair(rate, mean float64) (both, waits float64, err error) {
	one, err := MMC(rate, mean, 1)
	if err != nil {
		return 0, 0, err
	}
	both = (12 - one.Load) / 8 * one.W
	return both, both - one.W, nil
}

// FirstWaits gives the mean waits of the first, second, … n-th arrival at one
// empty server with Poisson arrivals and exponential work of load rho: the
// number an arrival finds is followed from one to the next, exactly. In units
// of the mean work. rho need not be below 1. n is 1 or more.
func FirstWaits(rho float64, n int) []float64 {
	served := 1 / (1 + rho) // the next thing that happens is an end of work, not an arrival
	found := make([]float64, n+1)
	next := make([]float64, n+1)
	found[0] = 1
	out := make([]float64, n)
	for i := range n {
		for k := 1; k <= i; k++ {
			out[i] += float64(k) * found[k]
		}
		step(found[:i+1], next[:i+2], served)
		found, next = next, found
	}
	return out
}

// step takes the chances of how many an arrival finds to those of the next
// arrival: of k+1 there, j stay with chance (1−q)qᵏ⁺¹⁻ʲ, and none with qᵏ⁺¹.
func step(found, next []float64, q float64) {
	clear(next)
	tail := 0.0 // Σ over k+1 ≥ j of found[k] q^(k+1−j)
	for j := len(next) - 1; j >= 1; j-- {
		tail = tail*q + found[j-1]
		next[j] = (1 - q) * tail
	}
	next[0] = tail * q
}
