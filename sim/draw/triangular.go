package draw

import "math"

// Triangular is the law whose density rises in a straight line from low to the
// most likely value, typical, and falls in a straight line to high. All three
// equal give a Constant. Needs 0 ≤ low ≤ typical ≤ high ≤ 1e12.
func Triangular(low, typical, high float64) (Dist, error) {
	if err := rising("triangular", []string{"low", "typical", "high"}, low, typical, high); err != nil {
		return nil, err
	}
	if low == high {
		return always(low), nil
	}
	width, left := high-low, typical-low
	return &law{
		sampler:  Sampler{kind: triangular, a: low, b: typical, c: high},
		mean:     low + (width+left)/3,
		variance: (width*width - width*left + left*left) / 18,
		low:      low, high: high,
		text: call("triangular", low, typical, high),
	}, nil
}

// triangularQuantile inverts the two parabolas of the distribution function.
func triangularQuantile(low, typical, high, u float64) float64 {
	width, left := high-low, typical-low
	if u*width < left {
		return low + math.Sqrt(u*width*left)
	}
	return high - math.Sqrt((1-u)*width*(high-typical))
}
