package draw

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
)

// Discrete is the law that gives values[i] with a probability proportional to
// weights[i]. Values need not be sorted; those of weight 0 are left out, and a
// single one left gives a Constant. Needs as many weights as values, values of
// 0 to 1e12, weights of 0 to 1e12 and at least one above 0. Slices are copied.
func Discrete(values, weights []float64) (Dist, error) {
	steps, err := checkedSteps(values, weights)
	if err != nil {
		return nil, err
	}
	if len(steps) == 1 {
		return always(steps[0].value), nil
	}
	l := &law{low: steps[0].value, high: steps[len(steps)-1].value, text: stepsText(steps)}
	l.mean, l.variance = stepsMoments(steps)
	l.sampler = Sampler{kind: other, other: newStaircase(steps)}
	return l, nil
}

// step is one value with its probability.
type step struct{ value, p float64 }

// checkedSteps checks the input and returns it sorted by value, with the
// probabilities adding up to 1 and no value of probability 0.
func checkedSteps(values, weights []float64) ([]step, error) {
	if len(values) != len(weights) || len(values) == 0 {
		allowed := "as many as values, " + strconv.Itoa(len(values)) + ", and at least one"
		return nil, &ParamError{"discrete", "number of weights", float64(len(weights)), allowed}
	}
	total := 0.0
	var steps []step
	for i, v := range values {
		place := "[" + strconv.Itoa(i) + "]"
		if err := amount("discrete", "values"+place, v); err != nil {
			return nil, err
		}
		if err := amount("discrete", "weights"+place, weights[i]); err != nil {
			return nil, err
		}
		if total += weights[i]; weights[i] > 0 {
			steps = append(steps, step{v, weights[i]})
		}
	}
	if total <= 0 {
		return nil, &ParamError{"discrete", "sum of weights", total, "above 0"}
	}
	for i := range steps {
		steps[i].p /= total
	}
	slices.SortStableFunc(steps, func(a, b step) int { return cmp.Compare(a.value, b.value) })
	return steps, nil
}

func stepsMoments(steps []step) (mean, variance float64) {
	for _, s := range steps {
		mean += s.p * s.value
	}
	for _, s := range steps {
		variance += s.p * (s.value - mean) * (s.value - mean)
	}
	return mean, variance
}

// stepsText writes "discrete(1: 0.5, 2: 0.3, 5: 0.2)".
func stepsText(steps []step) string {
	words := make([]string, len(steps))
	for i, s := range steps {
		words[i] = digits(s.value) + ": " + digits(s.p)
	}
	return "discrete(" + strings.Join(words, ", ") + ")"
}

// staircase is the distribution function of a discrete law: values in rising
// order, each with the probability of it or less. The last one is above 1, so a
// search never runs out whatever the rounding of the sum.
type staircase struct{ values, upTo []float64 }

func newStaircase(steps []step) *staircase {
	s, sum := &staircase{}, 0.0
	for _, st := range steps {
		sum += st.p
		s.values, s.upTo = append(s.values, st.value), append(s.upTo, sum)
	}
	s.upTo[len(steps)-1] = 2
	return s
}

// Quantile is the lowest value whose probability of it or less reaches u.
func (s *staircase) Quantile(u float64) float64 {
	low, high := 0, len(s.upTo)-1
	for low < high {
		if middle := (low + high) / 2; s.upTo[middle] < u {
			low = middle + 1
		} else {
			high = middle
		}
	}
	return s.values[low]
}
