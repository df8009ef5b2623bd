package scenarios

import (
	"math"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// futureBook counts pulls and shipments after a moment.
type futureBook struct {
	record.Nothing
	from           clock.Time
	pulls, shipped float64
	buildUp        float64
}

func (b *futureBook) Pull(p *record.Pull) {
	if p.At >= b.from {
		b.pulls++
		b.buildUp += float64(p.Turns)
	}
}

func (b *futureBook) Ship(s *record.Ship) {
	if s.At >= b.from {
		b.shipped++
	}
}

// The plant is stopped at 20 moments of other luck each, written down, and begun
// from under new luck: over all floors, what it pulls and ships in the three
// weeks that follow is what the plant itself goes on to do, within three standard
// errors of the floors' differences.
func TestFuturesFromAFloorAreUnbiased(t *testing.T) {
	const floors, futures = 20, 5
	data, _ := BundledFile("fenwater")
	noWarm, _ := ParseChange("--set", "run.warm_up=0")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1, Sets: []Change{noWarm}})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	p := s.Base
	plan := *p.Plan()
	var pulls, shipped, turns []float64
	for n := range floors {
		moment := clock.Time(60+n*14)*clock.Day + 5*clock.Hour
		plan.Length = moment + 3*clock.Week
		air, err := p.Air(uint64(100+n), 0)
		if err != nil {
			t.Fatal(err)
		}
		truth := &futureBook{from: moment}
		r := sim.Begin(&plan, air, uint64(100+n), 0, truth)
		if err := r.Until(moment); err != nil {
			t.Fatal(err)
		}
		start := r.TakeStock()
		if err := r.Finish(); err != nil {
			t.Fatal(err)
		}
		mean := futureBook{from: moment}
		for k := range futures {
			if err := sim.SimulateFrom(&plan, air, start, uint64(500+n), k, &mean); err != nil {
				t.Fatal(err)
			}
		}
		pulls = append(pulls, mean.pulls/futures-truth.pulls)
		shipped = append(shipped, mean.shipped/futures-truth.shipped)
		turns = append(turns, mean.buildUp/mean.pulls-truth.buildUp/truth.pulls)
	}
	for _, x := range []struct {
		what string
		of   []float64
	}{{"pulls", pulls}, {"boats shipped", shipped}, {"turns since strip at a pull", turns}} {
		m, se := meanAndError(x.of)
		t.Logf("%s in three weeks: futures less truth %.2f, standard error %.2f", x.what, m, se)
		if math.Abs(m) > 3*se {
			t.Errorf("%s: futures differ from the truth by %.2f, standard error %.2f", x.what, m, se)
		}
	}
}

func meanAndError(x []float64) (mean, err float64) {
	n := float64(len(x))
	for _, v := range x {
		mean += v / n
	}
	for _, v := range x {
		err += (v - mean) * (v - mean) / (n - 1)
	}
	return mean, math.Sqrt(err / n)
}
