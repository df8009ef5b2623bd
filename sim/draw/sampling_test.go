package draw

import (
	"hash/fnv"
	"math"
	"slices"
	"testing"
)

// sample draws n values of d from a stream of its own.
func sample(d Dist, n int) []float64 {
	h := fnv.New64a()
	h.Write([]byte(d.String()))
	s, k := Compile(d), Root(1, 0).At1(1, h.Sum64())
	x := make([]float64, n)
	for i := range x {
		x[i] = s.Quantile(k.U(uint64(i)))
	}
	return x
}

// checkMoments wants the mean within 4σ/√n and the variance within
// 4·√((κ+2)/n)·σ², κ being the excess kurtosis.
func checkMoments(t *testing.T, d Dist, x []float64, kurtosis float64) {
	t.Helper()
	n, sd := float64(len(x)), math.Sqrt(d.Variance())
	if m := meanOf(x); math.Abs(m-d.Mean()) > 4*sd/math.Sqrt(n) {
		t.Errorf("%s: mean of sample %g, of law %g", d, m, d.Mean())
	}
	if v := varianceOf(x); math.Abs(v-d.Variance()) > 4*math.Sqrt((kurtosis+2)/n)*d.Variance() {
		t.Errorf("%s: variance of sample %g, of law %g", d, v, d.Variance())
	}
}

func TestSamplesOfKnownLaws(t *testing.T) {
	n := sampleSize()
	for _, k := range knownLaws() {
		x := sample(k.d, n)
		checkMoments(t, k.d, x, k.kurtosis)
		slices.Sort(x)
		for i, p := range probabilities {
			// The quantile as scipy printed it; six decimals move p by less than the band.
			at, _ := slices.BinarySearch(x, k.quantiles[i])
			band := 4*math.Sqrt(p*(1-p)/float64(n)) + math.Abs(k.cdf(k.quantiles[i])-p)
			if got := float64(at) / float64(n); math.Abs(got-p) > band {
				t.Errorf("%s: share %g below quantile %g", k.name, got, p)
			}
		}
		if d := ksDistance(x, k.cdf); d > ksLimit(n) {
			t.Errorf("%s: KS distance %.2g over %.2g", k.name, d, ksLimit(n))
		}
	}
}

// Laws that gonum does not have. Excess kurtosis by their moments: uniform -6/5;
// scaled as the law itself; the mix with balanced means from E[Xⁿ] = n!·Σ p/rateⁿ.
func TestSamplesOfOtherLaws(t *testing.T) {
	n := sampleSize()
	mix := must(Hyperexponential(2, 4))
	x := sample(mix, n)
	checkMoments(t, mix, x, mixKurtosis(4))
	slices.Sort(x)
	p := 0.8872983346207417
	survival := func(v float64) float64 { return p*math.Exp(-p*v) + (1-p)*math.Exp(-(1-p)*v) }
	if d := ksDistance(x, func(v float64) float64 { return 1 - survival(v) }); d > ksLimit(n) {
		t.Errorf("%s: KS distance %.2g", mix, d)
	}
	flat := must(Uniform(8, 16))
	checkMoments(t, flat, sample(flat, n), -1.2)
	longer := must(Scaled(must(Gamma(10, 0.5)), 1.3))
	checkMoments(t, longer, sample(longer, n), 1.5)
}

func mixKurtosis(scv float64) float64 {
	r := math.Sqrt((scv - 1) / (scv + 1))
	p := [2]float64{(1 + r) / 2, (1 - r) / 2}
	moment := func(k, factorial float64) float64 {
		return factorial * (p[0]/math.Pow(2*p[0], k) + p[1]/math.Pow(2*p[1], k))
	}
	m2, m3, m4 := moment(2, 2), moment(3, 6), moment(4, 24)
	central := m4 - 4*m3 + 6*m2 - 3
	return central/(scv*scv) - 3
}

func TestSamplesOfObservations(t *testing.T) {
	n := sampleSize()
	d := must(Empirical(1.2, 1.9, 2.3, 2.8, 3.0, 3.7, 4.4, 5.9))
	x := sample(d, n)
	checkMoments(t, d, x, 0) // κ is below 0 here, which would narrow the band
	slices.Sort(x)
	for i, p := range []float64{.05, .1, .25, .5, .75, .9, .99} {
		q := []float64{1.445, 1.69, 2.2, 2.9, 3.875, 4.85, 5.795}[i]
		at, _ := slices.BinarySearch(x, q)
		if got := float64(at) / float64(n); math.Abs(got-p) > 4*math.Sqrt(p*(1-p)/float64(n)) {
			t.Errorf("share %g below quantile %g", got, p)
		}
	}
}

func TestSamplesOfSteps(t *testing.T) {
	n := sampleSize()
	d := must(Discrete([]float64{1, 2, 5}, []float64{.5, .3, .2}))
	count := map[float64]float64{}
	for _, v := range sample(d, n) {
		count[v]++
	}
	for v, p := range map[float64]float64{1: .5, 2: .3, 5: .2} {
		if got := count[v] / float64(n); math.Abs(got-p) > 4*math.Sqrt(p*(1-p)/float64(n)) {
			t.Errorf("value %g has share %g, want %g", v, got, p)
		}
	}
}
