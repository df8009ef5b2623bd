package draw

import "testing"

// sink keeps the compiler from dropping the work.
var sink float64

func BenchmarkU(b *testing.B) {
	k, sum := Root(1, 0).At1(1, 1), 0.0
	for n := range uint64(b.N) {
		sum += k.U(n)
	}
	sink = sum
}

func BenchmarkAt3(b *testing.B) {
	k, sum := Root(1, 0), 0.0
	for n := range uint64(b.N) {
		sum += k.At3(1, n, 2, 3).U(0)
	}
	sink = sum
}

// BenchmarkDraw is one uniform number and its quantile by the compact form.
func BenchmarkDraw(b *testing.B) {
	for _, l := range []struct {
		name string
		d    Dist
	}{
		{"constant", must(Constant(24))},
		{"uniform", must(Uniform(8, 16))},
		{"triangular", must(Triangular(8, 10, 16))},
		{"exponential", must(Exponential(2))},
		{"lognormal", must(Lognormal(24, .3))},
		{"pert", must(PERT(8, 10, 16))},
		{"gamma", must(Gamma(10, .8))},
		{"weibull", must(Weibull(10, .5))},
		{"normal", must(Normal(10, 2))},
		{"empirical", must(Empirical(1, 2, 4, 8, 9, 12))},
		{"hyperexponential", must(Hyperexponential(1, 4))},
	} {
		s, k := Compile(l.d), Root(1, 0).At1(1, 1)
		b.Run(l.name, func(b *testing.B) {
			b.ReportAllocs()
			sum := 0.0
			for n := range uint64(b.N) {
				sum += s.Quantile(k.U(n))
			}
			sink = sum
		})
		b.Run(l.name+"/interface", func(b *testing.B) {
			sum := 0.0
			for n := range uint64(b.N) {
				sum += l.d.Quantile(k.U(n))
			}
			sink = sum
		})
	}
}

func BenchmarkNewPERT(b *testing.B) {
	for b.Loop() {
		must(PERT(8, 10, 16))
	}
}

func BenchmarkNewGamma(b *testing.B) {
	for b.Loop() {
		must(Gamma(10, .3))
	}
}
