package study

import (
	"math/rand/v2"
	"testing"
	"time"

	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// frame is a run of whole years from a Monday, the first warm ones not counted.
func frame(warm, years int) *record.Frame {
	start := shift.DateOf(2027, time.January, 4)
	at := func(y int) clock.Time { return shift.Midnight(start, shift.DateOf(2027+y, time.January, 4)) }
	return &record.Frame{Start: start, From: at(warm), To: at(warm + years), Shut: make([]bool, 53*(warm+years)+2)}
}

// ships draws boats by week as the sum of ten chances, with a slow season, and
// six tenths as many in the first weeks.
func ships(rng *rand.Rand, f *record.Frame, settle float64) []int {
	out := make([]int, shift.WeekAt(f.Start, f.To)+1)
	for w := range out {
		p := 0.6
		if y := f.WeekYear(w); y > 20 && y < 35 {
			p = 0.4
		}
		if float64(w) < settle {
			p *= 0.6
		}
		for range 10 {
			if rng.Float64() < p {
				out[w]++
			}
		}
	}
	return out
}

func series(rng *rand.Rand, f *record.Frame, settle float64) [][]int {
	var out [][]int
	for range 10 {
		out = append(out, ships(rng, f, settle))
	}
	return out
}

// A season is no warm-up, and a start that ends before the cut needs no more:
// of many such studies few may warn. The t interval of what lies behind the cut
// errs once in 20 by itself.
func TestWarmUpRarelyWarnsOfNothing(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 1))
	warned, unknown := 0, 0
	const studies = 400
	for range studies {
		w := warmUp(frame(1, 2), series(rng, frame(1, 2), 10), Confidence)
		if w.Short {
			warned++
		}
		if !w.Known {
			unknown++
		}
	}
	if warned > studies/20 {
		t.Errorf("%d of %d studies of a settled plant warn", warned, studies)
	}
	if unknown > studies/10 {
		t.Errorf("%d of %d studies of a settled plant cannot tell", unknown, studies)
	}
}

func TestWarmUpFindsACutThatIsTooShort(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 2))
	for _, test := range []struct {
		warm   int
		settle float64
	}{{1, 68}, {0, 20}} {
		f := frame(test.warm, 3)
		for range 20 {
			w := warmUp(f, series(rng, f, test.settle), Confidence)
			if !w.Short || !w.Known || w.Late.Mean >= 0 {
				t.Fatalf("%d years cut, settled after %.0f weeks: %+v", test.warm, test.settle, w.Late)
			}
			if got := float64(w.Weeks[w.Settle].Number); got < test.settle-6 || got > test.settle+25 {
				t.Errorf("settled at week %.0f, the truth is %.0f", got, test.settle)
			}
		}
	}
}

func TestWarmUpNeedsTwoYears(t *testing.T) {
	f := frame(1, 1)
	if w := warmUp(f, series(rand.New(rand.NewPCG(5, 3)), f, 60), Confidence); w.Known || w.Short {
		t.Errorf("one counted year: %+v", w)
	}
	if w := (&Runs{}).WarmUp(1); w.Known || w.Short {
		t.Errorf("no runs: %+v", w)
	}
}

// Weeks that are shut down are no weeks of a plant that has not settled.
func TestWarmUpLeavesOutShutWeeks(t *testing.T) {
	f := frame(1, 2)
	for w := range f.Shut {
		f.Shut[w] = f.WeekYear(w) == 26 || f.WeekYear(w) == 51
	}
	s := series(rand.New(rand.NewPCG(5, 4)), f, 0)
	for _, r := range s {
		for w := range r {
			if f.IsShut(w) {
				r[w] = 0
			}
		}
	}
	w := warmUp(f, s, Confidence)
	if w.Short {
		t.Errorf("shutdowns look like a warm-up: %+v", w.Late)
	}
	for _, week := range w.Weeks {
		if f.IsShut(week.Number) {
			t.Errorf("week %d is shut and counted", week.Number)
		}
	}
}
