package exact

// Station is what one queue in front of like servers does in steady state.
type Station struct {
	Load  float64 // busy share of a server, ρ
	Empty float64 // chance that nobody is there; 0 where the formula does not tell
	Wait  float64 // chance that an arrival waits; 0 where the formula does not tell
	L, Lq float64
	W, Wq float64
}

// ErlangB is the chance that all of c servers are busy when nobody waits:
// arrivals that find them busy are lost. a is arrivals times mean work, the
// offered load. By the recursion B(n) = a·B(n−1) / (n + a·B(n−1)), B(0) = 1.
// c below 1 gives 1. Source: Erlang 1917; any text, such as Gross and Harris,
// Fundamentals of Queueing Theory, chapter 2 (from memory).
func ErlangB(c int, a float64) float64 {
	b := 1.0
	for n := 1; n <= c; n++ {
		b = a * b / (float64(n) + a*b)
	}
	return b
}

// ErlangC is the chance that an arrival waits when nobody is lost, for c
// servers, 1 or more, and an offered load a below c. From ErlangB: C = B / (1 −
// (a/c)(1 − B)).
func ErlangC(c int, a float64) float64 {
	b := ErlangB(c, a)
	return b / (1 - a/float64(c)*(1-b))
}

// MMC is a queue with Poisson arrivals of the given rate, first come first
// served, and c servers whose work is exponential with the given mean. Gross
// and Harris, chapter 2.
func MMC(rate, mean float64, c int) (Station, error) {
	if err := positive("rate, mean and servers", rate, mean, float64(c)); err != nil {
		return Station{}, err
	}
	a := rate * mean
	s := Station{Load: a / float64(c)}
	if s.Load >= 1 {
		return Station{}, overload(s.Load)
	}
	s.Wait = ErlangC(c, a)
	s.Empty = empty(c, a)
	s.Wq = s.Wait * mean / (float64(c) - a)
	return s.byLittle(rate, mean), nil
}

// empty is the chance that none of c servers works: 1 over Σ aⁿ/n! for n < c
// and aᶜ/c!·c/(c−a).
func empty(c int, a float64) float64 {
	sum, term := 0.0, 1.0
	for n := range c {
		sum += term
		term *= a / float64(n+1)
	}
	return 1 / (sum + term*float64(c)/(float64(c)-a))
}

// byLittle fills in the rest from Wq by Little's law, L = λW.
func (s Station) byLittle(rate, mean float64) Station {
	s.W = s.Wq + mean
	s.Lq, s.L = rate*s.Wq, rate*s.W
	return s
}

// Work is what the formulas need of a law of work: its mean, and the mean of
// its square.
type Work struct{ Mean, Square float64 }

// WorkOf gives Work from a mean and an scv, 0 for constant work and 1 for
// exponential.
func WorkOf(mean, scv float64) Work { return Work{mean, mean * mean * (1 + scv)} }

// SCV is variance over mean².
func (w Work) SCV() float64 { return w.Square/(w.Mean*w.Mean) - 1 }

// MG1 is one server with Poisson arrivals and any law of work: the formula of
// Pollaczek and Khinchine, Wq = λE[S²] / (2(1−ρ)). Gross and Harris, chapter 5.
func MG1(rate float64, w Work) (Station, error) {
	if err := positive("rate, mean and mean square", rate, w.Mean, w.Square); err != nil {
		return Station{}, err
	}
	s := Station{Load: rate * w.Mean}
	if s.Load >= 1 {
		return Station{}, overload(s.Load)
	}
	s.Empty, s.Wait = 1-s.Load, s.Load
	s.Wq = rate * w.Square / (2 * (1 - s.Load))
	return s.byLittle(rate, w.Mean), nil
}

// MM1Spread is, for one server with exponential work, how far an average over a
// long time T strays from L: T times its variance, 2ρ(1+ρ)/((1−ρ)⁴μ) with μ
// = 1/mean. Whitt 1989, Planning Queueing Simulations, Management Science
// 35:1341–1366. load is ρ, below 1.
func MM1Spread(load, mean float64) float64 {
	d := (1 - load) * (1 - load)
	return 2 * load * (1 + load) * mean / (d * d)
}

// MM1WaitSpread is the same for the mean wait of n arrivals in a row: n times
// its variance, ρ(ρ³−4ρ²+5ρ+2)/((1−ρ)⁴μ²). Daley 1968 (from memory, checked
// against numbers).
func MM1WaitSpread(load, mean float64) float64 {
	d := (1 - load) * (1 - load)
	return load * (load*load*load - 4*load*load + 5*load + 2) * mean * mean / (d * d)
}
