package main

import "testing"

// A list of names can be read back where a name has a comma.
func TestNameList(t *testing.T) {
	for want, names := range map[string][]string{"": nil, "a, b c": {"a", "b c"}, `"third set", "third set, hold 16 h"`: {"third set", "third set, hold 16 h"}} {
		if got := nameList(names); got != want {
			t.Errorf("%q: %s, want %s", names, got, want)
		}
	}
}
