package cure

import (
	"sort"

	"moldturn/sim/clock"
)

// Hours counts equivalent hours at 25 °C along one series of mold
// temperatures. It is read-only after NewHours and may be shared. Before the
// series the first hour's temperature holds, after it the last hour's.
type Hours struct {
	sum   []float64 // equivalent hours from time 0 to the start of hour i; one longer than speed
	speed []float64 // of hour i
}

// NewHours prepares the counting for moldC, °C of each clock hour from time 0,
// constant within the hour. An empty series means 25 °C throughout.
func NewHours(moldC []float64, p Params) *Hours {
	n := max(len(moldC), 1)
	h := &Hours{sum: make([]float64, n+1), speed: make([]float64, n)}
	for i := range h.speed {
		h.speed[i] = 1
		if i < len(moldC) {
			h.speed[i] = Speed(moldC[i], p.ActivationEnergy)
		}
		h.sum[i+1] = h.sum[i] + h.speed[i]
	}
	return h
}

// Equivalent is the hours at 25 °C that cure as much as the time from … to;
// negative when to is before from. At a constant 25 °C it is the clock hours.
//
// Source: equivalent age, ASTM C1074, "Standard Practice for Estimating
// Concrete Strength by the Maturity Method".
func (h *Hours) Equivalent(from, to clock.Time) float64 {
	i, j := h.hour(from), h.hour(to)
	if i == j {
		return (to - from).Hours() * h.speed[i]
	}
	return h.sum[j] - h.sum[i] + h.into(j, to) - h.into(i, from)
}

// Ready is the instant at which equivalent hours have passed since from, to
// the nearest millisecond; from itself when equivalent is not positive, and
// clock.Never when it is too far away to be an instant of a run.
func (h *Hours) Ready(from clock.Time, equivalent float64) clock.Time {
	if !(equivalent > 0) {
		return from
	}
	i := h.hour(from)
	left := equivalent + h.into(i, from) // counted from the start of hour i
	j := h.find(i, h.sum[i]+left)
	wait := clock.FromHours((left - (h.sum[j] - h.sum[i])) / h.speed[j])
	if wait >= clock.Never-clock.Time(j)*clock.Hour {
		return clock.Never
	}
	return max(from, clock.Time(j)*clock.Hour+wait)
}

// find is the hour from i on in which the sum passes target: it doubles its
// stride, because waits are short against the series, then halves the bracket.
func (h *Hours) find(i int, target float64) int {
	last := len(h.speed) - 1
	stride := 1
	for i+stride <= last && h.sum[i+stride] <= target {
		i += stride
		stride *= 2
	}
	span := min(stride, last-i+1) - 1 // hours after i that may still start before target
	return i + sort.Search(span, func(k int) bool { return h.sum[i+k+1] > target })
}

// hour is the index of the hour that t lies in, kept inside the series.
func (h *Hours) hour(t clock.Time) int {
	return hourOf(t, len(h.speed))
}

// into is the equivalent hours from the start of hour i to t.
func (h *Hours) into(i int, t clock.Time) float64 {
	return (t - clock.Time(i)*clock.Hour).Hours() * h.speed[i]
}

// hourOf is the index of the hour that t lies in, kept in 0 … n−1.
func hourOf(t clock.Time, n int) int {
	if t < 0 {
		return 0
	}
	return int(min(t/clock.Hour, clock.Time(n-1)))
}
