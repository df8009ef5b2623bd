package scenarios

import (
	"context"
	"fmt"
	"syscall"
	"testing"

	"moldturn/sim"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// events counts the facts of a run that end a stretch of work.
type events struct {
	record.Nothing
	n int
}

func (e *events) Span(s *record.Span) {
	if s.Working {
		e.n++
	}
}

func load(b *testing.B, name string, years int) *Scenario {
	b.Helper()
	data, ok := BundledFile(name)
	if !ok {
		b.Fatalf("no scenario %q", name)
	}
	s, complaints := Load(name+".yaml", data, Options{Years: years})
	if len(complaints) > 0 {
		b.Fatal(complaints.Error())
	}
	return s
}

// A year of each bundled plant, orders always waiting.
func BenchmarkPlantYear(b *testing.B) {
	for _, name := range Bundled() {
		b.Run(name, func(b *testing.B) {
			s := load(b, name, 4)
			air, err := s.Base.Air(1, 0)
			if err != nil {
				b.Fatal(err)
			}
			years := float64(s.Base.Years + s.Base.Warm)
			n := 0
			b.ReportAllocs()
			for b.Loop() {
				e := &events{}
				if err := sim.Simulate(s.Base.Plan(), air, 1, 0, e); err != nil {
					b.Fatal(err)
				}
				n += e.n
			}
			seconds := b.Elapsed().Seconds()
			b.ReportMetric(years*float64(b.N)/seconds, "plant-years/s")
			b.ReportMetric(1e9*seconds/float64(n), "ns/step")
		})
	}
}

// The main job: all alternatives of the demo, 20 counted years each, with both
// order books.
func BenchmarkMainJob(b *testing.B) {
	for _, workers := range []int{1, 2} {
		b.Run(fmt.Sprintf("%d workers", workers), func(b *testing.B) {
			s := load(b, "fenwater", 2)
			for b.Loop() {
				if _, err := study.Compare(context.Background(), &study.Setup{Alternatives: s.Study(), Replications: 10, Seed: 1, Workers: workers}); err != nil {
					b.Fatal(err)
				}
			}
			years := float64(len(s.Alternatives)*2*10*(s.Base.Years+s.Base.Warm)) * float64(b.N)
			b.ReportMetric(years/b.Elapsed().Seconds(), "plant-years/s")
			var use syscall.Rusage
			if syscall.Getrusage(syscall.RUSAGE_SELF, &use) == nil {
				b.ReportMetric(float64(use.Maxrss)/1024, "peak-MB")
			}
		})
	}
}

// Reading the demo and making plans of all its alternatives.
func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		load(b, "fenwater", 2)
	}
}
