package draw

// Uniform is the law in which every value from low to high is equally likely.
// low = high gives a Constant. Needs 0 ≤ low ≤ high ≤ 1e12.
func Uniform(low, high float64) (Dist, error) {
	if err := rising("uniform", []string{"low", "high"}, low, high); err != nil {
		return nil, err
	}
	if low == high {
		return always(low), nil
	}
	width := high - low
	return &law{
		sampler:  Sampler{kind: uniform, a: low, b: width, c: high},
		mean:     low + width/2,
		variance: width * width / 12,
		low:      low, high: high,
		text: call("uniform", low, high),
	}, nil
}
