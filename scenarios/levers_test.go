package scenarios

import "testing"

func TestLevers(t *testing.T) {
	data, _ := BundledFile("fenwater")
	s, complaints := Load("fenwater.yaml", data, Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	levers := s.Levers()
	found := map[string]Lever{}
	for _, l := range levers {
		found[l.Label] = l
		for _, steps := range []int{-1, 1} {
			changes, ok := l.By(steps)
			if !ok {
				if l.Now+steps > 0 {
					t.Errorf("%s cannot move by %+d", l.Label, steps)
				}
				continue
			}
			if _, complaints := s.With(l.Name(steps), changes...); len(complaints) > 0 && l.Now+steps > 0 {
				t.Errorf("%s: %v", l.Name(steps), complaints)
			}
		}
	}
	if l := found["Rush 23 mold set"]; l.Now != 2 || len(l.paths) != 2 {
		t.Errorf("mold sets of Rush 23: %+v", l)
	}
	if l := found["lamination, evening"]; l.Now != 9 || l.Key != "crew.lamination" {
		t.Errorf("evening laminators: %+v", l)
	}
	if l := found["booth"]; l.Now != 2 {
		t.Errorf("booths: %+v", l)
	}
}
