package draw

// Sampler is a law in compact form for the hot path: it draws without an
// interface in between. It gives bit for bit what the Dist it was compiled from
// gives. The zero Sampler always draws 0.
type Sampler struct {
	kind    kind
	a, b, c float64  // parameters, see kind
	table   *table   // of tabled
	other   quantile // of scaled and other
}

// kind tells a Sampler which function to call.
type kind uint8

const (
	constant    kind = iota // a: the value
	exponential             // a: mean
	lognormal               // a: median, b: σ of the logarithm
	tabled                  // a: lowest value, b: scale, c: highest value
	uniform                 // a: lowest value, b: width, c: highest value
	triangular              // a, b, c: low, typical, high
	weibull                 // a: scale, b: 1/shape
	scaled                  // a: factor, other: the law
	other                   // other: the law
)

// quantile is what Sampler needs of a law it has no kind for.
type quantile interface {
	Quantile(u float64) float64
}

// Compile makes the compact form of d. A Dist from outside this package keeps
// its own Quantile. d must not be nil.
func Compile(d Dist) Sampler {
	if l, ok := d.(*law); ok {
		return l.sampler
	}
	return Sampler{kind: other, other: d}
}

// At is the value that number n of a key draws; a law without luck draws none.
func (s *Sampler) At(k Key, n uint64) float64 {
	if s.kind == constant {
		return s.a
	}
	return s.Quantile(k.U(n))
}

// Quantile is the value at u, strictly between 0 and 1; see Dist. The bounds of
// tabled and uniform are held against rounding of the last digit.
func (s *Sampler) Quantile(u float64) float64 {
	switch s.kind {
	case constant:
		return s.a
	case exponential:
		return s.a * exponentialQuantile(u)
	case lognormal:
		return lognormalQuantile(s.a, s.b, u)
	case tabled:
		return min(s.a+s.b*s.table.at(u), s.c)
	case uniform:
		return min(s.a+s.b*u, s.c)
	case triangular:
		return triangularQuantile(s.a, s.b, s.c, u)
	case weibull:
		return weibullQuantile(s.a, s.b, u)
	case scaled:
		return s.a * s.other.Quantile(u)
	default:
		return s.other.Quantile(u)
	}
}
