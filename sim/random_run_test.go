package sim

import (
	"errors"
	"slices"
	"sort"
	"testing"
)

// Random small plants hold the identities that hold in every plant: molds are
// conserved, the hours of molds and jobs are complete, nothing is used twice,
// orders and parts add up, and the same plant gives the same facts. Each
// feature is in at least a tenth of the plants.
func TestRandomPlants(t *testing.T) {
	const plants = 600
	airs := randomAirs()
	has := map[string]int{}
	blocked, facts, shipped, pulls, none := 0, 0, 0, 0, 0
	for n := range plants {
		m := randomPlan(n)
		for f := range m.has {
			has[f]++
		}
		if faults := m.p.Check(); len(faults) > 0 {
			t.Fatalf("plant %d: %q", n, faults)
		}
		w, err := watch(m.p, airs[m.air], uint64(n))
		for _, f := range w.faults {
			t.Errorf("plant %d: %s", n, f)
		}
		var circle *Deadlock
		if errors.As(err, &circle) {
			blocked++
			continue
		}
		if err != nil {
			t.Errorf("plant %d: %v", n, err)
			continue
		}
		facts += len(w.lives)
		shipped += w.shipped
		pulls += w.pulls
		if w.shipped == 0 {
			none++
		}
		again, _ := watch(m.p, airs[m.air], uint64(n))
		if again.sum != w.sum {
			t.Errorf("plant %d: not the same facts the second time", n)
		}
		if t.Failed() && n > 40 {
			break
		}
	}
	t.Logf("%d plants, %d jobs, %d parts pulled, %d boats shipped; %d shipped none, %d blocked themselves", plants, facts, pulls, shipped, none, blocked)
	var names []string
	for f := range has {
		names = append(names, f)
	}
	sort.Strings(names)
	for _, f := range names {
		t.Logf("%4d  %s", has[f], f)
	}
	for _, f := range randomFeatures {
		if has[f] < plants/10 {
			t.Errorf("only %d of %d plants have %q", has[f], plants, f)
		}
	}
	for f := range has {
		if !slices.Contains(randomFeatures, f) {
			t.Errorf("feature %q is not in the list", f)
		}
	}
}
