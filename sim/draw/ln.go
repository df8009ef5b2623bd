package draw

import "math"

// ln is the natural logarithm of a normal number above 0, bit for bit what the
// formulas of FreeBSD's e_log.c give, on which math.Log stands too; here without
// the cases that a uniform number is not, so that it is drawn in half the time.
func ln(x float64) float64 {
	const (
		ln2Hi = 6.93147180369123816490e-01
		ln2Lo = 1.90821492927058770002e-10
		l1    = 6.666666666666735130e-01
		l2    = 3.999999999940941908e-01
		l3    = 2.857142874366239149e-01
		l4    = 2.222219843214978396e-01
		l5    = 1.818357216161805012e-01
		l6    = 1.531383769920937332e-01
		l7    = 1.479819860511658591e-01
	)
	// x = 2^k (1 + f), with √2/2 ≤ 1 + f < √2, without a branch: which side of
	// √2/2 a uniform number falls is anybody's guess
	const rootHalf = 0x3fe6a09e667f3bcd // bits of √2/2
	b := math.Float64bits(x)
	k := int64(b-rootHalf) >> 52
	f := math.Float64frombits(b-uint64(k)<<52) - 1
	n := float64(k)
	s := f / (2 + f)
	s2 := s * s
	s4 := s2 * s2
	t1 := s2 * (l1 + s4*(l3+s4*(l5+s4*l7)))
	t2 := s4 * (l2 + s4*(l4+s4*l6))
	r := t1 + t2
	half := 0.5 * f * f
	return n*ln2Hi - ((half - (s*(half+r) + n*ln2Lo)) - f)
}
