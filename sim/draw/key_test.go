package draw

import (
	"math"
	"math/bits"
	"slices"
	"testing"
)

// Known answers of SplitMix64, computed from the published recurrence (Steele,
// Lea, Flood 2014); the three words of seed 1234567 are also those commonly used
// to check implementations of it.
func TestBitsAreSplitMix64(t *testing.T) {
	for _, c := range []struct {
		seed Key
		want [3]uint64
	}{
		{0, [3]uint64{0xe220a8397b1dcdaf, 0x6e789e6aa1b965f4, 0x06c45d188009454f}},
		{1234567, [3]uint64{6457827717110365317, 3203168211198807973, 9817491932198370423}},
	} {
		for i, want := range c.want {
			if got := c.seed.Bits(uint64(i + 1)); got != want {
				t.Errorf("seed %d word %d: %#x, want %#x", c.seed, i+1, got, want)
			}
		}
	}
}

// Recorded from this package: a change here changes the luck of every study.
func TestKeysStay(t *testing.T) {
	k := Root(1, 0).At3(5, 1, 2, 3)
	if got, want := k, Key(0xb8511b774d95509a); got != want {
		t.Errorf("key %#x, recorded %#x", uint64(got), uint64(want))
	}
	if got, want := k.U(0), 0.54374484445264348; got != want {
		t.Errorf("U(0) %.17g, recorded %.17g", got, want)
	}
}

func TestUIsInsideAndSymmetric(t *testing.T) {
	// The extreme words are reached by inverting the formula of U.
	least, most := 0.5*0x1p-52, (float64(1<<52-1)+0.5)*0x1p-52
	if least <= 0 || most >= 1 || 1-most != least {
		t.Fatalf("ends %g and 1-%g", least, 1-most)
	}
	for n := range uint64(100_000) {
		u := Root(7, 3).U(n)
		if u < least || u > most || 1-(1-u) != u {
			t.Fatalf("U(%d) = %g", n, u)
		}
	}
}

// sequences are the ways in which numbers of one study neighbour each other.
var sequences = map[string]func(i uint64) float64{
	"along n":            func(i uint64) float64 { return Root(1, 0).At1(2, 9).U(i) },
	"neighbouring ids":   func(i uint64) float64 { return Root(1, 0).At1(2, i).U(0) },
	"last of three ids":  func(i uint64) float64 { return Root(1, 0).At3(2, 17, 4, i).U(1) },
	"first of three ids": func(i uint64) float64 { return Root(1, 0).At3(2, i, 4, 1).U(1) },
	"grid of two ids":    func(i uint64) float64 { return Root(1, 0).At2(2, i/1000, i%1000).U(0) },
	"purposes":           func(i uint64) float64 { return Root(1, 0).At1(Purpose(i+1), 3).U(0) },
	"replications":       func(i uint64) float64 { return Root(1, int(i)).At1(2, 3).U(0) },
	"seeds":              func(i uint64) float64 { return Root(i, 0).At0(2).U(0) },
	"attempts of a task": func(i uint64) float64 { return Root(1, 0).At3(2, i/10, 5, 6).U(i % 10) },
	"ids a power apart":  func(i uint64) float64 { return Root(1, 0).At1(2, i<<32).U(0) },
	"four ids of an order": func(i uint64) float64 {
		return Root(1, 0).At4(2, i/60, i/20%3, i/2%10, i%2).U(0)
	},
}

func TestSequencesAreUniform(t *testing.T) {
	n := sampleSize() / 4
	for name, f := range sequences {
		u := make([]float64, n)
		for i := range u {
			u[i] = f(uint64(i))
		}
		for _, lag := range []int{1, 2, 7, 1000} {
			if r := correlation(u[lag:], u[:n-lag]); math.Abs(r) > 4/math.Sqrt(float64(n-lag)) {
				t.Errorf("%s: correlation %.2g at lag %d", name, r, lag)
			}
		}
		if x := pairsChiSquare(u); math.Abs(x) > 4 {
			t.Errorf("%s: pairs fill a grid with normal deviate %.2f", name, x)
		}
		slices.Sort(u)
		if d := ksDistance(u, func(x float64) float64 { return x }); d > ksLimit(n) {
			t.Errorf("%s: KS distance %.2g over %.2g", name, d, ksLimit(n))
		}
	}
}

