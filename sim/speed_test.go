package sim

import (
	"math"
	"slices"
	"strconv"
	"sync"
	"syscall"
	"testing"
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// processorTime is what this process has used of all processors, in seconds.
// Beside other programs it is steadier than the time on the wall.
func processorTime(t testing.TB) float64 {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		t.Fatal(err)
	}
	return float64(u.Utime.Nano()+u.Stime.Nano()) / 1e9
}

// loopRun runs the loop of configuration C, 8 molds, for about so many cycles
// and gives how many there were.
func loopRun(t testing.TB, seed uint64, cycles int) int {
	p := configC(8, exponential, constant)
	p.Length = clock.FromHours(float64(cycles) / 0.179138)
	c := &pullCount{}
	if err := Simulate(p, steadyAir(), seed, 0, c); err != nil {
		t.Fatal(err)
	}
	return c.pulls
}

func middle(xs []float64) float64 {
	slices.Sort(xs)
	return xs[len(xs)/2]
}

// The bare loop is the same model: its rate is the exact one (mean value
// analysis, Reiser & Lavenberg 1980).
func TestBareLoopIsTheSameModel(t *testing.T) {
	l := runBare(3, 40_000)
	x := float64(l.pulls) / l.pop().at
	const exact, v = 0.179138377064127, 0.063303
	if se := math.Sqrt(v / (float64(l.pulls) / exact)); math.Abs(x-exact) > 4*se {
		t.Errorf("X = %.6f, exact %.6f, SE %.6f", x, exact, se)
	}
}

// limitRatio is how much more processor time a cycle takes in the engine than in
// the bare loop.
func limitRatio(t testing.TB) float64 {
	const cycles = 50_000
	t0 := processorTime(t)
	n := loopRun(t, 1, cycles)
	t1 := processorTime(t)
	runBare(1, cycles)
	return (t1 - t0) / float64(n) / ((processorTime(t) - t1) / cycles)
}

// How much longer the engine takes than the bare loop, processor time, median
// of the rounds.
func BenchmarkAgainstLimit(b *testing.B) {
	var ratios []float64
	for b.Loop() {
		ratios = append(ratios, limitRatio(b))
	}
	b.ReportMetric(middle(ratios), "x-limit")
}

// coresRatio is how many times the work of one run two runs at once do in the
// same time on the wall.
func coresRatio(t testing.TB) float64 {
	const cycles = 50_000
	t0 := time.Now()
	loopRun(t, 1, cycles)
	one := time.Since(t0)
	t0 = time.Now()
	var g sync.WaitGroup
	for seed := range uint64(2) {
		g.Go(func() { loopRun(t, seed+1, cycles) })
	}
	g.Wait()
	return 2 * one.Seconds() / time.Since(t0).Seconds()
}

// What a second core brings, median of the rounds.
func BenchmarkTwoCores(b *testing.B) {
	var ratios []float64
	for b.Loop() {
		ratios = append(ratios, coresRatio(b))
	}
	b.ReportMetric(middle(ratios), "x-one-core")
}

// manyModels is a plant of so many models of one part, four molds each, with
// people in proportion, so that all sizes are equally busy.
func manyModels(models int) *Plan {
	p := loopPlan(4, []station{{"wax", 2, models, exponential}, {"gel", 3, models, exponential}, {"laminate", 10, 2 * models, exponential},
		{"cure", 24, 0, constant}, {"pull", 2, models, exponential}, {"strip", 6, models, exponential}}, 4, 5)
	part, model := p.Parts[0], p.Models[0]
	p.Parts, p.Models, p.Molds = nil, nil, nil
	for m := range models {
		x, y := part, model
		x.Model, y.Parts = int16(m), []int16{int16(m)}
		x.Name, y.Name = "part "+strconv.Itoa(m+1), "model "+strconv.Itoa(m+1)
		p.Parts, p.Models = append(p.Parts, x), append(p.Models, y)
		for range 4 {
			p.Molds = append(p.Molds, Mold{Part: int16(m)})
		}
	}
	for c := range p.Crafts {
		p.Crafts[c].Crews[0].Hours = shift.Always()
	}
	return p
}

// perPart is the processor time for a part, in ns, in a plant of so many models
// at equal load.
func perPart(t testing.TB, models int) float64 {
	p := manyModels(models)
	p.Length = clock.FromHours(60_000 * 10 / float64(models))
	c := &pullCount{}
	t0 := processorTime(t)
	if err := Simulate(p, steadyAir(), 1, 0, c); err != nil {
		t.Fatal(err)
	}
	return 1e9 * (processorTime(t) - t0) / float64(c.pulls)
}

// Processor time for a part in plants of several sizes at equal load.
func BenchmarkModels(b *testing.B) {
	least := 0.0
	for _, models := range []int{3, 10, 30, 100} {
		b.Run(strconv.Itoa(models), func(b *testing.B) {
			var each []float64
			for b.Loop() {
				each = append(each, perPart(b, models))
			}
			per := middle(each)
			if models == 3 {
				least = per
			}
			b.ReportMetric(per, "ns/part")
			if least > 0 {
				b.ReportMetric(per/least, "x-3-models")
			}
		})
	}
}
