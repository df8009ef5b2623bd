package draw

// Scaled is the law of factor times what d draws, as when a beginner takes 1.3
// times as long. Factor 1 gives d itself, a constant stays one. Needs a factor
// of 0 to 1e6; d must not be nil. A warning of d is kept, with scaled means.
func Scaled(d Dist, factor float64) (Dist, error) {
	if err := within("scaled", "factor", factor, 0, 1e6); err != nil {
		return nil, err
	}
	inner := Compile(d)
	low, high := d.Bounds()
	switch {
	case factor == 1:
		return d, nil
	case factor == 0 || low == high:
		return always(factor * low), nil
	}
	l := &law{
		sampler:  Sampler{kind: scaled, a: factor, other: &inner},
		mean:     factor * d.Mean(),
		variance: factor * factor * d.Variance(),
		low:      factor * low, high: factor * high,
		text: digits(factor) + " × " + d.String(),
	}
	if w, ok := WarningOf(d); ok {
		l.warning = &Warning{l.text, factor * w.Written, factor * w.Actual, w.Reason}
	}
	return l, nil
}
