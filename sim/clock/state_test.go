package clock

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A clock that is saved and restored in the middle goes on as if nothing had
// been: the same events in the same order, with tokens that still name them.
func TestRestoredGoesOn(t *testing.T) {
	if _, err := Layout(); err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		a := New()
		var tokens []Token
		for id := range int32(rapid.IntRange(1, 60).Draw(t, "events")) {
			tok := a.At(Time(rapid.IntRange(0, 20).Draw(t, "at")), Class(rapid.IntRange(0, 3).Draw(t, "class")), 0, id)
			tokens = append(tokens, tok)
		}
		split := Time(rapid.IntRange(0, 20).Draw(t, "split"))
		if err := a.Run(split, &diary{c: a}); err != nil {
			t.Fatal(err)
		}
		data, err := a.Save()
		if err != nil {
			t.Fatal(err)
		}
		b, err := Restore(data)
		if err != nil {
			t.Fatal(err)
		}
		var ends [2]*diary
		for i, c := range []*Clock{a, b} {
			if c.Now() != split || c.kernel.Now() != float64(split) {
				t.Fatalf("the time is %v, the kernel's %v, saved at %v", c.Now(), c.kernel.Now(), split)
			}
			c.Cancel(tokens[len(tokens)/2])
			c.At(split+3, Finish, 0, 1000)
			ends[i] = &diary{c: c}
			if err := c.Run(30, ends[i]); err != nil {
				t.Fatal(err)
			}
		}
		if !slices.Equal(ends[0].seen, ends[1].seen) || a.Now() != b.Now() {
			t.Fatalf("went on with %v, restored with %v", ends[0].seen, ends[1].seen)
		}
	})
}

func TestRestoreComplains(t *testing.T) {
	for _, text := range []string{`{"now":-1}`, `{"now":true}`, `{"later":1}`, `{`} {
		if _, err := Restore([]byte(text)); err == nil {
			t.Errorf("%s was taken for a clock", text)
		}
	}
}
