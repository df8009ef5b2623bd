package exact

import "fmt"

// Class is one kind of work at a station that serves kinds in an order of
// importance.
type Class struct {
	Rate float64 // arrivals per hour, Poisson
	Work Work
}

// Cobham gives the mean wait of each class, the most important first, at one
// server that never leaves a job for another: Wq(k) = R / ((1−σ(k−1))(1−σ(k)))
// with R = Σλᵢ E[Sᵢ²]/2 and σ(k) the load of classes up to k. Cobham 1954,
// Priority Assignment in Waiting Line Problems, Operations Research 2:70–76.
func Cobham(classes []Class) ([]float64, error) {
	left := 0.0
	loads := make([]float64, len(classes))
	for i, c := range classes {
		if err := positive("rate, mean and mean square", c.Rate, c.Work.Mean, c.Work.Square); err != nil {
			return nil, fmt.Errorf("class %d: %w", i+1, err)
		}
		left += c.Rate * c.Work.Square / 2
		loads[i] = c.Rate * c.Work.Mean
	}
	return waits(left, loads)
}

// CobhamMMC is Cobham with c servers and the same exponential work for all
// classes; R is then the chance to wait times mean/c (the same paper).
func CobhamMMC(rates []float64, mean float64, c int) ([]float64, error) {
	if err := positive("mean and servers", mean, float64(c)); err != nil {
		return nil, err
	}
	a := 0.0
	loads := make([]float64, len(rates))
	for i, rate := range rates {
		if err := positive("rate", rate); err != nil {
			return nil, fmt.Errorf("class %d: %w", i+1, err)
		}
		loads[i] = rate * mean / float64(c)
		a += rate * mean
	}
	if a >= float64(c) {
		return nil, overload(a / float64(c))
	}
	return waits(ErlangC(c, a)*mean/float64(c), loads)
}

// waits shares the work an arrival finds, left, among classes.
func waits(left float64, loads []float64) ([]float64, error) {
	out := make([]float64, len(loads))
	before := 0.0
	for i, load := range loads {
		if before+load >= 1 {
			return nil, overload(before + load)
		}
		out[i] = left / ((1 - before) * (1 - before - load))
		before += load
	}
	return out, nil
}
