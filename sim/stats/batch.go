package stats

import "math"

// Batch is one long series cut into batches whose means are taken as
// independent.
type Batch struct {
	Summary           // of the batch means; N is their number
	Size    int       // observations in each
	Means   []float64 // in order
	Lag1    float64   // correlation of neighbors, near 0 if batches are long enough
}

// BatchMeans cuts a series that has settled into k batches of equal size and
// gives the interval of Student's t over their means (Law 2015, Simulation
// Modeling and Analysis, section 9.5.3). Observations that are too many are
// left out at the start. It warns if neighbors are correlated beyond what
// independent means show once in 20 times: then the interval is too narrow.
func BatchMeans(xs []float64, k int, confidence float64) Batch {
	size := 0
	if k > 0 {
		size = len(xs) / k
	}
	if size == 0 {
		k = 0
	}
	b := Batch{Size: size, Means: batches(xs[len(xs)-k*size:], size, k)}
	b.Summary = TInterval(b.Means, confidence)
	b.Lag1 = Lag1(b.Means)
	if limit := NormalQuantile(0.95) / math.Sqrt(float64(k)); k >= 2 && b.Lag1 > limit {
		b.warn("batches of %d are too short: neighbors are correlated (%.2f)", size, b.Lag1)
	}
	return b
}

// batches gives the means of the first k batches of size values.
func batches(xs []float64, size, k int) []float64 {
	out := make([]float64, k)
	for i := range out {
		out[i] = Mean(xs[i*size : (i+1)*size])
	}
	return out
}
