package scenarios

import (
	"context"
	"fmt"
	"math"
	"testing"

	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// pullTimes keeps when each mold is pulled after a moment.
type pullTimes struct {
	record.Nothing
	from clock.Time
	at   [][]clock.Time
}

func (p *pullTimes) Pull(x *record.Pull) {
	if x.At >= p.from {
		p.at[x.Mold] = append(p.at[x.Mold], x.At)
	}
}

// nth is the n-th pull of a mold, from 0; clock.Never for none.
func (p *pullTimes) nth(mold, n int) clock.Time {
	if n < len(p.at[mold]) {
		return p.at[mold][n]
	}
	return clock.Never
}

// pulled is the n-th pull of a mold in each future.
func pulled(futures []ahead.Future, mold, n int) ahead.When {
	w := make(ahead.When, len(futures))
	for f := range futures {
		w[f] = clock.Never
		k := 0
		for i := range futures[f].Pulls {
			if p := &futures[f].Pulls[i]; int(p.Mold) == mold {
				if k == n {
					w[f] = p.At
				}
				k++
			}
		}
	}
	return w
}

// Stated chances come true. The demo's plant is stopped at many mornings of
// other luck each and written down as a floor would be; futures begin from what
// was written. "Pulled by" is stated for 50, 80 and 90 % and holds in so many
// futures that were held out, to within 5 points. What the plant itself goes on
// to do knows more than was written down (what is in the guns, who is out): it is
// shown beside, and 90 % hold there in 80 % at least. All this says that the
// model agrees with itself, not that it is right about a real shop.
//
// The score is that of Brier 1950, Verification of forecasts expressed in terms
// of probability, Monthly Weather Review 78:1–3: the mean square of stated chance
// less outcome, here of "pulled within two days"; 0 is perfect, and stating the
// share of all cases each time gives the score printed beside it.
func TestStatedChancesComeTrue(t *testing.T) {
	const floors, futures, heldOut = 36, 79, 8
	data, _ := BundledFile("fenwater")
	noWarm, _ := ParseChange("--set", "run.warm_up=0")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1, Sets: []Change{noWarm}})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	plan := *s.Base.Plan()
	var held, goesOn statements
	for n := range floors {
		moment := clock.Time(56+7*n)*clock.Day + clock.Time(n%5)*clock.Day + 6*clock.Hour
		plan.Length = moment + 4*clock.Week
		air, err := s.Base.Air(uint64(900+n), 0)
		if err != nil {
			t.Fatal(err)
		}
		truth := &pullTimes{from: moment, at: make([][]clock.Time, len(plan.Molds))}
		run := sim.Begin(&plan, air, uint64(900+n), 0, truth)
		if err := run.Until(moment); err != nil {
			t.Fatal(err)
		}
		setup := &ahead.Setup{Plan: &plan, Start: run.TakeStock(), Air: s.Base.Air, Seed: uint64(4000 + n), Futures: futures + heldOut, Workers: 2}
		if err := run.Finish(); err != nil {
			t.Fatal(err)
		}
		all, err := setup.Run(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		for mold := range plan.Molds {
			for k := range 2 {
				w := pulled(all, mold, k)
				if w.Ever() < 1 || truth.nth(mold, k) == clock.Never {
					continue // beyond the weeks looked at in some future
				}
				known := w[:futures]
				for _, at := range w[futures:] {
					held.hold(known, moment, at)
				}
				goesOn.hold(known, moment, truth.nth(mold, k))
			}
		}
	}
	if held.cases < 4000 || goesOn.cases < 500 {
		t.Fatalf("only %d and %d cases", held.cases, goesOn.cases)
	}
	t.Logf("%d floors; held-out futures: %v", floors, &held)
	t.Logf("the plant itself: %v", &goesOn)
	for i, p := range stated {
		if got := held.share(i); math.Abs(got-p) > 0.05 {
			t.Errorf("stated %.0f %%, came true in %.1f %% of %d held-out cases", 100*p, 100*got, held.cases)
		}
	}
	if got := goesOn.share(2); got < 0.8 {
		t.Errorf("stated 90 %%, came true in %.1f %% of what the plant goes on to do", 100*got)
	}
	if score, plain := held.scores(); score >= plain {
		t.Error("the chances say nothing beyond the share of all cases")
	}
}

var stated = [...]float64{0.5, 0.8, 0.9}

// statements counts how stated chances come true.
type statements struct {
	cases, soon int
	met         [len(stated)]int
	square      float64
}

// hold holds what was stated from known futures against what happened.
func (s *statements) hold(known ahead.When, moment, at clock.Time) {
	s.cases++
	for i, p := range stated {
		if at <= known.Surely(p) {
			s.met[i]++
		}
	}
	day := moment + 2*clock.Day
	outcome := 0.0
	if at < day {
		outcome = 1
		s.soon++
	}
	miss := known.By(day) - outcome
	s.square += miss * miss
}

func (s *statements) share(i int) float64 { return float64(s.met[i]) / float64(s.cases) }

// scores are the Brier score and that of always stating the share of all cases.
func (s *statements) scores() (score, plain float64) {
	share := float64(s.soon) / float64(s.cases)
	return s.square / float64(s.cases), share * (1 - share)
}

func (s *statements) String() string {
	score, plain := s.scores()
	return fmt.Sprintf("stated 50, 80, 90 %%, came true %.1f, %.1f, %.1f %% of %d; Brier score %.4f (%.4f for the share of all cases)",
		100*s.share(0), 100*s.share(1), 100*s.share(2), s.cases, score, plain)
}