// A test at level 0.1 must reject a tenth of all streams, no more and no fewer:
// this guards the tests with a fixed seed against a seed that was picked.
func TestStreamsFailAsOftenAsTheyShould(t *testing.T) {
	const streams, n, limit = 400, 10_000, 1.22385 // limit of KS at level 0.1
	rejected, u := 0.0, make([]float64, n)
	for s := range uint64(streams) {
		k := Root(77, 0).At1(9, s)
		for i := range u {
			u[i] = k.U(uint64(i))
		}
		slices.Sort(u)
		if ksDistance(u, func(x float64) float64 { return x })*math.Sqrt(n) > limit {
			rejected++
		}
	}
	if math.Abs(rejected-streams*0.1) > 4*math.Sqrt(streams*0.1*0.9) {
		t.Errorf("%g of %d streams rejected at level 0.1", rejected, streams)
	}
}

// pairsChiSquare counts consecutive pairs, without overlap, in a 32 × 32 grid
// and gives the chi-square statistic as a normal deviate (1023 degrees).
func pairsChiSquare(u []float64) float64 {
	var count [1024]float64
	for i := 0; i+1 < len(u); i += 2 {
		count[int(u[i]*32)*32+int(u[i+1]*32)]++
	}
	want, sum := float64(len(u)/2)/1024, 0.0
	for _, c := range count {
		sum += (c - want) * (c - want) / want
	}
	return (sum - 1023) / math.Sqrt(2*1023)
}

// A million streams of small ids: with 64 bits a collision by chance has a
// probability of 3e-8.
func TestKeysDoNotCollide(t *testing.T) {
	var keys []Key
	for r := range 4 {
		root := Root(42, r)
		for p := Purpose(1); p <= 5; p++ {
			keys = append(keys, root.At0(p))
			for a := range uint64(50) {
				keys = append(keys, root.At1(p, a))
				for b := range uint64(20) {
					keys = append(keys, root.At2(p, a, b), root.At2(p, a+100, b))
					for c := range uint64(24) {
						keys = append(keys, root.At3(p, a, b, c), root.At4(p, a, b, c, 1))
					}
				}
			}
		}
	}
	if len(keys) < 1_000_000 {
		t.Fatalf("only %d keys", len(keys))
	}
	slices.Sort(keys)
	if n := len(keys) - len(slices.Compact(slices.Clone(keys))); n > 0 {
		t.Errorf("%d collisions in %d keys", n, len(keys))
	}
}

func TestOrderPurposeAndLengthMatter(t *testing.T) {
	r := Root(1, 0)
	for name, pair := range map[string][2]Key{
		"ids in another order":           {r.At2(1, 2, 3), r.At2(1, 3, 2)},
		"first and last of three":        {r.At3(1, 2, 3, 4), r.At3(1, 4, 3, 2)},
		"purpose and id":                 {r.At1(2, 3), r.At1(3, 2)},
		"a zero id and none":             {r.At1(1, 0), r.At0(1)},
		"three ids and a chain":          {r.At3(1, 5, 2, 7), r.At1(1, 5).At1(2, 7)},
		"seed and replication":           {Root(1, 2), Root(2, 1)},
		"child and word of the parent":   {r.At0(1), Key(r.Bits(1))},
		"purpose one up and one id less": {r.At1(1, 7), r.At1(2, 7)},
	} {
		if pair[0] == pair[1] {
			t.Errorf("%s give the same key", name)
		}
	}
}

// Every bit of an id moves every bit of the key in half of all cases.
func TestIdBitsSpread(t *testing.T) {
	const keys = 4000
	for bit := range 64 {
		flips := 0
		for i := range uint64(keys) {
			a, b := Root(3, 1).At2(1, i, 5), Root(3, 1).At2(1, i^1<<bit, 5)
			flips += bits.OnesCount64(uint64(a ^ b))
		}
		// The number of flipped bits is binomial(64·keys, 1/2).
		if z := (float64(flips) - 32*keys) / math.Sqrt(16*keys); math.Abs(z) > 4.5 {
			t.Errorf("bit %d: deviate %.2f", bit, z)
		}
	}
}

func TestKeysDoNotAllocate(t *testing.T) {
	sum := 0.0
	n := testing.AllocsPerRun(100, func() { sum += Root(1, 2).At4(3, 4, 5, 6, 7).U(8) })
	if n != 0 {
		t.Errorf("%v allocations", n)
	}
}
