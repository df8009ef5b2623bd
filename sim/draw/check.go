package draw

// Ranges of parameters. They keep every moment finite and every law within
// reach of its tables; no length of work comes near them.
const (
	maxAmount = 1e12 // of a value, a mean or a standard deviation
	minCV     = 0.001
	maxCV     = 5
)

// ParamError is a parameter of a law outside its range.
type ParamError struct {
	Law     string  // "lognormal"
	Param   string  // "cv", "values[3]"
	Value   float64 // what was given
	Allowed string  // the range in words: "0, or 0.001 to 5"
}

// Error names the law, the parameter, the value found and the allowed range.
func (e *ParamError) Error() string {
	return e.Law + ": " + e.Param + " is " + digits(e.Value) + "; allowed: " + e.Allowed
}

// within is an error unless low ≤ v ≤ high; NaN is within nothing.
func within(law, param string, v, low, high float64) error {
	if v >= low && v <= high {
		return nil
	}
	return &ParamError{law, param, v, digits(low) + " to " + digits(high)}
}

// amount is an error unless v can be a value, mean or standard deviation.
func amount(law, param string, v float64) error { return within(law, param, v, 0, maxAmount) }

// ratio is an error unless v can be a coefficient of variation.
func ratio(law string, v float64) error {
	if v == 0 || v >= minCV && v <= maxCV {
		return nil
	}
	return &ParamError{law, "cv", v, "0, or " + digits(minCV) + " to " + digits(maxCV)}
}

// meanAndCV checks the parameters of a law that is written with both.
func meanAndCV(law string, mean, cv float64) error {
	if err := amount(law, "mean", mean); err != nil {
		return err
	}
	return ratio(law, cv)
}

// rising is an error unless the values are amounts in rising order; equal
// neighbours are allowed.
func rising(law string, names []string, values ...float64) error {
	for i, v := range values {
		if err := amount(law, names[i], v); err != nil {
			return err
		}
		if i > 0 && v < values[i-1] {
			allowed := names[i-1] + " (" + digits(values[i-1]) + ") or more"
			return &ParamError{law, names[i], v, allowed}
		}
	}
	return nil
}
