package chart

import "math"

// scale is an axis with round ends and steps.
type scale struct {
	min, max, step float64
	digits         int // decimals of the tick labels
}

// niceScale covers low to high with about n steps, a quarter more at most, of 1, 2 or 5 times a power
// of ten. Equal ends are widened by one step to both sides.
// See P. S. Heckbert, "Nice Numbers for Graph Labels", Graphics Gems (1990).
func niceScale(low, high float64, zero bool, n int) scale {
	if zero {
		low, high = math.Min(low, 0), math.Max(high, 0)
	}
	if low == high {
		pad := math.Max(math.Abs(low)*0.1, 0.5)
		low, high = low-pad, high+pad
	}
	power := math.Floor(math.Log10((high - low) / float64(n)))
	unit := math.Pow(10, power)
	times := 10.0
	for _, t := range []float64{1, 2, 5} {
		if t*unit*float64(n)*1.25 >= high-low {
			times = t
			break
		}
	}
	if times == 10 {
		times, power, unit = 1, power+1, unit*10
	}
	step := times * unit
	digits := int(math.Max(0, -power))
	return scale{
		min:    round(math.Floor(low/step+1e-9)*step, digits),
		max:    round(math.Ceil(high/step-1e-9)*step, digits),
		step:   round(step, digits),
		digits: digits,
	}
}

// fit gives the axis its own end and steps, where it has them. Values beyond
// the end keep the axis as it was.
func (a Axis) fit(s scale, high float64) scale {
	if a.Step > 0 {
		s.step = a.Step
		s.max = math.Ceil(s.max/a.Step-1e-9) * a.Step
	}
	if a.Most > 0 && s.max > a.Most && high <= a.Most*(1+1e-9) {
		s.max = a.Most
	}
	return s
}

// round removes the noise of multiplying by a decimal step.
func round(v float64, digits int) float64 {
	p := math.Pow(10, float64(digits))
	return math.Round(v*p) / p
}

// extent is the least and the greatest of all given numbers; NaN is passed over.
func extent(lists ...[]float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, l := range lists {
		for _, v := range l {
			if !math.IsNaN(v) {
				low, high = math.Min(low, v), math.Max(high, v)
			}
		}
	}
	return low, high
}
