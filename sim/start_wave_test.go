package sim

import (
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// stripBook keeps when molds were stripped and how long they waited for it.
type stripBook struct {
	record.Nothing
	at    []clock.Time
	waits clock.Time
	pulls int
}

func (b *stripBook) Note(n *record.Note) {
	if n.Kind == record.LightStrip || n.Kind == record.FullStrip {
		b.at = append(b.at, n.At)
	}
}
func (b *stripBook) Pull(*record.Pull) { b.pulls++ }
func (b *stripBook) Span(s *record.Span) {
	if !s.Working && s.Route == 1 {
		b.waits += s.To - s.From
	}
}

// most is the largest number of strips within a length of time.
func (b *stripBook) most(within clock.Time) int {
	most := 0
	for i := range b.at {
		n := 0
		for _, t := range b.at[i:] {
			if t < b.at[i]+within {
				n++
			}
		}
		most = max(most, n)
	}
	return most
}

// Ten molds are stripped every tenth turn by one person. With the counters of a
// mold log, which lie anywhere between two strips, a few strips fall into each
// week. With all counters at zero, as in a plant that is switched on, all molds
// come to their strip together: a wave that is not in the shop, with a queue
// before the strip.
func TestRealCountersRemoveTheFalseStripWave(t *testing.T) {
	const molds, every = 10, 10
	p := loopPlan(molds, []station{{"wax", 2, 2, constant}, {"gel", 3, 2, constant}, {"laminate", 10, 3, exponential}, {"cure", 24, 0, constant}, {"pull", 2, 1, constant}, {"strip", 8, 1, constant}}, 4, every)
	p.Length = 8 * clock.Week
	books := map[string]*stripBook{}
	for name, since := range map[string]func(i int) int{"log": func(i int) int { return i * 7 % every }, "zero": func(int) int { return 0 }} {
		s := &Start{At: clock.Hour}
		for i := range molds {
			s.Molds = append(s.Molds, StartMold{Mold: int32(i), Turns: Unknown, Since: since(i), Surface: Unknown, When: Unknown, Back: Unknown})
		}
		b := &stripBook{}
		if err := SimulateFrom(p, steadyAir(), s, 1, 0, b); err != nil {
			t.Fatal(err)
		}
		books[name] = b
	}
	real, zero := books["log"], books["zero"]
	mean := float64(len(real.at)) / float64(p.Length/clock.Week)
	t.Logf("a mold log: %d strips, %.1f a week, at most %d in 7 days, %v of waits before care; all at zero: %d strips, at most %d in 7 days, the first after %v, %v of waits",
		len(real.at), mean, real.most(clock.Week), real.waits, len(zero.at), zero.most(clock.Week), zero.at[0], zero.waits)
	if n := real.most(clock.Week); float64(n) > 2*mean {
		t.Errorf("with real counters %d strips fall into 7 days, on average %.1f", n, mean)
	}
	if zero.at[0] < 2*clock.Week || zero.most(clock.Week) < 8 {
		t.Errorf("with counters at zero the first strip is after %v, and at most %d fall into 7 days: no wave to remove", zero.at[0], zero.most(clock.Week))
	}
	if real.at[0] > clock.Week || 2*real.waits > zero.waits {
		t.Errorf("the first strip with real counters is after %v; waits %v, with counters at zero %v", real.at[0], real.waits, zero.waits)
	}
}
