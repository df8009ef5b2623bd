package view

import (
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

func lifePlan() *sim.Plan {
	return &sim.Plan{
		Routes: []sim.Route{{Name: "hull", Steps: []sim.Step{{Name: "shot 1"}, {Name: "trim"}}}},
		Parts:  []sim.Part{{Name: "hull"}, {Name: "deck"}, {Name: "liner"}},
		Molds:  []sim.Mold{{Name: "hull mold A"}, {Name: "hull mold B"}},
		Crafts: []sim.Craft{{Name: "lamination"}},
	}
}

// One job is one row, under what it did longest; parts not begun, boats on the
// floor and molds stay apart.
func TestHolders(t *testing.T) {
	p, h := lifePlan(), clock.Hour
	job := func(job, order int32, part, step int16, d clock.Time) record.Holder {
		return record.Holder{Job: job, Order: order, Mold: -1, Part: part, Route: 0, Step: step, Working: true, For: d}
	}
	none := func(order, mold int32, part int16, why record.Reason, d clock.Time) record.Holder {
		return record.Holder{Job: -1, Order: order, Mold: mold, Part: part, Route: -1, Step: -1, Cause: record.Cause{Reason: why, Of: -1}, For: d}
	}
	for _, c := range []struct {
		reason record.Reason
		held   record.Held
		want   []string
	}{
		{record.NoCrew, record.Held{job(4, 6, 0, 1, 2*h), job(5, 7, 1, 0, h), job(4, 6, 0, 0, h)}, []string{"order 7 hull (trim) 3.0", "order 8 deck (shot 1) 1.0"}},
		{record.MateMissing, record.Held{none(2, -1, 0, record.NoMold, 5*h), none(2, -1, 1, record.NoOrder, 3*h), job(9, 2, 0, 1, h)}, []string{"its hull (no mold) 5.0", "its deck (no order) 3.0", "its hull (trim) 1.0"}},
		{record.FloorLimit, record.Held{{Job: -1, Order: 6, Mold: -1, Part: 0, Route: 0, Step: 0, Working: true, For: 2 * h}, none(7, -1, -1, record.MateMissing, 2*h)}, []string{"order 7 hull (shot 1) 2.0", "order 8 (mate missing) 2.0"}},
		{record.NoMold, record.Held{{Job: 3, Order: 1, Mold: 1, Part: 0, Route: 0, Step: 0, Working: true, For: h}, {Job: 4, Order: 2, Mold: 1, Part: 0, Route: 0, Step: 1, Working: true, For: h}}, []string{"hull mold B 2.0"}},
	} {
		cause := record.Cause{Reason: c.reason, Of: -1}
		list := Holders(c.held, cause)
		if len(list) != len(c.want) {
			t.Errorf("%s: %d holders, want %d", c.reason, len(list), len(c.want))
			continue
		}
		for i, x := range list {
			if got := HolderName(p, &x, 2) + " " + Hours(x.For); got != c.want[i] {
				t.Errorf("%s: %q, want %q", c.reason, got, c.want[i])
			}
		}
	}
}

// A crew that is too small has nobody to name.
func TestNobodyHolds(t *testing.T) {
	s := &study.Story{Plan: lifePlan()}
	if got := heldBy(s, &record.Passage{}, record.Cause{Reason: record.NoCrew, Of: 0}, nil); got != "too few at work, or kept for older work" {
		t.Errorf("got %q", got)
	}
	if got := heldBy(s, &record.Passage{}, record.Cause{Reason: record.DewPoint, Of: -1}, nil); got != "" {
		t.Errorf("got %q", got)
	}
}
