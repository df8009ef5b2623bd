package draw

// Dist is a law of an amount that is not negative. Values are immutable and
// safe for use by several goroutines.
type Dist interface {
	// Quantile inverts the distribution function at u, which must be strictly
	// between 0 and 1. It never falls as u rises (up to rounding), and stays
	// within Bounds. One draw is one call with one uniform number.
	Quantile(u float64) float64
	// Mean is the exact mean of what Quantile draws.
	Mean() float64
	// Variance is its exact variance, in the unit of the values squared.
	Variance() float64
	// Bounds are the lowest and highest value; high is +Inf without a limit.
	Bounds() (low, high float64)
	// String is the law as a user would write it, "pert(8, 10, 16)", with
	// numbers in the unit of the values and as many digits as they need.
	String() string
}

// law is every Dist of this package: how it draws and what is known about it.
// A new law is a new file with a constructor that fills one.
type law struct {
	sampler        Sampler
	mean, variance float64
	low, high      float64
	text           string
	warning        *Warning // nil without one
}

func (l *law) Quantile(u float64) float64  { return l.sampler.Quantile(u) }
func (l *law) Mean() float64               { return l.mean }
func (l *law) Variance() float64           { return l.variance }
func (l *law) Bounds() (low, high float64) { return l.low, l.high }
func (l *law) String() string              { return l.text }

// Warning says that a law was accepted but is not quite what its parameters
// seem to say: its mean differs from the mean that was written.
type Warning struct {
	Law     string  // as Dist.String writes it
	Written float64 // the mean that was written
	Actual  float64 // the mean of what is drawn
	Reason  string  // why they differ and what would help, one sentence
}

// String is the warning in one line, numbers to four digits.
func (w Warning) String() string {
	return w.Law + ": the mean drawn is " + short(w.Actual) + ", not " + short(w.Written) + "; " + w.Reason
}

// WarningOf gives the warning that belongs to d, if it has one.
func WarningOf(d Dist) (Warning, bool) {
	l, ok := d.(*law)
	if !ok || l.warning == nil {
		return Warning{}, false
	}
	return *l.warning, true
}
