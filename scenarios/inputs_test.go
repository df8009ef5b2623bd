package scenarios

import "testing"

// Every row stands: paths, defaults, ranges, references.
func TestRowsOfThePlant(t *testing.T) {
	if _, err := Inputs(); err != nil {
		t.Fatal(err)
	}
}
