package stats

// WarmUp is where a series settles.
type WarmUp struct {
	Drop      int     // observations to leave out at the start
	Mean      float64 // of the batches that are left; 0 for none
	Statistic float64 // the value of MSER there

	// Short is true if the least value sits at the limit of half the series, or
	// there are too few batches to tell: the series is too short for the rule.
	Short bool
}

// MSER5 finds the warm-up of one series by the rule of White, Cobb and Spratt
// (2000, A comparison of five steady-state truncation heuristics for
// simulation, Winter Simulation Conference): means of batches of five, then
// MSER. Observations that do not fill the last batch are left out.
func MSER5(xs []float64) WarmUp {
	const size = 5
	w := MSER(batches(xs, size, len(xs)/size))
	w.Drop *= size
	return w
}

// MSER leaves out the first d values of zs for which
//
//	Σ(zⱼ - z̄)² / (k-d)²   over the k-d values left
//
// is least, d at most half of k; of equal ones the smallest d. Drop counts
// values of zs.
func MSER(zs []float64) WarmUp {
	k := len(zs)
	if k < 2 {
		return WarmUp{Mean: Mean(zs), Short: true}
	}
	best := WarmUp{Drop: -1}
	var mean, squares float64 // of zs[d:], grown from the end
	for d := k - 1; d >= 0; d-- {
		left := float64(k - d)
		delta := zs[d] - mean
		mean += delta / left
		squares += delta * (zs[d] - mean)
		if v := squares / (left * left); d <= k/2 && (best.Drop < 0 || v <= best.Statistic) {
			best = WarmUp{Drop: d, Statistic: v}
		}
	}
	best.Mean = Mean(zs[best.Drop:])
	best.Short = best.Drop == k/2
	return best
}
