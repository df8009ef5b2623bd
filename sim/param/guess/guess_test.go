package guess

import "testing"

// The four kinds of slip are those of Damerau (1964): a wrong letter, a missing
// letter, an extra letter, a single transposition.
func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"hold", "hold", 0},
		{"hold", "bold", 1}, {"hold", "hod", 1}, {"hod", "hold", 1}, {"hold", "hlod", 1},
		{"ca", "abc", 3}, // restricted distance; the unrestricted one is 2
		{"", "wax", 3}, {"laminatoin", "lamination", 1},
	} {
		if got := Distance([]rune(c.a), []rune(c.b)); got != c.want {
			t.Errorf("Distance(%q, %q) = %d, want %d", c.a, c.b, got, c.want)
		}
	}
}

func TestNear(t *testing.T) {
	crafts := []string{"mold", "gel", "lamination", "pull", "finish", "assembly"}
	for _, c := range []struct{ word, want string }{
		{"laminatoin", "lamination"}, {"Lamination", "lamination"}, {"mould", "mold"},
		{"lam", "lamination"}, {"g", "gel"}, {"paint", ""}, {"", ""}, {"as sembly", "assembly"},
		{"gle", "gel"}, {"full", "pull"},
	} {
		if got := Near(c.word, crafts); got != c.want {
			t.Errorf("Near(%q) = %q, want %q", c.word, got, c.want)
		}
	}
	if got := Near("b", []string{"base", "band"}); got != "" {
		t.Errorf("two candidates begin with b, got %q", got)
	}
}
