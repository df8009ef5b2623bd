package draw

// Constant is the law that always gives value, 0 to 1e12. A draw from it uses
// up its uniform number like any other, so a constant may be replaced by a law
// without moving the luck of anything else.
func Constant(value float64) (Dist, error) {
	if err := amount("constant", "value", value); err != nil {
		return nil, err
	}
	return always(value), nil
}

// always is a Constant whose value was checked before.
func always(v float64) *law {
	return &law{sampler: Sampler{kind: constant, a: v}, mean: v, low: v, high: v, text: digits(v)}
}
