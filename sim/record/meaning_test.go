package record

import "testing"

// Whatever has a name on screens has a meaning.
func TestEveryNameHasAMeaning(t *testing.T) {
	for r := NoReason + 1; r < Reasons; r++ {
		if r.String() == "" || r.Doc() == "" {
			t.Errorf("reason %d: name %q, meaning %q", r, r, r.Doc())
		}
	}
	for d := Idle + 1; d < Doings; d++ {
		if d.String() == "" || d.Doc() == "" {
			t.Errorf("activity %d: name %q, meaning %q", d, d, d.Doc())
		}
	}
}
