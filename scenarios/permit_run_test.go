package scenarios

import (
	"testing"

	"moldturn/sim"
	"moldturn/sim/permit"
	"moldturn/sim/record"
)

// pullBook is a permit book beside counts of its own: parts pulled and gel coat
// washed out, by part type.
type pullBook struct {
	*permit.Book
	pulled, washed, flushed []int64
	boats                   int64
}

func (b *pullBook) Pull(p *record.Pull) { b.pulled[p.Part]++; b.Book.Pull(p) }
func (b *pullBook) Ship(s *record.Ship) { b.boats++; b.Book.Ship(s) }
func (b *pullBook) Note(n *record.Note) {
	switch n.Kind {
	case record.Resprayed:
		b.washed[n.Part]++
	case record.Flushed:
		b.flushed[0]++
	}
	b.Book.Note(n)
}

// What the book counts on the demo plant agrees with what other facts tell: each
// part pulled was sprayed once and once more for each washing, and has taken its
// whole resin; what is still in molds makes the difference.
func TestPermitBookAgreesWithPulls(t *testing.T) {
	data, _ := BundledFile("fenwater")
	change, _ := PermitDefaults()
	warm, _ := ParseChange("--set", "run.warm_up=0")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1, Sets: []Change{change, warm}})
	if complaints != nil {
		t.Fatal(complaints)
	}
	ledger, plan := s.Base.Permit(), s.Base.Plan()
	air, err := s.Base.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	n := len(plan.Parts)
	b := &pullBook{Book: permit.NewBook(&ledger.Plant), pulled: make([]int64, n), washed: make([]int64, n), flushed: make([]int64, 1)}
	if err := sim.Simulate(plan, air, 1, 0, b); err != nil {
		t.Fatal(err)
	}
	counts := b.Counts()
	gel, skin, rest := make([]int64, n), make([]int64, n), make([]int64, n)
	flushes, boats := int64(0), int64(0)
	for _, m := range counts.Months {
		flushes += m.Pump + m.Pot
		for _, x := range m.Shipped {
			boats += x
		}
		for p := range m.Parts {
			gel[p] += m.Parts[p][permit.GelCoat]
			skin[p] += m.Parts[p][permit.Skin]
			rest[p] += m.Parts[p][permit.Laminate]
		}
	}
	for p := range plan.Parts {
		molds := int64(plan.Parts[p].InUse)
		if over := gel[p]/permit.Whole - b.pulled[p] - b.washed[p]; gel[p]%permit.Whole != 0 || over < 0 || over > molds {
			t.Errorf("part %d: sprayed %d times, pulled %d, washed out %d, %d molds", p, gel[p]/permit.Whole, b.pulled[p], b.washed[p], molds)
		}
		if resin := skin[p] + rest[p]; resin < b.pulled[p]*permit.Whole || resin > (b.pulled[p]+molds)*permit.Whole {
			t.Errorf("part %d: resin of %.3f parts, %d pulled", p, float64(resin)/permit.Whole, b.pulled[p])
		}
	}
	if flushes != b.flushed[0] || boats != b.boats || boats == 0 {
		t.Errorf("%d flushes of %d, %d boats of %d", flushes, b.flushed[0], boats, b.boats)
	}
}
