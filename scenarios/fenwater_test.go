package scenarios

import (
	"context"
	"fmt"
	"testing"

	"moldturn/sim/study"
)

func TestFenwaterLook(t *testing.T) {
	data, _ := BundledFile("fenwater")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 2})
	if len(complaints) > 0 {
		t.Fatal("\n" + complaints.Error())
	}
	runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: s.Study(), Replications: 3, Seed: 1, Workers: 2})
	if err != nil {
		t.Fatal(err)
	}
	for i := range runs {
		line := fmt.Sprintf("%-28s", runs[i].Name)
		for _, m := range study.Metrics() {
			if sm, ok := runs[i].Summary(&m); ok {
				line += fmt.Sprintf(" %s %.3f±%.3f", m.Name, sm.Mean, sm.Half)
			}
		}
		t.Log(line)
	}
	plan := s.Base.Plan()
	for _, m := range []int{0, 6} {
		t.Log("month", m+1)
		for _, l := range runs[0].Limits(m) {
			name := ""
			if l.Pool < len(plan.Crafts) {
				name = plan.Crafts[l.Pool].Name
			} else {
				name = plan.Places[l.Pool-len(plan.Crafts)].Name
			}
			t.Logf("  %-20s load %.2f wait %.0f h/week", name, l.Load, l.Wait)
		}
	}
	for i := range runs[0].Outcomes[0].Capacity.Models {
		m := runs[0].Outcomes[0].Capacity.Models[i]
		t.Log(plan.Models[i].Name, float64(m.Shipped)/104, float64(m.AtTarget)/float64(m.Shipped))
	}
	o := runs[0].Outcomes[0].Capacity
	t.Log("notes", o.Notes, "floor", o.OnFloor)
	for p := range o.Parts {
		t.Log(plan.Models[plan.Parts[p].Model].Name, plan.Parts[p].Name, "pulls/wk", float64(o.Parts[p].Pulls)/104, "cycle", o.Parts[p].CycleSum.Hours()/float64(o.Parts[p].Cycles), "luster", o.Parts[p].Luster.Mean())
	}
}
