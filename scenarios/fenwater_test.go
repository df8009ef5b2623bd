package scenarios

import (
	"context"
	"testing"

	"moldturn/sim/hand"
	"moldturn/sim/study"
)

// The demo is neither degenerate nor trivial: what it was set up to show, it
// shows. The aims are those of its invented figures, not facts of the trade.
func TestFenwaterKeepsItsAims(t *testing.T) {
	data, _ := BundledFile("fenwater")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 2})
	if len(complaints) > 0 {
		t.Fatal("\n" + complaints.Error())
	}
	runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: s.Study()[:3], Replications: 5, Seed: 1, Workers: 2})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		metric    string
		low, high float64
	}{{"boats_per_week", 6, 10}, {"luster_mean", 97, 98}} {
		m, ok := study.MetricNamed(c.metric)
		if !ok {
			t.Fatalf("no figure %q", c.metric)
		}
		x, _ := runs[0].Summary(&m)
		t.Logf("%s %.2f ± %.2f", c.metric, x.Mean, x.Half)
		if x.Mean < c.low || x.Mean > c.high {
			t.Errorf("%s = %.2f, want %v to %v", c.metric, x.Mean, c.low, c.high)
		}
	}
	plan := s.Base.Plan()
	for _, l := range runs[0].Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11) {
		if l.Pool >= len(plan.Crafts) {
			continue
		}
		t.Logf("%s busy %.0f %%", plan.Crafts[l.Pool].Name, 100*l.Load)
		if l.Load < 0.50 || l.Load > 0.95 {
			t.Errorf("%s is busy %.0f %% of its hours, want 50 to 95", plan.Crafts[l.Pool].Name, 100*l.Load)
		}
	}
	// A turn of a mold that never waits for people: labor, cure, and the nights
	// between, on the five working days of a week.
	air, err := s.Base.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	sum := 0.0
	molds := hand.Work(plan, air, s.Base.Frame).Molds
	for _, m := range molds {
		sum += m.Cycle() * 5 / 7
	}
	if cycle := sum / float64(len(molds)); cycle < 48 || cycle > 72 {
		t.Errorf("the mean mold cycle is %.1f h of working days, want 48 to 72", cycle)
	} else {
		t.Logf("mold cycle %.1f h of working days", cycle)
	}
	january, july := runs[0].Limits(0)[0].Pool, runs[0].Limits(6)[0].Pool
	if january == july {
		t.Errorf("pool %d limits the plant in January and in July", january)
	}
	luster, _ := study.MetricNamed("luster_mean")
	if d, _ := runs[1].Difference(&runs[2], &luster); !d.Clear || d.Mean <= 0 {
		t.Errorf("strip every 3 against every 10: luster %+.3f (%.3f to %.3f), want clearly more", d.Mean, d.Low, d.High)
	}
}
