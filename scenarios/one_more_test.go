package scenarios

import (
	"context"
	"runtime"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// One more person of any craft and shift never clearly lowers the boats of a
// bundled plant. (In general it may: more hands in one place can starve another;
// for these plants it is checked.)
func TestOneMorePersonNeverLowersBoats(t *testing.T) {
	repeats := map[string]int{"fenwater": 5, "small-shop": 8, "ten-models": 3}
	for _, name := range Bundled() {
		s := bundledScenario(t, name)
		list := s.Study()[:1]
		for _, l := range s.Levers() {
			if l.Kind != People {
				continue
			}
			changes, ok := l.By(1)
			if !ok {
				t.Fatalf("%s cannot be moved", l.Name(1))
			}
			a, complaints := s.With(l.Name(1), changes...)
			if len(complaints) > 0 {
				t.Fatal(complaints)
			}
			list = append(list, study.Alternative{Name: a.Name, Capacity: a.Plant.Capacity, Frame: a.Plant.Frame, Climate: a.Plant.Climate, Air: a.Plant.Air})
		}
		list[0].Dated, list[0].Money = nil, nil
		runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: list, Replications: repeats[name], Seed: 3, Workers: 2})
		if err != nil {
			t.Fatal(err)
		}
		boats, _ := study.MetricNamed("boats_per_week")
		for i := 1; i < len(runs); i++ {
			d, ok := runs[i].Difference(&runs[0], &boats)
			t.Logf("%s: %s: %+.3f boats a week (%.3f to %.3f)", name, runs[i].Name, d.Mean, d.Low, d.High)
			if !ok || d.Clear && d.Mean < 0 {
				t.Errorf("%s: %s lowers boats a week by %.3f (%.3f to %.3f)", name, runs[i].Name, -d.Mean, d.Low, d.High)
			}
		}
	}
}

// Nine years after the first allocate nothing to speak of: tables grow to the
// size of the plant and not with time, and no event allocates.
func TestMemoryDoesNotGrowWithTime(t *testing.T) {
	data, _ := BundledFile("fenwater")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 9})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	air, err := s.Base.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	run := sim.Begin(s.Base.Plan(), air, 1, 0, record.Nothing{})
	until := func(years clock.Time) runtime.MemStats {
		if err := run.Until(years * 365 * clock.Day); err != nil {
			t.Fatal(err)
		}
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return m
	}
	first, tenth := until(1), until(10)
	bytes, times := tenth.TotalAlloc-first.TotalAlloc, tenth.Mallocs-first.Mallocs
	t.Logf("years 2 to 10 allocate %d bytes in %d pieces", bytes, times)
	if bytes > 256<<10 || times > 1000 {
		t.Errorf("years 2 to 10 allocate %d bytes in %d pieces", bytes, times)
	}
}
