package exact

import (
	"fmt"
	"math/bits"
)

// Delay as the number of servers of a stop means that nobody queues: curing,
// or any wait by the clock.
const Delay = 0

// Stop is one station of a closed loop, such as that of molds.
type Stop struct {
	Name    string
	Time    float64 // mean hours of a visit
	Visits  float64 // per cycle: 1, or a fifth for a strip after every fifth pull
	Servers int     // 1 or more, or Delay

	// Speeds is for a station whose servers do not all work alike: its speed
	// relative to one server with 1, 2, … there; the last goes on for more.
	// Empty: as many servers work as there are molds, up to Servers.
	Speeds []float64
}

// Loop is what a closed loop with N molds does in steady state.
type Loop struct {
	N     int
	X     float64 // cycles per hour
	Stops []Visit // in the order of the stops given
}

// Visit is what one stop of a loop does.
type Visit struct {
	R    float64   // mean time of one visit, waiting included
	Q    float64   // mean number there
	U    float64   // busy share of a server; of a Delay the mean number there
	Here []float64 // chance that 0, 1, … N are there; nil unless several servers or Speeds
}

// mostShared is how many stops with several servers a loop may have: the work
// doubles with each.
const mostShared = 16

// Solve gives the steady state of a closed loop with 1, 2, … n molds, by mean
// value analysis. It is exact where stops with people serve first come first
// served in exponential times; the law of a Delay does not matter, and neither
// does whether a stop with visits 1/k comes by chance or at every k-th cycle of
// each mold. Sources: Reiser and Lavenberg 1980, Mean-Value Analysis of Closed
// Multichain Queuing Networks, Journal of the ACM 27:313–322; Baskett, Chandy,
// Muntz and Palacios 1975, Journal of the ACM 22:248–260.
//
// The chance that nobody is at a stop with several servers is found from the
// loop without that stop, p₀(n) = p₀(n−1)·X(n)/X'(n), rather than as what is
// left to 1, which loses all digits under load (Reiser 1981, Performance
// Evaluation 1:7–18; from memory).
func Solve(n int, stops []Stop) ([]Loop, error) {
	shared := 0
	for _, s := range stops {
		if err := positive("time and visits of "+s.Name, s.Time, s.Visits); err != nil {
			return nil, err
		}
		if s.Servers < 0 {
			return nil, fmt.Errorf("servers of %s: found %d, allowed: 0 for a delay, or more", s.Name, s.Servers)
		}
		if err := positive("speeds of "+s.Name, s.Speeds...); err != nil {
			return nil, err
		}
		if s.shared() {
			shared++
		}
	}
	if n < 1 || len(stops) == 0 || len(stops) > 60 || shared > mostShared {
		return nil, fmt.Errorf("a loop of %d molds and %d stops, %d of them with several servers; allowed: 1 or more, 1 to 60, %d at most", n, len(stops), shared, mostShared)
	}
	a := analysis{n: n, stops: stops, known: map[uint64][]Loop{}}
	return a.of(1<<len(stops) - 1), nil
}

// shared says whether the speed of a stop depends on how many are there.
func (s *Stop) shared() bool { return s.Servers > 1 || len(s.Speeds) > 0 }

// speed of a stop with k there, k 1 or more.
func (s *Stop) speed(k int) float64 {
	if m := len(s.Speeds); m > 0 {
		return s.Speeds[min(k, m)-1]
	}
	return float64(min(k, s.Servers))
}

// analysis solves a loop and those of its parts that it needs, each once. A
// part is the set of its stops, as bits.
type analysis struct {
	n     int
	stops []Stop
	known map[uint64][]Loop
}

// of solves the loop of a set of stops for 1 to n molds.
func (a *analysis) of(set uint64) []Loop {
	if l, ok := a.known[set]; ok {
		return l
	}
	loops := make([]Loop, 0, a.n)
	before := Loop{Stops: make([]Visit, len(a.stops))}
	for i := range before.Stops {
		before.Stops[i].Here = []float64{1}
	}
	for n := 1; n <= a.n; n++ {
		before = a.next(set, n, before)
		loops = append(loops, before)
	}
	for k := range loops {
		for i := range a.stops {
			if !a.stops[i].shared() {
				loops[k].Stops[i].Here = nil
			}
		}
	}
	a.known[set] = loops
	return loops
}

// next adds the n-th mold to a loop that is known with n−1.
func (a *analysis) next(set uint64, n int, before Loop) Loop {
	l := Loop{N: n, Stops: make([]Visit, len(a.stops))}
	cycle := 0.0
	for s := set; s != 0; s &= s - 1 {
		i := bits.TrailingZeros64(s)
		l.Stops[i].R = a.stops[i].visit(&before.Stops[i], n)
		cycle += a.stops[i].Visits * l.Stops[i].R
	}
	l.X = float64(n) / cycle
	for s := set; s != 0; s &= s - 1 {
		i := bits.TrailingZeros64(s)
		stop, v := &a.stops[i], &l.Stops[i]
		rate := l.X * stop.Visits
		v.Q = rate * v.R
		v.U = rate * stop.Time / float64(max(stop.Servers, 1))
		if stop.shared() {
			v.Here = a.here(set, i, &l, &before.Stops[i])
		}
	}
	return l
}

// visit is the mean time of a visit by the n-th mold, which finds the stop as
// it is on average with n−1 (the arrival theorem).
func (s *Stop) visit(found *Visit, n int) float64 {
	switch {
	case s.shared():
		sum := 0.0
		for k := 1; k <= n; k++ {
			sum += float64(k) / s.speed(k) * found.Here[k-1]
		}
		return s.Time * sum
	case s.Servers == Delay:
		return s.Time
	}
	return s.Time * (1 + found.Q)
}

// here gives the chances of each number at stop i in loop l.
func (a *analysis) here(set uint64, i int, l *Loop, before *Visit) []float64 {
	s := &a.stops[i]
	p := make([]float64, l.N+1)
	for k := 1; k <= l.N; k++ {
		p[k] = l.X * s.Visits * s.Time / s.speed(k) * before.Here[k-1]
	}
	if rest := set &^ (1 << i); rest != 0 {
		p[0] = before.Here[0] * l.X / a.of(rest)[l.N-1].X
	}
	return p
}
