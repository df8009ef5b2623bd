package view

import (
	"strings"
	"testing"
)

// Ways dropped for less than what matters are named as good; others are not.
func TestBestNamesWaysAsGood(t *testing.T) {
	b := &Best{Label: "boats per week", Unit: "boats/week", Chance: 0.95, Matters: 0.1, Names: []string{"a", "b", "c"},
		Means: []float64{9, 8.91, 8.89}, Used: []int{20, 20, 10}, Decided: true, Left: []int{0}, Drops: []BestDrop{{Alternative: 1}, {Alternative: 2}}}
	if got := b.Headline(); !strings.HasSuffix(got, "As good for the purpose, nearer to it than that: “b”.") {
		t.Error(got)
	}
	b.Means[1] = 8.8
	if got := b.Headline(); strings.Contains(got, "As good") {
		t.Error(got)
	}
}
