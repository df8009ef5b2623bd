package validate

import (
	"flag"
	"testing"
	"time"
)

var (
	full = flag.Bool("full", false, "run all cases at full length")
	seed = flag.Uint64("seed", 1, "luck of the runs")
)

// Every number of every case lies within four standard errors of its exact
// value, and -full runs are long enough for the error that each group may leave.
// Without -full, a short check of a part of the cases.
func TestCases(t *testing.T) {
	numbers := 0
	for _, c := range Cases() {
		if c.Long && !*full {
			continue
		}
		t.Run(c.Group+"/"+c.Name, func(t *testing.T) {
			begun := time.Now()
			results, err := c.Check(Options{Seed: *seed, Short: !*full})
			if err != nil {
				t.Fatal(err)
			}
			numbers += len(results)
			for _, r := range results {
				t.Logf("%-28s exact %12.8g got %12.8g  SE %.2f %%, %+.2f SE", r.Name, r.Exact, r.Got, 100*r.SE/max(r.Exact, 1e-12), r.Apart())
				if *full && r.SE > c.Largest()*r.Exact && r.Exact > 0 {
					t.Errorf("%s has a standard error of %.3f %%, over %.1f %%", r.Name, 100*r.SE/r.Exact, 100*c.Largest())
				}
				if !r.Pass {
					t.Errorf("%s is %.8g, exact %.8g; %.1f standard errors apart. %s (%s)", r.Name, r.Got, r.Exact, r.Apart(), r.Note, c.Source)
				}
			}
			t.Logf("%.2f s", time.Since(begun).Seconds())
		})
	}
	t.Logf("%d numbers", numbers)
}
