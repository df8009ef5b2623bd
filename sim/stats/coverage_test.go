package stats

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// Single server, arrivals and service exponential, service rate 1, arrival rate
// 0.9, from empty: exact mean of the first 25 delays in queue (recursion on the
// number found by each customer; Kelton and Law 1985, Operations Research
// 33:378–396, have the model).
const meanOf25 = 2.360544

// The experiment is that of Law, Simulation Modeling and Analysis, section 9.4:
// how often does the 90 % interval cover? The expected shares come from 100,000
// experiments (50,000 for 40 replications) with an independent program and
// generator. Skewed data and few replications cover less than they say.
func TestCoverageOfSkewedData(t *testing.T) {
	const experiments = 4000
	rng := rand.New(rand.NewPCG(1, 25))
	for _, row := range []struct {
		n                            int
		at90, se, at95, halfOverMean float64
	}{
		{5, .836, .0012, .887, .67},
		{10, .859, .0011, .907, .44},
		{20, .876, .0010, .924, .30},
		{40, .888, .0014, .936, .21},
	} {
		var in90, in95 int
		halves := make([]float64, experiments)
		for e := range halves {
			xs := make([]float64, row.n)
			for i := range xs {
				xs[i] = delayOf25(rng)
			}
			s := TInterval(xs, .90)
			in90 += covers(s, meanOf25)
			in95 += covers(TInterval(xs, .95), meanOf25)
			halves[e] = s.Half / meanOf25
		}
		name := fmt.Sprintf("%d replications", row.n)
		share(t, name+", 90 %", in90, experiments, row.at90, row.se)
		share(t, name+", 95 %", in95, experiments, row.at95, row.se)
		within(t, name+", half width / mean", Mean(halves), row.halfOverMean, .005+4*SD(halves)/math.Sqrt(experiments))
	}
}

// For independent normal data the interval is exact.
func TestCoverageOfNormalData(t *testing.T) {
	const experiments = 4000
	rng := rand.New(rand.NewPCG(2, 26))
	for _, n := range []int{2, 5, 20} {
		for _, confidence := range []float64{.5, .9, .99} {
			in, clear := 0, 0
			for range experiments {
				xs, ys := make([]float64, n), make([]float64, n)
				for i := range xs {
					luck := rng.NormFloat64()
					xs[i], ys[i] = 7+2*rng.NormFloat64()+luck, 7+rng.NormFloat64()+luck
				}
				in += covers(TInterval(xs, confidence), 7)
				if Paired(xs, ys, confidence).Clear {
					clear++
				}
			}
			share(t, fmt.Sprintf("%d values, %v", n, confidence), in, experiments, confidence, 0)
			share(t, fmt.Sprintf("%d pairs without a difference called clear", n), clear, experiments, 1-confidence, 0)
		}
	}
}

// share holds a count against an expected share, to four standard errors of
// both.
func share(t *testing.T, what string, count, n int, want, se float64) {
	t.Helper()
	within(t, what, float64(count)/float64(n), want, 4*math.Sqrt(want*(1-want)/float64(n)+se*se))
}

// delayOf25 gives the mean of the first 25 delays (Lindley 1952).
func delayOf25(rng *rand.Rand) float64 {
	delay, total := 0.0, 0.0
	for range 24 {
		delay = max(0, delay+rng.ExpFloat64()-rng.ExpFloat64()/.9)
		total += delay
	}
	return total / 25
}

func covers(s Summary, truth float64) int {
	if s.Low <= truth && truth <= s.High {
		return 1
	}
	return 0
}
