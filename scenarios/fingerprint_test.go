package scenarios

import "testing"

func TestFingerprint(t *testing.T) {
	s := warmed(t, 2, 1)
	print := func(files map[string][]byte, sets ...string) string {
		t.Helper()
		var changes []Change
		for _, set := range sets {
			ch, complaints := ParseChange("--set", set)
			if len(complaints) > 0 {
				t.Fatal(complaints.Error())
			}
			changes = append(changes, ch)
		}
		a, complaints := s.With("other", changes...)
		if len(complaints) > 0 {
			t.Fatal(complaints.Error())
		}
		return a.Plant.Fingerprint(files)
	}
	same := print(nil)
	if base := s.Base.Fingerprint(nil); base != same {
		t.Error("the list of alternatives changes the fingerprint")
	}
	for _, set := range []string{"note=other words", "run.replications=77", "hold.clock=1440 min"} {
		if print(nil, set) != same {
			t.Errorf("%s changes the fingerprint", set)
		}
	}
	for _, set := range []string{"hold.clock=23 h", "crafts.gel.people.day=5", "run.warm_up=2"} {
		if print(nil, set) == same {
			t.Errorf("%s does not change the fingerprint", set)
		}
	}
	if print(map[string][]byte{"orders.csv": []byte("a")}) == print(map[string][]byte{"orders.csv": []byte("b")}) {
		t.Error("the content of a file does not change the fingerprint")
	}
	if warmed(t, 3, 1).Base.Fingerprint(nil) == same {
		t.Error("the years do not change the fingerprint")
	}
}
