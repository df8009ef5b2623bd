package exact

import "math"

// Limits is what no loop of these stops can pass, and what a bad one still
// reaches, with n molds.
type Limits struct {
	Most  float64 // cycles per hour: n over the bare cycle, or the rate of the narrowest stop
	Least float64 // cycles per hour when each mold waits for all others at every stop but delays
	// Critical is the number of molds, not always whole, from which on the
	// narrowest stop is the limit; 0 if all stops are delays.
	Critical float64
	Narrow   int // index of the narrowest stop; -1 if all are delays
}

// Bounds gives the asymptotic bounds of a closed loop with n molds: X ≤ min(n /
// ΣD, min c/D) with D = visits × time, and X ≥ n / (ΣD + (n−1)·ΣD of stops with
// people). With constant times the upper one is the exact rate of a loop
// without branches: Baccelli, Cohen, Olsder and Quadrat 1992, Synchronization
// and Linearity (maximum cycle ratio). In general Lazowska, Zahorjan, Graham
// and Sevcik 1984, Quantitative System Performance, chapter 5. Speeds other
// than whole servers count with their last value.
func Bounds(n int, stops []Stop) Limits {
	cycle, queued, narrow := 0.0, 0.0, math.Inf(1)
	l := Limits{Narrow: -1}
	for i := range stops {
		s := &stops[i]
		d := s.Visits * s.Time
		cycle += d
		if s.Servers == Delay && len(s.Speeds) == 0 {
			continue
		}
		queued += d
		servers := float64(s.Servers)
		if m := len(s.Speeds); m > 0 {
			servers = s.Speeds[m-1]
		}
		if rate := servers / d; rate < narrow {
			narrow, l.Narrow = rate, i
		}
	}
	l.Most = min(float64(n)/cycle, narrow)
	l.Least = float64(n) / (cycle + float64(n-1)*queued)
	if l.Narrow >= 0 {
		l.Critical = narrow * cycle
	}
	return l
}

// Line is a production line as Hopp and Spearman describe it: the rate of its
// narrowest station per hour and the bare time through it.
type Line struct{ Rate, Through float64 }

// LineOf gives the Line of the stops.
func LineOf(stops []Stop) Line {
	b := Bounds(1, stops)
	through := 0.0
	for i := range stops {
		through += stops[i].Visits * stops[i].Time
	}
	return Line{b.Critical / through, through}
}

// Best, Worst and Practical give rate per hour and time through the line with w
// jobs in it, w 1 or more: without any variation; with all jobs in one heap;
// and in a balanced line of single stations with exponential times (Hopp and
// Spearman, Factory Physics, chapter 7: best case, worst case, practical worst
// case).
func (l Line) Best(w int) (rate, through float64) {
	return min(float64(w)/l.Through, l.Rate), max(l.Through, float64(w)/l.Rate)
}

// Worst: see Best.
func (l Line) Worst(w int) (rate, through float64) {
	return 1 / l.Through, float64(w) * l.Through
}

// Practical: see Best.
func (l Line) Practical(w int) (rate, through float64) {
	critical := l.Rate * l.Through
	k := float64(w)
	return k * l.Rate / (critical + k - 1), l.Through + (k-1)/l.Rate
}
